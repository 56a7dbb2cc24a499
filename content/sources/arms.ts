import type { Source } from './source.ts';

/** What is needed of arms alone. Books on mechanics in general are in `mechanics.ts`. */
export const arms = {
  'kravitz-1967-packing': {
    type: 'paper',
    title: 'Packing Cylinders into Cylindrical Containers',
    authors: 'S. Kravitz',
    year: 1967,
    published: 'Mathematics Magazine 40, pp. 65-71',
  },
  'graham-1998-packings': {
    type: 'paper',
    title: 'Dense Packings of Congruent Circles in a Circle',
    authors: 'R. L. Graham, B. D. Lubachevsky, K. J. Nurmela, P. R. J. Östergård',
    year: 1998,
    published: 'Discrete Mathematics 181, pp. 139-154',
  },
} as const satisfies Record<string, Source>;
