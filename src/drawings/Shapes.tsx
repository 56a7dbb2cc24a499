import type { DrawingLayer, FlatShape } from '@frameworthy/shared/outline';
import { Outline, type Fill, type Tone } from '~/island/drawing/index.ts';

/** How the shapes of a layer are drawn. */
export interface Look {
  line: 'thick' | 'thin' | 'hidden' | 'centre';
  fill?: Fill;
  tone?: Tone;
  /** Both diagonals: room that is kept for a part. */
  crossed?: boolean;
}

/** Layers are told apart by kind of line and filling; colour repeats it. */
export const LOOKS: Readonly<Record<DrawingLayer, Look>> = {
  plate: { line: 'thick', fill: 'shade' },
  arm: { line: 'thick', fill: 'paper' },
  propeller: { line: 'centre', tone: 'quiet' },
  hardware: { line: 'thin', fill: 'paper' },
  electronics: { line: 'thin', fill: 'hatch' },
  battery: { line: 'thin', tone: 'accent', crossed: true },
  hidden: { line: 'hidden', tone: 'quiet' },
};

function Part({ shape, line, fill, tone, crossed }: { shape: FlatShape } & Look) {
  const look = { line, ...(fill ? { fill } : {}), ...(tone ? { tone } : {}) };
  if (shape.kind === 'circle') return <Outline circle={{ ...shape.centre, radius: shape.radius }} {...look} />;
  if (shape.kind === 'line') return <Outline points={[shape.from, shape.to]} open {...look} />;
  const [a, b, c, d] = shape.points;
  return (
    <>
      <Outline points={shape.points} {...look} />
      {crossed && a && b && c && d && (
        <>
          <Outline points={[a, c]} open {...look} />
          <Outline points={[b, d]} open {...look} />
        </>
      )}
    </>
  );
}

/** Shapes of a view, each in a group that names its layer and part. */
export function Shapes({
  shapes,
  look,
}: {
  shapes: readonly FlatShape[];
  /** In place of that of the layer. */
  look?: (layer: DrawingLayer) => Look;
}) {
  return (
    <>
      {shapes.map((shape, i) => (
        <g key={i} data-layer={shape.layer} data-name={shape.name}>
          <Part shape={shape} {...(look ?? ((layer) => LOOKS[layer]))(shape.layer)} />
        </g>
      ))}
    </>
  );
}
