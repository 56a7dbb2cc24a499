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

const short = (value: number) => Math.round(value * 100) / 100;

/** Fits bounds into a paper of `width` by `height`, in the middle. */
export function fit(bounds: Bounds, size: { width: number; height: number; margin: Margin; hatch: string }): Paper {
  const { width, height, margin, hatch } = size;
  const room = { x: width - margin.left - margin.right, y: height - margin.top - margin.bottom };
  const extent = { x: Math.max(bounds.right - bounds.left, 1e-9), y: Math.max(bounds.top - bounds.bottom, 1e-9) };
  const scale = preferredBelow(Math.min(room.x / extent.x, room.y / extent.y));
  const middle = { x: margin.left + room.x / 2, y: margin.top + room.y / 2 };
  const x = (worldX: number) => short(middle.x + (worldX - (bounds.left + bounds.right) / 2) * scale);
  const y = (worldY: number) => short(middle.y - (worldY - (bounds.bottom + bounds.top) / 2) * scale);
  return { scale, hatch, x, y, length: (world) => short(world * scale), point: (p) => ({ x: x(p.x), y: y(p.y) }) };
}

/** The smallest bounds around points. */
export function boundsOf(points: readonly Point[]): Bounds {
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

export const PaperContext = createContext<Paper | undefined>(undefined);

/** The paper of the drawing that this part stands in. */
export function usePaper(): Paper {
  const paper = useContext(PaperContext);
  if (!paper) throw new Error('This part belongs into a <Drawing>.');
  return paper;
}
