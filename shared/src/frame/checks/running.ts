import { armBending } from '../../beam/index.ts';
import { propellerLines, uniformArmFrequencies } from '../../vibration/index.ts';
import { armMaterial, armSegments } from '../arm.ts';
import { exactly, marginOf, type Check } from '../check.ts';
import type { FrameRecord } from '../record.ts';

/** Tilt of a motor under full thrust that is still let pass; common practice, no source. */
export const TILT_LIMIT = Math.PI / 180;
/** An arm's frequency this near to once per turn in hover, or nearer, is felt; common practice, no source. */
export const CLEAR_OF_HOVER = 0.15;

/** First frequencies of an arm [Hz]. */
function frequenciesOf(record: FrameRecord): { upDown: number; sideways: number } {
  const { arm, motor } = record;
  const material = armMaterial(record);
  const { upDown, sideways } = uniformArmFrequencies({
    shape:
      arm.kind === 'tube'
        ? { kind: 'tube', ...arm.tube }
        : { kind: 'strip', width: arm.strip.width, height: arm.strip.thickness },
    length: arm.length,
    youngsModulus: material.youngsModulus.typical,
    shearModulus: material.shearModulus.typical,
    density: material.density.typical,
    motor: { mass: motor.mass, diameter: motor.diameter, height: motor.height, offset: motorRise(record) },
    root: {
      vertical: arm.root.stiffnessVertical,
      horizontal: arm.root.stiffnessHorizontal,
      twist: arm.root.stiffnessTwist,
    },
  });
  return { upDown: upDown[0].frequency, sideways: sideways[0].frequency };
}

/** Middle of the motor above the arm's axis: it stands on the arm, or on its plate. */
export function motorRise({ arm, motor, mount }: FrameRecord): number {
  const seat = arm.kind === 'tube' ? arm.tube.outerDiameter / 2 + mount.plateThickness : arm.strip.thickness / 2;
  return seat + motor.height / 2;
}

/** How far full thrust tilts the motor. Its reaction torque turns the arm about the upright axis, which tilts nothing. */
export function motorTilt(record: FrameRecord): number {
  const { root } = record.arm;
  const bent = armBending({
    segments: armSegments(record),
    plane: 'vertical',
    tipForce: record.motor.fullThrust,
    rootStiffness: root.stiffnessVertical,
    steps: 1,
  }).tipSlope;
  return Math.abs(bent);
}

/** Tilt under full thrust, and the arm's frequencies against the propeller in hover. */
export function runningChecks(record: FrameRecord): Check[] {
  const tilt = motorTilt(record);
  const { upDown, sideways } = frequenciesOf(record);
  const { oncePerRev } = propellerLines(record.motor.hoverSpeed, record.propeller.blades);
  const apart = Math.min(...[upDown, sideways].map((frequency) => Math.abs(frequency / oncePerRev - 1)));
  const clear = apart / CLEAR_OF_HOVER;
  return [
    {
      case: 'thrust',
      mode: 'motor-tilt',
      quantity: 'angle',
      applied: tilt,
      allowable: TILT_LIMIT,
      margin: marginOf(tilt, exactly(TILT_LIMIT)),
    },
    {
      case: 'running',
      mode: 'resonance',
      quantity: 'percent',
      // Wanted over present: the farther the frequency lies from hover, the less is used.
      applied: CLEAR_OF_HOVER,
      allowable: apart,
      margin: exactly(clear),
    },
  ];
}
