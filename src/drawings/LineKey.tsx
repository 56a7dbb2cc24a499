import { PaperText, usePaper } from '~/island/drawing/index.ts';
import type { Look } from './Shapes.tsx';

export interface KeyEntry {
  look: Look;
  text: string;
}

/** Paper units. */
const [WIDTH, HEIGHT, STEP, ROW, FOOT] = [26, 11, 138, 19, 14];

/** Paper units that a key of so many entries takes above the lower edge. */
export const keyHeight = (count: number, columns = 3) => Math.ceil(count / columns) * ROW + FOOT;

/** Samples of the lines in a drawing with what they stand for, along its lower edge. */
export function LineKey({ entries, columns = 3 }: { entries: readonly KeyEntry[]; columns?: number }) {
  const paper = usePaper();
  const top = paper.height - keyHeight(entries.length, columns);
  return (
    <>
      {entries.map(({ look: { line, fill = 'none', tone = 'ink', crossed }, text }, i) => {
        const [x, y] = [8 + STEP * (i % columns), top + ROW * Math.floor(i / columns)];
        const paint = fill === 'hatch' ? { fill: `url(#${paper.hatch})` } : {};
        const box = `M${x} ${y}h${WIDTH}v${HEIGHT}h${-WIDTH}Z`;
        return (
          <g key={text}>
            <path
              class={`${line} tone-${tone} fill-${fill}`}
              d={crossed ? `${box}L${x + WIDTH} ${y + HEIGHT}M${x + WIDTH} ${y}L${x} ${y + HEIGHT}` : box}
              {...paint}
            />
            <PaperText at={{ x: x + WIDTH + 6, y: y + HEIGHT / 2 }} text={text} align="start" />
          </g>
        );
      })}
    </>
  );
}
