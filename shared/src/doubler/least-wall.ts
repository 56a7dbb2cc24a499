import { doubledTube } from './doubled-tube.ts';
import { armStress } from './arm-stress.ts';
import { tubeDoubler } from './tube-doubler.ts';
import { requireTubeDoubler, type TubeDoublerGiven } from './tube-doubler-given.ts';

export interface LeastWall {
  /** Thinnest sleeve wall that holds at the outer hole; 0 where the bare tube does [m]. */
  wall: number;
  /** Length that this wall needs; 0 where no sleeve is needed [m]. */
  length: number;
  /** Mass of that sleeve [kg]. */
  mass: number;
  /** False where even a plug without a bore is not enough; wall, length and mass are then those of the plug. */
  enough: boolean;
}

/** Whether tube and sleeve hold at the outer hole once the sleeve has taken up its share. */
function holds(given: TubeDoublerGiven): boolean {
  const section = doubledTube(given);
  const { bare, tube, sleeve } = armStress(
    // A sleeve to the motor has its whole share at the screw; the lead-in is the length's business, not the wall's.
    { ...given, length: given.edgeDistance + given.screwSpacing + given.armLength, taper: 0 },
    section,
    { position: 0, sharing: section.atHole },
  );
  return (
    bare <= given.holeShare * given.tubeStrength ||
    (tube <= given.holeShare * given.tubeStrength && sleeve <= given.holeShare * given.sleeveStrength)
  );
}

/**
 * The sleeve wall that holds at the outer hole for the least mass.
 * $$t^* = \min\{t : \sigma_t(0;t)\le k_h\sigma_{all}\ \text{and}\ \sigma_i(0;t)\le k_h\sigma_{all,i}\}$$
 * @param given - as for `tubeDoubler`; its wall and length are not used
 * @returns wall, the length it needs [m] and its mass [kg]
 * @validity as `tubeDoubler`; the adhesive is judged apart
 * @throws InputError for values that are not physical
 * @derivation More wall at the same outside only lowers the stresses, and lengthens the lead-in, so mass rises with wall:
 * the lightest wall that holds is the thinnest. Found by halving.
 */
export function leastSleeveWall(given: TubeDoublerGiven): LeastWall {
  requireTubeDoubler(given);
  const withWall = (sleeveWall: number): TubeDoublerGiven => ({ ...given, sleeveWall });
  const plug = (given.sleeveOutside / 2) * (1 - 1e-9);
  let low = Math.min(1e-7, plug);
  let high = plug;
  const bare = doubledTube(given).atHole.tube;
  const bareStress = (given.tipForce * given.armLength * bare.extremeFibre) / bare.secondMomentOfArea;
  if (bareStress <= given.holeShare * given.tubeStrength) return { wall: 0, length: 0, mass: 0, enough: true };
  const enough = holds(withWall(plug));
  for (let i = 0; enough && i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (holds(withWall(middle))) high = middle;
    else low = middle;
  }
  const { required, section } = tubeDoubler(withWall(high));
  return {
    wall: high,
    length: required.length,
    mass: given.sleeveDensity * section.geometry.sleeve.area * Math.max(required.length - given.taper / 2, 0),
    enough,
  };
}
