import type { Verdict as VerdictData } from './declaration.ts';

const SHAPES = {
  good: { path: 'M2 7l3.5 3.5L12 3', word: 'good' },
  marginal: { path: 'M7 1.5l6 11H1zM7 5v4M7 10.6v.6', word: 'marginal' },
  bad: { path: 'M2.5 2.5l9 9m0-9l-9 9', word: 'bad' },
} as const;

/** How a result stands against its limit: a shape, a word for those who do not see it, and the reason. */
export function Verdict({ level, text }: VerdictData) {
  const { path, word } = SHAPES[level];
  return (
    <span class={`verdict ${level}`}>
      <svg viewBox="0 0 14 14" aria-hidden="true">
        <path d={path} />
      </svg>
      <span class="visually-hidden">{`${word}: `}</span>
      {text}
    </span>
  );
}
