import type { Show } from '../declaration.ts';
import { PaperText } from './Label.tsx';
import { usePaper } from './paper.ts';

const MILLIMETRES = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000].map((value) => value * 1e-3);
const INCHES = [0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20].map((value) => value * 0.0254);

/** A bar of a round length in the reader's units: of all candidates, the one that is written shortest. */
export function ScaleBar({ show, right, bottom }: { show: Show; right: number; bottom: number }) {
  const paper = usePaper();
  const fitting = [...MILLIMETRES, ...INCHES].filter(
    (length) => paper.length(length) >= 25 && paper.length(length) <= 90,
  );
  const best = fitting
    .map((length) => ({ length, text: show(length, 'length', 3) }))
    .sort((a, b) => a.text.length - b.text.length || b.length - a.length)[0];
  if (!best) return null;
  const left = right - paper.length(best.length);
  return (
    <g>
      <path
        class="thin tone-quiet fill-none"
        d={`M${left} ${bottom - 6}v6H${right}v-6M${(left + right) / 2} ${bottom - 3}v3`}
      />
      <PaperText at={{ x: left - 5, y: bottom - 4 }} text={best.text} tone="quiet" align="end" />
    </g>
  );
}
