import type { FigureProps } from '~/island/declaration.ts';
import { CentreLine, DimensionLine, Drawing, ForceArrow, HiddenLine, Label, Outline } from '~/island/drawing/index.ts';
import type { RootResult, RootValues } from './compute.ts';

/** Paper length of an arrow: the square root keeps a thrust visible beside a crash. */
const arrow = (force: number): number => (force > 0 ? Math.min(64, 14 + 1.6 * Math.sqrt(force)) : 0);
const UP = { x: 0, y: 1 };
const DOWN = { x: 0, y: -1 };

/** Plan view of the root: tube, sleeve, both holes, and the forces of the screws on the tube. */
export function TwoScrewRootFigure({ values, result, show }: FigureProps<RootValues, RootResult>) {
  const { outerDiameter: D, wall, sleeveWall, screwSpacing: s, endDistance: e, holeDiameter, armLength } = values;
  const { inner, outer } = result.root.horizontal;
  const end = -s - e;
  const cut = Math.min(armLength, 0.035);
  const half = D / 2;
  const bore = half - wall;
  const edge = (y: number) => (
    <HiddenLine
      points={[
        { x: end, y },
        { x: cut, y },
      ]}
      open
    />
  );
  const sleeve = bore - sleeveWall;
  return (
    <Drawing
      title="Arm root from above"
      description={`Tube ${show(D, 'length')} across, screws ${show(s, 'length')} apart. The inner screw pushes with ${show(inner, 'force')}, the outer one the other way with ${show(outer, 'force')}.`}
      bounds={{ left: end, right: cut + 0.006, bottom: -half, top: half }}
      height={290}
      margin={{ left: 40, right: 66, top: 74, bottom: 108 }}
      show={show}
    >
      <Outline
        points={[
          { x: cut, y: half },
          { x: end, y: half },
          { x: end, y: -half },
          { x: cut, y: -half },
        ]}
        open
        fill="shade"
      />
      {edge(bore)}
      {edge(-bore)}
      {sleeveWall > 0 && (
        <>
          <HiddenLine
            points={[
              { x: Math.min(cut, holeDiameter * 2), y: bore },
              { x: Math.min(cut, holeDiameter * 2), y: -bore },
            ]}
            open
          />
          <HiddenLine
            points={[
              { x: end, y: sleeve },
              { x: Math.min(cut, holeDiameter * 2), y: sleeve },
            ]}
            open
          />
          <HiddenLine
            points={[
              { x: end, y: -sleeve },
              { x: Math.min(cut, holeDiameter * 2), y: -sleeve },
            ]}
            open
          />
        </>
      )}
      <CentreLine from={{ x: end - 0.002, y: 0 }} to={{ x: cut + 0.004, y: 0 }} />
      {[0, -s].map((x) => (
        <g key={x}>
          <Outline circle={{ x, y: 0, radius: holeDiameter / 2 }} fill="paper" />
          <Outline circle={{ x, y: 0, radius: result.screwDiameter / 2 }} line="thin" />
        </g>
      ))}
      <ForceArrow at={{ x: 0, y: 0 }} direction={DOWN} length={arrow(outer)} label={show(outer, 'force')} />
      <ForceArrow at={{ x: -s, y: 0 }} direction={UP} length={arrow(inner)} label={show(inner, 'force')} />
      <ForceArrow
        at={{ x: cut, y: 0 }}
        direction={UP}
        length={arrow(values.horizontalForce)}
        label={show(values.horizontalForce, 'force')}
      />
      <Label
        at={{ x: cut, y: -half }}
        dx={0}
        dy={-16}
        text={`motor at ${show(armLength, 'length')}`}
        align="middle"
        tone="quiet"
      />
      <DimensionLine from={{ x: end, y: -half }} to={{ x: -s, y: -half }} offset={-78} label={show(e, 'length')} />
      <DimensionLine from={{ x: -s, y: -half }} to={{ x: 0, y: -half }} offset={-78} label={show(s, 'length')} />
      <DimensionLine from={{ x: end, y: -half }} to={{ x: end, y: half }} offset={22} label={show(D, 'length')} />
    </Drawing>
  );
}
