import {
  PULTRUDED_TUBE,
  QUASI_ISOTROPIC_PLATE,
  ROLL_WRAPPED_TUBE,
  WOVEN_PLATE,
  type CarbonPart,
} from '@frameworthy/shared/material';
import type { ArmValues } from './inputs.ts';

export interface ArmMaterial {
  youngsModulus: number;
  shearModulus: number;
  density: number;
  /** In bending along the arm. */
  strength: number;
}

export interface TubeMaterial extends ArmMaterial {
  /** Round the tube. */
  hoopModulus: number;
}

/** Modulus round a tube over that along it where nothing is known. */
const HOOP_SHARE = 0.1;

const fromLibrary = (part: CarbonPart): ArmMaterial => ({
  youngsModulus: part.youngsModulus.typical,
  shearModulus: part.shearModulus.typical,
  density: part.density.typical,
  strength: part.bendingStrength.typical,
});

export function tubeMaterial(values: ArmValues): TubeMaterial {
  if (values.tubeMaterial === 'own') {
    return {
      youngsModulus: values.tubeModulus,
      shearModulus: values.tubeShear,
      density: values.tubeDensity,
      strength: values.tubeStrength,
      hoopModulus: HOOP_SHARE * values.tubeModulus,
    };
  }
  const tube = values.tubeMaterial === 'pultruded' ? PULTRUDED_TUBE : ROLL_WRAPPED_TUBE;
  return { ...fromLibrary(tube), hoopModulus: tube.hoopModulus.typical };
}

export function stripMaterial(values: ArmValues): ArmMaterial {
  if (values.stripMaterial === 'own') {
    return {
      youngsModulus: values.stripModulus,
      shearModulus: values.stripShear,
      density: values.stripDensity,
      strength: values.stripStrength,
    };
  }
  return fromLibrary(values.stripMaterial === 'quasi' ? QUASI_ISOTROPIC_PLATE : WOVEN_PLATE);
}
