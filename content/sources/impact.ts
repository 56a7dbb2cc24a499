import type { Source } from './source.ts';

/** Hits of small craft. */
export const impact = {
  'liu-2023-soft-arms': {
    type: 'paper',
    title: 'Crash tests of a small multirotor with arms that give way',
    authors: 'Liu et al.',
    year: 2023,
    published: 'Preprint; abstract read, title given by its subject',
  },
} as const satisfies Record<string, Source>;
