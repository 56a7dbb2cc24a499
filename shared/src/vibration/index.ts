/** Natural frequencies of arms, and the lines of a propeller that meet them. */
export { CANTILEVER_TIP_SHARE, naturalFrequency, quickTipFrequency, type TipMassBeam } from './spring-mass.ts';
export {
  cantileverEigenvalue,
  uniformCantileverFrequency,
  uniformShaftFrequency,
  type TipRatios,
  type UniformCantilever,
  type UniformShaft,
} from './tip-mass-cantilever.ts';
export { armModes, type ArmMode, type ArmModesInput } from './modes.ts';
export { cylinderMotor, type MotorAtTip } from './motor.ts';
export { ringFrequency, thinTubeWarnings, type ThinTube } from './validity.ts';
export { crossings, propellerLines, type Crossing, type CrossingInput, type PropellerLine } from './propeller-lines.ts';
export {
  firstFrequencies,
  uniformArmFrequencies,
  type ArmShape,
  type FirstFrequencies,
  type UniformArm,
  type UniformArmFrequencies,
} from './uniform-arm.ts';
export { armSensitivity, type ArmSensitivity, type FrequencySlopes } from './sensitivity.ts';
