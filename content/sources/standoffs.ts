import type { Source } from './source.ts';

const BY_EXAMPLE = 'Edition not recorded; numbers and pages by example, from public worksheets of the book';

/** Frames that sway, columns, hits and drops. */
export const standoffs = {
  'hibbeler-mechanics': {
    type: 'book',
    title: 'Mechanics of Materials',
    authors: 'R. C. Hibbeler',
    published: `Pearson. ${BY_EXAMPLE}`,
  },
  'ghali-neville-structural': {
    type: 'book',
    title: 'Structural Analysis: A Unified Classical and Matrix Approach',
    authors: 'A. Ghali, A. M. Neville',
    published: 'Spon Press. Read as quoted in a public validation file',
  },
  'chopra-2012-dynamics': {
    type: 'book',
    title: 'Dynamics of Structures, 4th edition',
    authors: 'A. K. Chopra',
    year: 2012,
    published: 'Pearson',
    errata: 'Example 1.2 prints 38.58 kip/in for the four posts; its own inputs give 38.60.',
  },
  'ufc-2005-seismic': {
    type: 'standard',
    title: 'Seismic Design for Buildings, UFC 3-310-03A',
    year: 2005,
    published: 'US Department of Defense',
  },
  'ugural-advanced-strength': {
    type: 'book',
    title: 'Advanced Strength and Applied Elasticity',
    authors: 'A. C. Ugural, S. K. Fenster',
    published: `Prentice Hall. ${BY_EXAMPLE}`,
  },
  'popov-engineering-mechanics': {
    type: 'book',
    title: 'Engineering Mechanics of Solids',
    authors: 'E. P. Popov',
    published: `Prentice Hall. ${BY_EXAMPLE}`,
  },
  'kazimi-solid-mechanics': {
    type: 'book',
    title: 'Solid Mechanics',
    authors: 'S. M. A. Kazimi',
    published: `Tata McGraw-Hill. ${BY_EXAMPLE}`,
  },
  'mil-202g-213': {
    type: 'standard',
    title: 'Electronic and Electrical Component Parts, MIL-STD-202G, Method 213B, Shock',
    year: 2002,
    published: 'US Department of Defense',
  },
  'azambuja-2022-drops': {
    type: 'data',
    title: 'Drop tests of rigid and flexible small multirotor frames on concrete, open data of a conference paper',
    authors: 'R. de Azambuja et al.',
    year: 2022,
    published: 'International Conference on Robotics and Automation (ICRA); title given by its subject',
  },
} as const satisfies Record<string, Source>;
