import { type Paper, type Point, usePaper } from './paper.ts';

export type Tone = 'ink' | 'quiet' | 'accent' | 'good' | 'warn' | 'bad';
export type Fill = 'none' | 'paper' | 'shade' | 'hatch';

/** One of: a polygon or polyline, a rectangle by its lower left corner, a circle by its centre. World units. */
export interface Shape {
  points?: readonly Point[];
  /** Leaves a polyline open. */
  open?: boolean;
  rect?: { x: number; y: number; width: number; height: number; cornerRadius?: number };
  circle?: { x: number; y: number; radius: number };
  tone?: Tone;
}

interface OutlineProps extends Shape {
  fill?: Fill;
  line?: 'thick' | 'thin' | 'hidden' | 'centre';
}

function polyline(points: readonly Point[], paper: Paper): string {
  return points.map((point, i) => `${i === 0 ? 'M' : 'L'}${paper.x(point.x)} ${paper.y(point.y)}`).join('');
}

/** The visible edge of a part: thick. */
export function Outline({ points, open, rect, circle, tone = 'ink', fill = 'none', line = 'thick' }: OutlineProps) {
  const paper = usePaper();
  const look = {
    class: `${line} tone-${tone} fill-${fill}`,
    ...(fill === 'hatch' ? { fill: `url(#${paper.hatch})` } : {}),
  };
  if (circle) return <circle cx={paper.x(circle.x)} cy={paper.y(circle.y)} r={paper.length(circle.radius)} {...look} />;
  if (rect) {
    const { x, y, width, height, cornerRadius = 0 } = rect;
    return (
      <rect
        x={paper.x(x)}
        y={paper.y(y + height)}
        width={paper.length(width)}
        height={paper.length(height)}
        rx={paper.length(cornerRadius)}
        {...look}
      />
    );
  }
  return <path d={polyline(points ?? [], paper) + (open ? '' : 'Z')} {...look} />;
}

/** An edge that lies behind or inside: dashed. */
export function HiddenLine(shape: Shape) {
  return <Outline {...shape} line="hidden" />;
}

interface LineProps {
  from: Point;
  to: Point;
  tone?: Tone;
}

/** A thin straight line. */
export function Line({ from, to, tone }: LineProps) {
  return <Outline points={[from, to]} open line="thin" tone={tone} />;
}

/** An axis: dash-dot, drawn a little beyond both ends. */
export function CentreLine({ from, to, tone = 'ink' }: LineProps) {
  const paper = usePaper();
  const [a, b] = [paper.point(from), paper.point(to)];
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const beyond = { x: (8 * (b.x - a.x)) / length, y: (8 * (b.y - a.y)) / length };
  return (
    <path
      class={`centre tone-${tone} fill-none`}
      d={`M${a.x - beyond.x} ${a.y - beyond.y}L${b.x + beyond.x} ${b.y + beyond.y}`}
    />
  );
}
