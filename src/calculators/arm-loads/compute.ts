import { InputError } from '@frameworthy/shared';
import { thrustLoad, type ThrustLoad } from '@frameworthy/shared/beam';
import {
  peakForceBand,
  survivableSpeed,
  tipStrike,
  type Strike,
  type StrikeDirection,
} from '@frameworthy/shared/impact';
import { craftParts, massProperties, placedBattery, type MassProperties } from '@frameworthy/shared/mass';
import { craftOf, packOf } from '../craft-inputs.ts';
import { contactOf } from '../obstacle-inputs.ts';
import { armOfFields, worstPlace, type ArmOfFields, type WorstPlace } from '../arm-of-fields.ts';
import type { LoadValues } from './inputs.ts';

export const DIRECTIONS = ['sideways', 'vertical', 'along'] as const satisfies readonly StrikeDirection[];

/** As they stand in words. */
export const WORDS: Readonly<Record<StrikeDirection, string>> = {
  sideways: 'sideways',
  vertical: 'up or down',
  along: 'along the arm',
};

export interface Judged extends Strike {
  /** Upper end of the band, at 1.5 times the linear force [N]. */
  high: number;
  /** Highest bending stress of tube or strip, and where. */
  worst: WorstPlace;
  /** Peak shear of twisting, past a sleeve [Pa]. */
  twist: number;
  /** Shares of strength used [-]. */
  use: { bending: number; twist: number; most: number };
  breaksBy: 'bending' | 'twisting';
  /** By the linear model, and at the upper end of the band [m/s]. */
  survivable: number;
  survivableLow: number;
}

export interface LoadResult {
  craft: MassProperties;
  motor: { x: number; y: number };
  arm: ArmOfFields;
  thrust: ThrustLoad & { stress: number; use: number };
  strikes: Readonly<Record<StrikeDirection, Judged>>;
  /** The direction whose survivable speed is lowest. */
  first: StrikeDirection;
  contact: number;
}

const motorOf = ({ wheelbase, armAngle }: LoadValues) => ({
  x: (wheelbase / 2) * Math.cos(armAngle),
  y: (wheelbase / 2) * Math.sin(armAngle),
});

/** Mass, centre and inertia as entered, or of boxes, rods and cylinders in their places. */
function craftFrom(values: LoadValues): MassProperties {
  if (values.craft === 'entered') {
    const { mass, rollInertia, pitchInertia, yawInertia, centreHeight } = values;
    const inertia = { xx: rollInertia, yy: pitchInertia, zz: yawInertia, xy: 0, xz: 0, yz: 0 };
    // No products here, so the entered moments are the principal ones.
    const largest = Math.max(rollInertia, pitchInertia, yawInertia);
    if (2 * largest > rollInertia + pitchInertia + yawInertia) {
      throw new InputError({
        parameter: 'yawInertia',
        quantity: 'inertia in roll, pitch and yaw',
        value: yawInertia,
        kind: 'momentOfInertia',
        rule: 'is that of no body: the two smaller must add up to the largest at least',
      });
    }
    return { mass, centre: { x: 0, y: 0, z: centreHeight }, inertia };
  }
  const craft = craftOf(values);
  const battery = placedBattery({ ...values, pack: packOf(values) }, craft);
  return massProperties([...craftParts(craft).parts, battery]);
}

function judge(strike: Strike, { speed, armLength }: LoadValues, arm: ArmOfFields): Judged {
  const { axialForce: axial, rootMoment } = strike;
  // A push along the arm bends it alike from end to end.
  const left = (at: number): number => (axial > 0 ? 1 : 1 - at / armLength);
  const worst = worstPlace(arm, (at) => ({
    vertical: rootMoment.vertical * left(at),
    horizontal: rootMoment.horizontal * left(at),
    axial,
  }));
  const twist = strike.rootTorque / arm.torsionModulus;
  const [bending, twisting] = [worst.stress / arm.bendingStrength, twist / arm.shearStrength];
  const most = Math.max(bending, twisting);
  const { high } = peakForceBand(strike.peakForce);
  return {
    ...strike,
    high,
    worst,
    twist,
    use: { bending, twist: twisting, most },
    breaksBy: twisting > bending ? 'twisting' : 'bending',
    survivable: survivableSpeed({ speed, applied: most, allowable: 1 }),
    survivableLow: survivableSpeed({ speed, applied: (most * high) / strike.peakForce, allowable: 1 }),
  };
}

/** The three blows for a given craft: sweeps over its inertia use it too. */
export function strikesOn(craft: MassProperties, values: LoadValues, arm: ArmOfFields) {
  return tipStrike({
    craft,
    motor: motorOf(values),
    hitHeight: values.hitHeight,
    segments: arm.segments,
    root: arm.root,
    contactStiffness: contactOf(values),
    speed: values.speed,
  });
}

export function compute(values: LoadValues): LoadResult {
  const arm = armOfFields(values);
  const craft = craftFrom(values);
  const raw = strikesOn(craft, values, arm);
  const strikes = {
    sideways: judge(raw.sideways, values, arm),
    vertical: judge(raw.vertical, values, arm),
    along: judge(raw.along, values, arm),
  };
  const thrust = thrustLoad({
    segments: arm.segments,
    thrust: values.fullThrust,
    torquePerThrust: values.torquePerThrust,
    root: arm.root,
  });
  const { stress } = worstPlace(arm, (at) => ({
    vertical: values.fullThrust * (values.armLength - at),
    horizontal: thrust.reactionTorque,
  }));
  const first = DIRECTIONS.reduce((a, b) => (strikes[b].survivable < strikes[a].survivable ? b : a));
  return {
    craft,
    motor: motorOf(values),
    arm,
    thrust: { ...thrust, stress, use: stress / arm.bendingStrength },
    strikes,
    first,
    contact: contactOf(values),
  };
}
