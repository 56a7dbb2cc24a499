import { fixityShare, requireColumnBeam, type ColumnBeam } from './column.ts';

/** What the top plate feels of one standoff, in any upright plane. */
export interface HeadStiffness {
  /** Side force over side movement, top plate kept level [N/m]. */
  sway: number;
  /** Moment over side movement, and side force over tilt; negative [N]. */
  coupling: number;
  /** Moment over tilt, top plate kept in place [N·m/rad]. */
  tilt: number;
  /** Force over movement along the standoff [N/m]. */
  axial: number;
}

/**
 * Stiffness of a standoff at its head: Timoshenko beam with a rotational spring at each end. With shear left out and
 * both ends fixed, sway is 12EI/L³; with one end pinned, 3EI/L³.
 * $$k_{sway} = \frac{EI}{L^3}\frac{\alpha\beta+A\beta+\alpha B}{D},\quad
 * D=\tfrac{\alpha\beta}{12}+\tfrac{A\beta+\alpha B}{3}+AB+\Phi(\alpha\beta+A\beta+\alpha B),\quad \Phi=\frac{EI}{\kappa AG\,L^2}$$
 * with α, β the share of fixity at foot and head, A = 1-α, B = 1-β.
 * @param column - length, rigidities, ends
 * @returns the four stiffnesses
 * @validity small tilt, linear material, no softening by the load along the standoff
 * @throws InputError when a number is out of range
 * @derivation cantilever from the foot: side movement H(L³/3EI + L/κAG + L²c) + M(L²/2EI + Lc) and tilt
 * H(L²/2EI + Lc) + M(L/EI + c + d), with c and d the flexibilities of foot and head. Inverting the two by two, then
 * multiplying through by αβ with c = (A/α)L/EI and d = (B/β)L/EI, leaves nothing that a pinned end makes infinite
 */
export function columnHeadStiffness(column: ColumnBeam): HeadStiffness {
  requireColumnBeam(column);
  const { length, flexuralRigidity, shearRigidity, axialRigidity } = column;
  const foot = fixityShare(column.foot, column);
  const head = fixityShare(column.head, column);
  const both = foot * head;
  const footGives = (1 - foot) * head;
  const headGives = foot * (1 - head);
  const shear = flexuralRigidity / (shearRigidity * length ** 2);
  const held = both + footGives + headGives;
  const denominator = both / 12 + (footGives + headGives) / 3 + (1 - foot) * (1 - head) + shear * held;
  return {
    sway: ((flexuralRigidity / length ** 3) * held) / denominator,
    coupling: ((-flexuralRigidity / length ** 2) * (both / 2 + footGives)) / denominator,
    tilt: ((flexuralRigidity / length) * (both * (1 / 3 + shear) + footGives)) / denominator,
    axial: axialRigidity / length,
  };
}
