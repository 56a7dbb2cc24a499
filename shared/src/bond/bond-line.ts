import type { Warning } from '../error.ts';
import { requireLength } from '../require-physical.ts';

/**
 * Bond line that gave the best strength in published static and creep-rupture tests [m].
 * @source willberg-2023-lectures, lecture on joints, after Schürmann figs 23.17 and 23.18
 */
export const BEST_BOND_LINE = { thinnest: 0.05e-3, thickest: 0.15e-3 } as const;

/**
 * Bond line that builders leave for a paste adhesive, so that it is neither starved nor a lump [m].
 * @source common-practice
 */
export const USUAL_BOND_LINE = { thinnest: 0.1e-3, thickest: 0.3e-3 } as const;

/**
 * Reasons to doubt a bond line of a given thickness.
 * @param thickness - bond-line thickness [m]
 * @returns warnings, none between the thinnest published optimum and the thickest usual gap
 * @validity paste adhesives; a film adhesive sets its own thickness
 * @throws InputError when the thickness is not a physical length
 * @source willberg-2023-lectures, lecture on joints
 */
export function bondLineWarnings(thickness: number): Warning[] {
  requireLength(thickness, { parameter: 'bondLine', quantity: 'bond-line thickness' });
  if (thickness < BEST_BOND_LINE.thinnest * (1 - 1e-9)) {
    return [
      {
        code: 'bond-line-starved',
        message: 'The gap is so small that the adhesive will be wiped off as the sleeve goes in.',
      },
    ];
  }
  if (thickness > USUAL_BOND_LINE.thickest * (1 + 1e-9)) {
    return [
      {
        code: 'bond-line-thick',
        message:
          'The gap is wider than usual: thick bond lines hold voids and bend the parts, so strength falls although the peak worked out here does too.',
      },
    ];
  }
  return [];
}
