import type { MotorLayoutInput, PlanPoint } from '../layout/motor-layout.ts';
import type { ArmSection, OutlineBox } from './frame-outline.ts';

/** A frame of four straight arms that point at the middle, clamped between two plates, with a top plate on standoffs. */
export interface FourArmFrame {
  name: string;
  layout: MotorLayoutInput;
  /** Bell diameter, height from seat to propeller, the disc above the arm's axis; seat: a plate under it, if any [m]. */
  motor: { bellDiameter: number; height: number; propellerHeight: number; seat?: number };
  arm: {
    section: ArmSection;
    /** From the outer root screw to the motor axis [m]. */
    length: number;
    screwSpacing: number;
    /** From the inner screw to the inner end [m]. */
    endDistance: number;
    holeDiameter: number;
    /** From the motor axis to the outer end [m]. */
    beyondMotor: number;
  };
  body: {
    length: number;
    /** In the middle, and at both ends [m]. */
    width: number;
    end: number;
    /** Of the tongues of both plates along the arms, to half of it beyond the outer screw; under 0.1 mm: none [m]. */
    tongueWidth: number;
    /** Thicknesses: under the arms, over them, on the standoffs [m]. */
    crossPlate: number;
    mainPlate: number;
    topPlate: number;
    topLength: number;
  };
  standoff: { places: readonly PlanPoint[]; length: number; diameter: number; holeDiameter: number };
  /** Boxes with z above the top of the main plate. */
  electronics?: readonly OutlineBox[];
  battery?: {
    length: number;
    width: number;
    height: number;
    lie: 'lengthwise' | 'crosswise';
    side: 'above' | 'below';
    /** Middle of the pack ahead of the middle of the motors [m]. */
    forward: number;
    /** Between pack and plate [m]. */
    gap: number;
  };
}
