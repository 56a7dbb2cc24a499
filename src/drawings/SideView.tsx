import { extentOf, sideDimensions, sideShapes, type OutlineDimension } from '@frameworthy/shared/outline';
import type { Show } from '~/island/declaration.ts';
import { DimensionLine, Drawing, Label, Leader, usePaper } from '~/island/drawing/index.ts';
import { keyOf } from './key-of.ts';
import { keyHeight, LineKey } from './LineKey.tsx';
import type { ViewProps } from './PlanView.tsx';
import { Shapes } from './Shapes.tsx';

interface PlacedProps {
  dimensions: readonly OutlineDimension[];
  /** Underside of the top plate [m]. */
  top: number;
  /** Of everything [m]. */
  bottom: number;
  show: Show;
}

/** Heights as dimension lines; thicknesses at leaders, that of the top plate over it, others under everything. */
function Placed({ dimensions, top, bottom, show }: PlacedProps) {
  const paper = usePaper();
  return (
    <>
      {dimensions.map(({ name, from, to, value }) => {
        const label = show(value, 'length');
        if (!name.startsWith('thickness'))
          return (
            <DimensionLine key={name} from={from} to={to} offset={name === 'total height' ? 16 : -18} label={label} />
          );
        const middle = { x: from.x, y: (from.y + to.y) / 2 };
        const dy = from.y === top ? 16 : -(paper.length(middle.y - bottom) + 18);
        return <Leader key={name} at={middle} dx={from.x < 0 ? -10 : 10} dy={dy} text={`t ${label}`} />;
      })}
    </>
  );
}

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
      height={208 + keyHeight(key.length)}
      margin={{ left: 40, right: 28, top: 26, bottom: keyHeight(key.length) + 40 }}
      show={show}
    >
      <Shapes shapes={shapes} />
      <Placed dimensions={dimensions} top={outline.plates.at(-1)?.z ?? 0} bottom={bounds.bottom} show={show} />
      <Label at={{ x: bounds.right, y: bounds.top }} dy={10} align="end" text="front" tone="quiet" />
      <LineKey entries={key} />
    </Drawing>
  );
}
