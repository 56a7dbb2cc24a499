import type { ComponentChildren } from 'preact';
import { useContext } from 'preact/hooks';
import type { Show } from '../declaration.ts';
import { type Bounds, fit, FullSize, type Margin, PaperContext } from './paper.ts';
import { HatchPattern } from './Hatch.tsx';
import { ScaleBar } from './ScaleBar.tsx';

interface Props {
  title: string;
  /** What is to be seen, with its values, for readers who do not see it. */
  description?: string;
  bounds: Bounds;
  width?: number;
  height?: number;
  margin?: number | Partial<Margin>;
  /** Draws a scale bar in the reader's units. */
  show?: Show;
  /** Something in it is drawn larger than it is, so that it is of no use at full size. */
  exaggerated?: boolean;
  /** Plain data that it is drawn from, for what a saved sheet says beside the lines. */
  source?: object;
  children: ComponentChildren;
}

const MARGIN = 40;

function sides(margin: number | Partial<Margin>): Margin {
  const all = typeof margin === 'number' ? margin : MARGIN;
  return { left: all, right: all, top: all, bottom: all, ...(typeof margin === 'number' ? {} : margin) };
}

/** A drawing to scale. See `index.ts` for how to use it. */
export function Drawing({
  title,
  description,
  bounds,
  width = 440,
  height = 240,
  margin = MARGIN,
  show,
  exaggerated,
  source,
  children,
}: Props) {
  const fullSize = useContext(FullSize);
  // From the title and not counted up: the same on the server and in the browser.
  const hatch = `hatch-${title.toLowerCase().replace(/[^a-z0-9]+/g, '-')}`;
  const paper = fit(bounds, { width, height, margin: sides(margin), hatch, fullSize });
  return (
    <svg
      class="drawing"
      data-scale={show && paper.scale}
      data-unit={show && !exaggerated ? paper.unit : undefined}
      data-source={fullSize && source ? JSON.stringify(source) : undefined}
      viewBox={`0 0 ${paper.width} ${paper.height}`}
      role="img"
      aria-label={description ? `${title}. ${description}` : title}
    >
      <HatchPattern id={hatch} />
      <PaperContext.Provider value={paper}>
        {children}
        {show && !fullSize && <ScaleBar show={show} right={width - 8} bottom={height - 8} />}
      </PaperContext.Provider>
    </svg>
  );
}
