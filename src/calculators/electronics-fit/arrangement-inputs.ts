import type { HolePattern } from '@frameworthy/shared/fit';
import type { Input } from '~/island/declaration.ts';
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

/** What the reader's frame knows it by, within an arrangement, and the choices with which it has no effect. */
interface Of {
  frameField: string;
  unless?: readonly (readonly [field: string, choice: string])[];
}

const NO_CAPACITOR = [['capacitorLies', 'none']] as const;
const NO_RECEIVER = [['receiverLies', 'none']] as const;
const ON_STACK = [
  ['transmitter', 'none'],
  ['place', 'on'],
] as const;
const NO_EXIT = [['exit', 'none']] as const;
const AT_TAIL = [...NO_EXIT, ['exit', 'tail']] as const;
const FOUR = [['count', 'four']] as const;

const at = (group: string, label: string, value: number, of: Of) => ({
  ...length(group, label, [value, -150, 150, 0.5], 'Its middle, ahead of the motors’ middle.'),
  ...of,
});
const aside = (group: string, label: string, of: Of) => ({
  ...length(group, label, [0, -60, 60, 0.5], 'Its middle from the centre line; negative is to the right.'),
  ...of,
});
const above = (group: string, label: string, value: number, of: Of) => ({
  ...length(group, label, [value, 0, 60, 0.5], 'Its underside over the plate: as high as what it lies on.'),
  ...of,
});
const apart = (group: string, label: string, of: Of) => ({
  ...length(group, label, [36, 10, 120, 0.5], 'Between the middles of the two standoffs.'),
  ...of,
});
const lies = (group: string, label: string, value: 'across' | 'along', frameField: string) =>
  ({
    label,
    group,
    choices: { along: 'along the body', across: 'across the body', none: 'nowhere: there is none' },
    default: value,
    frameField,
    help: 'Its longer side, seen from above.',
  }) as const;

