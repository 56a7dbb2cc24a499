import type { ChoiceInput, QuantityInput, Values } from '~/island/declaration.ts';
import { arrangement, prefixed, type Kind } from './arrangement-inputs.ts';
import { length, quantity } from './input-of.ts';

const BODY = 'Body';
const PARTS = 'Parts of both';
const ROOM = 'Room';
const HIT = 'Nose-first hit';

export const inputs = {
  ...prefixed(
    'a',
    arrangement('A', {
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
    arrangement('B', {
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
    { symbol: 'h_n', frameField: 'electronics.board.nuts' },
  ),
  digitalLength: length(PARTS, 'Digital transmitter, length', [33, 15, 60, 0.5], 'Usual: 25 to 38 mm.', {
    frameField: 'electronics.digital.length',
  }),
  digitalWidth: length(PARTS, 'Digital transmitter, width', [30, 15, 60, 0.5], 'Usual: 25 to 34 mm.', {
    frameField: 'electronics.digital.width',
  }),
  digitalHeight: length(PARTS, 'Digital transmitter, height', [9, 3, 30, 0.5], 'With its cooler: 9 to 18 mm.', {
    frameField: 'electronics.digital.height',
  }),
  analogueSide: length(PARTS, 'Analogue transmitter, side', [28, 15, 50, 0.5], 'Square, on a 20 mm pattern.', {
    frameField: 'electronics.analogue.side',
  }),
  analogueHeight: length(PARTS, 'Analogue transmitter, height', [7, 2, 20, 0.5], 'Usual: 5 to 8 mm.', {
    frameField: 'electronics.analogue.height',
  }),
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
  cameraAbove: length(PARTS, 'Camera above the plate', [0, 0, 30, 0.5], 'Its lowest point, as tilted.', {
    frameField: 'electronics.camera.z',
  }),
  lensReach: length(PARTS, 'Lens ahead of the body', [6, 0, 25, 0.5], 'Along the line of sight.', {
    parameters: ['lens'],
    frameField: 'electronics.camera.lens',
  }),
  capacitorDiameter: length(PARTS, 'Capacitor, diameter', [10, 4, 20, 0.5], 'Usual: 8 to 12.5 mm.', {
    frameField: 'electronics.capacitor.height',
  }),
  capacitorLength: length(PARTS, 'Capacitor, length', [25, 8, 45, 0.5], 'Usual: 20 to 30 mm, legs bent under.', {
    frameField: 'electronics.capacitor.longest',
  }),
  receiverLength: length(PARTS, 'Receiver, length', [14, 5, 40, 0.5], 'Usual: 11 to 20 mm.', {
    frameField: 'electronics.receiver.longest',
  }),
  receiverWidth: length(PARTS, 'Receiver, width', [11, 5, 30, 0.5], 'Usual: 10 to 14 mm.', {
    frameField: 'electronics.receiver.narrowest',
  }),
  receiverHeight: length(PARTS, 'Receiver, height', [5, 1, 20, 0.5], 'With its plug and heat shrink.', {
    frameField: 'electronics.receiver.height',
  }),
  exitLength: length(PARTS, 'Antenna exit, length', [10, 2, 40, 0.5], 'Fore and aft, inside the body.', {
    frameField: 'electronics.antenna.length',
  }),
  exitWidth: length(PARTS, 'Antenna exit, width', [8, 2, 40, 0.5], 'Across the body, at most.', {
    frameField: 'electronics.antenna.width',
  }),
  exitHeight: length(PARTS, 'Antenna exit, height', [6, 2, 30, 0.5], 'Of what leads the antenna out.', {
    frameField: 'electronics.antenna.height',
  }),
  columnsAir: length(ROOM, 'Air to standoffs', [1.5, 0, 10, 0.1], 'From a part to the side of a standoff.', {
    symbol: 'c',
    frameField: 'electronics.air.columns',
  }),
  itemsAir: length(ROOM, 'Air between parts', [1, 0, 10, 0.1], 'In plan, where two share a height.', {
    frameField: 'electronics.air.items',
  }),
  edgeAir: length(ROOM, 'Inside the edge', [1, 0, 10, 0.1], 'From a part or a standoff to the edge of the plate.', {
    frameField: 'electronics.air.edge',
  }),
  plugs: length(
    ROOM,
    'Plugs fore and aft of the stack',
    [3, 0, 20, 0.5],
    'Room ahead and behind for plugs and wires to the camera, the capacitor, the pack.',
    { frameField: 'electronics.board.plugs' },
  ),
  sides: length(
    ROOM,
    'Motor wires beside the stack',
    [2, 0, 20, 0.5],
    'Room left and right; they may leave the plate.',
    { frameField: 'electronics.board.sides' },
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
