import { currentArrangement } from '../arrangement.ts';
import type { Arrangement, FitItem, FitKind } from '../../fit/index.ts';
import type { FrameRecord } from '../record.ts';
import type { DerivedField, DerivedFields } from './derived-field.ts';

const SIZES = ['length', 'width', 'height', 'x', 'z', 'tilt'] as const satisfies readonly (keyof FitItem)[];
type Size = (typeof SIZES)[number];
const PARTS = ['board', 'camera', 'transmitter', 'receiver', 'capacitor'] as const satisfies readonly FitKind[];
const COUNTS: Readonly<Record<number, string>> = { 4: 'four', 6: 'six' };

/** An analogue transmitter is a square board, at most this high; anything else counts as a digital one [m]. */
const ANALOGUE_HEIGHT = 0.008;
type Transmitter = 'analogue' | 'digital';

/** The first part of its kind. */
const part = ({ items }: Arrangement, kind: FitKind): FitItem | undefined => items.find((item) => item.kind === kind);

function transmitterKind(arrangement: Arrangement): Transmitter | 'none' {
  const found = part(arrangement, 'transmitter');
  if (!found) return 'none';
  return found.length === found.width && found.height <= ANALOGUE_HEIGHT ? 'analogue' : 'digital';
}

/** On the boards, or on the plate. */
function transmitterPlace(arrangement: Arrangement): string | undefined {
  const [transmitter, board] = [part(arrangement, 'transmitter'), part(arrangement, 'board')];
  return transmitter && board && (transmitter.z < board.z + board.height ? 'behind' : 'on');
}

function cameraCover(arrangement: Arrangement): string | undefined {
  const camera = part(arrangement, 'camera');
  return camera && (camera.openAbove ? 'open' : 'under');
}

/** Place of the pair between the foremost and the rearmost, where there is one. */
const middlePair = ({ standoffs }: Arrangement): number | undefined =>
  standoffs.length === 6 ? standoffs.map(({ x }) => x).sort((a, b) => a - b)[2] : undefined;

/** What may be told of one arrangement. */
const TOLD: Readonly<Record<string, (arrangement: Arrangement) => number | string | undefined>> = {
  ...Object.fromEntries(
    PARTS.flatMap((kind) =>
      SIZES.map((size) => [`${kind}.${size}`, (one: Arrangement) => part(one, kind)?.[size]] as const),
    ),
  ),
  'transmitter.kind': transmitterKind,
  'transmitter.place': transmitterPlace,
  'camera.cover': cameraCover,
  'standoffs.count': ({ standoffs }) => COUNTS[standoffs.length],
  'standoffs.middle': middlePair,
  'standoffs.front': ({ standoffs }) => Math.max(...standoffs.map(({ x }) => x)),
  'standoffs.rear': ({ standoffs }) => Math.min(...standoffs.map(({ x }) => x)),
};

/** The first that is not in use. */
const other = ({ electronics: { current, arrangements } }: FrameRecord): Arrangement | undefined =>
  arrangements.find(({ name }) => name !== current);

const told = (prefix: string, of: (record: FrameRecord) => Arrangement | undefined): DerivedFields =>
  Object.fromEntries(
    Object.entries(TOLD).map(([name, get]) => [
      `${prefix}.${name}`,
      {
        get: (record) => {
          const arrangement = of(record);
          return arrangement && get(arrangement);
        },
      },
    ]),
  );

/** Of the transmitter of that kind, in the arrangement in use or else in the other. */
const ofTransmitter = (kind: Transmitter, size: Size): DerivedField => ({
  get: (record) =>
    [currentArrangement(record), other(record)]
      .filter((arrangement) => arrangement !== undefined)
      .filter((arrangement) => transmitterKind(arrangement) === kind)
      .map((arrangement) => part(arrangement, 'transmitter')?.[size])[0],
});

export const ELECTRONICS: DerivedFields = {
  ...told('electronics', currentArrangement),
  ...told('electronics.other', other),
  'electronics.analogue.side': ofTransmitter('analogue', 'length'),
  'electronics.analogue.height': ofTransmitter('analogue', 'height'),
  'electronics.digital.length': ofTransmitter('digital', 'length'),
  'electronics.digital.width': ofTransmitter('digital', 'width'),
  'electronics.digital.height': ofTransmitter('digital', 'height'),
};
