import { requirePoissonRatio, DEFAULT_POISSON_RATIO } from './rigidity.ts';
import { requireEdge, type PlateCoefficients, type PlateEdge } from './rectangular-plate.ts';
import type { PlateLoad } from './plate-series.ts';

/**
 * The same coefficients of a round plate, a its radius. The moment of a centre load is
 * M = P/4π[(1+ν)ln(a/r')+β].
 * $$\alpha_q = \tfrac1{64},\ \tfrac{5+\nu}{64(1+\nu)};\qquad \alpha_P = \tfrac1{16\pi},\ \tfrac{3+\nu}{16\pi(1+\nu)}$$
 * @param edge - supported, or fixed against turning
 * @param load - uniform, or a force in the middle
 * @param poissonRatio - of the plate [-]
 * @returns the coefficients; across and along are alike
 * @validity thin plate, alike in every direction, deflection below half its thickness
 * @throws InputError when a number is out of range
 * @source timoshenko-1959-plates, §§ 16 and 19
 */
export function circularPlate(
  edge: PlateEdge,
  load: PlateLoad,
  poissonRatio = DEFAULT_POISSON_RATIO,
): PlateCoefficients {
  requirePoissonRatio(poissonRatio);
  requireEdge(edge);
  const nu = poissonRatio;
  const fixed = edge === 'fixed';
  if (load === 'uniform') {
    const middle = fixed ? (1 + nu) / 16 : (3 + nu) / 16;
    return {
      deflection: fixed ? 1 / 64 : (5 + nu) / (64 * (1 + nu)),
      across: middle,
      along: middle,
      edge: fixed ? -1 / 8 : 0,
    };
  }
  const beta = fixed ? 0 : 1;
  const deflection = (fixed ? 1 : (3 + nu) / (1 + nu)) / (16 * Math.PI);
  return { deflection, across: beta, along: beta, edge: fixed ? -1 / (4 * Math.PI) : 0 };
}
