import type { LayoutShape } from '../layout/index.ts';
import type { Lie, Side } from '../mass/index.ts';
import type { PropertyClassName, ThreadName } from '../joint/index.ts';

/**
 * One frame as data, SI throughout. x forward, y to the left, from the middle of the motors; heights from the arm's axis
 * unless stated. Each leaf is described in `fields/`, from which the schema, the frame sheet and the links to articles come.
 */

/** A value of a material with its scatter [SI]. */
export interface Spread {
  low: number;
  typical: number;
  high: number;
}

export type StandoffMetal = 'aluminium-6061' | 'aluminium-7075' | 'titanium' | 'aluminium-unnamed';

export type ItemKind = 'board' | 'camera' | 'transmitter' | 'receiver' | 'capacitor' | 'antenna' | 'other';

/** A thing in the body, as a box that lies along the frame. */
export interface ElectronicsItem {
  name: string;
  kind: ItemKind;
  length: number;
  width: number;
  height: number;
  /** Of its middle. */
  x: number;
  y: number;
  /** Of its underside above the main plate. */
  z: number;
  /** Of a lens, upwards [rad]. */
  tilt: number;
  mass: number;
}

/** One way to lay out the body: where the standoffs stand and what sits where. */
export interface Arrangement {
  name: string;
  standoffs: readonly { x: number; y: number }[];
  items: readonly ElectronicsItem[];
}

/** Anything else that has mass and costs money. */
export interface HardwareItem {
  name: string;
  count: number;
  /** Of one [kg]. */
  mass: number;
  /** Of one, in the maker's currency. */
  cost: number;
}

export interface FrameRecord {
  format: 'frameworthy-frame';
  version: 1;
  name: string;
  revision: string;
  /** What changed in this revision and why. */
  notes: string;
  /** Whom this variant suits, for the frame card. */
  suits: string;
  layout: { shape: LayoutShape; stretch: number; tipGap: number };
  propeller: { diameter: number; blades: number };
  motor: {
    /** With propeller, nut and screws. */
    mass: number;
    diameter: number;
    height: number;
    /** Of the propeller above the arm's axis. */
    propellerHeight: number;
    fullThrust: number;
    torquePerThrust: number;
    hoverSpeed: number;
    fullSpeed: number;
  };
  arm: {
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
  };
  /** Of the motor on a tube; a plate arm carries its motor itself. */
  mount: {
    plateThickness: number;
    plateWidth: number;
    bondLength: number;
    fillet: number;
    wrapTurns: number;
    wrapLegs: number;
    /** Tex of the tow [kg/m]. */
    tow: number;
    motorScrews: number;
    screwCircle: number;
  };
  body: {
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
  };
  electronics: {
    /** Name of the arrangement in use. */
    current: string;
    arrangements: readonly Arrangement[];
  };
  battery: {
    mass: number;
    length: number;
    width: number;
    height: number;
    lie: Lie;
    side: Side;
    forward: number;
    gap: number;
  };
  materials: {
    tube: Record<
      | 'density'
      | 'youngsModulus'
      | 'shearModulus'
      | 'bendingStrength'
      | 'shearStrength'
      | 'bearingStrength'
      | 'hoopBendingStrength',
      Spread
    >;
    plate: Record<
      'density' | 'youngsModulus' | 'shearModulus' | 'bendingStrength' | 'shearStrength' | 'bearingStrength',
      Spread
    >;
    adhesive: Record<'density' | 'shearModulus' | 'lapShearStrength', Spread>;
    /** Breaking stress of a hand-laid tow, along it. */
    tow: Record<'strength', Spread>;
  };
  hardware: readonly HardwareItem[];
  /** In the maker's own currency. */
  costs: { tubePerMetre: number; platePerSquareMetre: number; standoff: number; adhesivePerKilogram: number };
  cases: {
    /** A blow at the motor, in each of three directions. */
    strike: { speed: number; contactStiffness: number };
    nose: { speed: number; contactStiffness: number; height: number; aside: number };
    drop: { height: number; contactStiffness: number };
  };
}
