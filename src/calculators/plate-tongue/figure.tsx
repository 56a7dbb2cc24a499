import type { FigureProps } from '~/island/declaration.ts';
import { CentreLine, DimensionLine, Drawing, ForceArrow, HiddenLine, Label, Outline } from '~/island/drawing/index.ts';
import type { TongueAnswer } from './compute.ts';
import type { TongueValues } from './inputs.ts';

type Props = FigureProps<TongueValues, TongueAnswer>;

const SCREW = 0.0016;
const BEHIND = 0.008;

/** How far inwards the body is drawn. */
const bodyOf = ({ cutoutAt, cutoutLength, cutoutWidth }: TongueValues) =>
  cutoutWidth > 0 ? cutoutAt + cutoutLength / 2 + BEHIND : 0.03;

function PlanView({ values, result, show }: Props) {
  const { tongueLength, tongueWidth, screwSpacing, plateWidth, holeDiameter, holeAt, plane } = values;
  const { cutoutAt, cutoutLength, cutoutWidth, cutoutOffset } = values;
  const back = Math.max(bodyOf(values), screwSpacing - tongueLength + 0.006);
  const end = tongueLength + 0.006;
  const half = Math.max(plateWidth, tongueWidth) / 2;
  const aside = tongueWidth / 2;
  const sideways = plane === 'horizontal';
  return (
    <Drawing
      title="The tongue from above"
      description={`Tongue ${show(tongueLength, 'length')} long and ${show(tongueWidth, 'length')} wide, outer screw with ${show(result.outer, 'force')}; narrowest web ${show(result.narrowest, 'length')}.`}
      bounds={{ left: -back, right: end, bottom: -half, top: half }}
      height={270}
      margin={{ left: 60, right: 66, top: 44, bottom: 50 }}
      show={show}
    >
      <Outline
        points={[
          { x: -back, y: -plateWidth / 2 },
          { x: 0, y: -plateWidth / 2 },
          { x: 0, y: -aside },
          { x: end, y: -aside },
          { x: end, y: aside },
          { x: 0, y: aside },
          { x: 0, y: plateWidth / 2 },
          { x: -back, y: plateWidth / 2 },
        ]}
      />
      <CentreLine from={{ x: -back, y: 0 }} to={{ x: end, y: 0 }} tone="quiet" />
      {cutoutWidth > 0 && (
        <Outline
          rect={{
            x: -cutoutAt - cutoutLength / 2,
            y: cutoutOffset - cutoutWidth / 2,
            width: cutoutLength,
            height: cutoutWidth,
            cornerRadius: Math.min(0.003, cutoutLength / 2, cutoutWidth / 2),
          }}
          fill="hatch"
        />
      )}
      {holeDiameter > 0 && <Outline circle={{ x: holeAt, y: 0, radius: holeDiameter / 2 }} fill="paper" />}
      <Outline circle={{ x: tongueLength, y: 0, radius: SCREW }} fill="paper" tone="accent" />
      <Outline
        circle={{ x: tongueLength - screwSpacing, y: 0, radius: SCREW }}
        fill="paper"
        tone="accent"
        line="thin"
      />
      {sideways && (
        <>
          <ForceArrow
            at={{ x: tongueLength, y: 0 }}
            direction={{ x: 0, y: 1 }}
            length={44}
            label={show(result.outer, 'force')}
          />
          <ForceArrow
            at={{ x: tongueLength - screwSpacing, y: 0 }}
            direction={{ x: 0, y: -1 }}
            length={(44 * result.inner) / result.outer}
            label={show(result.inner, 'force')}
          />
        </>
      )}
      <DimensionLine
        from={{ x: 0, y: -half }}
        to={{ x: tongueLength, y: -half }}
        offset={-22}
        label={show(tongueLength, 'length')}
      />
      <DimensionLine
        from={{ x: end, y: -aside }}
        to={{ x: end, y: aside }}
        offset={-28}
        label={show(tongueWidth, 'length')}
      />
      {cutoutWidth > 0 &&
        ([1, -1] as const).map((side) => (
          <DimensionLine
            key={side}
            from={{ x: -back, y: (side * plateWidth) / 2 }}
            to={{ x: -back, y: cutoutOffset + (side * cutoutWidth) / 2 }}
            offset={side * -20}
            label={show(result.sides[side === 1 ? 0 : 1].width, 'length')}
            tone={result.sides[side === 1 ? 0 : 1] === result.web ? 'bad' : 'ink'}
          />
        ))}
      {cutoutWidth > 0 && <Label at={{ x: -cutoutAt, y: cutoutOffset }} text="cutout" />}
    </Drawing>
  );
}

function SideView({ values, result, show }: Props) {
  const { tongueLength, bottomPlate, topPlate, gap, link, screwSpacing, plane } = values;
  const end = tongueLength + 0.006;
  const two = link !== 'none';
  const top = two ? bottomPlate + gap + topPlate : bottomPlate;
  const inner = tongueLength - screwSpacing;
  const back = Math.max(0.014, -inner + 0.006);
  const upDown = plane === 'vertical';
  return (
    <Drawing
      title="The plates from the side"
      description={`Main plate ${show(bottomPlate, 'length')}${two ? `, cross plate ${show(topPlate, 'length')}, ${show(gap, 'length')} between them` : ', no cross plate'}.`}
      bounds={{ left: -back, right: end, bottom: 0, top }}
      height={190}
      margin={{ left: 60, right: 66, top: 52, bottom: 46 }}
      show={show}
    >
      <HiddenLine
        points={[
          { x: 0, y: 0 },
          { x: 0, y: top },
        ]}
        open
        tone="quiet"
      />
      <Outline rect={{ x: -back, y: 0, width: back, height: top }} fill="hatch" line="thin" tone="quiet" />
      <Outline rect={{ x: -back, y: 0, width: back + end, height: bottomPlate }} fill="shade" />
      {two && <Outline rect={{ x: -back, y: bottomPlate + gap, width: back + end, height: topPlate }} fill="shade" />}
      <CentreLine from={{ x: tongueLength, y: 0 }} to={{ x: tongueLength, y: top }} tone="accent" />
      <CentreLine from={{ x: inner, y: 0 }} to={{ x: inner, y: top }} tone="accent" />
      {upDown && (
        <>
          <ForceArrow
            at={{ x: tongueLength, y: top }}
            direction={{ x: 0, y: 1 }}
            length={30}
            label={show(result.outer, 'force')}
          />
          <ForceArrow
            at={{ x: inner, y: 0 }}
            direction={{ x: 0, y: -1 }}
            length={(30 * result.inner) / result.outer}
            label={show(result.inner, 'force')}
          />
        </>
      )}
      <Label at={{ x: end, y: bottomPlate / 2 }} dx={8} text={show(bottomPlate, 'length')} align="start" />
      {two && <Label at={{ x: end, y: top - topPlate / 2 }} dx={8} text={show(topPlate, 'length')} align="start" />}
      {two && (
        <DimensionLine
          from={{ x: -back, y: bottomPlate }}
          to={{ x: -back, y: bottomPlate + gap }}
          offset={22}
          label={show(gap, 'length')}
        />
      )}
      <Label at={{ x: -back / 2, y: bottomPlate + gap / 2 }} text={two ? 'body' : ''} tone="quiet" />
    </Drawing>
  );
}

export function TongueFigure(props: Props) {
  return (
    <>
      <PlanView {...props} />
      <SideView {...props} />
    </>
  );
}
