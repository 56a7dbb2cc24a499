import { requireNotNegative } from '../require.ts';
import { armBending, type ArmLoad } from './arm-bending.ts';
import type { ArmSegment } from './segment.ts';

export interface ThrustGiven {
  /** From the outer screw to the motor axis. */
  segments: readonly ArmSegment[];
  /** Of one motor [N]. */
  thrust: number;
  /** Reaction torque over thrust [m]. */
  torquePerThrust: number;
  /** Rotational springs at the root, fixed where not given [N·m/rad]. */
  root?: { vertical?: number; horizontal?: number };
}

export interface ThrustLoad {
  /** About the motor axis [N·m]. */
  reactionTorque: number;
  /** At the outer screw: upwards by the thrust, sideways by the torque [N·m]. */
  rootMoment: { vertical: number; horizontal: number };
  /** Outer-fibre stress of the first layer at the root, in each plane [Pa]. */
  rootStress: { vertical: number; horizontal: number };
  /** How far the motor axis leans along the arm [rad]. */
  lean: number;
  /** How far the motor moves up and sideways [m]. */
  movement: { vertical: number; horizontal: number };
}

/**
 * What a motor at a given thrust does to its arm: thrust bends it upwards, reaction torque bends it sideways, the same
 * all along.
 * $$Q = \kappa T,\quad M_v = T L,\quad M_h = Q$$
 * @param given - segments, thrust, torque per thrust, root springs
 * @returns torque, root moments and stresses, lean and movement of the motor
 * @validity steady thrust along the motor axis; imbalance and gyroscopic moments come on top
 * @throws InputError when a number is out of range
 * @derivation statics of a cantilever with a force and a couple at its end, by armBending
 */
export function thrustLoad({ segments, thrust, torquePerThrust, root = {} }: ThrustGiven): ThrustLoad {
  requireNotNegative(thrust, { parameter: 'thrust', quantity: 'thrust', kind: 'force' });
  requireNotNegative(torquePerThrust, {
    parameter: 'torquePerThrust',
    quantity: 'torque per thrust',
    kind: 'length',
  });
  const reactionTorque = torquePerThrust * thrust;
  const bend = (load: Pick<ArmLoad, 'plane' | 'tipForce' | 'tipMoment' | 'rootStiffness'>) => {
    const bending = armBending({ segments, steps: 1, ...load });
    return { ...bending, root: bending.stations[0]! };
  };
  const up = bend({ plane: 'vertical', tipForce: thrust, rootStiffness: root.vertical });
  const side = bend({
    plane: 'horizontal',
    tipForce: 0,
    tipMoment: reactionTorque,
    rootStiffness: root.horizontal,
  });
  return {
    reactionTorque,
    rootMoment: { vertical: up.root.moment, horizontal: side.root.moment },
    rootStress: { vertical: up.root.stress[0]!, horizontal: side.root.stress[0]! },
    lean: up.tipSlope,
    movement: { vertical: up.tipDeflection, horizontal: side.tipDeflection },
  };
}
