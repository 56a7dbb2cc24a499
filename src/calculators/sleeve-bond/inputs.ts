import { EPOXY_PASTE, ROLL_WRAPPED_TUBE } from '@frameworthy/shared/material';
import type { Values } from '~/island/declaration.ts';

const MM = 1e-3;
const GPA = 1e9;
const MPA = 1e6;

const of = (...kinds: string[]) => (values: Readonly<Record<string, number | string>>): boolean => kinds.includes(String(values.kind));

export const inputs = {
  kind: { label: 'The joint carries', choices: { bending: 'a bending moment', axial: 'a pull along the tube', torque: 'a torque about the tube' }, default: 'bending', group: 'Load', help: 'What the tube hands to the sleeve: bending at an arm root or a splice, pull in a strut, torque from a motor mount.' },
  moment: { label: 'Bending moment', symbol: 'M', quantity: 'moment', default: 10, min: 0.1, max: 200, step: 0.5, group: 'Load', shownWhen: of('bending'), parameters: ['load'], help: 'Force at the motor times its distance from the joint.' },
  pull: { label: 'Pull', symbol: 'F', quantity: 'force', default: 1500, min: 1, max: 20000, step: 50, group: 'Load', shownWhen: of('axial'), parameters: ['load'], help: 'Force along the tube.' },
  torque: { label: 'Torque', symbol: 'T', quantity: 'moment', default: 4, min: 0.01, max: 100, step: 0.1, group: 'Load', shownWhen: of('torque'), parameters: ['load'], help: 'Motors give a few tenths of a newton metre; a propeller strike gives many times that.' },
  tubeOutside: { label: 'Tube outside diameter', symbol: 'D_t', quantity: 'length', default: 14 * MM, min: 4 * MM, max: 40 * MM, step: 0.1 * MM, group: 'Parts', help: 'Outside diameter of the outer tube.' },
  tubeInside: { label: 'Tube bore', symbol: 'd_t', quantity: 'length', default: 12 * MM, min: 3 * MM, max: 39 * MM, step: 0.1 * MM, group: 'Parts', help: 'Inside diameter of the outer tube.' },
  sleeveOutside: { label: 'Sleeve outside diameter', symbol: 'D_s', quantity: 'length', default: 11.8 * MM, min: 2 * MM, max: 39 * MM, step: 0.05 * MM, group: 'Parts', help: 'Smaller than the bore by twice the bond line.' },
  sleeveWall: { label: 'Sleeve wall', symbol: 't_i', quantity: 'length', default: 1 * MM, min: 0.2 * MM, max: 6 * MM, step: 0.05 * MM, group: 'Parts', help: 'Wall thickness of the sleeve or spigot.' },
  overlap: { label: 'Overlap', symbol: '\\ell', quantity: 'length', default: 25 * MM, min: 2 * MM, max: 120 * MM, step: 0.5 * MM, group: 'Parts', help: 'Length over which sleeve and tube are bonded.' },
  tubeModulus: { label: 'Tube modulus', symbol: 'E_o', quantity: 'modulus', default: ROLL_WRAPPED_TUBE.youngsModulus.typical, min: 10 * GPA, max: 300 * GPA, step: 5 * GPA, group: 'Stiffness', shownWhen: of('bending', 'axial'), help: 'Young’s modulus along the tube.' },
  sleeveModulus: { label: 'Sleeve modulus', symbol: 'E_i', quantity: 'modulus', default: ROLL_WRAPPED_TUBE.youngsModulus.typical, min: 10 * GPA, max: 300 * GPA, step: 5 * GPA, group: 'Stiffness', shownWhen: of('bending', 'axial'), help: 'Young’s modulus along the sleeve. Aluminium 70 GPa.' },
  tubeShear: { label: 'Tube shear modulus', symbol: 'G_o', quantity: 'modulus', default: ROLL_WRAPPED_TUBE.shearModulus.typical, min: 1 * GPA, max: 80 * GPA, step: 1 * GPA, group: 'Stiffness', shownWhen: of('torque'), parameters: ['tubeModulus'], help: 'Of the tube wall in torsion. Roll-wrapped 5 to 20 GPa, pultruded 3 to 6.' },
  sleeveShear: { label: 'Sleeve shear modulus', symbol: 'G_i', quantity: 'modulus', default: ROLL_WRAPPED_TUBE.shearModulus.typical, min: 1 * GPA, max: 80 * GPA, step: 1 * GPA, group: 'Stiffness', shownWhen: of('torque'), parameters: ['sleeveModulus'], help: 'Of the sleeve wall in torsion. Aluminium 27 GPa.' },
  shearModulus: { label: 'Adhesive shear modulus', symbol: 'G_a', quantity: 'modulus', default: EPOXY_PASTE.shearModulus.typical, min: 0.05 * GPA, max: 3 * GPA, step: 0.05 * GPA, group: 'Adhesive', help: 'Epoxy paste 0.4 to 1.2 GPa.' },
  adhesiveStrength: { label: 'Adhesive shear strength', symbol: '\\tau_p', quantity: 'stress', default: EPOXY_PASTE.lapShearStrength.typical, min: 1 * MPA, max: 60 * MPA, step: 0.5 * MPA, group: 'Adhesive', parameters: ['strength'], help: 'Lap shear at room temperature: 15 to 25 MPa done well, half of that when not.' },
  kept: { label: 'Kept at temperature', symbol: 'f_T', quantity: 'percent', default: 1, min: 0.1, max: 1.2, step: 0.01, group: 'Adhesive', help: 'Share of that strength left at the temperature of use. Handbook pastes keep a third to a half at 75 °C.' },
  plasticRatio: { label: 'Yielding over elastic strain', symbol: '\\gamma_p/\\gamma_e', quantity: 'ratio', default: 5, min: 0, max: 30, step: 0.5, group: 'Adhesive', help: 'How far the adhesive stretches after it yields. Brittle 0, plain epoxy a few, toughened 5 to 20.' },
} as const;

export type BondValues = Values<typeof inputs>;
