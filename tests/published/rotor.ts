import { POUND_FORCE } from '../../shared/src/quantity/index.ts';
import {
  discInFlight,
  figureOfMerit,
  hoverPower,
  hoverPowerRatio,
  hoverReserve,
  incoherentLevelRise,
  propellerForThrust,
  standardAtmosphere,
  staticPropeller,
  thrustAndPower,
} from '../../shared/src/rotor/index.ts';
import type { MissingCheck, PublishedCase } from './row.ts';
import { rowsFor } from './rows.ts';

const rows = rowsFor('rotor');
const FOOT = 0.3048;
const HORSEPOWER = 550 * FOOT * POUND_FORCE;
const SLUG_PER_CUBIC_FOOT = POUND_FORCE / FOOT ** 4;

const tilt = hoverPower({ thrust: 269.1e3 / 2, diameter: 2 * 5.791, density: 1.2256, figureOfMerit: 0.75 });
const gasDynamics = discInFlight({ diameter: 2.5, density: 0.525, flightSpeed: 138.9, wakeSpeed: 138.9 / 0.75 });
/** The flow is given in place of the wake speed: the air at the disc moves at Q/A, halfway between ahead and behind. */
const khanArea = (Math.PI / 4) * 1.829 ** 2;
const khan = discInFlight({
  diameter: 1.829,
  density: 1.134,
  flightSpeed: 98.35,
  wakeSpeed: (2 * 339.8) / khanArea - 98.35,
});
const marine = propellerForThrust({
  thrust: 11.4e6 / 6.69,
  speed: 6.69,
  advanceRatio: 0.85,
  thrustCoefficient: 0.1,
  density: 1025,
});
const propeller = (diameter: number, thrustCoefficient: number, powerCoefficient: number) =>
  staticPropeller({ diameter, thrustCoefficient, powerCoefficient, density: 1.225 });
const tested = [
  ['5 × 3.75, three blades', propeller(0.127, 0.1483, 0.1032), 1.197e-6, 0.0141, 0.442],
  ['5 in at 15°, three blades', propeller(0.127, 0.1085, 0.0622), 8.76e-7, 0.0116, 0.458],
  ['5 × 4, three blades', propeller(0.127, 0.1799, 0.1174), 1.452e-6, 0.0132, 0.519],
  ['10 × 4.7, two blades', propeller(0.254, 0.1185, 0.048), 1.53e-5, 0.0164, undefined],
] as const;

