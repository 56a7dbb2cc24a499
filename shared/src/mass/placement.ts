import type { Warning } from '../error.ts';
import { agility, type Agility } from './agility.ts';
import { type MassProperties, massProperties } from './assembly.ts';
import type { Placed } from './body.ts';
import { type Battery, placedBattery } from './battery.ts';
import { craftParts, type Craft } from './craft.ts';
import { hoverSplit, type HoverSplit } from './hover-split.ts';
import type { Motor } from './motor.ts';

/** What one place of the battery makes of the craft. */
export interface Placement {
  properties: MassProperties;
  agility: Agility;
  hover: HoverSplit;
  /** Centre of mass ahead of the thrust centre [m]. */
  forwardOffset: number;
  /** Centre of mass above the propeller discs; below zero is under them [m]. */
  heightOffset: number;
  /** One front and one rear motor in hover, of full thrust [-]. */
  frontShare: number;
  rearShare: number;
  warnings: readonly Warning[];
}

export interface PlacementInput {
  craft: Craft;
  battery: Battery;
  /** One motor at full throttle [N]. */
  fullThrust: number;
  /** Reaction torque over thrust [m]. */
  torquePerThrust: number;
}

/**
 * Mass, balance, hover and agility of a craft with its battery in a given place.
 * @param input - craft, battery, thrust [N] and torque per thrust [m]
 * @returns mass properties, accelerations, hover split and offsets of the centre of mass
 * @validity see `craftParts`, `agility` and `hoverSplit`
 * @throws InputError when a value is out of range
 * @derivation puts together `massProperties`, `agility` and `hoverSplit`
 */
export function placement({ craft, battery, fullThrust, torquePerThrust }: PlacementInput): Placement {
  return placeOn(bare(craft), { craft, battery, fullThrust, torquePerThrust });
}

interface Bare {
  frame: Placed;
  motors: readonly Motor[];
}

/** The craft without its battery as one body: put together once for all places that are compared. */
function bare(craft: Craft): Bare {
  const { parts, motors } = craftParts(craft);
  const { mass, centre, inertia } = massProperties(parts);
  return { frame: { body: { mass, inertia }, position: centre }, motors };
}

function placeOn({ frame, motors }: Bare, { craft, battery, fullThrust, torquePerThrust }: PlacementInput): Placement {
  const properties = massProperties([frame, placedBattery(battery, craft)]);
  const hover = hoverSplit({ motors, mass: properties.mass, centre: properties.centre, fullThrust });
  return {
    properties,
    agility: agility({ properties, motors, fullThrust, torquePerThrust }),
    hover,
    forwardOffset: properties.centre.x,
    heightOffset: properties.centre.z - craft.propellerHeight,
    frontShare: hover.shares[0] as number,
    rearShare: hover.shares[2] as number,
    warnings: hover.warnings,
  };
}

/**
 * The chosen place beside its two neighbours: the pack turned a quarter, and the pack on the other side of the body.
 * @param input - as for `placement`
 * @returns chosen, turned and other side, all else alike
 * @validity as for `placement`
 * @throws InputError when a value is out of range
 * @derivation three times `placement`, the frame put together once
 */
export function comparePlacements(input: PlacementInput): {
  chosen: Placement;
  turned: Placement;
  otherSide: Placement;
} {
  const { battery, craft } = input;
  const frame = bare(craft);
  const turned: Battery = { ...battery, lie: battery.lie === 'lengthwise' ? 'crosswise' : 'lengthwise' };
  const otherSide: Battery = { ...battery, side: battery.side === 'above' ? 'below' : 'above' };
  return {
    chosen: placeOn(frame, input),
    turned: placeOn(frame, { ...input, battery: turned }),
    otherSide: placeOn(frame, { ...input, battery: otherSide }),
  };
}
