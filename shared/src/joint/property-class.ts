/** Strengths that a screw's marking promises. */
export interface PropertyClass {
  label: string;
  /** Least tensile strength [Pa]. */
  tensileStrength: number;
  /** Stress under proof load, or 0.2 % proof stress for stainless [Pa]. */
  proofStress: number;
  /** Shear strength of the thread over tensile strength [-]. */
  shearRatio: number;
}

/**
 * Property classes by marking. Shear ratios after the steelwork code: 0.6, but 0.5 for class 10.9 and what is harder or
 * work-hardened.
 * Strengths: iso-2013-898, mechanical properties; iso-2009-3506 for A2-70. Shear: en-2005-1993-1-8, Table 3.4.
 */
export const PROPERTY_CLASSES = {
  '8.8': { label: 'steel 8.8', tensileStrength: 800e6, proofStress: 580e6, shearRatio: 0.6 },
  '10.9': { label: 'steel 10.9', tensileStrength: 1040e6, proofStress: 830e6, shearRatio: 0.5 },
  '12.9': { label: 'steel 12.9', tensileStrength: 1220e6, proofStress: 970e6, shearRatio: 0.5 },
  'A2-70': { label: 'stainless A2-70', tensileStrength: 700e6, proofStress: 450e6, shearRatio: 0.6 },
} as const satisfies Record<string, PropertyClass>;

export type PropertyClassName = keyof typeof PROPERTY_CLASSES;
