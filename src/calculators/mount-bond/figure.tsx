import { tangentGap } from '@frameworthy/shared/mount';
import { DimensionLine, Drawing, ForceArrow, Label, Leader, Outline, type Point } from '~/island/drawing/index.ts';
import type { FigureProps } from '~/island/declaration.ts';
import type { BondResult } from './compute.ts';
import type { BondValues } from './inputs.ts';

const POINTS = 24;
const steps = Array.from({ length: POINTS + 1 }, (_, i) => i / POINTS);

/** The glue, cut across the tube; above the plate the pull across the glue as the plate tips to the left. */
export function BondFigure({ values, result, show }: FigureProps<BondValues, BondResult>) {
  const { bond, stress } = result;
  const { radius, bondLine } = bond;
  const under = radius + bondLine;
  const top = under + values.plateThickness;
  const half = values.plateWidth / 2;
  const reach = bond.width / 2;
  const filleted = bond.filletReach > bond.fillReach && bond.filletReachOnPlate <= half;
  const centre = { x: bond.filletReachOnPlate, y: under - values.filletRadius };
  const touches = filleted ? Math.atan2(centre.x, centre.y) : Math.asin(Math.min(1, reach / radius));
  const along = steps.map((share) => touches * (2 * share - 1));
  /** From where the fillet touches the tube, round its hollow, to the plate; without one straight up. */
  const edge: Point[] = filleted
    ? steps.map((share) => {
        const turn = (Math.PI - touches) * (1 - share);
        return {
          x: centre.x - values.filletRadius * Math.sin(turn),
          y: centre.y + values.filletRadius * Math.cos(turn),
        };
      })
    : [{ x: reach, y: under }];
  const glue = [
    ...along.map((angle) => ({ x: radius * Math.sin(angle), y: radius * Math.cos(angle) })),
    ...edge,
    ...edge.map(({ x, y }) => ({ x: -x, y })).reverse(),
  ];
  const highest = bond.width > 0 ? stress.stop.peakAt / tangentGap(bond, stress.stop.peakAt) : 1;
  const tall = 0.45 * radius;
  const base = top + 0.12 * radius;
  const curve = steps.map((share) => {
    const x = reach * share;
    return { x, y: base + (tall * x) / tangentGap(bond, x) / highest };
  });
  return (
    <Drawing
      title="Plate on a tube, cut across"
      description={`Glue ${show(bond.width, 'length')} wide on a tube of ${show(values.outerDiameter, 'length')}, ${show(bondLine, 'length')} thick in the middle and ${show(bond.edgeGap, 'length')} at its edge. Tipped sideways, the pull reaches ${show(stress.stop.tension.across, 'stress')}.`}
      bounds={{ left: -Math.max(half, radius), right: Math.max(half, radius), bottom: 0, top: base + tall }}
      height={310}
      margin={{ left: 60, right: 60, top: 30, bottom: 60 }}
      show={show}
    >
      <Outline points={glue} fill="hatch" tone="accent" line="thin" />
      <Outline
        points={Array.from({ length: 61 }, (_, i) => (Math.PI * i) / 60).map((angle) => ({
          x: radius * Math.cos(angle),
          y: radius * Math.sin(angle),
        }))}
        open
      />
      <Outline rect={{ x: -half, y: under, width: 2 * half, height: values.plateThickness }} fill="shade" />
      <Outline points={[...curve, { x: reach, y: base }, { x: 0, y: base }]} fill="shade" tone="bad" line="thin" />
      <Leader
        at={{ x: stress.stop.peakAt, y: base + tall }}
        dx={24}
        dy={6}
        text={`pull ${show(stress.stop.tension.across, 'stress')}`}
        tone="bad"
      />
      <ForceArrow
        at={{ x: -0.3 * half, y: base + 0.25 * tall }}
        direction={{ x: -1, y: 0 }}
        length={40}
        label={show(result.loads.stop.shear, 'force')}
      />
      <Label at={{ x: 0, y: 0 }} dy={18} text="tube" tone="quiet" />
      <Leader
        at={{ x: -reach, y: under - bond.edgeGap / 2 }}
        dx={-26}
        dy={-30}
        text={`edge ${show(bond.edgeGap, 'length')}`}
        tone="accent"
      />
      <DimensionLine
        from={{ x: -reach, y: under - 0.62 * radius }}
        to={{ x: reach, y: under - 0.62 * radius }}
        offset={-1}
        label={show(bond.width, 'length')}
        tone="accent"
      />
      <DimensionLine
        from={{ x: -radius, y: 0 }}
        to={{ x: radius, y: 0 }}
        offset={-22}
        label={show(2 * radius, 'length')}
      />
    </Drawing>
  );
}
