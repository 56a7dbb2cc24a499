import { currentArrangement } from '../arrangement.ts';
import type { FitItem, FitKind } from '../../fit/index.ts';
import type { FrameRecord } from '../record.ts';
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

const COUNTS: Readonly<Record<number, string>> = { 4: 'four', 6: 'six' };

/** On the boards, or on the plate. */
const transmitterPlace = (record: FrameRecord): string | undefined => {
  const { items } = currentArrangement(record);
  const [transmitter, board] = (['transmitter', 'board'] as const).map((kind) =>
    items.find((item) => item.kind === kind),
  );
  return transmitter && board && (transmitter.z < board.z + board.height ? 'behind' : 'on');
};

const cameraCover = (record: FrameRecord): string | undefined => {
  const camera = currentArrangement(record).items.find(({ kind }) => kind === 'camera');
  return camera && (camera.openAbove ? 'open' : 'under');
};

/** Place of the pair between the foremost and the rearmost, where there is one. */
const middlePair = (record: FrameRecord): number | undefined => {
  const { standoffs } = currentArrangement(record);
  return standoffs.length === 6 ? standoffs.map(({ x }) => x).sort((a, b) => a - b)[2] : undefined;
};

export const ELECTRONICS: DerivedFields = {
  ...Object.fromEntries(
    PARTS.flatMap((kind) => SIZES.map((size) => [`electronics.${kind}.${size}`, sizeOf(kind, size)] as const)),
  ),
  'electronics.transmitter.place': { get: transmitterPlace },
  'electronics.camera.cover': { get: cameraCover },
  'electronics.standoffs.count': { get: (record) => COUNTS[currentArrangement(record).standoffs.length] },
  'electronics.standoffs.middle': { get: middlePair },
  'electronics.standoffs.front': ends(Math.max),
  'electronics.standoffs.rear': ends(Math.min),
};
