import type { Source } from './source.ts';

/** Natural frequencies of arms, and what shakes them. Books on mechanics in general are in `mechanics.ts`. */
export const vibration = {
  'thomson-1998-vibration': {
    type: 'book',
    title: 'Theory of Vibration with Applications, 5th edition',
    authors: 'W. T. Thomson, M. D. Dahleh',
    year: 1998,
    published: 'Prentice Hall',
  },
  'gurgoze-1996-eigenfrequencies': {
    type: 'paper',
    title: 'On the Eigenfrequencies of a Cantilever Beam with Attached Tip Mass and a Spring-Mass System',
    authors: 'M. Gürgöze',
    year: 1996,
    published: 'Journal of Sound and Vibration 190, pp. 149-162',
  },
  'bathe-1996-finite': {
    type: 'book',
    title: 'Finite Element Procedures',
    authors: 'K. J. Bathe',
    year: 1996,
    published: 'Prentice Hall',
  },
  'golub-2013-matrix': {
    type: 'book',
    title: 'Matrix Computations, 4th edition',
    authors: 'G. H. Golub, C. F. Van Loan',
    year: 2013,
    published: 'Johns Hopkins University Press',
  },
  'beam-vibration-laboratory': {
    type: 'lecture',
    title: 'Vibration of beams: notes of an open teaching laboratory',
    published: 'Indian Institute of Technology Delhi, virtual laboratories',
  },
} as const satisfies Record<string, Source>;
