import { MEASURED_OVER_LINEAR } from '@frameworthy/shared/impact';
import type { LimitName } from '@frameworthy/shared/standoff';
import type { Verdict } from '~/island/declaration.ts';

/** What happens when a limit is reached, as the subject and the verb of a sentence. */
export const LIMIT_WORDS: Record<LimitName, string> = {
  standoff: 'a standoff bends for good',
  screw: 'a screw stretches for good',
  'bottom plate': 'the bottom plate cracks at a standoff',
  'top plate': 'the top plate cracks at a standoff',
  buckling: 'a standoff buckles',
};

/** Good only where it holds even if the real peak lies at the upper end of the band. */
export function verdictOfSpeed(limit: number | undefined, speed: number, fails: string): Verdict {
  if (limit === undefined) return { level: 'good', text: 'not loaded' };
  if (limit < speed) return { level: 'bad', text: fails };
  return limit < MEASURED_OVER_LINEAR * speed
    ? { level: 'marginal', text: 'holds by this estimate, not by its band' }
    : { level: 'good', text: 'holds' };
}

/** Whether the torque keeps the faces of the standoffs closed. */
export function verdictOfPreload(closing: number, preload: { low: number; high: number }): Verdict {
  if (closing > preload.high) return { level: 'bad', text: 'more than your torque gives: faces lift' };
  return closing > preload.low
    ? { level: 'marginal', text: 'within the scatter of tightening' }
    : { level: 'good', text: 'your torque gives more' };
}

/** Whether the top plate stays off the electronics, the band of the peak counted. */
export function verdictOfGap(movement: number, gap: number): Verdict {
  if (movement >= gap) return { level: 'bad', text: 'more than the gap: it touches' };
  return MEASURED_OVER_LINEAR * movement >= gap
    ? { level: 'marginal', text: 'inside the gap by less than the band' }
    : { level: 'good', text: 'inside the gap' };
}
