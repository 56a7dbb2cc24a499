import { type Point, usePaper } from './paper.ts';
import { PaperText } from './Label.tsx';
import type { Tone } from './Outline.tsx';

interface Props {
  from: Point;
  to: Point;
  /** Paper units from the line `from`-`to`: positive to its left as one goes along it (above, when going right). */
  offset: number;
  label: string;
  tone?: Tone;
  /** Share of the way at which the text stands, the middle where not given. */
  textAt?: number;
}

const HEAD = 7;
/** Below this the arrowheads stand outside and point inwards, and the text beside them. */
const NARROW = 30;

/** A measured distance: extension lines, arrowheads, and the text along the line, readable from below or from the right. */
export function DimensionLine({ from, to, offset, label, tone = 'ink', textAt = 0.5 }: Props) {
  const paper = usePaper();
  const [a, b] = [paper.point(from), paper.point(to)];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (length === 0) return null;
  const along = { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
  const side = Math.sign(offset) || 1;
  const away = { x: along.y * side, y: -along.x * side };
  const distance = Math.abs(offset);
  /** A paper point: `s` along from `a`, `t` away from the measured line. */
  const at = (s: number, t: number) => ({ x: a.x + along.x * s + away.x * t, y: a.y + along.y * s + away.y * t });
  const move = (s: number, t: number) => {
    const { x, y } = at(s, t);
    return `${x.toFixed(1)} ${y.toFixed(1)}`;
  };
  const narrow = length < NARROW;
  const inward = narrow ? -1 : 1;
  const head = (s: number, way: number) =>
    `M${move(s, distance)}L${move(s + way * HEAD, distance + 2.2)}L${move(s + way * HEAD, distance - 2.2)}Z`;
  const extension = (s: number) => (distance > 6 ? `M${move(s, 3)}L${move(s, distance + 4)}` : '');
  const outside = narrow ? 2 * HEAD : 0;

  const degrees = (Math.atan2(along.y, along.x) * 180) / Math.PI;
  const turn = degrees > 89.9 ? degrees - 180 : degrees < -90.1 ? degrees + 180 : degrees;
  const text = narrow ? at(length + outside + 4, distance) : at(length * textAt, distance);
  // Text stands above the line as it is read, whichever way the line runs.
  const lift = narrow ? 0 : 9;
  const radians = (turn * Math.PI) / 180;
  const place = { x: text.x + Math.sin(radians) * lift, y: text.y - Math.cos(radians) * lift };
  const flipped = Math.abs(turn - degrees) > 1;
  return (
    <g>
      <path
        class={`thin tone-${tone} fill-none`}
        d={`${extension(0)}${extension(length)}M${move(-outside, distance)}L${move(length + outside, distance)}`}
      />
      <path class={`dot tone-${tone}`} d={head(0, inward) + head(length, -inward)} />
      <PaperText
        at={place}
        text={label}
        tone={tone}
        turn={Math.round(turn * 10) / 10}
        align={narrow ? (flipped ? 'end' : 'start') : 'middle'}
      />
    </g>
  );
}
