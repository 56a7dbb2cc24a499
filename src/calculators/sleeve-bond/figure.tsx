import { CentreLine, DimensionLine, Drawing, Hatch, Label, Outline } from '~/island/drawing/index.ts';
import type { FigureProps } from '~/island/declaration.ts';
import type { BondValues } from './inputs.ts';
import type { BondResult } from './result.ts';

const POINTS = 48;

/** Sleeve and tube cut open along the axis; above them the shear of the bond as a curve over its own length. */
export function Figure({ values, result, show }: FigureProps<BondValues, BondResult>) {
  const { tubeOutside, tubeInside, sleeveOutside, sleeveWall, overlap } = values;
  const outer = tubeOutside / 2;
  const beyond = Math.max(0.45 * overlap, 0.6 * tubeOutside);
  const wall = outer - tubeInside / 2;
  const base = outer + 0.25 * tubeOutside;
  const tallest = 0.9 * tubeOutside;
  const curve = Array.from({ length: POINTS + 1 }, (_, i) => {
    const x = (overlap * i) / POINTS;
    return { x, y: base + (tallest * result.at(x)) / result.peak };
  });
  const mean = base + (tallest * result.mean) / result.peak;
  return (
    <Drawing
      title="Sleeve bonded in a tube, cut along the axis, with the shear of the bond above"
      description={`Overlap ${show(overlap, 'length')}, peak shear ${show(result.peak, 'stress')}, mean ${show(result.mean, 'stress')}.`}
      bounds={{ left: -beyond, right: overlap + beyond, bottom: -outer, top: base + tallest }}
      height={280}
      margin={{ left: 30, right: 30, top: 24, bottom: 64 }}
      show={show}
    >
      {([1, -1] as const).map((side) => (
        <g key={side}>
          <Hatch rect={{ x: -beyond, y: side > 0 ? tubeInside / 2 : -outer, width: beyond + overlap, height: wall }} />
          <Outline
            rect={{
              x: 0,
              y: side > 0 ? sleeveOutside / 2 - sleeveWall : -sleeveOutside / 2,
              width: overlap + beyond,
              height: sleeveWall,
            }}
            fill="shade"
            tone="accent"
          />
        </g>
      ))}
      <CentreLine from={{ x: -beyond, y: 0 }} to={{ x: overlap + beyond, y: 0 }} />
      <Label at={{ x: -beyond, y: 0 }} dx={4} dy={12} align="start" text="tube" tone="quiet" />
      <Label at={{ x: overlap + beyond, y: 0 }} dx={-4} dy={12} align="end" text="sleeve" tone="quiet" />
      <Outline points={[{ x: 0, y: base }, ...curve, { x: overlap, y: base }]} fill="shade" tone="accent" line="thin" />
      <Outline
        points={[
          { x: 0, y: mean },
          { x: overlap, y: mean },
        ]}
        open
        line="hidden"
        tone="quiet"
      />
      <Label
        at={{ x: overlap, y: mean }}
        dx={6}
        align="start"
        text={`mean ${show(result.mean, 'stress')}`}
        tone="quiet"
      />
      <Label
        at={{ x: result.atStart >= result.atEnd ? 0 : overlap, y: base + tallest }}
        dy={10}
        text={`peak ${show(result.peak, 'stress')}`}
        tone="accent"
      />
      <DimensionLine
        from={{ x: 0, y: -outer }}
        to={{ x: overlap, y: -outer }}
        offset={-28}
        label={`overlap ${show(overlap, 'length')}`}
      />
    </Drawing>
  );
}
