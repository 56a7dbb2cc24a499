import type { Warning } from '../error.ts';
import { requirePositive } from '../require.ts';
import { preloadFromTorque, TIGHTENING_SCATTER, torqueFromPreload } from './preload.ts';
import { ringPinch } from './ring-pinch.ts';

export interface Clamp {
  /** Of the tube [m]. */
  outerDiameter: number;
  /** Of the tube, with a bonded sleeve's wall added where there is one [m]. */
  wall: number;
  /** Length of tube that one screw presses on [m]. */
  clampLength: number;
  /** Strength of the wall in bending round the tube [Pa]. */
  hoopBendingStrength: number;
  /** [-] */
  torqueCoefficient: number;
  /** Of the screw [m]. */
  screwDiameter: number;
}

export interface ClampLimit {
  /** Clamping force at which the wall cracks [N]. */
  force: number;
  /** Largest torque meant, so that even the high end of the tightening scatter stays below the force [N·m]. */
  torque: number;
  /** Torque at which the wall cracks if the preload comes out as meant [N·m]. */
  crackTorque: number;
  warnings: readonly Warning[];
}

/**
 * Largest tightening torque that a tube between two plates takes.
 * $$F = \frac{\pi\,t^2 b\,\sigma_h}{6 R k},\quad T = \frac{K d F}{1 + \text{scatter}}$$
 * @param clamp - tube, clamp length, strength, screw
 * @returns clamping force and torques
 * @validity as ringPinch: no help from the tube beside the clamp, no block or sleeve standing in the bore unbonded
 * @throws InputError when a number is out of range
 * @source young-2002-roark, Table 9.2 case 1; speck-2015-fastening, p. 85
 */
export function clampLimit(clamp: Clamp): ClampLimit {
  requirePositive(clamp.clampLength, { parameter: 'clampLength', quantity: 'clamp length', kind: 'length' });
  requirePositive(clamp.hoopBendingStrength, {
    parameter: 'hoopBendingStrength',
    quantity: 'hoop bending strength',
    kind: 'stress',
  });
  const perUnit = ringPinch(clamp, 1).stress;
  const force = (clamp.hoopBendingStrength / perUnit) * clamp.clampLength;
  const screw = { torqueCoefficient: clamp.torqueCoefficient, diameter: clamp.screwDiameter };
  requirePositive(clamp.screwDiameter, { parameter: 'screwDiameter', quantity: 'screw diameter', kind: 'length' });
  const crackTorque = torqueFromPreload(force, { ...screw });
  const thick = clamp.outerDiameter / 2 - clamp.wall < clamp.wall;
  return {
    force,
    torque: crackTorque / (1 + TIGHTENING_SCATTER),
    crackTorque,
    warnings: thick
      ? [{ code: 'wall-very-thick', message: 'The bore is smaller than the wall: a ring is no longer a fair picture.' }]
      : [],
  };
}

/**
 * Share of the wall's strength that a tightening torque uses at the high end of its scatter.
 * $$u = \frac{(1+\text{scatter})\,T}{K d F_{max}}$$
 * @param clamp - tube, clamp length, strength, screw
 * @param torque - tightening torque meant [N·m]
 * @returns use [-]; the wall cracks at 1
 * @validity as clampLimit
 * @throws InputError when a number is out of range
 * @source young-2002-roark, Table 9.2 case 1; chambers-1995-tm106943 for the scatter
 */
export function clampUse(clamp: Clamp, torque: number): number {
  const { force } = clampLimit(clamp);
  const { high } = preloadFromTorque({
    torque,
    torqueCoefficient: clamp.torqueCoefficient,
    diameter: clamp.screwDiameter,
  });
  return high / force;
}
