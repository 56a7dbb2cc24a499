import type { Warning } from '../error.ts';

/** Gap over diameter below which measurements report unsteady thrust and more noise. */
export const CLOSE_GAP = 0.1;

/**
 * What to say about a gap between neighbouring propellers.
 * @param tipGap - negative where they overlap [m]
 * @param diameter - propeller diameter [m]
 * @returns warnings, none where the gap is at least a tenth of the diameter
 * @source lei-2020-micro, smallest spacing tested; zhou-2017-uav, unsteady thrust at a small gap
 */
export function spacingWarnings(tipGap: number, diameter: number): Warning[] {
  if (tipGap <= 0) {
    return [
      {
        code: 'propellers-overlap',
        message:
          'The propeller circles touch or overlap: in one plane the blades strike each other, so neighbours must turn at different heights.',
      },
    ];
  }
  if (tipGap < CLOSE_GAP * diameter) {
    return [
      {
        code: 'tip-gap-small',
        message:
          'The gap is below a tenth of the diameter: tests report thrust that fluctuates more and more noise; mean thrust changes little.',
      },
    ];
  }
  return [];
}
