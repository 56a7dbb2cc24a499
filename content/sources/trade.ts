import type { Source } from './source.ts';

export const trade = {
  'common-practice': {
    type: 'practice',
    title: 'Common practice among frame makers, no source',
  },
  'own-derivation': {
    type: 'own',
    title: 'Own derivation or independent solver, written out beside the check',
  },
  'nist-2008-sp811': {
    type: 'standard',
    title: 'Guide for the Use of the International System of Units (SI), NIST Special Publication 811',
    authors: 'A. Thompson, B. N. Taylor',
    year: 2008,
    published: 'National Institute of Standards and Technology',
  },
} as const satisfies Record<string, Source>;
