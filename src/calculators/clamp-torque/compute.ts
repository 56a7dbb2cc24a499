import {
  clampLimit,
  clampUse,
  COARSE_THREADS,
  preloadFromTorque,
  ringPinch,
  type Clamp,
  type ClampLimit,
  type Preload,
  type RingPinch,
} from '@frameworthy/shared/joint';
import { PULTRUDED_TUBE, ROLL_WRAPPED_TUBE } from '@frameworthy/shared/material';
import type { Values } from '~/island/declaration.ts';
import type { inputs } from './inputs.ts';

export type ClampValues = Values<typeof inputs>;

export interface ClampResult {
  bare: ClampLimit & { use: number };
  doubled: ClampLimit & { use: number };
  preload: Preload;
  /** Wall of the bare tube at the preload meant. */
  pinch: RingPinch;
  screwDiameter: number;
  strength: number;
}

export function compute(values: ClampValues): ClampResult {
  const strength =
    values.tubeMaterial === 'own'
      ? values.hoopBendingStrength
      : (values.tubeMaterial === 'pultruded' ? PULTRUDED_TUBE : ROLL_WRAPPED_TUBE).hoopBendingStrength.typical;
  const screwDiameter = COARSE_THREADS[values.thread].diameter;
  const { outerDiameter, wall, clampLength, torqueCoefficient, torque } = values;
  const clamp = (walls: number): Clamp => ({
    outerDiameter,
    wall: walls,
    clampLength,
    hoopBendingStrength: strength,
    torqueCoefficient,
    screwDiameter,
  });
  const limit = (walls: number) => ({ ...clampLimit(clamp(walls)), use: clampUse(clamp(walls), torque) });
  const preload = preloadFromTorque({ torque, torqueCoefficient, diameter: screwDiameter });
  return {
    bare: limit(wall),
    doubled: limit(wall + values.sleeveWall),
    preload,
    pinch: ringPinch({ outerDiameter, wall }, preload.nominal / clampLength),
    screwDiameter,
    strength,
  };
}
