import type { HolePattern } from '@frameworthy/shared/fit';
import { angle, length } from './input-of.ts';

interface Defaults {
  stackAt: number;
  pattern: HolePattern;
  boards: number;
  place: 'on' | 'behind';
  transmitterAt: number;
  cameraAt: number;
  capacitorAt: number;
  receiverAt: number;
  count: 'four' | 'six';
  front: number;
  middle: number;
  rear: number;
}

/** What may differ between the two ways to fill the body. */
export const arrangement = (group: string, d: Defaults) => ({
  stackAt: length(
    group,
    'Stack at',
    [d.stackAt, -120, 120, 0.5],
    'Its middle ahead of the motors’ middle; below zero is behind.',
  ),
  pattern: {
    label: 'Hole pattern',
    group,
    choices: { '30.5x30.5': '30.5 × 30.5 mm', '25.5x25.5': '25.5 × 25.5 mm', '20x20': '20 × 20 mm' },
    default: d.pattern,
    help: 'Between the holes of the boards.',
  } as const,
  screw: {
    label: 'Screws through the boards',
    group,
    choices: { M2: 'M2', M3: 'M3' },
    default: 'M3',
    help: 'Usual holes: 2.2 mm on 25.5, up to 3.2 mm on 20, 4 mm on 30.5.',
  } as const,
  boardSide: length(
    group,
    'Side of the boards',
    [36, 20, 60, 0.5],
    'Usual: 36 to 42 mm on 30.5, 32 to 36 mm on 25.5, 27 to 32 mm on 20.',
  ),
  boards: length(group, 'Height of the boards', [d.boards, 3, 30, 0.5], 'From the underside of the lowest, plugs in.', {
    symbol: 'h_b',
  }),
  transmitter: {
    label: 'Video transmitter',
    group,
    choices: { digital: 'digital', analogue: 'analogue', none: 'none' },
    default: 'digital',
    help: 'Sizes of both stand below.',
  } as const,
  place: {
    label: 'It sits',
    group,
    choices: { on: 'on the stack', behind: 'on the plate' },
    default: d.place,
    help: 'On the stack it rests on the nuts.',
  } as const,
  transmitterAt: length(
    group,
    'Transmitter at',
    [d.transmitterAt, -150, 120, 0.5],
    'Its middle, where it sits on the plate.',
  ),
  cameraAt: length(group, 'Camera at', [d.cameraAt, -50, 150, 0.5], 'Middle of its body.'),
  tilt: angle(group, 'Camera tilt', [30, 0, 70, 1], 'Nose up, against the plate.', { symbol: '\\theta' }),
  capacitorAt: length(group, 'Capacitor at', [d.capacitorAt, -150, 150, 0.5], 'It lies across the body.'),
  receiverAt: length(group, 'Receiver at', [d.receiverAt, -150, 150, 0.5], 'It lies along the body, on the plate.'),
  count: {
    label: 'Standoffs',
    group,
    choices: { four: '4: front and rear pair', six: '6: a middle pair as well' },
    default: d.count,
    help: 'In pairs, alike across.',
  } as const,
  front: length(group, 'Front pair at', [d.front, -50, 150, 0.5], 'Ahead of the middle of the motors.'),
  middle: length(group, 'Middle pair at', [d.middle, -120, 120, 0.5], 'Counts with six standoffs.'),
  rear: length(group, 'Rear pair at', [d.rear, -150, 50, 0.5], 'Below zero is behind.'),
});

export type Kind = ReturnType<typeof arrangement>;
type Prefixed<P extends string> = { [K in keyof Kind & string as `${P}${Capitalize<K>}`]: Kind[K] };

/** What the reader's frame knows of an arrangement. */
const IN_FRAME: Readonly<Partial<Record<keyof Kind, string>>> = {
  stackAt: 'board.x',
  boardSide: 'board.length',
  boards: 'board.height',
  transmitter: 'transmitter.kind',
  place: 'transmitter.place',
  transmitterAt: 'transmitter.x',
  cameraAt: 'camera.x',
  tilt: 'camera.tilt',
  capacitorAt: 'capacitor.x',
  receiverAt: 'receiver.x',
  count: 'standoffs.count',
  front: 'standoffs.front',
  middle: 'standoffs.middle',
  rear: 'standoffs.rear',
};

/** A is the arrangement that the frame uses, B the other that it holds. */
const IN_USE = { a: 'electronics', b: 'electronics.other' } as const;

/** One set of fields for each arrangement; a field that has no effect is hidden. */
export function prefixed<P extends keyof typeof IN_USE>(prefix: P, fields: Kind): Prefixed<P> {
  const key = (name: string) => `${prefix}${name.charAt(0).toUpperCase()}${name.slice(1)}`;
  const on = (name: string, of: (value: unknown) => boolean) => (values: Readonly<Record<string, number | string>>) =>
    of(values[key(name)]);
  const shown: Partial<Record<keyof Kind, (values: Readonly<Record<string, number | string>>) => boolean>> = {
    place: on('transmitter', (value) => value !== 'none'),
    transmitterAt: (values) => values[key('transmitter')] !== 'none' && values[key('place')] === 'behind',
    middle: on('count', (value) => value === 'six'),
  };
  return Object.fromEntries(
    Object.entries(fields).map(([name, input]) => {
      const shownWhen = shown[name as keyof Kind];
      const known = IN_FRAME[name as keyof Kind];
      const frameField = known && `${IN_USE[prefix]}.${known}`;
      return [key(name), { ...input, ...(shownWhen ? { shownWhen } : {}), ...(frameField ? { frameField } : {}) }];
    }),
  ) as unknown as Prefixed<P>;
}
