import { InputError } from '../error.ts';
import { requireNotNegative } from '../require.ts';

/** One layer between the plates, as measured on the bench. */
export interface StackLayer {
  /** `soft mounts`, `speed controller`, `plugs`, `nuts`. */
  name: string;
  /** [m] */
  height: number;
}

export interface HeightStack {
  /** Of all layers [m]. */
  height: number;
  /** Underside of each layer above the bottom plate [m]. */
  levels: readonly number[];
  /** The layer that takes most. */
  tallest: StackLayer;
}

/**
 * Height of what lies one on the other: soft mounts, boards, plugs, wires, heads or nuts.
 * $$h = \sum_i h_i$$
 * @param layers - from the bottom plate up
 * @returns total, level of each, tallest [m]
 * @validity layers on one line; what stands beside another layer is not one
 * @throws InputError when there is no layer, or one is negative or taller than 0.3 m
 * @derivation heights on one line add
 */
export function heightStack(layers: readonly StackLayer[]): HeightStack {
  const levels: number[] = [];
  let height = 0;
  for (const layer of layers) {
    const subject = { parameter: 'layers', quantity: `height of ${layer.name}`, kind: 'length' } as const;
    requireNotNegative(layer.height, subject);
    if (layer.height > 0.3)
      throw new InputError({ ...subject, value: layer.height, rule: 'must be at most', limit: 0.3 });
    levels.push(height);
    height += layer.height;
  }
  const tallest = layers.reduce<StackLayer | undefined>(
    (best, layer) => (best && best.height >= layer.height ? best : layer),
    undefined,
  );
  if (!tallest)
    throw new InputError({
      parameter: 'layers',
      quantity: 'layers of the stack',
      value: 0,
      rule: 'must be at least',
      limit: 1,
    });
  return { height, levels, tallest };
}
