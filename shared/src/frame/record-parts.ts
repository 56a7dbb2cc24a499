import type { PropertyClassName, ThreadName } from '../joint/index.ts';
import type { StandoffMetal } from '../material/index.ts';

/** From the outer root screw to the motor axis, and its root. */
export interface ArmRecord {
  kind: 'tube' | 'strip';
  /** From the outer root screw to the motor axis. */
  length: number;
  tube: { outerDiameter: number; wall: number };
  strip: { width: number; thickness: number };
  /** Bonded in the root of a tube; a wall of 0 is no sleeve. */
  sleeve: { wall: number; length: number; taper: number; bondLine: number };
  root: {
    screwSpacing: number;
    endDistance: number;
    holeDiameter: number;
    thread: ThreadName;
    grade: PropertyClassName;
    torque: number;
    clampLength: number;
    stiffnessVertical: number;
    stiffnessHorizontal: number;
    stiffnessTwist: number;
  };
  /** Motor wires of one arm. */
  wireMass: number;
}

/** Of the motor on a tube; a plate arm carries its motor itself. */
export interface MountRecord {
  plateThickness: number;
  /** Across the tube. */
  plateWidth: number;
  /** Along the tube. */
  plateLength: number;
  bondLine: number;
  fillet: number;
  /** In each of the two bands. */
  wrapTurns: number;
  bandWidth: number;
  /** Mass per length of the tow. */
  tow: number;
  /** Rounding of the plate's edge under the tow. */
  edgeRadius: number;
  motorScrews: number;
  screwCircle: number;
}

/** Plates and standoffs. */
export interface BodyRecord {
  length: number;
  /** At the waist. */
  width: number;
  /** Width at both ends. */
  end: number;
  /** Under the arms. */
  crossPlate: { thickness: number };
  /** Over the arms. */
  mainPlate: { thickness: number };
  topPlate: { thickness: number; length: number };
  /** Of the plates' outlines, left after cutouts. */
  solidShare: number;
  tongueWidth: number;
  tongueLength: number;
  standoff: {
    length: number;
    outerDiameter: number;
    bore: number;
    material: StandoffMetal;
    screw: 'M2' | 'M2.5' | 'M3';
    screwClass: PropertyClassName;
    torque: number;
    /** Free plate round a standoff. */
    plateRadius: number;
  };
}
