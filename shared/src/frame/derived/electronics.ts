import type { Arrangement, FitKind } from '../../fit/index.ts';
import { currentArrangement, FIT_CLEARANCE } from '../arrangement.ts';
import type { FrameRecord } from '../record.ts';
import { nutsOf, part, TOLD, transmitterKind, wireRoom, type Size, type Transmitter } from './arrangement-told.ts';
import type { DerivedField, DerivedFields } from './derived-field.ts';

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

/** Sides of a part by their length, wherever it is first found. */
const bySize = (kind: FitKind, choose: (...sides: number[]) => number): DerivedField => ({
  get: (record) =>
    [currentArrangement(record), other(record)].flatMap((one) => {
      const found = one && part(one, kind);
      return found ? [choose(found.length, found.width)] : [];
    })[0],
});

/** Of the arrangement in use. */
const inUse = (get: (arrangement: Arrangement) => number | undefined): DerivedField => ({
  get: (record) => get(currentArrangement(record)),
});

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
  'electronics.board.nuts': inUse(nutsOf),
  'electronics.board.plugs': inUse((one) => part(one, 'board') && wireRoom(one, ['front', 'rear'])),
  'electronics.board.sides': inUse((one) => part(one, 'board') && wireRoom(one, ['left', 'right'])),
  'electronics.camera.lens': inUse((one) => {
    const camera = part(one, 'camera');
    return camera && (camera.lens?.reach ?? 0);
  }),
  'electronics.capacitor.longest': bySize('capacitor', Math.max),
  'electronics.receiver.longest': bySize('receiver', Math.max),
  'electronics.receiver.narrowest': bySize('receiver', Math.min),
  'electronics.air.columns': { get: () => FIT_CLEARANCE.columns },
  'electronics.air.items': { get: () => FIT_CLEARANCE.items },
  'electronics.air.edge': { get: () => FIT_CLEARANCE.edge },
  'electronics.analogue.side': ofTransmitter('analogue', 'length'),
  'electronics.analogue.height': ofTransmitter('analogue', 'height'),
  'electronics.digital.length': ofTransmitter('digital', 'length'),
  'electronics.digital.width': ofTransmitter('digital', 'width'),
  'electronics.digital.height': ofTransmitter('digital', 'height'),
};
