import type { Source } from './source.ts';

/** Mass, balance, inertia and how they are measured. */
export const mass = {
  'meriam-2012-dynamics': {
    type: 'book',
    title: 'Engineering Mechanics: Dynamics, 7th edition',
    authors: 'J. L. Meriam, L. G. Kraige',
    year: 2012,
    published: 'Wiley',
  },
  'goldstein-2002-mechanics': {
    type: 'book',
    title: 'Classical Mechanics, 3rd edition',
    authors: 'H. Goldstein, C. Poole, J. Safko',
    year: 2002,
    published: 'Addison-Wesley',
  },
  'press-2007-recipes': {
    type: 'book',
    title: 'Numerical Recipes: The Art of Scientific Computing, 3rd edition',
    authors: 'W. H. Press, S. A. Teukolsky, W. T. Vetterling, B. P. Flannery',
    year: 2007,
    published: 'Cambridge University Press',
  },
  'khurmi-2005-machines': {
    type: 'book',
    title: 'Theory of Machines',
    authors: 'R. S. Khurmi, J. K. Gupta',
    year: 2005,
    published: 'S. Chand',
    errata: 'Ex. 4.10 cuts the radius of gyration, 267.98 mm, to 267 mm where it should round to 268 mm.',
  },
  'jardin-2007-inertia': {
    type: 'paper',
    title: 'Optimized Measurements of UAV Mass Moment of Inertia with a Bifilar Pendulum, AIAA 2007-6822',
    authors: 'M. R. Jardin, E. R. Mueller',
    year: 2007,
    published: 'American Institute of Aeronautics and Astronautics',
  },
  'slinger-2025-inertia': {
    type: 'note',
    title: 'Measuring the moment of inertia of a UAV, flight-dynamics notes',
    authors: 'B. Slinger',
    year: 2025,
    published: 'Author’s own pages; not peer reviewed',
    errata: 'The note quotes 0.0161 kg·m²; its own readings give 0.01617.',
  },
  'iowa-state-bifilar-note': {
    type: 'note',
    title: 'Measuring moment of inertia: parameter identification of a quadrotor',
    published: 'Iowa State University, student project notes',
  },
  'quadrotor-builder-2014-swing': {
    type: 'note',
    title: 'Bifilar pendulum measurements of a quadrotor, builder’s notes',
    year: 2014,
    published: 'Author’s own pages; not peer reviewed',
  },
  'student-notes-bifilar': {
    type: 'note',
    title: 'Bifilar pendulum measurements of two small quadrotors, student research notes',
    published: 'Public repository; not peer reviewed',
    errata: 'The measured tensor of the tiny craft lies 15 % under the catalogue’s.',
  },
  'student-model-data': {
    type: 'note',
    title: 'Student model data of two multirotors',
    published:
      'Student project with trifilar measurements of a 460 mm quadrotor and a 500 mm eight-rotor craft; not peer reviewed',
    errata: 'Both tensors break the triangle inequality: no body can have them.',
  },
  'robot-arm-cad-print': {
    type: 'data',
    title: 'Mass properties of a robot-arm part, printed by a drawing program',
    published: 'Robot-arm project; products of inertia printed with the positive sign',
  },
  'bannwarth-2016-pendulum': {
    type: 'note',
    title: 'Processing of pendulum measurements of inertia',
    authors: 'J. Bannwarth',
    year: 2016,
    published: 'Processing script, public',
  },
} as const satisfies Record<string, Source>;
