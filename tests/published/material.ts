import { ALUMINIUM_7075_T6, PULTRUDED_TUBE, STEEL, TITANIUM_6AL_4V, WOVEN_PLATE } from '@frameworthy/shared/material';
import type { MissingCheck, PublishedCase } from './row.ts';

const KSI = 6.894757293;
type Row = [id: string, what: string, unit: string, expected: number, compute: () => number];
const rows = (
  shared: Pick<PublishedCase, 'source' | 'where' | 'given' | 'tolerance' | 'because'>,
  list: Row[],
): PublishedCase[] =>
  list.map(([id, what, unit, expected, compute]) => ({
    topic: 'material',
    kind: 'published number',
    ...shared,
    id,
    what,
    unit,
    expected,
    compute,
  }));

export const cases: PublishedCase[] = [
  ...rows(
    {
      source: 'pultruded-tube-data-sheet',
      where: 'table',
      given: 'fibre volume fraction 0.60',
      tolerance: { relative: 0.006 },
      because: 'the sheet prints two or three digits in US units',
    },
    [
      [
        'pultruded-modulus',
        'Flexural modulus of a pultruded tube',
        'Msi',
        18.5,
        () => PULTRUDED_TUBE.youngsModulus.typical / KSI / 1e9,
      ],
      [
        'pultruded-tensile-modulus',
        'Tensile modulus of a pultruded tube',
        'Msi',
        19.5,
        () => PULTRUDED_TUBE.youngsModulus.high / KSI / 1e9,
      ],
      [
        'pultruded-strength',
        'Flexural strength of a pultruded tube',
        'GPa',
        1.37,
        () => PULTRUDED_TUBE.bendingStrength.high / 1e9,
      ],
      [
        'pultruded-shear',
        'Shear strength of a pultruded tube',
        'ksi',
        6,
        () => PULTRUDED_TUBE.shearStrength.typical / KSI / 1e6,
      ],
      [
        'pultruded-density',
        'Density of a pultruded tube',
        'lb/in³',
        0.054,
        () => PULTRUDED_TUBE.density.typical / 27679.9047,
      ],
    ],
  ),
  ...rows(
    {
      source: 'woven-plate-data-sheet',
      where: 'table, woven',
      given: 'fibre volume fraction 0.5',
      tolerance: { relative: 1e-9 },
      because: 'taken over as printed',
    },
    [
      ['woven-modulus', 'Modulus of a woven plate', 'GPa', 70, () => WOVEN_PLATE.youngsModulus.typical / 1e9],
      ['woven-shear-modulus', 'Shear modulus of a woven plate', 'GPa', 5, () => WOVEN_PLATE.shearModulus.typical / 1e9],
      [
        'woven-strength',
        'Compressive strength of a woven plate',
        'MPa',
        570,
        () => WOVEN_PLATE.bendingStrength.typical / 1e6,
      ],
      [
        'woven-shear',
        'In-plane shear strength of a woven plate',
        'MPa',
        90,
        () => WOVEN_PLATE.shearStrength.typical / 1e6,
      ],
    ],
  ),
  ...rows(
    {
      source: 'aluminum-association-7075',
      where: 'typical values',
      given: '7075-T6',
      tolerance: { relative: 1e-9 },
      because: 'taken over as printed',
    },
    [
      [
        '7075-tensile',
        'Tensile strength of aluminium 7075-T6',
        'MPa',
        572,
        () => ALUMINIUM_7075_T6.tensileStrength.typical / 1e6,
      ],
      [
        '7075-yield',
        'Yield strength of aluminium 7075-T6',
        'MPa',
        503,
        () => ALUMINIUM_7075_T6.yieldStrength.typical / 1e6,
      ],
    ],
  ),
  ...rows(
    {
      source: 'titanium-data-sheet',
      where: 'minimum values',
      given: 'annealed',
      tolerance: { relative: 0.001 },
      because: 'printed as 130 and 120 ksi',
    },
    [
      [
        'titanium-tensile',
        'Least tensile strength of Ti-6Al-4V',
        'ksi',
        130,
        () => TITANIUM_6AL_4V.tensileStrength.low / KSI / 1e6,
      ],
      [
        'titanium-yield',
        'Least yield strength of Ti-6Al-4V',
        'ksi',
        120,
        () => TITANIUM_6AL_4V.yieldStrength.low / KSI / 1e6,
      ],
    ],
  ),
  ...rows(
    {
      source: 'iso-2013-898',
      where: 'mechanical properties',
      given: 'class 10.9',
      tolerance: { relative: 1e-9 },
      because: 'taken over as printed',
    },
    [['steel-tensile', 'Least tensile strength of class 10.9', 'MPa', 1040, () => STEEL.tensileStrength.typical / 1e6]],
  ),
];

export const missing: MissingCheck[] = [
  {
    topic: 'material',
    what: 'Bearing, hoop bending and in-plane shear strength of small roll-wrapped tubes',
    instead: 'Estimates with wide spreads, named as such; a crush test of a cut-off is the way to know.',
  },
  {
    topic: 'material',
    what: 'Design minima of 7075-T6 sheet',
    instead: 'Typical values; the minima are remembered only.',
  },
];
