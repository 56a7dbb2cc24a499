import type { FigureProps } from '~/island/declaration.ts';
import { DimensionLine, Drawing, ForceArrow, HiddenLine, Label, Line, Outline } from '~/island/drawing/index.ts';
import { drawnFactor } from '../drawn-factor.ts';
import type { SpanResult, SpanValues } from './index.ts';

/** Drawn deflection is at most this share of the span. */
const DRAWN = 0.1;

/** A cut through the middle of the plate, across its shorter span. */
export function SpanFigure({ values, result, show }: FigureProps<SpanValues, SpanResult>) {
  const { thickness, edge, load } = values;
  const half = result.span / 2;
  const factor = drawnFactor(result.deflection, DRAWN * result.span);
  const sag = factor * result.deflection;
  const fixed = edge === 'fixed';
  // A shape with the right ends: level where fixed, sloping on a support.
  const shape = (s: number) => (fixed ? (1 - s ** 2) ** 2 : 1 - 1.2 * s ** 2 + 0.2 * s ** 4);
  const along = Array.from({ length: 33 }, (_, i) => i / 16 - 1);
  const line = (dy: number) => along.map((s) => ({ x: s * half, y: dy - sag * shape(s) }));
  const stub = 0.06 * result.span;
  return (
    <Drawing
      title="The plate in section"
      description={`Span ${show(result.span, 'length')}, plate ${show(thickness, 'length')}, it bends ${show(result.deflection, 'length', 2)} in the middle, drawn ${factor} times.`}
      bounds={{ left: -half - stub, right: half + stub, bottom: -sag - thickness, top: thickness }}
      height={220}
      margin={{ left: 30, right: 30, top: 62, bottom: 56 }}
      show={show}
      exaggerated={factor !== 1}
    >
      <HiddenLine rect={{ x: -half, y: 0, width: 2 * half, height: thickness }} tone="quiet" />
      <Outline points={[...line(thickness), ...line(0).reverse()]} fill="shade" />
      {([-1, 1] as const).map((side) =>
        fixed ? (
          <Outline
            key={side}
            rect={{ x: side < 0 ? -half - stub : half, y: -stub / 2, width: stub, height: stub + thickness }}
            fill="hatch"
          />
        ) : (
          <Outline
            key={side}
            points={[
              { x: side * half, y: 0 },
              { x: side * half - stub / 3, y: -stub / 2 },
              { x: side * half + stub / 3, y: -stub / 2 },
            ]}
          />
        ),
      )}
      {load === 'spot' ? (
        <ForceArrow
          at={{ x: 0, y: thickness - sag }}
          direction={{ x: 0, y: -1 }}
          length={40}
          pushes
          label={show(values.force, 'force')}
        />
      ) : (
        <>
          <Line from={{ x: -half, y: thickness + stub }} to={{ x: half, y: thickness + stub }} tone="accent" />
          {[-0.8, -0.4, 0, 0.4, 0.8].map((s) => (
            <ForceArrow
              key={s}
              at={{ x: s * half, y: thickness - sag * shape(s) }}
              direction={{ x: 0, y: -1 }}
              length={18}
              pushes
            />
          ))}
          <Label at={{ x: 0, y: thickness + stub }} dy={12} text={show(values.force, 'force')} tone="accent" />
        </>
      )}
      <DimensionLine
        from={{ x: -half, y: -sag - thickness }}
        to={{ x: half, y: -sag - thickness }}
        offset={-22}
        label={show(result.span, 'length')}
      />
      <Label
        at={{ x: 0, y: -sag - thickness }}
        dy={-40}
        text={factor === 1 ? 'to scale' : `bending drawn ${factor} times`}
        tone="quiet"
      />
    </Drawing>
  );
}
