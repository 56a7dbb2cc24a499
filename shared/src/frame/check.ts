import type { QuantityKind } from '../quantity/index.ts';
import type { Spread } from './record.ts';

/** What happens to the frame. */
export const CASES = [
  'tightening',
  'thrust',
  'running',
  'strike-vertical',
  'strike-sideways',
  'strike-along',
  'drop',
  'nose',
] as const;
export type CaseName = (typeof CASES)[number];

/** The ways in which something gives. */
export const MODES = [
  'bare-arm',
  'sleeve-end',
  'outer-hole',
  'bearing-outer',
  'bearing-inner',
  'tear-out-outer',
  'tear-out-inner',
  'bond-peak',
  'arm-screw',
  'tongue',
  'mount-bond',
  'mount-wrap',
  'tube-crush',
  'standoff-wall',
  'standoff-screw',
  'standoff-buckling',
  'main-plate-foot',
  'top-plate-foot',
  'electronics',
  'motor-tilt',
  'resonance',
] as const;
export type ModeName = (typeof MODES)[number];

/** A speed, with what scatter makes of it [m/s]. */
export type SpeedBand = Spread;

/** One way of failing in one case. */
export interface Check {
  case: CaseName;
  mode: ModeName;
  quantity: QuantityKind;
  applied: number;
  allowable: number;
  /** Allowable over applied: it gives below 1. */
  margin: Spread;
  /** Of the hit that the part just survives; absent where the case is no hit. */
  speed?: SpeedBand;
}

/** A stress per newton of the case's force, and what the part stands. */
export interface Use {
  mode: ModeName;
  quantity: QuantityKind;
  /** Per newton at the motor. */
  perForce: number;
  allowable: Spread;
}

/** Measured peaks of hits reach 1.5 times the linear one: the low margin counts that. */
export const HIT_SCATTER = 1.5;

/** A value without scatter. */
export const exactly = (value: number): Spread => ({ low: value, typical: value, high: value });

export const scaled = ({ low, typical, high }: Spread, by: number): Spread => ({
  low: low * by,
  typical: typical * by,
  high: high * by,
});

/** A margin beyond this says no more than that nothing loads the part. */
const ENDLESS = 1e6;

/** Allowable over applied, with scatter of both. */
export function marginOf(applied: number, allowable: Spread, overload = 1): Spread {
  const over = (value: number) => (applied * ENDLESS <= value ? ENDLESS : value / applied);
  return { low: over(allowable.low) / overload, typical: over(allowable.typical), high: over(allowable.high) };
}

/** A hit's check whose load grows in step with its speed. */
export function hitCheck(
  at: { case: Check['case']; speed: number },
  use: { mode: ModeName; quantity: Check['quantity']; applied: number; allowable: Spread },
): Check {
  const margin = marginOf(use.applied, use.allowable, HIT_SCATTER);
  return {
    case: at.case,
    mode: use.mode,
    quantity: use.quantity,
    applied: use.applied,
    allowable: use.allowable.typical,
    margin,
    speed: scaled(margin, at.speed),
  };
}
