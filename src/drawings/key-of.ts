import type { DrawingLayer, FlatShape } from '@frameworthy/shared/outline';
import type { KeyEntry } from './LineKey.tsx';
import { LOOKS } from './Shapes.tsx';

const NAMES: Readonly<Record<DrawingLayer, string>> = {
  plate: 'plate',
  arm: 'arm',
  hardware: 'motor, screw',
  propeller: 'propeller tips',
  hidden: 'hidden edge',
  electronics: 'electronics',
  battery: 'battery',
};

/** A key of the layers that are in a view. */
export function keyOf(shapes: readonly FlatShape[]): KeyEntry[] {
  const here = new Set(shapes.map(({ layer }) => layer));
  return (Object.keys(NAMES) as DrawingLayer[])
    .filter((layer) => here.has(layer))
    .map((layer) => ({ look: LOOKS[layer], text: NAMES[layer] }));
}
