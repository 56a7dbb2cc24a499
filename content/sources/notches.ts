import type { Source } from './source.ts';

/** Notched laminates and slit tubes. */
export const notches = {
  'megson-1999-structures': {
    type: 'book',
    title: 'Aircraft Structures for Engineering Students, 3rd edition',
    authors: 'T. H. G. Megson',
    year: 1999,
    published: 'Arnold',
  },
  'green-2007-scaling': {
    type: 'paper',
    title: 'An experimental investigation into the tensile strength scaling of notched composites',
    authors: 'B. G. Green, M. R. Wisnom, S. R. Hallett',
    year: 2007,
    published: 'Composites A 38, pp. 867-878; only the abstract was read, strengths recalled',
  },
  'howland-1933-perforated': {
    type: 'paper',
    title: 'Biharmonic Analysis in a Perforated Strip',
    authors: 'R. C. J. Howland, A. C. Stevenson',
    year: 1933,
    published: 'Philosophical Transactions of the Royal Society A 232, pp. 155-222',
  },
  'materials-2025-compression': {
    type: 'paper',
    title: 'Open-hole compression of narrow carbon/epoxy coupons with holes of 2 and 8 mm',
    year: 2025,
    published: 'Materials 18, 3452',
  },
} as const satisfies Record<string, Source>;
