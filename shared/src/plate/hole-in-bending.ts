import { requireBelow } from '../require.ts';
import { requireLength } from '../require-physical.ts';
import { requireThickness } from './rigidity.ts';

export interface DrilledStrip {
  width: number;
  thickness: number;
  holeDiameter: number;
}

/**
 * Peak over net stress at a round hole in a plate that is bent out of its plane.
 * $$K = \Bigl[1.79+\frac{0.25}{0.39+u}+\frac{0.81}{1+u^2}-\frac{0.26}{1+u^3}\Bigr](1-1.04x+1.22x^2),\quad u=\tfrac dt,\ x=\tfrac dw$$
 * @param strip - width, thickness, hole diameter [m]
 * @returns factor on the net-section stress [-]
 * @validity isotropic, hole in the middle, up to a third of the width; carbon evens the peak out, see notchedStrengthRatio
 * @throws InputError when a length is out of range or the hole leaves nothing of the width
 * @source young-2002-roark, Table 17.1, central hole in a strip, bending out of its plane
 */
export function plateBendingHoleFactor({ width, thickness, holeDiameter }: DrilledStrip): number {
  requireLength(width, { parameter: 'width', quantity: 'width of the plate' });
  requireThickness(thickness);
  const hole = { parameter: 'holeDiameter', quantity: 'hole diameter', kind: 'length' } as const;
  requireLength(holeDiameter, hole);
  requireBelow(holeDiameter, 0.95 * width, 'must leave some of the width', hole);
  const u = holeDiameter / thickness;
  const x = holeDiameter / width;
  const wide = 1.79 + 0.25 / (0.39 + u) + 0.81 / (1 + u ** 2) - 0.26 / (1 + u ** 3);
  return wide * (1 - 1.04 * x + 1.22 * x ** 2);
}
