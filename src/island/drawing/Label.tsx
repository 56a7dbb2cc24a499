import { type Point, usePaper } from './paper.ts';
import type { Tone } from './Outline.tsx';

interface TextProps {
  at: Point;
  text: string;
  tone?: Tone;
  align?: 'start' | 'middle' | 'end';
  /** Degrees, clockwise. */
  turn?: number;
}

/** Text on the paper at a paper point, with a halo so that it can be read over lines. */
export function PaperText({ at, text, tone = 'ink', align = 'middle', turn = 0 }: TextProps) {
  return (
    <text
      class={`label tone-${tone}`}
      x={at.x}
      y={at.y}
      text-anchor={align}
      dominant-baseline="central"
      transform={turn ? `rotate(${turn} ${at.x} ${at.y})` : undefined}
    >
      {text}
    </text>
  );
}

interface LabelProps extends TextProps {
  /** Paper units, to the right and upwards. */
  dx?: number;
  dy?: number;
}

/** Text at a point of the world. */
export function Label({ at, dx = 0, dy = 0, ...rest }: LabelProps) {
  const point = usePaper().point(at);
  return <PaperText at={{ x: point.x + dx, y: point.y - dy }} {...rest} />;
}

interface LeaderProps {
  /** What is pointed at, in the world. */
  at: Point;
  /** Where the text stands from there, in paper units, to the right and upwards. */
  dx: number;
  dy: number;
  text: string;
  tone?: Tone;
}

/** A thin line from a part to its name. */
export function Leader({ at, dx, dy, text, tone = 'ink' }: LeaderProps) {
  const from = usePaper().point(at);
  const to = { x: from.x + dx, y: from.y - dy };
  const side = dx < 0 ? -1 : 1;
  return (
    <g>
      <path class={`thin tone-${tone} fill-none`} d={`M${from.x} ${from.y}L${to.x} ${to.y}h${6 * side}`} />
      <path class={`dot tone-${tone}`} d={`M${from.x - 1.8} ${from.y}a1.8 1.8 0 1 1 3.6 0a1.8 1.8 0 1 1-3.6 0`} />
      <PaperText at={{ x: to.x + 9 * side, y: to.y }} text={text} tone={tone} align={side < 0 ? 'end' : 'start'} />
    </g>
  );
}
