import type { FigureProps } from '~/island/declaration.ts';
import { CentreLine, DimensionLine, Drawing, Hatch, Label, Outline, type Point } from '~/island/drawing/index.ts';
import type { ArmResult } from './compute.ts';
import type { ArmValues } from './inputs.ts';

/** Strip with square or round edges, about its centre. */
function stripOutline({ rootWidth: b, thickness: h, edges }: ArmValues, at: Point) {
  return { x: at.x - b / 2, y: at.y - h / 2, width: b, height: h, cornerRadius: edges === 'round' ? h / 2 : 0 };
}

/** The strip from above: inside the body, taper, round end. */
function planOfStrip(values: ArmValues, y: number): Point[] {
  const { armLength: L, behind, rootWidth, tipWidth, endDiameter } = values;
  const radius = Math.max(endDiameter, tipWidth) / 2;
  const half = tipWidth / 2;
  const from = Math.asin(half / radius);
  // Where the disc meets the edge of the strip, taken at the width of the tip.
  const meets = Math.min(Math.sqrt(radius ** 2 - half ** 2), L);
  const end = Array.from({ length: 33 }, (_, i) => {
    const angle = Math.PI - from - ((2 * Math.PI - 2 * from) * i) / 32;
    return { x: L + radius * Math.cos(angle), y: y + radius * Math.sin(angle) };
  });
  return [
    { x: -behind, y: y + rootWidth / 2 },
    { x: 0, y: y + rootWidth / 2 },
    { x: L - meets, y: y + half },
    ...end,
    { x: L - meets, y: y - half },
    { x: 0, y: y - rootWidth / 2 },
    { x: -behind, y: y - rootWidth / 2 },
  ];
}

/** Both sections at one scale, and both arms from above at another. */
export function Figure({ values, result, show }: FigureProps<ArmValues, ArmResult>) {
  const {
    outerDiameter: D,
    wall,
    armLength: L,
    behind,
    beyond,
    rootWidth,
    thickness: h,
    holeDiameter,
    endDiameter,
    tipWidth,
  } = values;
  const gap = 0.012;
  const tube = { x: D / 2, y: 0 };
  const strip = { x: D + gap + rootWidth / 2, y: 0 };
  const high = Math.max(D, h) / 2;
  const end = Math.max(endDiameter, tipWidth);
  const half = Math.max(rootWidth, end) / 2;
  const between = D / 2 + half + 0.01;
  const bottom = -between - half;
  const right = L + Math.max(beyond, end / 2);
  return (
    <>
      <Drawing
        title="Both sections at the outer screw"
        description={`Tube ${show(D, 'length')} by ${show(wall, 'length')}. Strip ${show(rootWidth, 'length')} wide and ${show(h, 'length')} thick.`}
        bounds={{ left: 0, right: strip.x + rootWidth / 2, bottom: -high, top: high }}
        height={190}
        margin={{ left: 40, right: 60, top: 30, bottom: 54 }}
        show={show}
      >
        <Hatch circle={{ ...tube, radius: D / 2 }} />
        <Outline circle={{ ...tube, radius: result.bore / 2 }} fill="paper" />
        <Hatch rect={stripOutline(values, strip)} />
        <CentreLine from={{ x: 0, y: 0 }} to={{ x: D, y: 0 }} tone="quiet" />
        <CentreLine from={{ x: tube.x, y: -D / 2 }} to={{ x: tube.x, y: D / 2 }} tone="quiet" />
        <DimensionLine from={{ x: 0, y: -D / 2 }} to={{ x: D, y: -D / 2 }} offset={-22} label={show(D, 'length')} />
        <DimensionLine
          from={{ x: strip.x - rootWidth / 2, y: -h / 2 }}
          to={{ x: strip.x + rootWidth / 2, y: -h / 2 }}
          offset={-22}
          label={show(rootWidth, 'length')}
        />
        <DimensionLine
          from={{ x: strip.x + rootWidth / 2, y: h / 2 }}
          to={{ x: strip.x + rootWidth / 2, y: -h / 2 }}
          offset={22}
          label={show(h, 'length')}
        />
        <Label at={{ x: tube.x, y: D / 2 }} dy={12} text={`tube ${show(result.tube.mass, 'mass')}`} tone="accent" />
        <Label at={{ x: strip.x, y: h / 2 }} dy={12} text={`strip ${show(result.strip.mass, 'mass')}`} tone="accent" />
      </Drawing>
      <Drawing
        title="Both arms from above"
        description={`${show(L, 'length')} from the outer screw to the motor axis. The strip tapers from ${show(rootWidth, 'length')} to ${show(tipWidth, 'length')} and ends in a disc of ${show(end, 'length')}.`}
        bounds={{
          left: -behind,
          right,
          bottom,
          top: D / 2,
        }}
        height={230}
        margin={{ left: 14, right: 30, top: 22, bottom: 40 }}
        show={show}
      >
        <Outline rect={{ x: -behind, y: -D / 2, width: behind + L + beyond, height: D }} />
        <Outline points={planOfStrip(values, -between)} />
        {[0, -between].map((y) => (
          <>
            <Outline circle={{ x: 0, y, radius: holeDiameter / 2 }} fill="paper" />
            <CentreLine from={{ x: -behind, y }} to={{ x: right, y }} tone="quiet" />
          </>
        ))}
        <CentreLine from={{ x: L, y: D / 2 }} to={{ x: L, y: -between - end / 2 }} tone="quiet" />
        {(
          [
            [D / 2, result.tube],
            [rootWidth / 2 - between, result.strip],
          ] as const
        ).map(([y, { thrust }]) => (
          <Label
            key={y}
            at={{ x: L / 2, y }}
            dy={9}
            text={`rises ${show(thrust.deflection, 'length', 2)}`}
            tone="accent"
          />
        ))}
        <DimensionLine from={{ x: 0, y: bottom }} to={{ x: L, y: bottom }} offset={-22} label={show(L, 'length')} />
      </Drawing>
    </>
  );
}
