import { InputError } from '../error.ts';
import { requireFinite } from '../require.ts';
import { requireLength, requireModulus } from '../require-physical.ts';

/** One flat layer, given from the top down. */
export interface Layer {
  /** Young's modulus [Pa]. */
  modulus: number;
  /** Across the bending [m]. */
  width: number;
  /** Along the bending [m]. */
  thickness: number;
}

export interface LayeredSection {
  /** From the top face to the neutral axis [m]. */
  neutralAxis: number;
  /** Bending stiffness [N·m²]. */
  bendingStiffness: number;
  /** Stress at top and bottom of each layer, tension positive below for a positive moment [Pa]. */
  stresses: { top: number; bottom: number }[];
}

/**
 * A plate with a pad bonded on it: layers of different materials that bend as one.
 * $$\bar y = \frac{\sum E_iA_iy_i}{\sum E_iA_i},\quad EI = \sum E_i\left(I_i+A_i(y_i-\bar y)^2\right),\quad \sigma_i = \frac{ME_i(y-\bar y)}{EI}$$
 * @param given - layers from the top down, and the bending moment [N·m]
 * @returns neutral axis [m], stiffness [N·m²], stresses [Pa]
 * @validity bond already led in, and stiff; plane sections
 * @throws InputError without layers, or for values that are not physical
 * @source gere-2004-mechanics, section 6.2, composite beams
 */
export function layeredSection({ layers, moment }: { layers: readonly Layer[]; moment: number }): LayeredSection {
  if (layers.length === 0)
    throw new InputError({
      parameter: 'layers',
      quantity: 'number of layers',
      value: 0,
      rule: 'must be at least one',
      kind: 'count',
    });
  requireFinite(moment, { parameter: 'moment', quantity: 'bending moment', kind: 'moment' });
  let depth = 0;
  const placed = layers.map(({ modulus, width, thickness }) => {
    requireModulus(modulus, { parameter: 'modulus', quantity: 'modulus of a layer' });
    requireLength(width, { parameter: 'width', quantity: 'width of a layer' });
    requireLength(thickness, { parameter: 'thickness', quantity: 'thickness of a layer' });
    const top = depth;
    depth += thickness;
    return {
      modulus,
      top,
      bottom: depth,
      middle: top + thickness / 2,
      stretch: modulus * width * thickness,
      thickness,
    };
  });
  const total = placed.reduce((sum, { stretch }) => sum + stretch, 0);
  const neutralAxis = placed.reduce((sum, { stretch, middle }) => sum + stretch * middle, 0) / total;
  const bendingStiffness = placed.reduce(
    (sum, { stretch, thickness, middle }) => sum + stretch * (thickness ** 2 / 12 + (middle - neutralAxis) ** 2),
    0,
  );
  const stress = (modulus: number, y: number): number => (moment * modulus * (y - neutralAxis)) / bendingStiffness;
  return {
    neutralAxis,
    bendingStiffness,
    stresses: placed.map(({ modulus, top, bottom }) => ({
      top: stress(modulus, top),
      bottom: stress(modulus, bottom),
    })),
  };
}
