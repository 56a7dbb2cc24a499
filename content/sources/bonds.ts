import type { Source } from './source.ts';

/** Adhesive joints, sleeves in tubes, doublers. */
export const bonds = {
  'goland-1944-cemented': {
    type: 'paper',
    title: 'The Stresses in Cemented Joints',
    authors: 'M. Goland, E. Reissner',
    year: 1944,
    published: 'Journal of Applied Mechanics 11, pp. A17-A27',
  },
  'hart-smith-1973-doublelap': {
    type: 'report',
    title: 'Adhesive-Bonded Double-Lap Joints, NASA CR-112235',
    authors: 'L. J. Hart-Smith',
    year: 1973,
    published: 'National Aeronautics and Space Administration',
    errata:
      'Only the opening pages could be read. The plateau formula is recalled; the two relations for a finite overlap were read in a university script after ECSS.',
  },
  'pugno-2003-tubular': {
    type: 'paper',
    title: 'Tubular Adhesive Joints Under Axial Load',
    authors: 'N. Pugno, A. Carpinteri',
    year: 2003,
    published: 'Journal of Applied Mechanics 70; the abstract was read',
  },
  'astm-2010-d1002': {
    type: 'standard',
    title:
      'Apparent Shear Strength of Single-Lap-Joint Adhesively Bonded Metal Specimens by Tension Loading, ASTM D1002',
    year: 2010,
    published: 'ASTM International; read in the summaries of two test houses',
  },
  'astm-2001-d5868': {
    type: 'standard',
    title: 'Lap Shear Adhesion for Fiber Reinforced Plastic (FRP) Bonding, ASTM D5868',
    year: 2001,
    published: 'ASTM International; width and bond line read in a university test log, the rest recalled',
  },
  'rzadkowski-2021-tubes': {
    type: 'paper',
    title:
      'Bonded joints of composite tubes and metal inserts, with the gap held by glass beads or by mechanical centring',
    authors: 'Rządkowski',
    year: 2021,
    published: 'Materials 14, 1977; title given by its subject',
  },
  'insert-test-plan': {
    type: 'note',
    title: 'University test plan for bonded tube inserts: sizes, gap and rated lap shear',
    published: 'Inputs read',
  },
  'akron-2015-tubes': {
    type: 'report',
    title: 'Carbon tube joints, honours project, University of Akron',
    year: 2015,
    published: 'University of Akron',
  },
  'gouldstone-2002-bonding': {
    type: 'report',
    title: 'Bonding of aluminium discs in graphite/epoxy cylinders, thesis, Massachusetts Institute of Technology',
    authors: 'Gouldstone',
    year: 2002,
    published: 'Massachusetts Institute of Technology; abstract read, title given by its subject',
  },
} as const satisfies Record<string, Source>;