/** What may differ between the two ways to fill the body. */
export const arrangement = (letter: string, d: Defaults) => {
  const group = `${letter}: stack, transmitter, camera`;
  const small = `${letter}: capacitor, receiver, antenna`;
  const posts = `${letter}: standoffs`;
  return {
    stackAt: length(
      group,
      'Stack at',
      [d.stackAt, -120, 120, 0.5],
      'Its middle ahead of the motors’ middle; below zero is behind.',
      { frameField: 'board.x' },
    ),
    pattern: {
      label: 'Hole pattern',
      group,
      choices: { '30.5x30.5': '30.5 × 30.5 mm', '25.5x25.5': '25.5 × 25.5 mm', '20x20': '20 × 20 mm' },
      default: d.pattern,
      frameField: 'board.pattern',
      help: 'Between the holes of the boards.',
    } as const,
    screw: {
      label: 'Screws through the boards',
      group,
      choices: { M2: 'M2', M3: 'M3' },
      default: 'M3',
      frameField: 'board.screw',
      help: 'Usual holes: 2.2 mm on 25.5, up to 3.2 mm on 20, 4 mm on 30.5.',
    } as const,
    boardSide: length(
      group,
      'Side of the boards',
      [36, 20, 60, 0.5],
      'Usual: 36 to 42 mm on 30.5, 32 to 36 mm on 25.5, 27 to 32 mm on 20.',
      { frameField: 'board.length' },
    ),
    boards: length(
      group,
      'Height of the boards',
      [d.boards, 3, 30, 0.5],
      'From the underside of the lowest, plugs in.',
      { symbol: 'h_b', frameField: 'board.height' },
    ),
    transmitter: {
      label: 'Video transmitter',
      group,
      choices: { digital: 'digital', analogue: 'analogue', none: 'none' },
      default: 'digital',
      frameField: 'transmitter.kind',
      help: 'Sizes of both stand below.',
    } as const,
    place: {
      label: 'It sits',
      group,
      choices: { on: 'on the stack', behind: 'on the plate' },
      default: d.place,
      frameField: 'transmitter.place',
      unless: [['transmitter', 'none']],
      help: 'On the stack it rests on the nuts.',
    } as const,
    transmitterAt: at(group, 'Transmitter at', d.transmitterAt, { frameField: 'transmitter.x', unless: ON_STACK }),
    transmitterAbove: above(group, 'Transmitter above the plate', 2.5, {
      frameField: 'transmitter.z',
      unless: ON_STACK,
    }),
    cameraAt: length(group, 'Camera at', [d.cameraAt, -50, 150, 0.5], 'Middle of its body.', {
      frameField: 'camera.x',
    }),
    tilt: angle(group, 'Camera tilt', [30, 0, 70, 1], 'Nose up, against the plate.', {
      symbol: '\\theta',
      frameField: 'camera.tilt',
    }),
    capacitorLies: lies(small, 'Capacitor lies', 'across', 'capacitor.lies'),
    capacitorAt: at(small, 'Capacitor at', d.capacitorAt, { frameField: 'capacitor.x', unless: NO_CAPACITOR }),
    capacitorAside: aside(small, 'Capacitor, to the left', { frameField: 'capacitor.y', unless: NO_CAPACITOR }),
    capacitorAbove: above(small, 'Capacitor above the plate', 0, { frameField: 'capacitor.z', unless: NO_CAPACITOR }),
    receiverLies: lies(small, 'Receiver lies', 'along', 'receiver.lies'),
    receiverAt: at(small, 'Receiver at', d.receiverAt, { frameField: 'receiver.x', unless: NO_RECEIVER }),
    receiverAside: aside(small, 'Receiver, to the left', { frameField: 'receiver.y', unless: NO_RECEIVER }),
    receiverAbove: above(small, 'Receiver above the plate', 0, { frameField: 'receiver.z', unless: NO_RECEIVER }),
    exit: {
      label: 'Antenna exit',
      group: small,
      choices: { tail: 'flush with the tail', own: 'at its own place', none: 'none' },
      default: 'tail',
      frameField: 'antenna.exit',
      help: 'The tube or print that leads the antenna out.',
    } as const,
    exitAt: at(small, 'Antenna exit at', -60, { frameField: 'antenna.x', unless: AT_TAIL }),
    exitAside: aside(small, 'Antenna exit, to the left', { frameField: 'antenna.y', unless: AT_TAIL }),
    exitAbove: above(small, 'Antenna exit above the plate', 0, { frameField: 'antenna.z', unless: NO_EXIT }),
    count: {
      label: 'Standoffs',
      group: posts,
      choices: { four: '4: front and rear pair', six: '6: a middle pair as well' },
      default: d.count,
      frameField: 'standoffs.count',
      help: 'In pairs, alike on both sides.',
    } as const,
    front: length(posts, 'Front pair at', [d.front, -50, 150, 0.5], 'Ahead of the middle of the motors.', {
      frameField: 'standoffs.front',
    }),
    frontAcross: apart(posts, 'Across the front pair', { frameField: 'standoffs.frontAcross' }),
    middle: {
      ...length(posts, 'Middle pair at', [d.middle, -120, 120, 0.5], 'Counts with six standoffs.'),
      frameField: 'standoffs.middle',
      unless: FOUR,
    },
    middleAcross: apart(posts, 'Across the middle pair', { frameField: 'standoffs.middleAcross', unless: FOUR }),
    rear: length(posts, 'Rear pair at', [d.rear, -150, 50, 0.5], 'Below zero is behind.', {
      frameField: 'standoffs.rear',
    }),
    rearAcross: apart(posts, 'Across the rear pair', { frameField: 'standoffs.rearAcross' }),
  };
};

export type Kind = ReturnType<typeof arrangement>;
type Prefixed<P extends string> = { [K in keyof Kind & string as `${P}${Capitalize<K>}`]: Kind[K] };

/** A is the arrangement that the frame uses, B the other that it holds. */
const IN_USE = { a: 'electronics', b: 'electronics.other' } as const;

/** One set of fields for each arrangement; a field that has no effect is hidden. */
export function prefixed<P extends keyof typeof IN_USE>(prefix: P, fields: Kind): Prefixed<P> {
  const key = (name: string) => `${prefix}${name.charAt(0).toUpperCase()}${name.slice(1)}`;
  return Object.fromEntries(
    Object.entries(fields as Readonly<Record<string, Input & Partial<Of>>>).map(([name, { unless, ...input }]) => {
      const shownWhen: Input['shownWhen'] =
        unless && ((values) => unless.every(([field, choice]) => values[key(field)] !== choice));
      const frameField = `${IN_USE[prefix]}.${input.frameField}`;
      return [key(name), { ...input, frameField, ...(shownWhen ? { shownWhen } : {}) }];
    }),
  ) as unknown as Prefixed<P>;
}
