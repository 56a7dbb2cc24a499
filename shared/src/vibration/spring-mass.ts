import { requireNotNegative, requirePositive } from '../require.ts';

/**
 * Natural frequency of a mass on a spring.
 * $$f = \frac{1}{2\pi}\sqrt{\frac{k}{m}}$$
 * @param stiffness - of the spring [N/m], or of a torsional one [N·m/rad]
 * @param mass - on it [kg], or moment of inertia [kg·m²]
 * @returns frequency [Hz]
 * @validity spring without mass, no damping
 * @throws InputError when an input is not positive
 * @source rao-2011-vibrations, § 2.2
 */
export function naturalFrequency(stiffness: number, mass: number): number {
  requirePositive(stiffness, { parameter: 'stiffness', quantity: 'stiffness', kind: 'stiffness' });
  requirePositive(mass, { parameter: 'mass', quantity: 'mass', kind: 'mass' });
  return Math.sqrt(stiffness / mass) / (2 * Math.PI);
}

/** Share of a cantilever's mass that moves as if it sat at the tip, by Rayleigh's static shape. */
export const CANTILEVER_TIP_SHARE = 33 / 140;

export interface TipMassBeam {
  /** EI [N·m²]. */
  flexuralRigidity: number;
  /** [m] */
  length: number;
  /** Of the beam [kg]. */
  beamMass: number;
  /** At its end [kg]. */
  tipMass: number;
}

/**
 * Quick estimate of the first frequency of a cantilever with a mass at its end; always a little high.
 * $$f \approx \frac{1}{2\pi}\sqrt{\frac{3EI}{L^3\,(M + \tfrac{33}{140}m)}}$$
 * @param beam - rigidity, length, masses
 * @returns frequency [Hz]
 * @validity slender beam, tip mass without size; 1.5 % high with no tip mass, 0.05 % with a tip as heavy as the beam
 * @throws InputError when a number is out of range, or both masses are zero
 * @source thomson-1998-vibration, Rayleigh's method
 */
export function quickTipFrequency({ flexuralRigidity, length, beamMass, tipMass }: TipMassBeam): number {
  requirePositive(flexuralRigidity, { parameter: 'flexuralRigidity', quantity: 'flexural rigidity' });
  requirePositive(length, { parameter: 'length', quantity: 'length', kind: 'length' });
  requireNotNegative(beamMass, { parameter: 'beamMass', quantity: 'mass of the beam', kind: 'mass' });
  requireNotNegative(tipMass, { parameter: 'tipMass', quantity: 'mass at the tip', kind: 'mass' });
  return naturalFrequency((3 * flexuralRigidity) / length ** 3, tipMass + CANTILEVER_TIP_SHARE * beamMass);
}
