import type { FigureProps } from '~/island/declaration.ts';
import { CentreLine, DimensionLine, Drawing, ForceArrow, Label, Outline } from '~/island/drawing/index.ts';
import type { ClampResult, ClampValues } from './compute.ts';

const PLATE = 0.0025;
const arrow = (force: number): number => (force > 0 ? Math.min(56, 14 + 1.2 * Math.sqrt(force)) : 0);

/** Cut across the tube between the two plates: bare on the left, doubled on the right. */
export function ClampTorqueFigure({ values, result, show }: FigureProps<ClampValues, ClampResult>) {
  const { outerDiameter: D, wall, sleeveWall } = values;
  const half = D / 2;
  const apart = D * 1.5;
  const width = D * 1.15;
  const cut = (x: number, sleeve: number, text: string, force: number) => (
    <g>
      {[half, -half - PLATE].map((y) => (
        <Outline key={y} rect={{ x: x - width / 2, y, width, height: PLATE }} fill="shade" />
      ))}
      <Outline circle={{ x, y: 0, radius: half }} fill="hatch" />
      {sleeve > 0 && <Outline circle={{ x, y: 0, radius: half - wall }} fill="shade" />}
      <Outline circle={{ x, y: 0, radius: half - wall - sleeve }} fill="paper" />
      <CentreLine from={{ x, y: -half - PLATE - 0.002 }} to={{ x, y: half + PLATE + 0.002 }} />
      <ForceArrow
        at={{ x, y: half + PLATE }}
        direction={{ x: 0, y: -1 }}
        length={arrow(force)}
        label={show(force, 'force')}
        pushes
      />
      <ForceArrow at={{ x, y: -half - PLATE }} direction={{ x: 0, y: 1 }} length={arrow(force)} pushes />
      <Label at={{ x, y: 0 }} text={text} tone="quiet" />
    </g>
  );
  return (
    <Drawing
      title="Tube between the plates, cut across"
      description={`The bare wall of ${show(wall, 'length')} cracks at ${show(result.bare.force, 'force')}, the doubled one of ${show(wall + sleeveWall, 'length')} at ${show(result.doubled.force, 'force')}.`}
      bounds={{ left: -apart / 2 - width / 2, right: apart / 2 + width / 2, bottom: -half - PLATE, top: half + PLATE }}
      height={290}
      margin={{ left: 50, right: 40, top: 80, bottom: 66 }}
      show={show}
    >
      {cut(-apart / 2, 0, 'bare', result.bare.force)}
      {cut(apart / 2, sleeveWall, sleeveWall > 0 ? 'doubled' : 'no sleeve', result.doubled.force)}
      <DimensionLine
        from={{ x: -apart / 2 - width / 2, y: -half }}
        to={{ x: -apart / 2 - width / 2, y: half }}
        offset={24}
        label={show(D, 'length')}
      />
    </Drawing>
  );
}
