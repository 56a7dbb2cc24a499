import type { HolePattern } from '@frameworthy/shared/fit';
import type { ChoiceInput, QuantityInput, Values } from '~/island/declaration.ts';

const MM = 1e-3;
const DEGREE = Math.PI / 180;

type Range = readonly [value: number, min: number, max: number, step: number];
type Rest = Partial<Omit<QuantityInput, 'quantity' | 'default' | 'min' | 'max' | 'step'>>;

const quantity =
  (kind: QuantityInput['quantity'], unit: number) =>
  (group: string, label: string, [value, min, max, step]: Range, help: string, rest: Rest = {}): QuantityInput => ({
    quantity: kind,
    group,
    label,
    help,
    default: value * unit,
    min: min * unit,
    max: max * unit,
    step: step * unit,
    ...rest,
  });
const length = quantity('length', MM);
const angle = quantity('angle', DEGREE);

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
const arrangement = (group: string, d: Defaults) => ({
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

type Kind = ReturnType<typeof arrangement>;
type Prefixed<P extends string> = { [K in keyof Kind & string as `${P}${Capitalize<K>}`]: Kind[K] };

/** Where the reader's frame has it; the first arrangement is the one in use. */
const IN_FRAME: Readonly<Partial<Record<keyof Kind, string>>> = {
  stackAt: 'electronics.board.x',
  boardSide: 'body.boardSide',
  boards: 'electronics.board.height',
  place: 'electronics.transmitter.place',
  transmitterAt: 'electronics.transmitter.x',
  cameraAt: 'electronics.camera.x',
  tilt: 'electronics.camera.tilt',
  capacitorAt: 'electronics.capacitor.x',
  receiverAt: 'electronics.receiver.x',
  count: 'electronics.standoffs.count',
  front: 'electronics.standoffs.front',
  middle: 'electronics.standoffs.middle',
  rear: 'electronics.standoffs.rear',
};

/** One set of fields for each arrangement; a field that has no effect is hidden. */
function prefixed<P extends string>(prefix: P, fields: Kind): Prefixed<P> {
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
      const frameField = prefix === 'a' ? IN_FRAME[name as keyof Kind] : undefined;
      return [key(name), { ...input, ...(shownWhen ? { shownWhen } : {}), ...(frameField ? { frameField } : {}) }];
    }),
  ) as unknown as Prefixed<P>;
}

const BODY = 'Body';
const PARTS = 'Parts of both';
const ROOM = 'Room';
const HIT = 'Nose-first hit';

