import type { Arrangement } from '../fit/index.ts';
import type { LayoutShape } from '../layout/index.ts';
import type { Lie, Side } from '../mass/index.ts';
import type { ArmRecord, BodyRecord, MountRecord } from './record-parts.ts';

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
  arm: ArmRecord;
  mount: MountRecord;
  body: BodyRecord;
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
    adhesive: Record<'density' | 'shearModulus' | 'lapShearStrength' | 'tensionStrength', Spread>;
    /** Share of the fibre's strength that hands reach. */
    tow: Record<'handLay', Spread>;
  };
  hardware: readonly HardwareItem[];
  /** In the maker's own currency. */
  costs: { tubePerMetre: number; platePerSquareMetre: number; standoff: number; adhesivePerKilogram: number };
  cases: {
    /** A blow at the motor, in each of three directions. */
    strike: { speed: number; contactStiffness: number; height: number };
    nose: { speed: number; contactStiffness: number; height: number; aside: number };
    drop: { height: number; contactStiffness: number };
  };
}
