import { PROPERTY_CLASSES, type PropertyClass } from '../joint/index.ts';

/**
 * What small screws are made of. Titanium: least values of annealed bar, titanium-data-sheet; the shear ratio from its
 * typical shear strength. Aluminium: typical values, aluminum-association-7075, which a screw may miss.
 */
export const SCREW_MATERIALS = {
  ...PROPERTY_CLASSES,
  titanium: { label: 'titanium Ti-6Al-4V', tensileStrength: 896e6, proofStress: 827e6, shearRatio: 0.6 },
  aluminium: { label: 'aluminium 7075-T6', tensileStrength: 572e6, proofStress: 503e6, shearRatio: 0.58 },
} as const satisfies Record<string, PropertyClass>;

export type ScrewMaterial = keyof typeof SCREW_MATERIALS;
