import type { Warning } from '../error.ts';
import type { ScrewedJoint } from './tightening-limit.ts';
import { LOST_TURNS } from './thread-shear.ts';

/** Least metal of a nut or insert round its thread [m]; common practice. */
const LEAST_WALL = 0.3e-3;

/** Reasons to doubt a screwed joint; `tooHigh` where its preload may pass what the weakest part bears. */
export function tighteningWarnings(
  { limits, engagement, pressNut, insert }: ScrewedJoint,
  tooHigh: boolean,
): Warning[] {
  const { diameter, pitch } = limits.thread;
  const around = ((pressNut?.nutHole ?? insert?.insertDiameter ?? Infinity) - diameter) / 2;
  const warnings: (Warning | false)[] = [
    engagement <= LOST_TURNS * pitch
      ? {
          code: 'no-full-thread',
          message: 'The screw reaches the thread with incomplete turns only: it holds nothing that can be counted on.',
        }
      : engagement < diameter && {
          code: 'engagement-short',
          message: 'Less thread than one screw diameter is engaged.',
        },
    around < LEAST_WALL && {
      code: 'holder-wall-thin',
      message: 'Less than 0.3 mm of nut or insert is left round the thread: is this one made for such a screw?',
    },
    tooHigh && {
      code: 'torque-too-high',
      message: 'At the high end of its scatter this torque damages the joint.',
    },
  ];
  return warnings.filter((warning) => warning !== false);
}
