import type { Warning } from '../error.ts';
import type { InertiaTensor } from './inertia-tensor.ts';
import { principalAxes } from './principal-axes.ts';

/** Share by which rounding alone may break the rule. */
const ROUNDING = 1e-9;

/**
 * Tells how far a tensor is from one that a real body can have: the two smaller principal moments must add up to the
 * largest at least. Measured and copied tables break it more often than one would think.
 * $$I_1 + I_2 \ge I_3$$
 * @param tensor - entered or measured [kg·m²]
 * @returns shortfall as a share of the largest moment, zero for a possible body [-], and a warning where it is not zero
 * @validity any tensor about any point
 * @throws InputError when an entry is out of range
 * @derivation $I_1+I_2-I_3 = 2\int z^2\,dm \ge 0$ in principal axes, z the axis of the largest moment; a negative moment
 * fails it too
 */
export function triangleInequality(tensor: InertiaTensor): { shortfall: number; warnings: Warning[] } {
  const [small, middle, large] = principalAxes(tensor).map(({ moment }) => moment) as [number, number, number];
  const missing = large > 0 ? 1 - (small + middle) / large : 0;
  if (missing <= ROUNDING) return { shortfall: 0, warnings: [] };
  return {
    shortfall: missing,
    warnings: [
      {
        code: 'inertia-impossible',
        message:
          'No body can have these moments of inertia: the two smaller ones must add up to the largest at least. One of them was measured or copied wrongly.',
      },
    ],
  };
}
