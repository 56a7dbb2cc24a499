import { currentArrangement } from '../arrangement.ts';
import type { FitItem, FitKind } from '../../fit/index.ts';
import type { DerivedField, DerivedFields } from './derived-field.ts';

const SIZES = ['length', 'width', 'height', 'x', 'z', 'tilt'] as const satisfies readonly (keyof FitItem)[];
const PARTS = ['board', 'camera', 'transmitter', 'receiver', 'capacitor'] as const satisfies readonly FitKind[];

/** Of the first part of its kind in the arrangement in use. */
const sizeOf = (kind: FitKind, size: (typeof SIZES)[number]): DerivedField => ({
  get: (record) => currentArrangement(record).items.find((item) => item.kind === kind)?.[size],
});

const ends = (pick: (...xs: number[]) => number): DerivedField => ({
  get: (record) => pick(...currentArrangement(record).standoffs.map(({ x }) => x)),
});

export const ELECTRONICS: DerivedFields = {
  ...Object.fromEntries(
    PARTS.flatMap((kind) => SIZES.map((size) => [`electronics.${kind}.${size}`, sizeOf(kind, size)] as const)),
  ),
  'electronics.standoffs.front': ends(Math.max),
  'electronics.standoffs.rear': ends(Math.min),
};
