import { ALUMINIUM_7075_T6, TITANIUM_6AL_4V } from '../material/metals.ts';
import { PROPERTY_CLASSES, type PropertyClass } from '../joint/index.ts';

/**
 * What small screws are made of. Titanium: least values of annealed bar, titanium-data-sheet; the shear ratio from its
 * typical shear strength. Aluminium: typical values, aluminum-association-7075, which a screw may miss.
 */
export const SCREW_MATERIALS = {
  ...PROPERTY_CLASSES,
  titanium: {
    label: 'titanium Ti-6Al-4V',
    tensileStrength: TITANIUM_6AL_4V.tensileStrength.low,
    proofStress: TITANIUM_6AL_4V.yieldStrength.low,
    shearRatio: 0.6,
  },
  aluminium: {
    label: 'aluminium 7075-T6',
    tensileStrength: ALUMINIUM_7075_T6.tensileStrength.typical,
    proofStress: ALUMINIUM_7075_T6.yieldStrength.typical,
    shearRatio: 0.58,
  },
} as const satisfies Record<string, PropertyClass>;

export type ScrewMaterial = keyof typeof SCREW_MATERIALS;
