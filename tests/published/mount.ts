import { COARSE_THREADS } from '@frameworthy/shared/joint';
import { SEAT_DIAMETERS } from '@frameworthy/shared/fastener';
import {
  activationEnergy,
  arrheniusFactor,
  bentFibreShare,
  capstanRatio,
  curedPlyThickness,
  fibreArea,
  FIBRE_FRACTIONS,
  filamentArea,
  LARGE_POT,
  loopStressFactor,
  mixtureDensity,
  MOTOR_PATTERNS,
  mountBondStress,
  motorScrewPlaces,
  motorScrewShare,
  RATE_PER_TEN,
  resinMass,
  resinMassFraction,
  screwMass,
  STANDARD_CARBON_FIBRE,
  STATED_POT,
  strapStress,
  tangentBondWidth,
  tangentGap,
  timeAtTemperature,
  towBreakingLoad,
  TOWS,
  towsInSection,
  wrapPath,
  type TowName,
} from '@frameworthy/shared/mount';
import type { MissingCheck, PublishedCase } from './row.ts';
import { rowsFor } from './rows.ts';

const rows = rowsFor('mount');
type Row = Parameters<typeof rows>[1][number];

const FOOT = 0.3048;
const POUND = 0.45359237;
const sheet = { source: 'carbon-fibre-data-sheet', where: 'table of tows' } as const;
const area = (tow: TowName): number => fibreArea({ linearDensity: TOWS[tow], density: STANDARD_CARBON_FIBRE.density });
const prepreg = { fibreFraction: 0.5742, fibreDensity: 1790, resinDensity: 1300 };
const carbon = { fibreDensity: 1760, resinDensity: 1200 };
const loop = (stiffnessRatio: number, ratio: number): number =>
  loopStressFactor({ innerRadius: 1e-3, outerRadius: ratio * 1e-3, stiffnessRatio });
const strap = strapStress({ force: 120e3, innerRadius: 0.025, outerRadius: 0.04, width: 0.03 });
const cure = (minutes: number, warmerBy: number): number => timeAtTemperature({ time: minutes * 60, warmerBy }) / 60;
const rate = (from: number, to: number): number =>
  arrheniusFactor({ activationEnergy: 52.9e3, from: 273.15 + from, to: 273.15 + to });

/** Plate on a 14 mm tube, glue line 0.2 mm. */
const bond = (fillLimit: number, filletRadius: number) =>
  tangentBondWidth({ tubeDiameter: 0.014, bondLine: 0.2e-3, fillLimit, filletRadius, plateWidth: 0.026 });
const wide = bond(0.5e-3, 1.5e-3);
/** ∫ f(x)/g(x) dx over a bond's width by the trapezium rule in x, 200 000 steps. */
function quadrature(half: number, f: (x: number) => number): number {
  const n = 2e5;
  let sum = 0;
  for (let i = 0; i <= n; i++) {
    const x = -half + (2 * half * i) / n;
    sum += (f(x) / (0.2e-3 + 0.007 - Math.sqrt(0.007 ** 2 - x * x))) * (i === 0 || i === n ? 0.5 : 1);
  }
  return (sum * 2 * half) / n;
}
/** Area of glue by level strips: at each height from the outside of the tube to the hollow of the fillet, both sides. */
function countedGlue(): number {
  const [radius, under, fillet] = [0.007, 0.0072, 0.0015];
  const centre = { x: Math.sqrt((radius + fillet) ** 2 - (under - fillet) ** 2), y: under - fillet };
  const low = (radius * centre.y) / (radius + fillet);
  const n = 1e6;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const y = low + ((under - low) * (i + 0.5)) / n;
    const inside = y < radius ? Math.sqrt(radius ** 2 - y ** 2) : 0;
    sum += centre.x - Math.sqrt(Math.max(0, fillet ** 2 - (y - centre.y) ** 2)) - inside;
  }
  return (2 * sum * (under - low)) / n;
}
/** Shortest line round a circle of 7 mm and the plate's corners: the mean width over 200 000 directions. */
function hullByWidths(halfWidth: number, low: number, high: number): number {
  const n = 200_000;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const angle = (2 * Math.PI * (i + 0.5)) / n;
    const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
    sum += Math.max(0.007, Math.abs(ux) * halfWidth + Math.max(uy * low, uy * high));
  }
  return (sum * 2 * Math.PI) / n;
}
const tipped = mountBondStress(wide, 0.026, { shear: 0, lift: 0, torque: 0, tipping: 1 }, { shear: 1e9, tension: 1e6 });

