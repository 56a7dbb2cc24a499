import { createContext } from 'preact';
import { useContext } from 'preact/hooks';

/** World: metres, y upwards. */
export interface Point {
  x: number;
  y: number;
}

/** World: metres, y upwards. */
export interface Bounds {
  left: number;
  right: number;
  bottom: number;
  top: number;
}

export interface Margin {
  left: number;
  right: number;
  bottom: number;
  top: number;
}

/** From the world to the paper. */
export interface Paper {
  /** Paper units for a metre. */
  scale: number;
  /** In paper units. */
  width: number;
  height: number;
  /** Millimetres of a paper unit at full size; none where the drawing magnifies so much that its labels would not fit. */
  unit?: number;
  x: (worldX: number) => number;
  y: (worldY: number) => number;
  length: (world: number) => number;
  point: (world: Point) => Point;
  /** Id of the hatch pattern of this drawing. */
  hatch: string;
}

/** Scales between which a drawing jumps: ten steps a decade, so that a small change of a value leaves the scale alone. */
const PREFERRED = [1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8];

function preferredBelow(scale: number): number {
  const decade = 10 ** Math.floor(Math.log10(scale));
  return decade * (PREFERRED.findLast((step) => step * decade <= scale) ?? 1);
}

/**
 * Millimetres of a paper unit where a metre of frame is a metre on paper. At 0.25, text is 3.5 mm and lines are 0.5 and
 * 0.25 mm, as in technical drawings, however large the frame. A drawing that magnifies keeps its proportions as long as
 * its text stays legible.
 */
const UNIT = { usual: 0.25, least: 0.18, refused: 0.1 };

function fullSizeUnit(scale: number): number | undefined {
  const own = 1000 / scale;
  return own < UNIT.refused ? undefined : Math.min(UNIT.usual, Math.max(UNIT.least, own));
}

interface Sheet {
  width: number;
  height: number;
  margin: Margin;
  hatch: string;
  /** Draws a millimetre as a millimetre, on as much paper as that takes, where the drawing lends itself to it. */
  fullSize?: boolean;
}

/** Fits bounds into a paper of `width` by `height`, in the middle. */
export function fit(bounds: Bounds, { width, height, margin, hatch, fullSize }: Sheet): Paper {
  const extent = { x: Math.max(bounds.right - bounds.left, 1e-9), y: Math.max(bounds.top - bounds.bottom, 1e-9) };
  const beside = { x: margin.left + margin.right, y: margin.top + margin.bottom };
  let scale = preferredBelow(Math.min((width - beside.x) / extent.x, (height - beside.y) / extent.y));
  const unit = fullSizeUnit(scale);
  if (fullSize && unit) {
    scale = 1000 / unit;
    [width, height] = [Math.ceil(extent.x * scale + beside.x), Math.ceil(extent.y * scale + beside.y)];
  }
  // On screen a hundredth of a unit is below a pixel; at full size it would be microns of frame.
  const steps = fullSize ? 1e4 : 100;
  const short = (value: number) => Math.round(value * steps) / steps;
  const middle = { x: margin.left + (width - beside.x) / 2, y: margin.top + (height - beside.y) / 2 };
  const x = (worldX: number) => short(middle.x + (worldX - (bounds.left + bounds.right) / 2) * scale);
  const y = (worldY: number) => short(middle.y - (worldY - (bounds.bottom + bounds.top) / 2) * scale);
  const length = (world: number) => short(world * scale);
  return { scale, width, height, unit, hatch, x, y, length, point: (p) => ({ x: x(p.x), y: y(p.y) }) };
}

/** The smallest bounds around points. */
export function boundsOf(points: readonly Point[]): Bounds {
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** Whether drawings are drawn at full size, to be saved. */
export const FullSize = createContext(false);

export const PaperContext = createContext<Paper | undefined>(undefined);

/** The paper of the drawing that this part stands in. */
export function usePaper(): Paper {
  const paper = useContext(PaperContext);
  if (!paper) throw new Error('This part belongs into a <Drawing>.');
  return paper;
}
