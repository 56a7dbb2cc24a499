import { GPA, materialValue, MPA, spread, type MaterialValue } from '../material/value.ts';
import type { PlyMaterial } from './ply.ts';

/** A ply with the spread and the worth of each number. */
export interface LibraryPly {
  name: string;
  /** [kg/m³] */
  density: MaterialValue;
  modulusAlong: MaterialValue;
  modulusAcross: MaterialValue;
  shearModulus: MaterialValue;
  poissonRatio: MaterialValue;
  alongTension: MaterialValue;
  alongCompression: MaterialValue;
  acrossTension: MaterialValue;
  acrossCompression: MaterialValue;
  shear: MaterialValue;
}

const SHEET = 'woven-plate-data-sheet';
const SPREAD_NOTE = 'Typical value from the sheet; low and high are our estimate of what makers and batches do to it.';
const sheet = (unit: number, low: number, typical: number, high: number): MaterialValue =>
  materialValue(spread(unit, low, typical, high), 'data sheet', SHEET, SPREAD_NOTE);

/** Fabric with half its fibre each way, about half fibre by volume. */
export const WOVEN_PLY: LibraryPly = {
  name: 'Woven fabric, standard carbon',
  density: sheet(1, 1500, 1600, 1600),
  modulusAlong: sheet(GPA, 55, 70, 75),
  modulusAcross: sheet(GPA, 55, 70, 75),
  shearModulus: sheet(GPA, 4, 5, 6),
  poissonRatio: sheet(1, 0.04, 0.1, 0.13),
  alongTension: sheet(MPA, 450, 600, 800),
  alongCompression: sheet(MPA, 400, 570, 700),
  acrossTension: sheet(MPA, 450, 600, 800),
  acrossCompression: sheet(MPA, 400, 570, 700),
  shear: sheet(MPA, 70, 90, 110),
};

/** All fibre one way, about 60 % fibre by volume. */
export const UNIDIRECTIONAL_PLY: LibraryPly = {
  name: 'Unidirectional, standard carbon',
  density: sheet(1, 1500, 1600, 1600),
  modulusAlong: sheet(GPA, 115, 135, 145),
  modulusAcross: sheet(GPA, 8, 10, 11),
  shearModulus: sheet(GPA, 4, 5, 6),
  poissonRatio: sheet(1, 0.25, 0.3, 0.35),
  alongTension: sheet(MPA, 1200, 1500, 2000),
  alongCompression: sheet(MPA, 800, 1200, 1400),
  acrossTension: sheet(MPA, 30, 50, 60),
  acrossCompression: sheet(MPA, 150, 250, 280),
  shear: sheet(MPA, 50, 70, 90),
};

/**
 * A ply of the library as numbers.
 * @param ply - from the library
 * @param pick - which of its three figures
 * @returns elastic constants and strengths [Pa]
 * @validity defaults for comparing stacks, not allowables
 * @throws InputError never: the library is checked by tests
 * @source woven-plate-data-sheet
 */
export function plyMaterial(ply: LibraryPly, pick: 'low' | 'typical' | 'high' = 'typical'): PlyMaterial {
  const { modulusAlong, modulusAcross, shearModulus, poissonRatio } = ply;
  return {
    modulusAlong: modulusAlong[pick],
    modulusAcross: modulusAcross[pick],
    shearModulus: shearModulus[pick],
    poissonRatio: poissonRatio[pick],
    strengths: {
      alongTension: ply.alongTension[pick],
      alongCompression: ply.alongCompression[pick],
      acrossTension: ply.acrossTension[pick],
      acrossCompression: ply.acrossCompression[pick],
      shear: ply.shear[pick],
    },
  };
}
