import type { Source } from './source.ts';

export const drawings = {
  'iso-1989-2768': {
    type: 'standard',
    title: 'General tolerances for linear and angular dimensions without individual tolerance indications, ISO 2768-1',
    year: 1989,
    published: 'International Organization for Standardization',
  },
  'iso-2007-216': {
    type: 'standard',
    title: 'Writing paper and certain classes of printed matter: trimmed sizes, A and B series, ISO 216',
    year: 2007,
    published: 'International Organization for Standardization',
  },
} as const satisfies Record<string, Source>;
