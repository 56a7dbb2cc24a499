/** Stacks of plies: stiffness, coupling, ply stresses, first ply failure. */
export { requirePlies, requirePlyMaterial, type Ply, type PlyMaterial, type PlyStrengths } from './ply.ts';
export { plyInvariants, reducedStiffness, rotatedStiffness, type PlyInvariants } from './reduced-stiffness.ts';
export { laminateStiffness, type LaminateStiffness } from './stiffness.ts';
export { flatCompliance, laminateCompliance, type LaminateCompliance } from './compliance.ts';
export { flexuralConstants, inPlaneConstants, massPerArea, turned, type LaminateConstants } from './constants.ts';
export {
  laminateResponse,
  stressInPly,
  type LaminateLoad,
  type LaminateResponse,
  type PlyPoint,
} from './ply-stress.ts';
export { maximumStress, tsaiWu, type FailureMode, type PlyFailure } from './ply-failure.ts';
export { firstPlyFailure, type FirstPlyFailure } from './first-ply.ts';
export { flexuralStrength, inPlaneStrength, type LaminateStrength } from './strength.ts';
export { plyFromFibre, type FibreAndResin } from './micromechanics.ts';
export { plyMaterial, UNIDIRECTIONAL_PLY, WOVEN_PLY, type LibraryPly } from './ply-library.ts';
export { joinedPlies, layupFromCounts, type LayupCounts, type PlyDirection } from './layup.ts';
export type { Matrix3, Vector3 } from './matrix.ts';
