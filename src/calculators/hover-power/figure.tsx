import type { FigureProps } from '~/island/declaration.ts';
import { CentreLine, DimensionLine, Drawing, ForceArrow, Label, Outline } from '~/island/drawing/index.ts';
import type { HoverResult, HoverValues } from './compute.ts';

/** Radius of the stream tube at a height over the disc: the air on the axis of a vortex tube speeds up this way. */
const tubeRadius = (radius: number, height: number): number =>
  radius / Math.sqrt(1 - height / Math.hypot(height, radius));

/** One rotor from the side: the air it draws in and the wake that contracts below it. Widths to scale. */
export function HoverFigure({ values, result, show }: FigureProps<HoverValues, HoverResult>) {
  const { rotor, reserve } = result;
  const radius = values.propellerDiameter / 2;
  const [above, below] = [0.8 * radius, -2.2 * radius];
  const heights = Array.from({ length: 25 }, (_, i) => above + ((below - above) * i) / 24);
  const side = (sign: 1 | -1) => heights.map((y) => ({ x: sign * tubeRadius(radius, y), y }));
  const wide = tubeRadius(radius, above);
  const wake = tubeRadius(radius, below);
  return (
    <Drawing
      title="Air through one rotor in hover"
      description={`Thrust ${show(reserve.hoverThrust, 'force')}, air at ${show(rotor.inducedSpeed, 'speed')} through the disc and at twice that far below.`}
      bounds={{ left: -wide, right: wide, bottom: below, top: above }}
      height={330}
      margin={{ left: 40, right: 40, top: 56, bottom: 40 }}
      show={show}
    >
      <CentreLine from={{ x: 0, y: below }} to={{ x: 0, y: above }} tone="quiet" />
      <Outline points={side(1)} open line="thin" />
      <Outline points={side(-1)} open line="thin" />
      <Outline rect={{ x: -radius, y: -radius * 0.02, width: 2 * radius, height: radius * 0.04 }} fill="shade" />
      <ForceArrow
        at={{ x: 0, y: 0 }}
        direction={{ x: 0, y: 1 }}
        length={54}
        label={show(reserve.hoverThrust, 'force')}
      />
      <ForceArrow at={{ x: radius * 0.5, y: -radius * 0.1 }} direction={{ x: 0, y: -1 }} length={24} tone="quiet" />
      <ForceArrow
        at={{ x: wake * 0.5, y: below + radius * 0.85 }}
        direction={{ x: 0, y: -1 }}
        length={48}
        tone="quiet"
      />
      <Label
        at={{ x: radius, y: 0 }}
        dx={10}
        dy={-14}
        text={`air ${show(rotor.inducedSpeed, 'speed')}`}
        align="start"
      />
      <Label
        at={{ x: wake, y: below + radius * 0.5 }}
        dx={10}
        dy={0}
        text={`${show(2 * rotor.inducedSpeed, 'speed')}`}
        align="start"
      />
      <DimensionLine
        from={{ x: -radius, y: 0 }}
        to={{ x: radius, y: 0 }}
        offset={-26}
        label={show(values.propellerDiameter, 'length')}
      />
    </Drawing>
  );
}
