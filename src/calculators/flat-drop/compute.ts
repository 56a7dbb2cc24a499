import { armBending, tipStiffness } from '@frameworthy/shared/beam';
import {
  effectiveMass,
  flatDrop,
  MEASURED_OVER_LINEAR,
  springsInSeries,
  survivableHeight,
  type FlatDrop,
  type Supports,
} from '@frameworthy/shared/impact';
import type { Warning } from '@frameworthy/shared';
import { contactOf } from '../obstacle-inputs.ts';
import { armOfFields, worstPlace, type ArmOfFields } from '../arm-of-fields.ts';
import type { DropValues } from './inputs.ts';

export interface DropResult extends FlatDrop {
  supports: Supports;
  contact: number;
  /** Of one arm or foot, without the ground [N/m]. */
  own: number;
  /** At the root of an arm, by the linear force [N·m]. */
  rootMoment: number;
  arm: ArmOfFields;
  /** Highest in tube or strip [Pa], and how far from the outer screw [m]. */
  stress: number;
  at: number;
  /** Share of the bending strength [-]. */
  use: number;
  /** Load on one support at which the arm reaches its strength [N]. */
  allowable: number;
  survivable: number;
  survivableLow: number;
  warnings: readonly Warning[];
}

/** The mass that lands on those arms: all of it, or less where the craft turns away. */
function landing({
  mass,
  sharing,
  wheelbase,
  armAngle,
  rollInertia,
  pitchInertia,
}: DropValues): Pick<Supports, 'mass' | 'count'> {
  const pitch = { lever: (wheelbase / 2) * Math.cos(armAngle), momentOfInertia: pitchInertia };
  const roll = { lever: (wheelbase / 2) * Math.sin(armAngle), momentOfInertia: rollInertia };
  switch (sharing) {
    case 'four':
      return { mass, count: 4 };
    case 'across':
      return { mass, count: 2 };
    case 'end':
      return { mass: effectiveMass({ mass, turns: [pitch] }), count: 2 };
    case 'one':
      return { mass: effectiveMass({ mass, turns: [pitch, roll] }), count: 1 };
  }
}

export function compute(values: DropValues): DropResult {
  const { dropHeight, lands, mass, armLength, motorMass, armMass } = values;
  const arm = armOfFields({ ...values, rootHorizontal: values.rootVertical, rootTwist: values.rootVertical });
  const contact = contactOf(values);
  const tips = lands === 'tips';
  const own = tips ? tipStiffness(arm.segments, arm.root).vertical : values.footStiffness;
  const on = tips ? landing(values) : { mass, count: values.feet };
  const supports = { ...on, stiffness: springsInSeries([own, contact]) };
  const drop = flatDrop(supports, dropHeight);
  // On its ends the arm carries its share of the landing; on feet, motor and arm at the body's deceleration.
  const momentOverLoad = (at: number): number => {
    const left = armLength - at;
    if (tips) return left;
    return ((motorMass + (armMass * left) / armLength / 2) * left * supports.count) / mass;
  };
  const rootMoment = drop.each * momentOverLoad(0);
  const { stress: perLoad, at } = worstPlace(arm, (place) => ({ vertical: momentOverLoad(place) }));
  const allowable = arm.bendingStrength / perLoad;
  const stress = drop.each * perLoad;
  const bent = armBending({
    segments: arm.segments,
    plane: 'vertical',
    tipForce: rootMoment / armLength,
    rootStiffness: arm.root.vertical,
    steps: 1,
  });
  return {
    ...drop,
    supports,
    contact,
    own,
    rootMoment,
    arm,
    stress,
    at,
    use: stress / arm.bendingStrength,
    allowable,
    survivable: survivableHeight(supports, allowable),
    survivableLow: survivableHeight(supports, allowable / MEASURED_OVER_LINEAR),
    warnings: bent.warnings,
  };
}
