import { InputError } from '../error.ts';
import { requireBetween, requirePositive } from '../require.ts';
import { clampedEdges } from './clamped-edges.ts';
import { centreOnSupports, uniformOnSupports, type PlateLoad } from './plate-series.ts';
import { DEFAULT_POISSON_RATIO, requirePoissonRatio } from './rigidity.ts';

export type PlateEdge = 'supported' | 'fixed';

export interface PlateCoefficients {
  /** w = α q a⁴/D, or α P a²/D [-]. */
  deflection: number;
  /** Bending moment in the middle across the long edges, M = β q a²; for a centre load β in M = P/4π[(1+ν)ln(2a/πr)+β] [-]. */
  across: number;
  /** The same along the long edges [-]. */
  along: number;
  /** In the middle of the long edge over q a² or P, negative; nothing on supports [-]. */
  edge: number;
}

/** From here on the short edges are not felt in the middle: by a part in a thousand. */
const STRIP = { supported: 10, fixed: 3 } as const;

/**
 * Refuses an edge that is neither of the two.
 * @throws InputError when it is unknown
 */
export function requireEdge(edge: PlateEdge): void {
  if (edge === 'supported' || edge === 'fixed') return;
  throw new InputError({
    parameter: 'edge',
    quantity: 'edge of the plate',
    value: edge,
    rule: 'must be supported or fixed',
  });
}

/**
 * Coefficients of a rectangular plate held along all four edges, under a uniform load or a force in the middle.
 * $$w = \alpha\frac{q a^4}{D},\quad M = \beta q a^2;\qquad w = \alpha\frac{P a^2}{D},\quad
 * M = \frac{P}{4\pi}\Bigl[(1+\nu)\ln\frac{2a}{\pi r'}+\beta\Bigr]$$
 * @param ratio - long side over short side a [-]
 * @param edge - supported, or fixed against turning
 * @param load - uniform, or a force in the middle
 * @param poissonRatio - of the plate [-]
 * @returns the coefficients
 * @validity thin plate, alike in every direction, deflection below half its thickness; beyond ten times as long as wide
 * (three where fixed) it is a strip, and counts as that
 * @throws InputError when a number is out of range
 * @source timoshenko-1959-plates, §§ 30, 34 and 44
 * @derivation supported: Lévy's series. Fixed: moments along the edges as two cosine series that undo its edge slopes
 */
export function rectangularPlate(
  ratio: number,
  edge: PlateEdge,
  load: PlateLoad,
  poissonRatio = DEFAULT_POISSON_RATIO,
): PlateCoefficients {
  requirePositive(ratio, { parameter: 'ratio', quantity: 'long side over short side', kind: 'ratio' });
  requireBetween(ratio, 1, 1e6, { parameter: 'ratio', quantity: 'long side over short side', kind: 'ratio' });
  requirePoissonRatio(poissonRatio);
  requireEdge(edge);
  const long = Math.min(ratio, STRIP[edge]);
  const series = load === 'uniform' ? uniformOnSupports(long, poissonRatio) : centreOnSupports(long, poissonRatio);
  const added =
    edge === 'fixed' ? clampedEdges(load, long, poissonRatio) : { deflection: 0, across: 0, along: 0, edge: 0 };
  // The moment of a centre load is counted in units of P/4π.
  const unit = load === 'uniform' ? 1 : 4 * Math.PI;
  return {
    deflection: series.deflection + added.deflection,
    across: unit * (series.across + added.across),
    along: unit * (series.along + added.along),
    edge: added.edge,
  };
}
