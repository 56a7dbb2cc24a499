import type { Warning } from '@frameworthy/shared';
import { wallBucklingWarnings } from '@frameworthy/shared/beam';
import {
  CHARACTERISTIC_LENGTHS,
  COARSE_THREADS,
  PROPERTY_CLASSES,
  screwStrength,
  screwUse,
  slipForce,
  tubeRoot,
  type HoleMode,
  type HoleUse,
  type TubeRootResult,
} from '@frameworthy/shared/joint';
import { CARBON_CLAMPED, PULTRUDED_TUBE, ROLL_WRAPPED_TUBE } from '@frameworthy/shared/material';
import { massPerLength, roundTubeSection } from '@frameworthy/shared/section';
import type { Values } from '~/island/declaration.ts';
import type { inputs } from './inputs.ts';

export type RootValues = Values<typeof inputs>;

export interface RootResult {
  root: TubeRootResult;
  /** Share of the outer screw's strength, both planes together. */
  screw: number;
  /** Tube from its inner end to the motor axis, with sleeve over the root [kg]. */
  mass: number;
  screwDiameter: number;
}

export function strengthsOf(values: RootValues): { bearing: number; shear: number; bending: number; density: number } {
  if (values.tubeMaterial === 'own') {
    const { bearingStrength: bearing, shearStrength: shear, bendingStrength: bending } = values;
    return { bearing, shear, bending, density: ROLL_WRAPPED_TUBE.density.typical };
  }
  const tube = values.tubeMaterial === 'pultruded' ? PULTRUDED_TUBE : ROLL_WRAPPED_TUBE;
  return {
    bearing: tube.bearingStrength.typical,
    shear: tube.shearStrength.typical,
    bending: tube.bendingStrength.typical,
    density: tube.density.typical,
  };
}

/** The bare tube is bent most just outside the outer screw, where a sleeve has ended. */
export function wallWarnings({ tubeMaterial, outerDiameter, wall, armLength, ...force }: RootValues): Warning[] {
  const tube = tubeMaterial === 'pultruded' ? PULTRUDED_TUBE : ROLL_WRAPPED_TUBE;
  return wallBucklingWarnings({
    tube: { outerDiameter, wall },
    modulusAlong: tube.youngsModulus.typical,
    modulusRound: tube.hoopModulus.typical,
    moment: Math.hypot(force.horizontalForce, force.verticalForce) * armLength,
  });
}

export function compute(values: RootValues): RootResult {
  const thread = COARSE_THREADS[values.thread];
  const { density, ...strengths } = strengthsOf(values);
  const tube = { outerDiameter: values.outerDiameter, wall: values.wall };
  const root = tubeRoot({
    ...values,
    tube,
    screwDiameter: thread.diameter,
    slipForce:
      values.friction === 'counted'
        ? slipForce({ preload: values.preload, friction: CARBON_CLAMPED.friction.typical, faces: 2 })
        : 0,
    strengths: { ...strengths, characteristicLength: CHARACTERISTIC_LENGTHS.point },
  });
  const screw = screwUse(
    { shear: root.horizontal.outer, tension: root.vertical.outer, shearPlanes: 2 },
    screwStrength(thread, PROPERTY_CLASSES[values.grade]),
  );
  const rootLength = values.endDistance + values.screwSpacing;
  const sleeve =
    values.sleeveWall > 0
      ? massPerLength(
          roundTubeSection({ outerDiameter: values.outerDiameter - 2 * values.wall, wall: values.sleeveWall }).area,
          density,
        )
      : 0;
  const mass =
    massPerLength(roundTubeSection(tube).area, density) * (rootLength + values.armLength) + sleeve * rootLength;
  return { root, screw, mass, screwDiameter: thread.diameter };
}

export function useOf(result: RootResult, hole: HoleUse['hole'], mode: HoleMode): HoleUse {
  return result.root.uses.find((use) => use.hole === hole && use.mode === mode)!;
}

export const MODE_WORDS: Readonly<Record<HoleMode, string>> = {
  bearing: 'the screw crushing the edge of its hole',
  'tear-out': 'the wall tearing or splitting out past the screw',
  'net-section-horizontal': 'the drilled tube breaking sideways',
  'net-section-vertical': 'the drilled tube breaking upwards or downwards',
};
