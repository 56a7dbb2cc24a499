import type { Source } from './source.ts';

/** Tows, wraps, resin and its cure. */
export const mount = {
  'carbon-fibre-data-sheet': {
    type: 'data',
    title: 'Standard-modulus carbon fibre, data sheet CFA-001',
    published: 'Fibre maker’s data sheet: tow mass per length, yield, density, strength, modulus, filament diameter',
  },
  'prepreg-8552-data-sheet': {
    type: 'data',
    title: '8552 epoxy matrix with AS4 fibre, prepreg data sheet',
    published: 'Prepreg maker’s data sheet',
  },
  'capstan-encyclopaedia': {
    type: 'note',
    title: 'Euler-Eytelwein formula (capstan equation), encyclopaedia article',
    published: 'Table of holding ratios by turns and friction; the largest cell was read, the small ones are recalled',
  },
  'ncert-2006-chemistry': {
    type: 'book',
    title: 'Chemistry, textbook for class XII: chemical kinetics',
    authors: 'National Council of Educational Research and Training',
    year: 2006,
    published: 'NCERT; read in a published solution, year recalled',
    errata: 'Several quiz pages give 48, 53 or 56.5 kJ/mol for the same exercise.',
  },
  'bonstone-ten-degree-rule': {
    type: 'note',
    title: '10 Degree Rule, technical note on epoxy cure',
    published: 'Bonstone; the values for 45 °C are cut off in the copy that was read',
  },
  'cure-rate-note': {
    type: 'note',
    title: 'Cure rate of epoxies against temperature, technical note',
    published: 'Incurelab; the range of factors was read',
  },
  'adhesive-maker-cure-page': {
    type: 'note',
    title: 'Two-part epoxy adhesives: pot life, mixed mass and cure, knowledge page of an adhesive maker',
    published: 'Henkel, knowledge pages',
  },
  'malmgren-glossary': {
    type: 'note',
    title: 'Epoxy glossary: pot life and hardening time',
    published: 'Nils Malmgren AB, glossary',
  },
  'brewer-1988-quadratic': {
    type: 'paper',
    title: 'Quadratic Stress Criterion for Initiation of Delamination',
    authors: 'J. C. Brewer, P. A. Lagace',
    year: 1988,
    published: 'Journal of Composite Materials 22, pp. 1141-1155; recalled',
  },
} as const satisfies Record<string, Source>;
