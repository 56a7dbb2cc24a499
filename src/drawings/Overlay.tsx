import {
  extentOf,
  overallSize,
  planShapes,
  sideShapes,
  type DrawingLayer,
  type FrameOutline,
} from '@frameworthy/shared/outline';
import type { Show } from '~/island/declaration.ts';
import { CentreLine, Drawing } from '~/island/drawing/index.ts';
import { keyHeight, LineKey } from './LineKey.tsx';
import { type Look, Shapes } from './Shapes.tsx';

interface Props {
  /** Drawn in full lines. */
  before: FrameOutline;
  /** Drawn dashed on top. */
  after: FrameOutline;
  view: 'plan' | 'side';
  show: Show;
}

const STRUCTURE: readonly DrawingLayer[] = ['plate', 'arm'];
const BEFORE: Look = { line: 'thick' };
const AFTER: Look = { line: 'hidden', tone: 'accent' };

/** Two frames over each other, one in full lines and one dashed, on one scale and one origin. */
export function Overlay({ before, after, view, show }: Props) {
  const [shapes, seen, height] =
    view === 'plan' ? [planShapes, 'from above', 430] : [sideShapes, 'from the right', 190];
  // Hidden edges of two frames would hide both.
  const [old, now] = [before, after].map((outline) => shapes(outline).filter(({ layer }) => layer !== 'hidden')) as [
    ReturnType<typeof planShapes>,
    ReturnType<typeof planShapes>,
  ];
  const bounds = extentOf([...old, ...now]);
  const sizes = [before, after].map((outline) => ({ name: outline.name, ...overallSize(outline) }));
  return (
    <Drawing
      title={`${before.name} and ${after.name}, ${seen}`}
      description={sizes
        .map(
          (size) =>
            `${size.name}: ${show(size.length, 'length')} long, ${show(size.width, 'length')} wide, ${show(size.height, 'length')} high`,
        )
        .join('; ')}
      bounds={bounds}
      height={height + keyHeight(2, 1)}
      margin={{ left: 14, right: 14, top: 18, bottom: keyHeight(2, 1) + 22 }}
      show={show}
    >
      {view === 'plan' && <CentreLine from={{ x: 0, y: bounds.bottom }} to={{ x: 0, y: bounds.top }} tone="quiet" />}
      <Shapes shapes={old} look={(layer) => (STRUCTURE.includes(layer) ? BEFORE : { line: 'thin' })} />
      <Shapes shapes={now} look={() => AFTER} />
      <LineKey
        columns={1}
        entries={[
          { look: BEFORE, text: `${before.name}, full lines` },
          { look: AFTER, text: `${after.name}, dashed` },
        ]}
      />
    </Drawing>
  );
}