export const cases: PublishedCase[] = [
  ...rows(
    {
      kind: 'from memory',
      source: 'leishman-2006-helicopter',
      where: 'ch. 2, hover of a tilt-rotor',
      given: 'two rotors, 269.1 kN together, radius 5.791 m, 1.2256 kg/m³, figure of merit 0.75',
      unit: 'MW',
      tolerance: { relative: 0.003 },
      because: 'four digits, converted from feet and pounds',
    },
    [
      ['hover-induced-speed', 'Air speed through a hovering rotor', 22.83, () => tilt.inducedSpeed, { unit: 'm/s' }],
      ['hover-ideal-power', 'Ideal power of a hovering rotor', 3.071, () => tilt.idealPower / 1e6],
      ['hover-shaft-power', 'Shaft power of a hovering rotor', 4.095, () => tilt.power / 1e6],
      [
        'hover-both-with-loss',
        'Power of both rotors with 5 % added for transmission',
        8.6,
        () => (2 * 1.05 * tilt.power) / 1e6,
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'prouty-1986-helicopter',
      where: 'ideal power, shortcut at sea level',
      given: 'thrust in pounds, disc loading in pounds a square foot, power in horsepower',
      unit: 'lb^1.5/(ft·hp)',
      tolerance: { relative: 0.005 },
      because: 'the shortcut is rounded to 38; exact is 37.93',
    },
    [
      [
        'hover-shortcut-constant',
        'Constant in power = thrust × √(disc loading) / constant',
        38,
        () => {
          const diameter = FOOT * Math.sqrt(4 / Math.PI);
          return (
            HORSEPOWER /
            hoverPower({ thrust: POUND_FORCE, diameter, density: 0.002378 * SLUG_PER_CUBIC_FOOT, figureOfMerit: 1 })
              .idealPower
          );
        },
      ],
    ],
  ),
  ...tested.flatMap(([name, { thrustPerSpeedSquared, torquePerThrust, figureOfMerit: merit }, k, ratio, fm]) =>
    rows(
      {
        kind: 'published formula, our number',
        source: 'uiuc-propeller-data',
        where: 'static tests, averages over speed',
        given: `${name}; measured C_T and C_P, 1.225 kg/m³`,
        unit: 'N·s²',
        tolerance: { relative: 0.004 },
        because: 'three digits',
        note: 'Averages as quoted in a public note on simulation; the raw files were not read again.',
      },
      [
        [`propeller-k-${name.replace(/\W+/g, '-')}`, 'Thrust over speed squared', k, () => thrustPerSpeedSquared],
        [
          `propeller-torque-${name.replace(/\W+/g, '-')}`,
          'Reaction torque over thrust',
          ratio,
          () => torquePerThrust,
          { unit: 'm' },
        ],
        ...(fm === undefined
          ? []
          : [
              [
                `propeller-merit-${name.replace(/\W+/g, '-')}`,
                'Figure of merit at standstill',
                fm,
                () => merit,
                { unit: '' },
              ] as const,
            ]),
      ],
    ),
  ),
  ...rows(
    {
      kind: 'published formula, our number',
      source: 'uiuc-propeller-data',
      where: 'static run of a small propeller, 19 speeds',
      given: '',
      unit: '',
      tolerance: { relative: 0.001 },
      because: 'four digits',
      note: 'Coefficients are as measured; the figure of merit is worked out here.',
    },
    [
      [
        'merit-slow',
        'Figure of merit at the slowest speed',
        0.4032,
        () => figureOfMerit({ thrustCoefficient: 0.125931, powerCoefficient: 0.088432 }),
        { given: 'C_T 0.125931, C_P 0.088432' },
      ],
      [
        'merit-middle',
        'Figure of merit at the tenth speed',
        0.4722,
        () => figureOfMerit({ thrustCoefficient: 0.134311, powerCoefficient: 0.083174 }),
        { given: 'C_T 0.134311, C_P 0.083174' },
      ],
      [
        'merit-fast',
        'Figure of merit at the fastest speed',
        0.5244,
        () => figureOfMerit({ thrustCoefficient: 0.14045, powerCoefficient: 0.080081 }),
        { given: 'C_T 0.140450, C_P 0.080081' },
      ],
    ],
  ),
  ...rows(
    {
      kind: 'common practice',
      source: 'common-practice',
      where: 'reaction torque of 5-inch motors',
      given: 'range 0.011 to 0.016 m',
      unit: 'm',
      tolerance: { absolute: 0.0025 },
      because: 'half the range',
    },
    [
      [
        'torque-per-thrust-practice',
        'Reaction torque over thrust of a measured 5 × 4 propeller',
        0.0135,
        () => propeller(0.127, 0.1799, 0.1174).torquePerThrust,
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'fox-fluid-mechanics',
      where: 'Example 10.14, p. 558',
      given: '11.4 MW of thrust power at 6.69 m/s, J 0.85, C_T 0.1, 1025 kg/m³',
      unit: 'm',
      tolerance: { relative: 0.003 },
      because: 'three digits',
    },
    [
      ['marine-diameter', 'Diameter of a ship’s propeller', 16.4, () => marine.diameter],
      ['marine-speed', 'Speed of a ship’s propeller', 28.8, () => marine.turns * 60, { unit: 'rev/min' }],
      [
        'marine-thrust-back',
        'Thrust of that propeller from its coefficient',
        1.704,
        () =>
          thrustAndPower({ ...marine, thrustCoefficient: 0.1, powerCoefficient: 1, density: 1025 }, marine.turns)
            .thrust / 1e6,
        { unit: 'MN' },
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'murugaperumal-gas-dynamics',
      where: 'Example 6.9',
      given: 'D 2.5 m, 138.9 m/s, wake 138.9/0.75 m/s, 0.525 kg/m³',
      unit: 'kg/s',
      tolerance: { relative: 0.001 },
      because: 'four digits',
    },
    [
      ['disc-mass-flow', 'Mass flow through a disc in flight', 417.6, () => gasDynamics.massFlow],
      ['disc-thrust', 'Thrust of a disc in flight', 19.33, () => gasDynamics.thrust / 1e3, { unit: 'kN' }],
      [
        'disc-thrust-power',
        'Thrust power of a disc in flight',
        2685,
        () => gasDynamics.thrustPower / 1e3,
        { unit: 'kW' },
      ],
      [
        'disc-efficiency',
        'Ideal efficiency of a disc in flight',
        0.857,
        () => gasDynamics.idealEfficiency,
        { unit: '' },
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'khan-fluid-mechanics',
      where: 'Example 5.8, p. 211',
      given: 'D 1.829 m, 98.35 m/s, 339.8 m³/s, 1.134 kg/m³',
      unit: 'kN',
      tolerance: { relative: 0.002 },
      because: 'converted from pounds and feet, three digits',
    },
    [
      ['disc-given-flow-thrust', 'Thrust of a disc with a given flow', 23.9, () => khan.thrust / 1e3],
      [
        'disc-given-flow-efficiency',
        'Ideal efficiency of a disc with a given flow',
        0.76,
        () => khan.idealEfficiency,
        { unit: '' },
      ],
      [
        'disc-given-flow-pressure',
        'Pressure across a disc with a given flow',
        9.1,
        () => khan.pressureJump / 1e3,
        { unit: 'kPa' },
      ],
    ],
  ),
  ...[
    [0, 288.15, 101_325, 1.225],
    [1000, 281.651, 89_876, 1.1117],
    [2000, 275.154, 79_501, 1.0066],
    [6000, 249.19, 47_218, 0.66011],
  ].flatMap(([height = 0, temperature = 0, pressure = 0, density = 0]) =>
    rows(
      {
        kind: 'published number',
        source: 'us-1976-atmosphere',
        where: 'table by geometric altitude',
        given: `${height} m`,
        unit: 'kg/m³',
        tolerance: { relative: 1e-4 },
        because: 'the table prints five digits',
      },
      [
        [
          `air-temperature-${height}`,
          'Temperature of the standard atmosphere',
          temperature,
          () => standardAtmosphere(height).temperature,
          { unit: 'K' },
        ],
        [
          `air-pressure-${height}`,
          'Pressure of the standard atmosphere',
          pressure,
          () => standardAtmosphere(height).pressure,
          { unit: 'Pa' },
        ],
        [
          `air-density-${height}`,
          'Density of the standard atmosphere',
          density,
          () => standardAtmosphere(height).density,
          height === 1000 ? { kind: 'from memory' } : {},
        ],
      ],
    ),
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'polyu-2021-dual',
      where: 'two equal rotors at long averaging',
      given: 'two rotors against one',
      unit: 'dB',
      tolerance: { absolute: 0.05 },
      because: 'the paper states whole decibels; exact is 3.01',
    },
    [['two-rotors-louder', 'Rise in level from one rotor to two', 3, () => incoherentLevelRise(2)]],
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'own-derivation',
      where: 'momentum theory taken twice',
      given: '650 g and 660 g on four 127 mm propellers',
      unit: '',
      tolerance: { relative: 1e-9 },
      because: 'exact',
    },
    [
      [
        'added-mass-by-hover',
        'Hover power after 10 g more, from the ratio and from two hovers',
        hoverPower({ thrust: (0.66 * 9.80665) / 4, diameter: 0.127, density: 1.225, figureOfMerit: 0.5 }).power /
          hoverPower({ thrust: (0.65 * 9.80665) / 4, diameter: 0.127, density: 1.225, figureOfMerit: 0.5 }).power,
        () => hoverPowerRatio({ mass: 0.65, addedMass: 0.01 }),
      ],
      [
        'hover-share',
        'Share of thrust in hover of 1 kg on four motors of 9.80665 N',
        0.25,
        () => hoverReserve({ mass: 1, rotors: 4, fullThrust: 9.80665 }).thrustShare,
      ],
    ],
  ),
];

export const missing: MissingCheck[] = [
  {
    topic: 'rotor',
    what: 'Efficiency of small motors and speed controllers in hover, measured',
    instead: 'One efficiency that the reader puts in.',
  },
  {
    topic: 'rotor',
    what: 'Raw files of the propeller tests that the averages stem from',
    instead: 'Averages as quoted elsewhere, and one run whose file was read.',
  },
];
