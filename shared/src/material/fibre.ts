import type { Fibre } from './material.ts';
import { GPA, materialValue, MPA, spread } from './value.ts';

const NOTE = 'The sheet prints one figure; low and high are our estimate of what batches do to it.';

/** What plies and tows of frames are made of. */
export const STANDARD_FIBRE: Fibre = {
  name: 'Standard-modulus carbon fibre',
  density: materialValue(spread(1, 1750, 1760, 1800), 'data sheet', 'carbon-fibre-data-sheet', NOTE),
  youngsModulus: materialValue(spread(GPA, 225, 230, 240), 'data sheet', 'carbon-fibre-data-sheet', NOTE),
  tensileStrength: materialValue(spread(MPA, 3200, 3530, 4000), 'data sheet', 'carbon-fibre-data-sheet', NOTE),
};
