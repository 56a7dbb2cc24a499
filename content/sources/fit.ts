import type { Source } from './source.ts';

/** Boxes that must not meet, and what holds boards. */
export const fit = {
  'arvo-1990-boxes': {
    type: 'book',
    title:
      'Transforming Axis-Aligned Bounding Boxes; A Simple Method for Box-Sphere Intersection Testing, in Graphics Gems',
    authors: 'J. Arvo; edited by A. S. Glassner',
    year: 1990,
    published: 'Academic Press. Formulas recalled, the book not at hand',
  },
  'lengauer-1990-layout': {
    type: 'book',
    title: 'Combinatorial Algorithms for Integrated Circuit Layout',
    authors: 'T. Lengauer',
    year: 1990,
    published: 'Teubner and Wiley. Chapter on compaction recalled, the book not at hand',
  },
  'iso-2012-4032': {
    type: 'standard',
    title: 'Hexagon regular nuts (style 1), ISO 4032',
    year: 2012,
    published: 'International Organization for Standardization',
  },
  'awtar-2007-flexures': {
    type: 'paper',
    title: 'Characteristics of Beam-Based Flexure Modules',
    authors: 'S. Awtar, A. H. Slocum, E. Sevincer',
    year: 2007,
    published: 'Journal of Mechanical Design 129. Coefficient recalled, the paper not at hand',
  },
  'mcad-2019-nuts': {
    type: 'data',
    title: 'MCAD, open parts library for solid modelling: nuts_and_bolts.scad',
    authors: 'Contributors of MCAD',
    year: 2019,
    published: 'Debian package openscad-mcad 2019.05-1',
    errata:
      'Widths across corners are rounded up from a trade table: 6.40 mm for M3, where the standard’s least is 6.01 mm.',
  },
} as const satisfies Record<string, Source>;
