import type { Source } from './source.ts';

/** Threads, inserts, washers and clamped joints, as far as the sources of joints do not have them. */
export const fasteners = {
  'nasa-2021-std5020': {
    type: 'standard',
    title: 'Requirements for Threaded Fastening Systems in Spaceflight Hardware, NASA-STD-5020B',
    year: 2021,
    published: 'National Aeronautics and Space Administration',
  },
  'fed-h28-21': {
    type: 'standard',
    title: 'Screw-Thread Standards for Federal Services, Metric Screw Threads, FED-STD-H28/21B',
    published: 'US General Services Administration',
    errata:
      'Pitch and minor limits of the M27 × 1.5 example’s external thread, as read, sit 0.035 mm below what its allowance gives; not used.',
  },
  'iso-1998-965': {
    type: 'standard',
    title: 'ISO general purpose metric screw threads: tolerances, ISO 965-1 and 965-2',
    year: 1998,
    published: 'International Organization for Standardization',
  },
  'barrett-1990-fastener': {
    type: 'report',
    title: 'Fastener Design Manual, NASA Reference Publication 1228',
    authors: 'R. T. Barrett',
    year: 1990,
    published:
      'National Aeronautics and Space Administration; rule read in a handbook chapter that carries the same text',
  },
  'iso-2004-4762': {
    type: 'standard',
    title: 'Hexagon socket head cap screws, ISO 4762',
    year: 2004,
    published: 'International Organization for Standardization',
  },
  'iso-2011-7380': {
    type: 'standard',
    title: 'Hexagon socket button head screws, ISO 7380-1',
    year: 2011,
    published: 'International Organization for Standardization',
  },
  'iso-2000-7089': {
    type: 'standard',
    title: 'Plain washers, normal series, ISO 7089',
    year: 2000,
    published: 'International Organization for Standardization',
  },
} as const satisfies Record<string, Source>;
