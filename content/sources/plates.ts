import type { Source } from './source.ts';

/** Plates in bending. */
export const plates = {
  'timoshenko-1959-plates': {
    type: 'book',
    title: 'Theory of Plates and Shells, 2nd edition',
    authors: 'S. P. Timoshenko, S. Woinowsky-Krieger',
    year: 1959,
    published: 'McGraw-Hill',
  },
  'goodier-1936-holes': {
    type: 'paper',
    title: 'The Influence of Circular and Elliptical Holes on the Transverse Flexure of Elastic Plates',
    authors: 'J. N. Goodier',
    year: 1936,
    published: 'Philosophical Magazine 22, pp. 69-80',
  },
} as const satisfies Record<string, Source>;
