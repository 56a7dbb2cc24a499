/** Rigidities and masses of a stretch of arm, all layers together. */
export interface ElementValues {
  /** [m] */
  length: number;
  /** EI [N·m²]. */
  flexural: number;
  /** κAG [N]. */
  shear: number;
  /** GJ [N·m²]. */
  torsional: number;
  /** ρA [kg/m]. */
  mass: number;
  /** ρI in the plane of bending [kg·m]. */
  rotary: number;
  /** ρ times polar second moment [kg·m]. */
  polar: number;
}

export type ElementMatrix = readonly (readonly number[])[];

/**
 * Stiffness of a Timoshenko beam element; degrees of freedom are deflection and rotation at both ends.
 * $$\Phi=\frac{12EI}{\kappa A G\,l^2}$$
 * @param values - of the element
 * @returns 4 × 4, in N, N and N·m
 * @validity exact for loads at the ends
 * @throws InputError through the function that assembles
 * @source przemieniecki-1968-matrix, § 5.6
 */
export function bendingStiffness({ length: l, flexural, shear }: ElementValues): ElementMatrix {
  const phi = (12 * flexural) / (shear * l ** 2);
  const k = flexural / ((1 + phi) * l ** 3);
  const [a, b, c, d] = [12 * k, 6 * l * k, (4 + phi) * l ** 2 * k, (2 - phi) * l ** 2 * k];
  return [
    [a, b, -a, b],
    [b, c, -b, d],
    [-a, -b, a, -b],
    [b, d, -b, c],
  ];
}

/**
 * Consistent mass of the same element, with the rotary inertia of the section.
 * @param values - of the element
 * @returns 4 × 4, in kg, kg·m and kg·m²
 * @validity the element bends as under loads at its ends
 * @throws InputError through the function that assembles
 * @source przemieniecki-1968-matrix, § 11.4
 */
export function bendingMass({ length: l, flexural, shear, mass, rotary }: ElementValues): ElementMatrix {
  const p = (12 * flexural) / (shear * l ** 2);
  const m = (mass * l) / (1 + p) ** 2;
  const r = rotary / ((1 + p) ** 2 * l);
  const near = m * (13 / 35 + (7 * p) / 10 + p ** 2 / 3) + (r * 6) / 5;
  const far = m * (9 / 70 + (3 * p) / 10 + p ** 2 / 6) - (r * 6) / 5;
  const turn = l * (m * (11 / 210 + (11 * p) / 120 + p ** 2 / 24) + r * (1 / 10 - p / 2));
  const cross = l * (-m * (13 / 420 + (3 * p) / 40 + p ** 2 / 24) + r * (1 / 10 - p / 2));
  const own = l ** 2 * (m * (1 / 105 + p / 60 + p ** 2 / 120) + r * (2 / 15 + p / 6 + p ** 2 / 3));
  const other = l ** 2 * (-m * (1 / 140 + p / 60 + p ** 2 / 120) + r * (-1 / 30 - p / 6 + p ** 2 / 6));
  return [
    [near, turn, far, cross],
    [turn, own, -cross, other],
    [far, -cross, near, -turn],
    [cross, other, -turn, own],
  ];
}

/**
 * Stiffness and consistent mass of a shaft element in torsion.
 * $$k=\frac{GJ}{l}\begin{bmatrix}1&-1\\-1&1\end{bmatrix},\quad m=\frac{\rho I_p l}{6}\begin{bmatrix}2&1\\1&2\end{bmatrix}$$
 * @param values - of the element
 * @returns both matrices, 2 × 2
 * @validity free warping
 * @throws InputError through the function that assembles
 * @source przemieniecki-1968-matrix, § 11.3, as a bar with GJ and ρ I_p
 */
export function twistElement({ length: l, torsional, polar }: ElementValues): {
  stiffness: ElementMatrix;
  mass: ElementMatrix;
} {
  const k = torsional / l;
  const m = (polar * l) / 6;
  return {
    stiffness: [
      [k, -k],
      [-k, k],
    ],
    mass: [
      [2 * m, m],
      [m, 2 * m],
    ],
  };
}
