import type { Source } from './source.ts';

/** Lamination theory, ply data and failure of carbon laminates. */
export const laminates = {
  'kaw-2006-composites': {
    type: 'book',
    title: 'Mechanics of Composite Materials, 2nd edition',
    authors: 'A. K. Kaw',
    year: 2006,
    published: 'CRC Press',
  },
  'tsai-1980-composite': {
    type: 'book',
    title: 'Introduction to Composite Materials',
    authors: 'S. W. Tsai, H. T. Hahn',
    year: 1980,
    published: 'Technomic',
  },
  'jones-1999-composite': {
    type: 'book',
    title: 'Mechanics of Composite Materials, 2nd edition',
    authors: 'R. M. Jones',
    year: 1999,
    published: 'Taylor & Francis',
  },
  'mallick-2007-fiber': {
    type: 'book',
    title: 'Fiber-Reinforced Composites: Materials, Manufacturing, and Design, 3rd edition',
    authors: 'P. K. Mallick',
    year: 2007,
    published: 'CRC Press',
  },
  'megson-2007-aircraft': {
    type: 'book',
    title: 'Aircraft Structures for Engineering Students, 4th edition',
    authors: 'T. H. G. Megson',
    year: 2007,
    published: 'Butterworth-Heinemann',
  },
  'anand-2022-solid': {
    type: 'book',
    title: 'Introduction to Mechanics of Solid Materials',
    authors: 'L. Anand, K. Kamrin, S. Govindjee',
    year: 2022,
    published: 'Oxford University Press',
  },
  'soden-1998-lamina': {
    type: 'paper',
    title:
      'Lamina Properties, Lay-up Configurations and Loading Conditions for a Range of Fibre-Reinforced Composite Laminates',
    authors: 'P. D. Soden, M. J. Hinton, A. S. Kaddour',
    year: 1998,
    published: 'Composites Science and Technology 58, pp. 1011-1022',
  },
  'tsai-1971-general': {
    type: 'paper',
    title: 'A General Theory of Strength for Anisotropic Materials',
    authors: 'S. W. Tsai, E. M. Wu',
    year: 1971,
    published: 'Journal of Composite Materials 5, pp. 58-80',
  },
} as const satisfies Record<string, Source>;
