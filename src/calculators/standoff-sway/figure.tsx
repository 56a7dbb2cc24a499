import type { FigureProps } from '~/island/declaration.ts';
import {
  CentreLine,
  DimensionLine,
  Drawing,
  ForceArrow,
  HiddenLine,
  Label,
  Leader,
  Line,
  Outline,
} from '~/island/drawing/index.ts';
import { movementAt } from '@frameworthy/shared/standoff';
import { drawnFactor } from '../drawn-factor.ts';
import { NOSE, type SwayResult } from './compute.ts';
import type { SwayValues } from './inputs.ts';

type Props = FigureProps<SwayValues, SwayResult>;

/** Drawn sway is at most this share of the length. */
const DRAWN = 0.35;

/** Side movement at a share `s` of the height: a cubic that meets both ends' slopes. */
function bent(s: number, sway: number, footSlope: number, headSlope: number): number {
  return sway * (3 * s ** 2 - 2 * s ** 3) + footSlope * (s - 2 * s ** 2 + s ** 3) + headSlope * (s ** 3 - s ** 2);
}

function SideView({ values, result, show }: Props) {
  const { length, foreAft, outerDiameter, hitHeight, bottomPlate, topPlate } = values;
  const sway = Math.abs(result.plate.displacement.x);
  const factor = drawnFactor(sway, DRAWN * length);
  const end = foreAft / 2 + NOSE;
  const head = (x: number, z = 0) => {
    const moved = movementAt(result.plate, { x, y: 0, z });
    return { x: x + factor * moved.x, y: length + z + factor * moved.z };
  };
  const tilt = result.plate.rotation.y * length;
  const xs = [...new Set(result.columns.map(({ x }) => x))];
  const heights = Array.from({ length: 13 }, (_, i) => i / 12);
  const edge = (x: number, side: number) =>
    heights.map((s) => ({
      x: x + (side * outerDiameter) / 2 + factor * bent(s, movementAt(result.plate, { x, y: 0, z: 0 }).x, 0, tilt),
      y: s * length,
    }));
  return (
    <Drawing
      title="The body from the side"
      description={`Standoffs ${show(length, 'length')} long, front and rear pair ${show(foreAft, 'length')} apart; the top plate springs by ${show(result.elastic, 'length', 2)} at the electronics, drawn ${factor} times.`}
      bounds={{ left: -end, right: end + 0.006, bottom: -bottomPlate, top: length + topPlate + Math.max(hitHeight, 0) }}
      height={230}
      margin={{ left: 62, right: 62, top: 26, bottom: 54 }}
      show={show}
      exaggerated={factor !== 1}
    >
      {xs.flatMap((x) =>
        [-1, 1].map((side) => (
          <HiddenLine
            key={`rest ${x} ${side}`}
            points={[
              { x: x + (side * outerDiameter) / 2, y: 0 },
              { x: x + (side * outerDiameter) / 2, y: length },
            ]}
            open
            tone="quiet"
          />
        )),
      )}
      <HiddenLine rect={{ x: -end, y: length, width: 2 * end, height: topPlate }} tone="quiet" />
      <Outline rect={{ x: -end, y: -bottomPlate, width: 2 * end, height: bottomPlate }} fill="hatch" />
      {xs.map((x) => (
        <Outline key={x} points={[...edge(x, -1), ...edge(x, 1).reverse()]} fill="shade" />
      ))}
      <Outline points={[head(-end), head(end), head(end, topPlate), head(-end, topPlate)]} fill="shade" />
      <ForceArrow
        at={head(end, hitHeight)}
        direction={{ x: -1, y: 0 }}
        length={44}
        pushes
        label={show(result.peakForce, 'force', 2)}
        tone="accent"
      />
      <Line from={head(end)} to={head(end, hitHeight)} tone="accent" />
      <DimensionLine from={{ x: -end, y: 0 }} to={{ x: -end, y: length }} offset={30} label={show(length, 'length')} />
      <DimensionLine
        from={{ x: -foreAft / 2, y: -bottomPlate }}
        to={{ x: foreAft / 2, y: -bottomPlate }}
        offset={-22}
        label={show(foreAft, 'length')}
      />
      <Label
        at={{ x: 0, y: -bottomPlate }}
        dy={-38}
        text={factor === 1 ? 'elastic movement to scale' : `elastic movement drawn ${factor} times`}
        tone="quiet"
      />
    </Drawing>
  );
}

function PlanView({ values, result, show }: Props) {
  const { foreAft, across, outerDiameter, boardSide, hitAside } = values;
  const wide = Math.max(...result.columns.map(({ y }) => Math.abs(y))) + 0.006;
  const end = foreAft / 2 + NOSE;
  const worst = result.columns[result.worst]!;
  return (
    <Drawing
      title="The standoffs from above"
      description={`${result.columns.length} standoffs, pairs ${show(across, 'length')} across. The blow comes from the right, ${show(hitAside, 'length')} beside the centre line.`}
      bounds={{ left: -end, right: end, bottom: -Math.max(wide, hitAside), top: Math.max(wide, hitAside) }}
      height={230}
      margin={{ left: 62, right: 62, top: 30, bottom: 34 }}
      show={show}
    >
      <Outline rect={{ x: -end, y: -wide, width: 2 * end, height: 2 * wide, cornerRadius: 0.004 }} />
      <HiddenLine rect={{ x: -boardSide / 2, y: -boardSide / 2, width: boardSide, height: boardSide }} />
      <CentreLine from={{ x: -end, y: 0 }} to={{ x: end, y: 0 }} tone="quiet" />
      {result.columns.map(({ x, y }, i) => (
        <Outline
          key={`${x} ${y}`}
          circle={{ x, y, radius: outerDiameter / 2 }}
          fill={i === result.worst ? 'hatch' : 'paper'}
          tone={i === result.worst ? 'bad' : 'ink'}
        />
      ))}
      <Leader
        at={worst}
        dx={worst.x > 0 ? -24 : 24}
        dy={worst.y > 0 ? 34 : -34}
        text={`bent most: ${show(result.worstMoment, 'moment', 2)}`}
        tone="bad"
      />
      <ForceArrow at={{ x: end, y: hitAside }} direction={{ x: -1, y: 0 }} length={40} pushes tone="accent" />
      <DimensionLine
        from={{ x: -foreAft / 2, y: -across / 2 }}
        to={{ x: -foreAft / 2, y: across / 2 }}
        offset={38}
        label={show(across, 'length')}
      />
      <Label at={{ x: 0, y: 0 }} dy={-9} text="boards" tone="quiet" />
    </Drawing>
  );
}

/** Side view with the deflected shape, and plan. */
export function SwayFigure(props: Props) {
  return (
    <>
      <SideView {...props} />
      <PlanView {...props} />
    </>
  );
}
