import type { Arrangement, FitItem, FitKind, Side } from '../../fit/index.ts';

const SIZES = ['length', 'width', 'height', 'x', 'y', 'z', 'tilt'] as const satisfies readonly (keyof FitItem)[];
export type Size = (typeof SIZES)[number];
const PARTS = [
  'board',
  'camera',
  'transmitter',
  'receiver',
  'capacitor',
  'antenna',
] as const satisfies readonly FitKind[];
const NEAR = 1e-4;
const COUNTS: Readonly<Record<number, string>> = { 4: 'four', 6: 'six' };

/** An analogue transmitter is a square board, at most this high; anything else counts as a digital one [m]. */
const ANALOGUE_HEIGHT = 0.008;
export type Transmitter = 'analogue' | 'digital';

/** The first part of its kind. */
export const part = ({ items }: Arrangement, kind: FitKind): FitItem | undefined =>
  items.find((item) => item.kind === kind);

export function transmitterKind(arrangement: Arrangement): Transmitter | 'none' {
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

/** Which way its longer side lies. */
function lies(arrangement: Arrangement, kind: FitKind): 'along' | 'across' | 'none' {
  const found = part(arrangement, kind);
  return found ? (found.length >= found.width ? 'along' : 'across') : 'none';
}

/** A part that may stand past the edge leads out of the body. */
function antennaExit(arrangement: Arrangement): 'tail' | 'own' | 'none' {
  const found = part(arrangement, 'antenna');
  return found ? (found.overhang ? 'tail' : 'own') : 'none';
}

/** The largest room for wires on these sides of the first board. */
export const wireRoom = (arrangement: Arrangement, sides: readonly Side[]): number =>
  Math.max(
    0,
    ...(part(arrangement, 'board')?.wires ?? []).map(({ side, reach }) => (sides.includes(side) ? reach : 0)),
  );

/** Nuts and screw ends over the boards: what a transmitter on the stack stands on. */
export function nutsOf(arrangement: Arrangement): number | undefined {
  const [transmitter, board] = [part(arrangement, 'transmitter'), part(arrangement, 'board')];
  if (!board) return undefined;
  const stands = transmitter && transmitterPlace(arrangement) === 'on';
  return stands ? transmitter.z - board.z - board.height : (board.screw?.height ?? 0);
}

interface Station {
  x: number;
  across: number;
}

/** Two or three pairs from front to rear; nothing where the standoffs stand otherwise. */
function stationsOf({ standoffs }: Arrangement): Readonly<Partial<Record<'front' | 'middle' | 'rear', Station>>> {
  const pairs = standoffs
    .filter(({ x, y }) => y > 0 && standoffs.some((one) => Math.abs(one.x - x) < NEAR && Math.abs(one.y + y) < NEAR))
    .map(({ x, y }) => ({ x, across: 2 * y }))
    .sort((a, b) => b.x - a.x);
  if (2 * pairs.length !== standoffs.length || !COUNTS[standoffs.length]) return {};
  return { front: pairs[0]!, rear: pairs.at(-1)!, ...(pairs.length === 3 ? { middle: pairs[1]! } : {}) };
}

const STATIONS = ['front', 'middle', 'rear'] as const;

/** What may be told of one arrangement. */
export const TOLD: Readonly<Record<string, (arrangement: Arrangement) => number | string | undefined>> = {
  ...Object.fromEntries(
    PARTS.flatMap((kind) =>
      SIZES.map((size) => [`${kind}.${size}`, (one: Arrangement) => part(one, kind)?.[size]] as const),
    ),
  ),
  'board.pattern': (one) => part(one, 'board')?.pattern,
  'board.screw': (one) => part(one, 'board')?.screw?.thread,
  'transmitter.kind': transmitterKind,
  'transmitter.place': transmitterPlace,
  'camera.cover': cameraCover,
  'capacitor.lies': (one) => lies(one, 'capacitor'),
  'receiver.lies': (one) => lies(one, 'receiver'),
  'antenna.exit': antennaExit,
  'standoffs.count': (one) => stationsOf(one).front && COUNTS[one.standoffs.length],
  ...Object.fromEntries(
    STATIONS.flatMap((name) => [
      [`standoffs.${name}`, (one: Arrangement) => stationsOf(one)[name]?.x],
      [`standoffs.${name}Across`, (one: Arrangement) => stationsOf(one)[name]?.across],
    ]),
  ),
};
