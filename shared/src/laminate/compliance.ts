import { invertDefinite, matrixFrom, type Matrix3 } from './matrix.ts';
import type { LaminateStiffness } from './stiffness.ts';

/** Inverse of the whole [A B; B D]: strains and curvatures per load and moment per width. */
export interface LaminateCompliance {
  /** Strain per force per width [m/N]. */
  a: Matrix3;
  /** Strain per moment per width [1/N]. */
  b: Matrix3;
  /** Curvature per moment per width [1/(N·m)]. */
  d: Matrix3;
}

/**
 * Inverse of the stack's stiffness, coupling and all.
 * $$\begin{bmatrix}a&b\\b^T&d\end{bmatrix}=\begin{bmatrix}A&B\\B&D\end{bmatrix}^{-1}$$
 * @param stiffness - from laminateStiffness
 * @returns compliances
 * @validity as laminateStiffness; the edges are free to curl
 * @throws InputError when the stiffness is not positive definite
 * @source kaw-2006-composites, § 4.3
 */
export function laminateCompliance({ a, b, d, thickness }: LaminateStiffness): LaminateCompliance {
  // In units of h, so that stretching and bending are of one size and the elimination keeps its digits.
  const h = thickness;
  const size = a[0][0];
  const whole = [0, 1, 2, 3, 4, 5].map((i) =>
    [0, 1, 2, 3, 4, 5].map((j) => {
      const [r, c] = [(i % 3) as 0 | 1 | 2, (j % 3) as 0 | 1 | 2];
      if (i < 3 && j < 3) return a[r][c] / size;
      return i >= 3 && j >= 3 ? d[r][c] / (size * h ** 2) : b[r][c] / (size * h);
    }),
  );
  const inverse = invertDefinite(whole);
  return {
    a: matrixFrom((i, j) => inverse[i]![j]! / size),
    b: matrixFrom((i, j) => inverse[i]![j + 3]! / (size * h)),
    d: matrixFrom((i, j) => inverse[i + 3]![j + 3]! / (size * h ** 2)),
  };
}

/**
 * Inverse of A alone: a stack that may stretch but not curl.
 * $$a = A^{-1}$$
 * @param stiffness - from laminateStiffness
 * @returns strain per force per width [m/N]
 * @validity the wall of a closed tube, or a plate held flat
 * @throws InputError when the stiffness is not positive definite
 * @source kaw-2006-composites, § 4.3, with curvatures held at zero
 */
export function flatCompliance({ a }: LaminateStiffness): Matrix3 {
  const inverse = invertDefinite(a);
  return matrixFrom((i, j) => inverse[i]![j]!);
}
