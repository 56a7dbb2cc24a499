import { extentOf, sideDimensions, sideShapes } from '@frameworthy/shared/outline';
import { DimensionLine, Drawing, Label } from '~/island/drawing/index.ts';
import { keyOf } from './key-of.ts';
import { keyHeight, LineKey } from './LineKey.tsx';
import type { ViewProps } from './PlanView.tsx';
import { Shapes } from './Shapes.tsx';

/** The frame from the right, front to the right, to scale, with its heights; `keyed` with a key of its lines. */
export function SideView({ outline, show, keyed = true }: ViewProps & { keyed?: boolean }) {
  const shapes = sideShapes(outline);
  const dimensions = sideDimensions(outline);
  const bounds = extentOf(shapes);
  const key = keyed ? keyOf(shapes) : [];
  return (
    <Drawing
      title={`${outline.name}, from the right`}
      description={dimensions.map(({ name, value }) => `${name} ${show(value, 'length')}`).join(', ')}
      bounds={bounds}
      height={190 + keyHeight(key.length)}
      margin={{ left: 40, right: 28, top: 26, bottom: keyHeight(key.length) + 22 }}
      show={show}
    >
      <Shapes shapes={shapes} />
      {dimensions.map(({ name, from, to, value }) => (
        <DimensionLine
          key={name}
          from={from}
          to={to}
          offset={name === 'total height' ? 16 : -18}
          label={show(value, 'length')}
        />
      ))}
      <Label at={{ x: bounds.right, y: bounds.top }} dy={10} align="end" text="front" tone="quiet" />
      <LineKey entries={key} />
    </Drawing>
  );
}
