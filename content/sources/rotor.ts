import type { Source } from './source.ts';

/** Propellers, air, spacing of rotors. */
export const rotor = {
  'leishman-2006-helicopter': {
    type: 'book',
    title: 'Principles of Helicopter Aerodynamics, 2nd edition',
    authors: 'J. G. Leishman',
    year: 2006,
    published: 'Cambridge University Press',
  },
  'prouty-1986-helicopter': {
    type: 'book',
    title: 'Helicopter Performance, Stability, and Control',
    authors: 'R. W. Prouty',
    year: 1986,
    published: 'PWS Engineering; constant as quoted in a public article on ideal power',
  },
  'uiuc-propeller-data': {
    type: 'data',
    title: 'Propeller data site, volumes 1 and 2: static tests of small propellers',
    published: 'University of Illinois at Urbana-Champaign',
  },
  'deters-2014-reynolds': {
    type: 'paper',
    title: 'Reynolds Number Effects on the Performance of Small-Scale Propellers',
    authors: 'R. W. Deters, G. K. Ananda, M. S. Selig',
    year: 2014,
    published: 'AIAA Paper 2014-2151',
  },
  'fox-fluid-mechanics': {
    type: 'book',
    title: 'Introduction to Fluid Mechanics',
    authors: 'R. W. Fox, A. T. McDonald',
    published: 'Wiley; example read in a public worksheet',
  },
  'murugaperumal-gas-dynamics': {
    type: 'book',
    title: 'Gas Dynamics and Jet Propulsion',
    authors: 'Murugaperumal',
    published: 'Example read in a public worksheet',
  },
  'khan-fluid-mechanics': {
    type: 'book',
    title: 'Fluid Mechanics',
    authors: 'M. K. Khan',
    published: 'Example read in a public worksheet',
    errata: 'The worksheet divides by 500 where a horsepower is 550 ft·lbf/s; its power line is not used.',
  },
  'us-1976-atmosphere': {
    type: 'standard',
    title: 'U.S. Standard Atmosphere, 1976',
    year: 1976,
    published: 'NOAA, NASA, USAF; values as tabulated in an open library’s tests',
  },
  'lei-2020-micro': {
    type: 'paper',
    title: 'Aerodynamic optimization of a micro quadrotor aircraft with different rotor spacings in hover',
    authors: 'Y. Lei, H. Wang',
    year: 2020,
    published: 'Applied Sciences 10, 1277; abstract read',
  },
  'zhou-2017-uav': {
    type: 'paper',
    title: 'An experimental investigation on rotor-to-rotor interactions of small UAV propellers',
    authors: 'W. Zhou, Z. Ning, H. Li, H. Hu',
    year: 2017,
    published: 'AIAA Paper 2017-3744; recalled, not at hand',
  },
  'polyu-2021-dual': {
    type: 'paper',
    title: 'Aeroacoustic study of two rotors side by side',
    year: 2021,
    published: 'International Congress on Sound and Vibration; Hong Kong Polytechnic University',
  },
  'alvarez-byu-interaction': {
    type: 'paper',
    title: 'Study of rotor-on-rotor interactions: aeroacoustics of side-by-side and staggered rotors',
    authors: 'E. J. Alvarez and others',
    published: 'Brigham Young University',
  },
  'tinney-2018-thrust': {
    type: 'paper',
    title: 'Multirotor drone noise at static thrust',
    authors: 'C. E. Tinney, J. Sirohi',
    year: 2018,
    published: 'AIAA Journal 56',
  },
  'shukla-2018-multirotor': {
    type: 'paper',
    title: 'Multirotor drone aerodynamic interaction investigation',
    authors: 'D. Shukla, N. Komerath',
    year: 2018,
    published: 'Drones 2, 43; abstract read',
  },
  'astm-b258-gauge': {
    type: 'standard',
    title: 'Standard nominal diameters and cross-sectional areas of AWG sizes of solid round wires, ASTM B258',
    published: 'ASTM International',
  },
} as const satisfies Record<string, Source>;