export const cases: PublishedCase[] = [
  ...rows(
    {
      ...sheet,
      kind: 'published number',
      given: 'standard-modulus fibre',
      unit: 'tex',
      tolerance: { relative: 0.005 },
      because: 'the sheet prints whole tex',
    },
    (Object.entries({ '1K': 66, '3K': 198, '6K': 396, '12K': 800 }) as [TowName, number][]).map(([tow, tex]): Row => [
      `tow-tex-${tow}`,
      `Mass per length of a ${tow} tow`,
      tex,
      () => TOWS[tow] * 1e6,
    ]),
  ),
  ...rows(
    {
      ...sheet,
      kind: 'published number',
      where: 'yield',
      given: 'standard-modulus fibre',
      unit: 'ft/lb',
      tolerance: { relative: 0.003 },
      because: 'the sheet rounds tex to whole numbers and yield to whole feet',
    },
    (Object.entries({ '1K': 22568, '3K': 7523, '6K': 3761, '12K': 1862 }) as [TowName, number][]).map(
      ([tow, yielded]): Row => [
        `tow-yield-${tow}`,
        `Length in a pound of ${tow} tow`,
        yielded,
        () => POUND / TOWS[tow] / FOOT,
      ],
    ),
  ),
  ...rows(
    {
      ...sheet,
      kind: 'published formula, our number',
      given: 'density 1.76 g/cm³',
      unit: 'mm²',
      tolerance: { relative: 0.001 },
      because: 'four digits of the quotient',
    },
    (Object.entries({ '3K': 0.1125, '6K': 0.225, '12K': 0.4545 }) as [TowName, number][]).map(
      ([tow, expected]): Row => [`tow-area-${tow}`, `Fibre in a ${tow} tow, by mass`, expected, () => area(tow) * 1e6],
    ),
  ),
  ...rows(
    {
      ...sheet,
      kind: 'published formula, our number',
      where: 'filament diameter',
      given: 'filaments of 7 µm',
      unit: 'mm²',
      tolerance: { relative: 0.001 },
      because: 'four digits of the product',
      note: 'About two per cent above the area by mass: the diameter is a rounded figure.',
    },
    (
      [
        ['3K', 3000, 0.1155],
        ['6K', 6000, 0.2309],
        ['12K', 12000, 0.4618],
      ] as const
    ).map(([tow, filaments, expected]): Row => [
      `tow-filaments-${tow}`,
      `Fibre in a ${tow} tow, by count`,
      expected,
      () => filamentArea({ filaments, diameter: STANDARD_CARBON_FIBRE.filamentDiameter }) * 1e6,
    ]),
  ),
  ...rows(
    {
      ...sheet,
      kind: 'published formula, our number',
      where: 'tensile strength',
      given: 'strength 3530 MPa',
      unit: 'N',
      tolerance: { relative: 0.004 },
      because: 'expected values carry three digits',
    },
    (Object.entries({ '1K': 132, '3K': 397, '12K': 1605 }) as [TowName, number][]).map(([tow, expected]): Row => [
      `tow-load-${tow}`,
      `Breaking load of a ${tow} tow, every filament alike`,
      expected,
      () => towBreakingLoad({ area: area(tow), tensileStrength: STANDARD_CARBON_FIBRE.tensileStrength }),
    ]),
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'prepreg-8552-data-sheet',
      where: 'physical properties',
      given: 'fibre 134 g/m², 1.79 g/cm³, volume fraction 57.42 %, resin 1.30 g/cm³',
      unit: '',
      tolerance: { relative: 0.005 },
      because: 'the sheet prints two or three digits',
    },
    [
      [
        'cured-ply-thickness',
        'Thickness of a cured ply',
        0.13,
        () => curedPlyThickness({ arealMass: 0.134, fibreDensity: 1790, fibreFraction: 0.5742 }) * 1e3,
        { unit: 'mm' },
      ],
      ['prepreg-density', 'Density of a cured ply', 1.58, () => mixtureDensity(prepreg) / 1e3, { unit: 'g/cm³' }],
      ['prepreg-resin-share', 'Resin by mass in a prepreg', 35, () => 100 * resinMassFraction(prepreg), { unit: '%' }],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'willberg-2023-lectures',
      where: 'lecture 1, density of the mixture',
      given: 'volume fraction 0.6, resin 1.20 g/cm³',
      unit: 'g/cm³',
      tolerance: { relative: 0.03 },
      because: 'the lecture prints two digits',
      note: 'The mass fractions printed beside it do not follow from these densities and are not used.',
    },
    [
      [
        'mixture-carbon',
        'Density of carbon in epoxy',
        1.5,
        () => mixtureDensity({ ...carbon, fibreFraction: 0.6 }) / 1e3,
      ],
      [
        'mixture-glass',
        'Density of glass in epoxy',
        2,
        () => mixtureDensity({ fibreFraction: 0.6, fibreDensity: 2540, resinDensity: 1200 }) / 1e3,
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published formula, our number',
      source: 'willberg-2023-lectures',
      where: 'lecture 1, amount of matrix',
      given: '100 g of carbon, 1.76 and 1.20 g/cm³',
      unit: 'g',
      tolerance: { relative: 0.001 },
      because: 'three digits of the formula',
    },
    (
      [
        [0.4, 102.3],
        [0.5, 68.2],
        [0.6, 45.5],
      ] as const
    ).map(([fibreFraction, expected]): Row => [
      `resin-for-fibre-${fibreFraction}`,
      `Resin for 100 g of fibre at ${fibreFraction * 100} %`,
      expected,
      () => resinMass(0.1, { ...carbon, fibreFraction }) * 1e3,
    ]),
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'willberg-2023-lectures',
      where: 'lecture 1, fibre volume fractions that are reached',
      given: '',
      unit: '',
      tolerance: { absolute: 0.05 },
      because: 'the lecture gives round figures; the ceiling as 0.65 to 0.70',
    },
    [
      ['fraction-hand', 'Fibre volume fraction by hand', 0.4, () => FIBRE_FRACTIONS.handLaid],
      ['fraction-pressed', 'Fibre volume fraction of prepreg or winding', 0.6, () => FIBRE_FRACTIONS.pressed],
      ['fraction-ceiling', 'Highest fibre volume fraction', 0.675, () => FIBRE_FRACTIONS.ceiling],
    ],
  ),
  ...rows(
    {
      kind: 'published formula, our number',
      source: 'willberg-2023-lectures',
      where: 'lecture 1, number of rovings',
      given: '2 mm², volume fraction 0.5, 3K',
      unit: 'tows',
      tolerance: { relative: 0.002 },
      because: 'three digits of the formula',
    },
    [
      [
        'tows-in-section',
        'Tows that fill a section',
        8.89,
        () => towsInSection({ area: 2e-6, fibreFraction: 0.5, linearDensity: TOWS['3K'], density: 1760 }),
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'willberg-2023-lectures',
      where: 'lecture 1, rovings of like section',
      given: 'carbon 12K of 800 tex against glass of 1200 tex, 1.76 and 2.54 g/cm³',
      unit: '',
      tolerance: { relative: 0.05 },
      because: 'the lecture says the same section, as a rule to remember',
    },
    [
      [
        'carbon-glass-section',
        'Fibre in a carbon tow over that in a glass roving',
        1,
        () => area('12K') / fibreArea({ linearDensity: 1200e-6, density: 2540 }),
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'willberg-2023-lectures',
      where: 'exercise 1 on load introduction, after Schürmann ch. 21',
      given: '120 kN on a loop of 25 to 40 mm radius, 30 mm wide',
      unit: 'MPa',
      tolerance: { relative: 0.001 },
      because: 'the exercise prints three digits',
    },
    [
      ['loop-pressure', 'Pressure of a loop on its pin', 80, () => strap.pressure / 1e6],
      ['loop-leg', 'Stress in a leg of a loop', 133.3, () => strap.leg / 1e6],
    ],
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'own-derivation',
      where: 'equilibrium of a thin ring, p r/t',
      given: 'the loop above as a ring under 80 MPa',
      unit: 'MPa',
      tolerance: { relative: 0.001 },
      because: 'exact; four digits',
    },
    [['loop-as-ring', 'Leg stress by the hoop formula', 133.33, () => (strap.pressure * 0.025) / 0.015 / 1e6]],
  ),
  ...rows(
    {
      kind: 'published formula, our number',
      source: 'lekhnitskii-1968-plates',
      where: 'cylindrically orthotropic ring under inner pressure',
      given: '',
      unit: '',
      tolerance: { relative: 0.001 },
      because: 'four digits of the formula',
      note: 'Formula put together from the ring solution, not read as printed here.',
    },
    (
      [
        [1, 1.6, 1.369],
        [3.75, 1.6, 1.611],
        [3, 2, 2.077],
        [12, 1.6, 2.245],
      ] as const
    ).map(([stiffness, ratio, expected]): Row => [
      `loop-factor-${stiffness}-${ratio}`,
      'Inner fibre of a thick loop over its mean',
      expected,
      () => loop(stiffness, ratio),
      { given: `stiffness ratio ${stiffness}, radius ratio ${ratio}` },
    ]),
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'willberg-2023-lectures',
      where: 'lecture 13, stress rise in loops',
      given: '',
      unit: '',
      tolerance: { relative: 0.15 },
      because: 'read from a chart, or printed as about 2',
    },
    [
      [
        'loop-chart-3-2',
        'Inner fibre of a thick loop over its mean',
        2,
        () => loop(3, 2),
        { given: 'stiffness ratio 3, radius ratio 2' },
      ],
      [
        'loop-chart-3.75-1.6',
        'Inner fibre of a thick loop over its mean',
        1.8,
        () => loop(3.75, 1.6),
        { given: 'stiffness ratio 3.75, radius ratio 1.6' },
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'capstan-encyclopaedia',
      where: 'table of holding ratios',
      given: '5 turns, friction 0.6',
      unit: '',
      tolerance: { relative: 1e-8 },
      because: 'the article prints every digit',
    },
    [
      [
        'capstan-5-0.6',
        'Pull that turns hold against',
        153552935,
        () => capstanRatio({ friction: 0.6, angle: 10 * Math.PI }),
      ],
    ],
  ),
  ...rows(
    {
      kind: 'from memory',
      source: 'capstan-encyclopaedia',
      where: 'table of holding ratios',
      given: '',
      unit: '',
      tolerance: { relative: 0.015 },
      because: 'the table prints two or three digits',
    },
    (
      [
        [1, 0.1, 1.9],
        [1, 0.3, 6.6],
        [2, 0.3, 43],
        [3, 0.3, 286],
      ] as const
    ).map(([turns, friction, expected]): Row => [
      `capstan-${turns}-${friction}`,
      'Pull that turns hold against',
      expected,
      () => capstanRatio({ friction, angle: 2 * Math.PI * turns }),
      { given: `${turns} turns, friction ${friction}` },
    ]),
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'ncert-2006-chemistry',
      where: 'exercise, chemical kinetics',
      given: 'rate doubles from 298 K to 308 K, R = 8.314',
      unit: 'kJ/mol',
      tolerance: { relative: 0.001 },
      because: 'the solution prints 52.897 from rounded logarithms',
    },
    [
      [
        'activation-energy-of-doubling',
        'Activation energy behind twice the rate in ten kelvin',
        52.897,
        () => activationEnergy({ factor: 2, from: 298, to: 308 }) / 1e3,
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'bonstone-ten-degree-rule',
      where: 'example',
      given: 'gel 10 min and cure 60 min at 25 °C',
      unit: 'min',
      tolerance: { relative: 1e-9 },
      because: 'exact',
    },
    [
      ['cure-35-gel', 'Gel time at 35 °C', 5, () => cure(10, 10)],
      ['cure-35-full', 'Cure time at 35 °C', 30, () => cure(60, 10)],
    ],
  ),
  ...rows(
    {
      kind: 'published formula, our number',
      source: 'bonstone-ten-degree-rule',
      where: 'example; the values for 45 °C are cut off',
      given: 'gel 10 min and cure 60 min at 25 °C',
      unit: 'min',
      tolerance: { relative: 1e-9 },
      because: 'exact',
    },
    [
      ['cure-45-gel', 'Gel time at 45 °C', 2.5, () => cure(10, 20)],
      ['cure-45-full', 'Cure time at 45 °C', 15, () => cure(60, 20)],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'cure-rate-note',
      where: 'range of factors',
      given: 'ten kelvin warmer',
      unit: '',
      tolerance: { absolute: 1e-9 },
      because: 'exact',
    },
    [
      ['cure-range-slow', 'Least change of rate in ten kelvin', 1.5, () => RATE_PER_TEN.slowest],
      ['cure-range-fast', 'Largest change of rate in ten kelvin', 2.5, () => RATE_PER_TEN.fastest],
    ],
  ),
  ...rows(
    {
      kind: 'published formula, our number',
      source: 'ncert-2006-chemistry',
      where: 'Arrhenius equation',
      given: '52.9 kJ/mol',
      unit: '',
      tolerance: { relative: 0.005 },
      because: 'three digits of the formula',
      note: 'The doubling is no law: with one activation energy the factor falls with temperature.',
    },
    [
      ['arrhenius-15-25', 'Change of rate from 15 to 25 °C', 2.1, () => rate(15, 25)],
      ['arrhenius-70-80', 'Change of rate from 70 to 80 °C', 1.69, () => rate(70, 80)],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'malmgren-glossary',
      where: 'hardening time, pot life',
      given: 'hardening time of 7 days at 20 °C',
      unit: 'd',
      tolerance: { relative: 1e-9 },
      because: 'the glossary says half',
      note: 'Read together with another maker’s page; which of the two says which is our reading.',
    },
    [
      ['cure-20-30', 'Hardening time at 30 °C', 3.5, () => cure(7 * 1440, 10) / 1440],
      ['stated-pot', 'Pot for which pot life is stated', 100, () => STATED_POT * 1e3, { unit: 'g', given: '' }],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'adhesive-maker-cure-page',
      where: 'two-part epoxies',
      given: '',
      unit: '',
      tolerance: { relative: 1e-9 },
      because: 'exact',
      note: 'Read together with another maker’s page; which of the two says which is our reading.',
    },
    [
      ['cure-maker-ten', 'Cure time ten degrees warmer', 0.5, () => cure(1, 10)],
      ['large-pot', 'Mix above which a pot heats itself', 50, () => LARGE_POT * 1e3, { unit: 'g' }],
    ],
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'own-derivation',
      where: 'trapezium rule in x, 200 000 steps',
      given: 'tube 14 mm, glue line 0.2 mm, fillet 1.5 mm',
      unit: 'mm',
      tolerance: { relative: 1e-6 },
      because: 'the rule’s own error is smaller',
    },
    [
      [
        'bond-working-width',
        'Even glue line as stiff in shear as a plate on a tube',
        0.2e-3 * quadrature(wide.width / 2, () => 1) * 1e3,
        () => wide.workingWidth * 1e3,
      ],
    ],
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'own-derivation',
      where: 'trapezium rule in x; stress searched in steps of a micrometre',
      given: 'as above, plate 26 mm long, tipped sideways by 1 N·m',
      unit: 'MPa',
      tolerance: { relative: 1e-5 },
      because: 'the rule’s own error is smaller',
    },
    [
      [
        'bond-peak-tension',
        'Highest pull across the glue of a tipped plate',
        (() => {
          const second = quadrature(wide.width / 2, (x) => x * x);
          let highest = 0;
          for (let x = 0; x <= wide.width / 2; x += 1e-6) highest = Math.max(highest, x / tangentGap(wide, x));
          return highest / (0.026 * second) / 1e6;
        })(),
        () => tipped.tension.across / 1e6,
      ],
    ],
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'own-derivation',
      where: 'distances between circle, line and point',
      given: 'tube 14 mm, glue line 0.2 mm, fillet 1.5 mm, fill limit 0.5 mm',
      unit: 'mm',
      tolerance: { relative: 1e-12 },
      because: 'exact',
    },
    [
      ['fill-edge-gap', 'Gap where the fill limit ends the bond', 0.5, () => bond(0.5e-3, 0).edgeGap * 1e3],
      [
        'fillet-touches-tube',
        'Distance from the tube’s axis to the fillet’s',
        8.5,
        () => Math.hypot(wide.filletReachOnPlate, 0.007 + 0.2e-3 - 1.5e-3) * 1e3,
      ],
      [
        'fillet-glue',
        'Glue between plate, tube and both fillets, against a count of a million small strips',
        countedGlue() * 1e6,
        () => wide.glueArea * 1e6,
        {
          unit: 'mm²',
          where: 'midpoint rule across the height',
          tolerance: { relative: 1e-6 },
          because: 'the rule’s own error is smaller',
        },
      ],
    ],
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'own-derivation',
      where: 'perimeter as the mean width over all directions (Cauchy)',
      given: 'tube 14 mm, plate 2 mm thick, glue line 0.2 mm',
      unit: 'mm',
      tolerance: { relative: 1e-6 },
      because: 'the sum over directions is finer than that',
    },
    (
      [
        [0.026, 'wide'],
        [0.012, 'narrow'],
      ] as const
    ).map(([plateWidth, name]): Row => [
      `wrap-turn-${name}`,
      'One turn of tow round plate and tube',
      hullByWidths(plateWidth / 2, 0.0072, 0.0092) * 1e3,
      () => wrapPath({ tubeDiameter: 0.014, plateWidth, plateThickness: 0.002, bondLine: 0.2e-3 }).length * 1e3,
      { given: `tube 14 mm, plate ${plateWidth * 1e3} × 2 mm, glue line 0.2 mm` },
    ]),
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'own-derivation',
      where: 'E d/(2 r σ) = 1',
      given: 'edge of 0.228 mm radius, standard-modulus fibre',
      unit: '',
      tolerance: { absolute: 0.001 },
      because: 'the radius is rounded',
    },
    [
      [
        'bent-fibre-breaks',
        'Strength left of a fibre bent until it breaks',
        0,
        () => bentFibreShare({ ...STANDARD_CARBON_FIBRE, edgeRadius: 0.228e-3 }),
      ],
    ],
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'own-derivation',
      where: 'equilibrium by hand',
      given: 'two screws 16 mm apart, base 20 mm',
      unit: 'N',
      tolerance: { relative: 1e-9 },
      because: 'exact',
    },
    [
      [
        'motor-screws-torque',
        'Shear in each of two screws under 1 N·m',
        62.5,
        () =>
          motorScrewShare({
            screws: motorScrewPlaces({ across: 0.016 }),
            baseDiameter: 0.02,
            load: { shear: 0, lift: 0, torque: 1, tipping: 0 },
          }).shear,
      ],
      [
        'motor-screws-four-torque',
        'Shear in each of four screws under 1 N·m',
        31.25,
        () =>
          motorScrewShare({
            screws: motorScrewPlaces({ along: 0.016, across: 0.016 }),
            baseDiameter: 0.02,
            load: { shear: 0, lift: 0, torque: 1, tipping: 0 },
          }).shear,
      ],
      [
        'motor-screws-tipping',
        'Pull in the far screw of two on the edge of a base of 16 mm, tipped by 0.1 N·m',
        (0.1 / 0.016) * ((1 + Math.SQRT2) / 2),
        () =>
          motorScrewShare({
            screws: motorScrewPlaces({ across: 0.016 }),
            baseDiameter: 0.016,
            load: { shear: 0, lift: 0, torque: 0, tipping: 0.1 },
          }).tension,
        {
          where: 'largest of (1+c)/(1+c²) over the direction of tipping, c the cosine',
          given: 'two screws 16 mm apart, base 16 mm',
          tolerance: { relative: 1e-4 },
          because: 'directions are tried every five degrees',
        },
      ],
    ],
  ),
  ...rows(
    {
      kind: 'from memory',
      source: 'iso-2004-4762',
      where: 'mass of 1000 screws',
      given: 'steel, 7.85 g/cm³',
      unit: 'g',
      tolerance: { relative: 0.1 },
      because: 'proportions stand for the standard’s drawing',
    },
    (
      [
        [6, 0.71],
        [10, 0.88],
        [16, 1.16],
      ] as const
    ).map(([length, expected]): Row => [
      `cap-screw-mass-M3x${length}`,
      `Mass of a cap screw M3 × ${length}`,
      expected,
      () =>
        screwMass({
          thread: COARSE_THREADS.M3,
          length: length * 1e-3,
          head: 'cap',
          headDiameter: SEAT_DIAMETERS.M3['cap-head'],
          density: 7850,
        }) * 1e3,
    ]),
  ),
  ...rows(
    {
      kind: 'common practice',
      source: 'common-practice',
      where: 'motor patterns by the distance between opposite holes',
      given: '5-inch motors',
      unit: 'mm',
      tolerance: { relative: 1e-9 },
      because: 'exact',
    },
    [
      [
        'pattern-16x16',
        'Distance between opposite holes of a 16x16 pattern',
        16,
        () => MOTOR_PATTERNS['16x16'].first * 1e3,
      ],
    ],
  ),
];

export const missing: MissingCheck[] = [
  {
    topic: 'mount',
    what: 'A pull-off or tipping test of a flat plate bonded on a round tube',
    instead: 'The stiffness of the glue by its gap, against quadrature; strengths are inputs.',
  },
  {
    topic: 'mount',
    what: 'A breaking test of hand-laid tow over a plate’s edge',
    instead: 'Fibre strength from a data sheet, the ring solution for a thick loop, and a stated share for hands.',
  },
  {
    topic: 'mount',
    what: 'Depth of thread and winding of small motors',
    instead: 'Inputs that the reader measures; the defaults are common practice.',
  },
];
