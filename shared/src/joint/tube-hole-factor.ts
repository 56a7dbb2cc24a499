import { requireBetween } from '../require.ts';

export interface TubeHole {
  /** Hole over outside diameter [-]. */
  holeRatio: number;
  /** Bore over outside diameter [-]. */
  boreRatio: number;
}

function requireTubeHole({ holeRatio, boreRatio }: TubeHole, widest: number): void {
  requireBetween(holeRatio, 0, widest, { parameter: 'holeRatio', quantity: 'hole over tube diameter', kind: 'ratio' });
  requireBetween(boreRatio, 0, 0.9, { parameter: 'boreRatio', quantity: 'bore over tube diameter', kind: 'ratio' });
}

/**
 * Peak stress at a cross hole in a tube under axial load, over the stress of the undrilled tube.
 * $$K_g = 3 + C_2 x + C_3 x^2$$
 * @param hole - hole and bore over outside diameter
 * @returns factor on the gross stress [-]
 * @validity isotropic, hole up to 0.45 of the tube, bore up to 0.9
 * @throws InputError when a ratio is out of range
 * @source pilkey-2008-peterson, chart 4.66
 */
export function tubeHoleAxialFactor(hole: TubeHole): number {
  requireTubeHole(hole, 0.45);
  const { holeRatio: x, boreRatio: q } = hole;
  const c2 = 0.427 - 6.77 * q + 22.698 * q ** 2 - 16.67 * q ** 3;
  const c3 = 11.357 + 15.665 * q - 60.929 * q ** 2 + 41.501 * q ** 3;
  return 3 + c2 * x + c3 * x ** 2;
}

/**
 * Peak stress at a cross hole in a tube in bending, hole at the extreme fibre, over the stress of the undrilled tube.
 * $$K_g = 3 + C_2 x + C_3 x^2 + C_4 x^3$$
 * @param hole - hole and bore over outside diameter
 * @returns factor on the gross stress [-]
 * @validity isotropic, hole up to 0.4 of the tube, bore up to 0.9
 * @throws InputError when a ratio is out of range
 * @source pilkey-2008-peterson, chart 4.107
 */
export function tubeHoleBendingFactor(hole: TubeHole): number {
  requireTubeHole(hole, 0.4);
  const { holeRatio: x, boreRatio: q } = hole;
  const c2 = -6.25 - 0.585 * q + 3.115 * q ** 2;
  const c3 = 41 - 1.071 * q - 6.746 * q ** 2;
  const c4 = -45 + 1.389 * q + 13.889 * q ** 2;
  return 3 + c2 * x + c3 * x ** 2 + c4 * x ** 3;
}