export const inputs = {
  ...prefixed(
    'a',
    arrangement('Arrangement A', {
      stackAt: 0,
      pattern: '30.5x30.5',
      boards: 13,
      place: 'on',
      transmitterAt: -40,
      cameraAt: 48,
      capacitorAt: -42,
      receiverAt: -56,
      count: 'four',
      front: 30,
      middle: 0,
      rear: -30,
    }),
  ),
  ...prefixed(
    'b',
    arrangement('Arrangement B', {
      stackAt: 10,
      pattern: '30.5x30.5',
      boards: 13,
      place: 'behind',
      transmitterAt: -32,
      cameraAt: 52,
      capacitorAt: 37,
      receiverAt: -57,
      count: 'six',
      front: 33,
      middle: -12,
      rear: -53,
    }),
  ),
  bodyLength: length(BODY, 'Length of the plate', [150, 40, 300, 1], 'Outermost, fore and aft.', {
    frameField: 'body.length',
    symbol: 'L_b',
    parameters: ['plate'],
  }),
  bodyWidth: length(BODY, 'Width at the waist', [45, 15, 150, 0.5], 'Where the plate is widest.', {
    frameField: 'body.width',
    symbol: 'w',
    parameters: ['width'],
  }),
  endWidth: length(BODY, 'Width at the ends', [40, 8, 150, 0.5], 'At nose and tail; at most the width at the waist.', {
    frameField: 'body.end',
    parameters: ['nose', 'tail'],
  }),
  endLength: length(BODY, 'Narrowing over', [20, 1, 100, 1], 'Length at each end over which the plate narrows.', {
    frameField: 'body.taperLength',
    parameters: ['length'],
  }),
  across: length(BODY, 'Across a pair', [36, 10, 120, 0.5], 'Between the middles of two standoffs of a pair.', {
    frameField: 'body.standoff.across',
    parameters: ['standoffs', 'columns'],
  }),
  outerDiameter: length(BODY, 'Standoffs, outside', [5, 3, 8, 0.1], 'Of a round one, or across flats.', {
    frameField: 'body.standoff.outerDiameter',
    parameters: ['standoffDiameter'],
  }),
  mounts: length(
    PARTS,
    'Soft mounts under the stack',
    [2.5, 0, 15, 0.5],
    'Grommets, spacers or nuts under the lowest board.',
    { symbol: 'h_m', frameField: 'electronics.board.z' },
  ),
  nuts: length(
    PARTS,
    'Nuts and screw ends on it',
    [2, 0, 10, 0.1],
    'What stands above the boards at their four screws.',
    { symbol: 'h_n' },
  ),
  digitalLength: length(PARTS, 'Digital transmitter, length', [33, 15, 60, 0.5], 'Usual: 25 to 38 mm.'),
  digitalWidth: length(PARTS, 'Digital transmitter, width', [30, 15, 60, 0.5], 'Usual: 25 to 34 mm.'),
  digitalHeight: length(PARTS, 'Digital transmitter, height', [9, 3, 30, 0.5], 'With its cooler: 9 to 18 mm.'),
  analogueSide: length(PARTS, 'Analogue transmitter, side', [28, 15, 50, 0.5], 'Square, on a 20 mm pattern.'),
  analogueHeight: length(PARTS, 'Analogue transmitter, height', [7, 2, 20, 0.5], 'Usual: 5 to 8 mm.'),
  cameraSide: length(PARTS, 'Camera, width and height', [14, 8, 30, 0.5], 'Usual: 14 or 19 mm.', {
    symbol: 'h_c',
    frameField: 'electronics.camera.height',
  }),
  cameraLength: length(PARTS, 'Camera, length of its body', [14, 5, 40, 0.5], 'Without the lens.', {
    symbol: 'l_c',
    frameField: 'electronics.camera.length',
  }),
  cameraCover: {
    label: 'Over the camera',
    group: PARTS,
    choices: { under: 'the top plate', open: 'nothing: it stands ahead of it' },
    default: 'under',
    frameField: 'electronics.camera.cover',
    help: 'A camera ahead of the top plate asks nothing of the standoffs.',
  },
  lensReach: length(PARTS, 'Lens ahead of the body', [6, 0, 25, 0.5], 'Along the line of sight.', {
    parameters: ['lens'],
  }),
  capacitorDiameter: length(PARTS, 'Capacitor, diameter', [10, 4, 20, 0.5], 'Usual: 8 to 12.5 mm.', {
    frameField: 'electronics.capacitor.height',
  }),
  capacitorLength: length(PARTS, 'Capacitor, length', [25, 8, 45, 0.5], 'Usual: 20 to 30 mm, legs bent under.', {
    frameField: 'electronics.capacitor.width',
  }),
  columnsAir: length(ROOM, 'Air to standoffs', [1.5, 0, 10, 0.1], 'From a part to the side of a standoff.', {
    symbol: 'c',
  }),
  itemsAir: length(ROOM, 'Air between parts', [1, 0, 10, 0.1], 'In plan, where two share a height.'),
  edgeAir: length(ROOM, 'Inside the edge', [1, 0, 10, 0.1], 'From a part or a standoff to the edge of the plate.'),
  plugs: length(
    ROOM,
    'Plugs fore and aft of the stack',
    [3, 0, 20, 0.5],
    'Room ahead and behind for plugs and wires to the camera, the capacitor, the pack.',
  ),
  sides: length(
    ROOM,
    'Motor wires beside the stack',
    [2, 0, 20, 0.5],
    'Room left and right; they may leave the plate.',
  ),
  heightAir: length(ROOM, 'Air over the tallest', [1.5, 0, 10, 0.1], 'For heat, wires and parts not quite as drawn.', {
    symbol: 'c_h',
  }),
  hanging: length(ROOM, 'Hanging from the top plate', [0.5, 0, 15, 0.1], 'Screw ends, strap, pad.', { symbol: 'h_t' }),
  rise: length(ROOM, 'Rise on soft mounts', [0.5, 0, 5, 0.1], 'How far the stack jumps in a hit.', { symbol: 'r' }),
  mass: quantity('mass', 1e-3)(HIT, 'All-up mass', [610, 50, 5000, 10], 'Ready to fly, with the pack.', {
    frameField: 'mass.allUp',
    symbol: 'm',
  }),
  speed: quantity('speed', 1)(
    HIT,
    'Speed of the hit',
    [5, 0.5, 30, 0.5],
    'Straight into the nose, 8 mm beside the middle line.',
    { symbol: 'v', frameField: 'cases.nose.speed' },
  ),
  contactStiffness: quantity('stiffness', 1e3)(
    HIT,
    'Stiffness of the contact',
    [100, 1, 5000, 5],
    'Hard nose on concrete about 100 N/mm, a soft mount or a branch 10 to 30.',
    { symbol: 'k_c', frameField: 'cases.nose.contactStiffness' },
  ),
} as const satisfies Record<string, QuantityInput | ChoiceInput>;

export type FitValues = Values<typeof inputs>;

/** The values of one arrangement, without their letter. */
export type ArrangementValues = Values<Kind>;

export function valuesOf(values: FitValues, prefix: 'a' | 'b'): ArrangementValues {
  const all = values as Readonly<Record<string, number | string>>;
  const names = Object.keys(all).filter((key) => new RegExp(`^${prefix}[A-Z]`).test(key));
  return Object.fromEntries(
    names.map((key) => [key.charAt(1).toLowerCase() + key.slice(2), all[key]]),
  ) as unknown as ArrangementValues;
}
