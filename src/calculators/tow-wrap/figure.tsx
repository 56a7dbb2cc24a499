import { CentreLine, DimensionLine, Drawing, ForceArrow, Label, Leader, Outline } from '~/island/drawing/index.ts';
import type { FigureProps } from '~/island/declaration.ts';
import type { WrapResult } from './compute.ts';
import type { WrapValues } from './inputs.ts';

/** Plate and tube cut across at a band; beside it the mount from the side with both bands. */
export function WrapFigure({ values, result, show }: FigureProps<WrapValues, WrapResult>) {
  const { path, strength } = result;
  const radius = values.outerDiameter / 2;
  const under = radius + values.bondLine;
  const top = under + values.plateThickness;
  const half = values.plateWidth / 2;
  const band = strength.thickness;
  /** The band's inner or outer line, `out` away from the parts. */
  const line = (out: number) => {
    const below = Array.from({ length: 41 }, (_, i) => path.meets + (2 * (Math.PI - path.meets) * i) / 40).map(
      (angle) => ({ x: (radius + out) * Math.sin(angle), y: (radius + out) * Math.cos(angle) }),
    );
    const low = path.onSide ? under : top;
    return [
      { x: -half, y: top + out },
      { x: half, y: top + out },
      { x: half + out, y: path.onSide ? top : low },
      { x: half + out * Math.sin(path.meets), y: low + out * Math.cos(path.meets) },
      ...below,
      { x: -half - out * Math.sin(path.meets), y: low + out * Math.cos(path.meets) },
      { x: -half - out, y: path.onSide ? top : low },
    ];
  };
  const wide = Math.max(half, radius) + band;
  const side = wide + 0.016;
  const length = values.bandSpacing + values.bandWidth + 0.004;
  const bands = [0, values.bandSpacing].map((x) => side + 0.002 + x);
  return (
    <Drawing
      title="Tow wrapped over plate and tube, from the end and from the side"
      description={`${show(values.turns, 'count')} turns in each band, ${show(band, 'length')} thick. A turn is ${show(path.length, 'length')} long. The legs on one side hold ${show(strength.side, 'force')}.`}
      bounds={{ left: -wide, right: side + length, bottom: -radius - band, top: top + 0.35 * radius }}
      height={250}
      margin={{ left: 16, right: 20, top: 44, bottom: 60 }}
      show={show}
    >
      <Outline points={line(band)} fill="hatch" tone="accent" line="thin" />
      <Outline points={line(0)} fill="paper" tone="accent" line="thin" />
      <Outline circle={{ x: 0, y: 0, radius }} fill="paper" />
      <Outline rect={{ x: -half, y: under, width: 2 * half, height: values.plateThickness }} fill="shade" />
      <Label at={{ x: 0, y: 0 }} text="tube" tone="quiet" />
      <ForceArrow
        at={{ x: half, y: path.onSide ? under : top }}
        direction={{ x: -Math.abs(Math.cos(path.meets)), y: -path.downShare }}
        length={36}
        tone="bad"
      />
      <Leader
        at={{ x: half - 0.6 * radius * Math.abs(Math.cos(path.meets)), y: under - 0.6 * radius }}
        dx={14}
        dy={-30}
        text={show(result.pull[result.worst].pull, 'force')}
        tone="bad"
      />
      <DimensionLine
        from={{ x: -half, y: top }}
        to={{ x: half, y: top }}
        offset={24}
        label={show(2 * half, 'length')}
      />

      <Outline rect={{ x: side - 0.004, y: -radius, width: length + 0.008, height: 2 * radius }} fill="none" />
      <Outline rect={{ x: side, y: under, width: length, height: values.plateThickness }} fill="shade" />
      <CentreLine from={{ x: side - 0.004, y: 0 }} to={{ x: side + length + 0.004, y: 0 }} />
      {bands.map((x) => (
        <Outline
          key={x}
          rect={{ x, y: -radius - band, width: values.bandWidth, height: top + radius + 2 * band }}
          fill="hatch"
          tone="accent"
        />
      ))}
      <DimensionLine
        from={{ x: bands[0]! + values.bandWidth / 2, y: -radius - band }}
        to={{ x: bands[1]! + values.bandWidth / 2, y: -radius - band }}
        offset={-26}
        label={show(values.bandSpacing, 'length')}
      />
    </Drawing>
  );
}
