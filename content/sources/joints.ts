import type { Source } from './source.ts';

/** Screws, pins, loaded holes and tightening. */
export const joints = {
  'shigley-2011-design': {
    type: 'book',
    title: 'Shigley’s Mechanical Engineering Design, 9th edition',
    authors: 'R. G. Budynas, J. K. Nisbett',
    year: 2011,
    published: 'McGraw-Hill',
  },
  'shigley-1989-design': {
    type: 'book',
    title: 'Mechanical Engineering Design, 5th edition',
    authors: 'J. E. Shigley, C. R. Mischke',
    year: 1989,
    published: 'McGraw-Hill',
  },
  'bhandari-2010-machine': {
    type: 'book',
    title: 'Design of Machine Elements, 3rd edition',
    authors: 'V. B. Bhandari',
    year: 2010,
    published: 'Tata McGraw-Hill',
    errata:
      'A public worksheet of the knuckle joint prints 37.5 MPa for the fork; that is another section. Two 10 mm cheeks on a 16 mm pin give 46.9 MPa.',
  },
  'willberg-2023-lectures': {
    type: 'lecture',
    title: 'Lectures on fibre composites: load introduction and joining, with worked exercises',
    authors: 'C. Willberg, after H. Schürmann, Konstruieren mit Faser-Kunststoff-Verbunden',
    year: 2023,
    published: 'Hochschule Magdeburg-Stendal',
  },
  'iso-2013-898': {
    type: 'standard',
    title: 'Mechanical properties of fasteners made of carbon steel and alloy steel, ISO 898-1',
    year: 2013,
    published: 'International Organization for Standardization',
    errata: 'A web copy of the load table carries an extra digit at M4 class 10.9. Compute loads, do not copy them.',
  },
  'iso-2009-3506': {
    type: 'standard',
    title: 'Mechanical properties of corrosion-resistant stainless steel fasteners, ISO 3506-1',
    year: 2009,
    published: 'International Organization for Standardization',
  },
  'iso-1979-273': {
    type: 'standard',
    title: 'Fasteners: clearance holes for bolts and screws, ISO 273',
    year: 1979,
    published: 'International Organization for Standardization',
  },
  'euler-2001-bolts': {
    type: 'data',
    title: 'Bolt dimension table: stress areas and pitch diameters',
    authors: 'G. D. Euler',
    year: 2001,
  },
  'speck-2015-fastening': {
    type: 'book',
    title: 'Mechanical Fastening, Joining, and Assembly, 2nd edition',
    authors: 'J. A. Speck',
    year: 2015,
    published: 'CRC Press',
  },
  'conveyor-torque-table': {
    type: 'data',
    title: 'Bolt torque table of a conveyor user guide',
    published: 'Equipment maker’s manual, p. 10, whole foot-pounds',
  },
  'mil-1990-hdbk60': {
    type: 'standard',
    title: 'Threaded Fasteners: Tightening to Proper Tension, MIL-HDBK-60',
    year: 1990,
    published: 'US Department of Defense',
  },
  'chambers-1995-tm106943': {
    type: 'report',
    title: 'Preloaded Joint Analysis Methodology for Space Flight Systems, NASA TM-106943',
    authors: 'J. A. Chambers',
    year: 1995,
    published: 'National Aeronautics and Space Administration',
    errata: 'The scanned equation under Table III reads 3/4 where only 7/8 reproduces the table.',
  },
  'en-2005-1993-1-8': {
    type: 'standard',
    title: 'Eurocode 3: Design of steel structures, part 1-8: Design of joints, EN 1993-1-8',
    year: 2005,
    published: 'European Committee for Standardization; tabulated values from the UK steelwork tables',
  },
  'lee-1992-tm108377': {
    type: 'report',
    title: 'Simplified preloaded joint analysis, NASA TM-108377',
    authors: 'H. M. Lee',
    year: 1992,
    published: 'National Aeronautics and Space Administration',
  },
  'mil-2002-hdbk17': {
    type: 'standard',
    title: 'Composite Materials Handbook, volume 3, MIL-HDBK-17-3F',
    year: 2002,
    published: 'US Department of Defense',
  },
  'fed-h28-2': {
    type: 'standard',
    title: 'Screw-Thread Standards for Federal Services, Unified Inch and Metric Threads, FED-STD-H28/2B',
    published: 'US General Services Administration',
  },
  'huth-1986-flexibility': {
    type: 'paper',
    title:
      'Influence of Fastener Flexibility on the Prediction of Load Transfer and Fatigue Life for Multiple-Row Joints',
    authors: 'H. Huth',
    year: 1986,
    published: 'ASTM STP 927, pp. 221-250; formula as quoted in a review article',
  },
  'knuckle-joint-sheet': {
    type: 'lecture',
    title: 'Knuckle joint, solved class sheet',
    published: 'Machine design class, undated',
    errata: 'The 37.5 MPa line of the fork belongs to a section that the sheet does not state.',
  },
} as const satisfies Record<string, Source>;
