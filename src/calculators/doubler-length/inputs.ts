import { EPOXY_PASTE, ROLL_WRAPPED_TUBE } from '@frameworthy/shared/material';
import type { Values } from '~/island/declaration.ts';

const MM = 1e-3;
const GPA = 1e9;
const MPA = 1e6;

export const inputs = {
  tubeOutside: { label: 'Tube outside diameter', symbol: 'D_t', quantity: 'length', default: 14 * MM, min: 6 * MM, max: 30 * MM, step: 0.1 * MM, group: 'Arm', frameField: 'arm.tube.outerDiameter', help: 'Measured with a caliper at the root. Tube arms of 5-inch frames are 10 to 16 mm.' },
  tubeInside: { label: 'Tube bore', symbol: 'd_t', quantity: 'length', default: 12 * MM, min: 4 * MM, max: 29 * MM, step: 0.1 * MM, group: 'Arm', help: 'Inside diameter of the tube: the sleeve has to slide into it.' },
  armLength: { label: 'Outer screw to motor', symbol: 'L', quantity: 'length', default: 95 * MM, min: 30 * MM, max: 300 * MM, step: 1 * MM, group: 'Arm', frameField: 'arm.length', help: 'From the middle of the outer root screw to the motor axis.' },
  screwSpacing: { label: 'Screw spacing', symbol: 's', quantity: 'length', default: 18 * MM, min: 6 * MM, max: 60 * MM, step: 0.5 * MM, group: 'Arm', frameField: 'arm.root.screwSpacing', help: 'Between the two root screws, middle to middle. 10 to 25 mm is usual.' },
  edgeDistance: { label: 'Inner screw to tube end', symbol: 'e', quantity: 'length', default: 10 * MM, min: 2 * MM, max: 30 * MM, step: 0.5 * MM, group: 'Arm', frameField: 'arm.root.endDistance', help: 'From the middle of the inner screw to the end of tube and sleeve. Three hole diameters or more.' },
  holeDiameter: { label: 'Screw hole', symbol: 'd', quantity: 'length', default: 3.2 * MM, min: 1 * MM, max: 6 * MM, step: 0.1 * MM, group: 'Arm', frameField: 'arm.root.holeDiameter', help: 'Drilled through tube and sleeve. About 3.2 mm for M3.' },
  tipForce: { label: 'Force at the motor', symbol: 'F', quantity: 'force', default: 450, min: 1, max: 3000, step: 10, group: 'Blow', help: 'The blow across the arm that it is meant to survive. Full thrust is some 15 N; a hit at a few metres a second is hundreds.' },
  plane: { label: 'The blow comes', choices: { vertical: 'from above or below, along the screws', horizontal: 'in the plane of the propellers' }, default: 'vertical', group: 'Blow', help: 'The screws stand vertical. A blow along them bends the tube where their holes cost the most.' },
  sleeveOutside: { label: 'Sleeve outside diameter', symbol: 'D_s', quantity: 'length', default: 11.8 * MM, min: 3 * MM, max: 29 * MM, step: 0.05 * MM, group: 'Sleeve', help: 'Smaller than the bore by twice the bond line: 0.1 to 0.3 mm of adhesive on radius is common.' },
  sleeveWall: { label: 'Sleeve wall', symbol: 't_i', quantity: 'length', default: 1 * MM, min: 0.2 * MM, max: 5 * MM, step: 0.05 * MM, group: 'Sleeve', frameField: 'arm.sleeve.wall', help: 'Wall thickness of the sleeve.' },
  length: { label: 'Sleeve length', symbol: '\\ell', quantity: 'length', default: 42 * MM, min: 5 * MM, max: 300 * MM, step: 0.5 * MM, group: 'Sleeve', frameField: 'arm.sleeve.length', help: 'The length you have or mean to cut, counted from the inner end of the tube.' },
  taper: { label: 'Tapered end', symbol: 'a', quantity: 'length', default: 3 * MM, min: 0, max: 30 * MM, step: 0.5 * MM, group: 'Sleeve', frameField: 'arm.sleeve.taper', help: 'Length over which the bore of the sleeve is opened out to a thin edge at its outer end. 0 for a square cut.' },
  tubeModulus: { label: 'Tube modulus', symbol: 'E_o', quantity: 'modulus', default: ROLL_WRAPPED_TUBE.youngsModulus.typical, min: 10 * GPA, max: 300 * GPA, step: 5 * GPA, group: 'Materials', help: 'Young’s modulus along the tube. Roll-wrapped 60 to 120 GPa, pultruded about 130.' },
  tubeStrength: { label: 'Tube allowable stress', symbol: '\\sigma_t', quantity: 'stress', default: ROLL_WRAPPED_TUBE.bendingStrength.low, min: 50 * MPA, max: 2000 * MPA, step: 10 * MPA, group: 'Materials', help: 'Bending stress that the tube bears where it is whole. The default is the low end for roll-wrapped tube; break a piece of yours to know better.' },
  sleeveModulus: { label: 'Sleeve modulus', symbol: 'E_i', quantity: 'modulus', default: ROLL_WRAPPED_TUBE.youngsModulus.typical, min: 10 * GPA, max: 300 * GPA, step: 5 * GPA, group: 'Materials', help: 'Young’s modulus along the sleeve. Aluminium 70 GPa.' },
  sleeveStrength: { label: 'Sleeve allowable stress', symbol: '\\sigma_s', quantity: 'stress', default: ROLL_WRAPPED_TUBE.bendingStrength.low, min: 50 * MPA, max: 2000 * MPA, step: 10 * MPA, group: 'Materials', help: 'The same for the sleeve.' },
  sleeveDensity: { label: 'Sleeve density', symbol: '\\rho', quantity: 'density', default: ROLL_WRAPPED_TUBE.density.typical, min: 1000, max: 9000, step: 50, group: 'Materials', help: 'Carbon tube 1.5 to 1.6 g/cm³, aluminium 2.7 to 2.8.' },
  holeShare: { label: 'Strength kept beside a hole', symbol: 'k_h', quantity: 'percent', default: 0.85, min: 0.3, max: 1, step: 0.01, group: 'Materials', help: 'Strength per remaining section at a drilled hole. Open-hole tests of small holes in carbon keep some 80 to 100 %.' },
  squareEndFactor: { label: 'Stress step at a square end', symbol: 'K_0', quantity: 'ratio', default: 1.25, min: 1, max: 2, step: 0.05, group: 'Materials', help: 'How much the tube’s stress jumps just past a square sleeve end. Not published: 1.1 to 1.5 is a guess; a taper lowers it.' },
  shearModulus: { label: 'Adhesive shear modulus', symbol: 'G_a', quantity: 'modulus', default: EPOXY_PASTE.shearModulus.typical, min: 0.05 * GPA, max: 3 * GPA, step: 0.05 * GPA, group: 'Adhesive', help: 'Epoxy paste 0.4 to 1.2 GPa.' },
  adhesiveStrength: { label: 'Adhesive shear strength', symbol: '\\tau_p', quantity: 'stress', default: EPOXY_PASTE.lapShearStrength.typical, min: 1 * MPA, max: 60 * MPA, step: 0.5 * MPA, group: 'Adhesive', parameters: ['strength', 'yieldShear'], help: 'Lap shear at room temperature, on well prepared carbon: 15 to 25 MPa done well, half of that when not.' },
  kept: { label: 'Kept at temperature', symbol: 'f_T', quantity: 'percent', default: 1, min: 0.1, max: 1.2, step: 0.01, group: 'Adhesive', help: 'Share of that strength left on a hot day or next to a hot motor. Handbook pastes keep a third to a half at 75 °C.' },
  plasticRatio: { label: 'Yielding over elastic strain', symbol: '\\gamma_p/\\gamma_e', quantity: 'ratio', default: 5, min: 0, max: 30, step: 0.5, group: 'Adhesive', help: 'How far the adhesive stretches after it yields. Brittle 0, plain epoxy a few, toughened 5 to 20.' },
} as const;

export type DoublerValues = Values<typeof inputs>;
