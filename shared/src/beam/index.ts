/** The arm as a stepped beam: loads in, curves along the arm and stiffness at the motor out. */
export { requireSegments, rigidity, type ArmSegment, type Layer, type Rigidity } from './segment.ts';
export { variedSegments, type VariedBeam } from './varied-segments.ts';
export { armBending, type ArmBending, type ArmLoad, type ArmStation } from './arm-bending.ts';
export { armTwist, type ArmTorque } from './arm-twist.ts';
export { tipStiffness, type TipStiffness } from './tip-stiffness.ts';
export { axialStiffness } from './axial-stiffness.ts';
export { thrustLoad, type ThrustGiven, type ThrustLoad } from './thrust-load.ts';
export { wallBucklingWarnings, type BentTube } from './wall-buckling.ts';
export { tubeBuckling, type ThinTube, type TubeBuckling } from './tube-buckling.ts';
