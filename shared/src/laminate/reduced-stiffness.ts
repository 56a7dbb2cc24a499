import { requireFinite } from '../require.ts';
import { matrixFrom, type Matrix3 } from './matrix.ts';
import { requirePlyMaterial, type PlyMaterial } from './ply.ts';

/**
 * Stiffness of a ply in its own axes, plane stress.
 * $$Q_{11}=\frac{E_1}{1-\nu_{12}\nu_{21}},\quad Q_{12}=\nu_{12}Q_{22},\quad Q_{22}=\frac{E_2}{1-\nu_{12}\nu_{21}},\quad Q_{66}=G_{12}$$
 * @param material - elastic constants of the ply
 * @returns Q [Pa]
 * @validity linear, plane stress
 * @throws InputError when a constant is out of range
 * @source jones-1999-composite, § 2.4; kaw-2006-composites, § 2.4
 */
export function reducedStiffness(material: PlyMaterial): Matrix3 {
  requirePlyMaterial(material);
  const { modulusAlong, modulusAcross, shearModulus, poissonRatio } = material;
  const free = 1 - (poissonRatio ** 2 * modulusAcross) / modulusAlong;
  const q22 = modulusAcross / free;
  return [
    [modulusAlong / free, poissonRatio * q22, 0],
    [poissonRatio * q22, q22, 0],
    [0, 0, shearModulus],
  ];
}

/** The five invariants of a ply, and what a turn through any angle makes of them. */
export interface PlyInvariants {
  u1: number;
  u2: number;
  u3: number;
  u4: number;
  u5: number;
}

/**
 * What of a ply's stiffness does not depend on how it is turned.
 * $$U_1=\tfrac18(3Q_{11}+3Q_{22}+2Q_{12}+4Q_{66}),\quad U_2=\tfrac12(Q_{11}-Q_{22}),\quad U_3=\tfrac18(Q_{11}+Q_{22}-2Q_{12}-4Q_{66}),\quad U_4=U_3+Q_{12},\quad U_5=U_3+Q_{66}$$
 * @param material - elastic constants of the ply
 * @returns U1 to U5 [Pa]
 * @validity as reducedStiffness
 * @throws InputError when a constant is out of range
 * @source tsai-1980-composite, chapter 3
 */
export function plyInvariants(material: PlyMaterial): PlyInvariants {
  const [[q11, q12], [, q22], [, , q66]] = reducedStiffness(material);
  const u3 = (q11 + q22 - 2 * q12 - 4 * q66) / 8;
  return { u1: (3 * q11 + 3 * q22 + 2 * q12 + 4 * q66) / 8, u2: (q11 - q22) / 2, u3, u4: u3 + q12, u5: u3 + q66 };
}

/**
 * Stiffness of a ply in the axes of the part.
 * $$\bar Q_{11,22}=U_1\pm U_2\cos2\theta+U_3\cos4\theta,\quad \bar Q_{12,66}=U_{4,5}-U_3\cos4\theta,\quad \bar Q_{16,26}=\tfrac12U_2\sin2\theta\pm U_3\sin4\theta$$
 * @param material - elastic constants of the ply
 * @param angle - from the part's x axis to the fibre [rad]
 * @returns Q̄ [Pa]
 * @validity as reducedStiffness
 * @throws InputError when a constant or the angle is out of range
 * @source tsai-1980-composite, chapter 3
 */
export function rotatedStiffness(material: PlyMaterial, angle: number): Matrix3 {
  requireFinite(angle, { parameter: 'angle', quantity: 'angle of a ply', kind: 'angle' });
  const { u1, u2, u3, u4, u5 } = plyInvariants(material);
  const [c2, s2, c4, s4] = [Math.cos(2 * angle), Math.sin(2 * angle), Math.cos(4 * angle), Math.sin(4 * angle)];
  const q12 = u4 - u3 * c4;
  const q16 = (u2 * s2) / 2 + u3 * s4;
  const q26 = (u2 * s2) / 2 - u3 * s4;
  const q = [
    [u1 + u2 * c2 + u3 * c4, q12, q16],
    [q12, u1 - u2 * c2 + u3 * c4, q26],
    [q16, q26, u5 - u3 * c4],
  ] as const;
  return matrixFrom((i, j) => q[i][j]);
}
