import type { Placement } from '@frameworthy/shared/mass';
import type { Verdict } from '~/island/declaration.ts';
import type { PlacementResult } from './compute.ts';

/** Our own limits, for want of published ones: where pilots begin to notice, and where a tune for one axis spoils the other. */
const ALIKE = 0.9;
const UNLIKE = 0.7;

export function likenessVerdict({ agility: { roll, pitch, likeness } }: Placement): Verdict {
  const slower = pitch < roll ? 'pitch' : 'roll';
  if (likeness >= ALIKE) return { level: 'good', text: 'roll and pitch feel alike' };
  return { level: likeness >= UNLIKE ? 'marginal' : 'bad', text: `${slower} is the slower one` };
}

export function offsetVerdict({ chosen, motor }: PlacementResult): Verdict {
  const share = Math.abs(chosen.forwardOffset) / motor.x;
  const end = chosen.forwardOffset > 0 ? 'front' : 'rear';
  if (share < 0.05) return { level: 'good', text: 'the four motors share almost evenly' };
  return { level: share < 0.15 ? 'marginal' : 'bad', text: `the ${end} motors work harder` };
}

export function hoverVerdict(share: number): Verdict | undefined {
  if (share < 0) return { level: 'bad', text: 'would have to pull down' };
  if (share > 1) return { level: 'bad', text: 'more than full thrust' };
  return share > 0.5 ? { level: 'marginal', text: 'little is left to climb and turn with' } : undefined;
}
