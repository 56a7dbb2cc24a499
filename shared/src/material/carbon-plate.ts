import type { CarbonPlate } from './material.ts';
import { GPA, materialValue, MPA, spread } from './value.ts';

const HEAD_PRESSURE = materialValue(
  spread(MPA, 100, 150, 250),
  'common practice',
  'common-practice',
  'A cautious number: matrix and edge of the head decide, hardly the order of the plies.',
);

/** Plate of woven plies at 0/90, as cut for arms and body plates. */
export const WOVEN_PLATE: CarbonPlate = {
  name: 'Woven carbon plate, 0/90',
  density: materialValue(spread(1, 1500, 1600, 1600), 'data sheet', 'woven-plate-data-sheet'),
  youngsModulus: materialValue(spread(GPA, 50, 70, 75), 'data sheet', 'woven-plate-data-sheet'),
  shearModulus: materialValue(spread(GPA, 4, 5, 6), 'data sheet', 'woven-plate-data-sheet'),
  bendingStrength: materialValue(
    spread(MPA, 400, 570, 700),
    'data sheet',
    'woven-plate-data-sheet',
    'Compression 570, tension 600.',
  ),
  shearStrength: materialValue(spread(MPA, 70, 90, 110), 'data sheet', 'woven-plate-data-sheet'),
  bearingStrength: materialValue(spread(MPA, 300, 450, 600), 'estimate', 'willberg-2023-lectures'),
  headPressure: HEAD_PRESSURE,
};

/** Plate with plies at 0, 90 and ±45 degrees in equal parts. */
export const QUASI_ISOTROPIC_PLATE: CarbonPlate = {
  name: 'Quasi-isotropic carbon plate',
  density: materialValue(spread(1, 1500, 1580, 1600), 'common practice', 'common-practice'),
  youngsModulus: materialValue(
    spread(GPA, 40, 47, 60),
    'estimate',
    'woven-plate-data-sheet',
    'Half the woven plies turned by 45°.',
  ),
  shearModulus: materialValue(
    spread(GPA, 14, 18, 24),
    'estimate',
    'woven-plate-data-sheet',
    'From E/2(1+ν) with ν of 0.3.',
  ),
  bendingStrength: materialValue(spread(MPA, 300, 420, 550), 'estimate', 'woven-plate-data-sheet'),
  shearStrength: materialValue(spread(MPA, 120, 180, 250), 'estimate', 'woven-plate-data-sheet'),
  bearingStrength: materialValue(spread(MPA, 300, 450, 600), 'estimate', 'willberg-2023-lectures'),
  headPressure: HEAD_PRESSURE,
};
