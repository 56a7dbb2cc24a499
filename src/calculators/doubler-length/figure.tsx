import { CentreLine, DimensionLine, Drawing, ForceArrow, Hatch, Label, Outline } from '~/island/drawing/index.ts';
import type { FigureProps } from '~/island/declaration.ts';
import type { DoublerValues } from './inputs.ts';
import type { DoublerResult } from './result.ts';

/** The tube cut open along its axis, with the sleeve in its root. */
export function Figure({ values, result, show }: FigureProps<DoublerValues, DoublerResult>) {
  const {
    tubeOutside,
    tubeInside,
    sleeveOutside,
    sleeveWall,
    screwSpacing,
    edgeDistance,
    armLength,
    holeDiameter,
    length,
    taper,
  } = values;
  const left = -(screwSpacing + edgeDistance);
  const outer = tubeOutside / 2;
  const needed = left + result.required.length;
  const enough = result.lengthMargin >= 0;
  const wall = (side: 1 | -1) => ({
    x: left,
    y: side > 0 ? tubeInside / 2 : -outer,
    width: armLength - left,
    height: outer - tubeInside / 2,
  });
  // The taper opens the bore: its outer face stays on the bond.
  const sleeve = (side: 1 | -1) =>
    [
      { x: left, y: sleeveOutside / 2 },
      { x: result.end, y: sleeveOutside / 2 },
      { x: result.end - taper, y: sleeveOutside / 2 - sleeveWall },
      { x: left, y: sleeveOutside / 2 - sleeveWall },
    ].map(({ x, y }) => ({ x, y: side * y }));
  return (
    <Drawing
      title="Tube arm with a sleeve in its root, cut along the axis"
      description={`The sleeve runs ${show(length, 'length')} from the inner end; ${show(result.required.length, 'length')} are required. Screws ${show(screwSpacing, 'length')} apart, ${show(armLength, 'length')} to the motor.`}
      bounds={{ left, right: Math.max(armLength, needed), bottom: -outer, top: outer }}
      height={216}
      margin={{ left: 24, right: 26, top: 78, bottom: 66 }}
      show={show}
    >
      {([1, -1] as const).map((side) => (
        <g key={side}>
          <Hatch rect={wall(side)} />
          <Outline points={sleeve(side)} fill="shade" tone="accent" />
        </g>
      ))}
      {[0, -screwSpacing].map((x) => (
        <g key={x}>
          <Outline
            rect={{ x: x - holeDiameter / 2, y: -outer, width: holeDiameter, height: tubeOutside }}
            fill="paper"
            line="thin"
          />
          <CentreLine from={{ x, y: -outer }} to={{ x, y: outer }} />
        </g>
      ))}
      <CentreLine from={{ x: left, y: 0 }} to={{ x: armLength, y: 0 }} />
      <CentreLine from={{ x: armLength, y: -outer }} to={{ x: armLength, y: outer }} />
      <Label at={{ x: armLength, y: -outer }} dx={4} dy={-18} align="end" text="motor axis" tone="quiet" />
      <ForceArrow
        at={{ x: armLength, y: outer }}
        direction={{ x: 0, y: -1 }}
        length={30}
        pushes
        label={show(values.tipForce, 'force')}
      />
      <DimensionLine
        from={{ x: -screwSpacing, y: outer }}
        to={{ x: 0, y: outer }}
        offset={24}
        label={show(screwSpacing, 'length')}
      />
      <DimensionLine
        from={{ x: 0, y: outer }}
        to={{ x: armLength, y: outer }}
        offset={24}
        label={show(armLength, 'length')}
      />
      <DimensionLine
        from={{ x: left, y: outer }}
        to={{ x: result.end, y: outer }}
        offset={54}
        label={`sleeve ${show(length, 'length')}`}
        tone="accent"
      />
      <DimensionLine
        from={{ x: left, y: -outer }}
        to={{ x: needed, y: -outer }}
        offset={-34}
        label={`required ${show(result.required.length, 'length')}`}
        tone={enough ? 'good' : 'bad'}
      />
    </Drawing>
  );
}
