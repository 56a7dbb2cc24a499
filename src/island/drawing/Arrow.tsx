import { type Point, usePaper } from './paper.ts';
import { PaperText } from './Label.tsx';
import type { Tone } from './Outline.tsx';

interface ForceProps {
  /** The point on which the force acts. */
  at: Point;
  /** World direction, y upwards; its size does not matter. */
  direction: Point;
  /** Paper units. Make it follow the size of the force, say 16 to 60. */
  length?: number;
  label?: string;
  /** The head ends at the point instead of starting there. */
  pushes?: boolean;
  tone?: Tone;
}

/** A force: a straight arrow with its label at the free end. */
export function ForceArrow({ at, direction, length = 40, label, pushes = false, tone = 'accent' }: ForceProps) {
  const point = usePaper().point(at);
  const size = Math.hypot(direction.x, direction.y);
  if (size === 0 || length <= 0) return null;
  const unit = { x: direction.x / size, y: -direction.y / size };
  const on = (s: number, t = 0) => ({ x: point.x + unit.x * s - unit.y * t, y: point.y + unit.y * s + unit.x * t });
  const text = ({ x, y }: Point) => `${x.toFixed(1)} ${y.toFixed(1)}`;
  const [tail, tip] = pushes ? [-length, 0] : [0, length];
  const head = Math.min(9, length * 0.6);
  const free = on(pushes ? -length - 9 : length + 9);
  return (
    <g>
      <path class={`arrow tone-${tone} fill-none`} d={`M${text(on(tail))}L${text(on(tip - head / 2))}`} />
      <path
        class={`dot tone-${tone}`}
        d={`M${text(on(tip))}L${text(on(tip - head, head * 0.4))}L${text(on(tip - head, -head * 0.4))}Z`}
      />
      {label && <PaperText at={free} text={label} tone={tone} align={beside(free.x - point.x)} />}
    </g>
  );
}

function beside(dx: number): 'start' | 'middle' | 'end' {
  return Math.abs(dx) < 10 ? 'middle' : dx > 0 ? 'start' : 'end';
}
