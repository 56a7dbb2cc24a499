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
  return placeOn(withoutBattery(craft), { craft, battery, fullThrust, torquePerThrust });
}

interface Bare {
  frame: MassProperties;
  motors: readonly Motor[];
}

/** The craft without its battery, put together once for all places that are compared. */
function withoutBattery(craft: Craft): Bare {
  const { parts, motors } = craftParts(craft);
  return { frame: massProperties(parts), motors };
}

function placeOn({ frame, motors }: Bare, { craft, battery, fullThrust, torquePerThrust }: PlacementInput): Placement {
  const asOne: Placed = { body: frame, position: frame.centre };
  const properties = massProperties([asOne, placedBattery(battery, craft)]);
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

export interface Comparison extends Bare {
  chosen: Placement;
  turned: Placement;
  otherSide: Placement;
}

/**
 * The chosen place beside its two neighbours: the pack turned a quarter, and the pack on the other side of the body.
 * @param input - as for `placement`
 * @returns chosen, turned and other side, all else alike; the craft without its battery; its motors
 * @validity as for `placement`
 * @throws InputError when a value is out of range
 * @derivation three times `placement`, the frame put together once
 */
export function comparePlacements(input: PlacementInput): Comparison {
  const { battery, craft } = input;
  const bare = withoutBattery(craft);
  const turned: Battery = { ...battery, lie: battery.lie === 'lengthwise' ? 'crosswise' : 'lengthwise' };
  const otherSide: Battery = { ...battery, side: battery.side === 'above' ? 'below' : 'above' };
  return {
    ...bare,
    chosen: placeOn(bare, input),
    turned: placeOn(bare, { ...input, battery: turned }),
    otherSide: placeOn(bare, { ...input, battery: otherSide }),
  };
}
