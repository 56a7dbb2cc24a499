import type { Values } from '~/island/declaration.ts';
import {
  electronicsInputs,
  frameMassInputs,
  plateEndInputs,
  standoffInputs,
  standoffScrewInputs,
} from '../body-inputs.ts';

const MM = 1e-3;

/** The plates count only where they are what holds the ends. */
const byPlates = (values: Readonly<Record<string, number | string>>) => values['ends'] === 'plates';

export const inputs = {
  ...standoffInputs,
  pattern: {
    label: 'Layout',
    choices: {
      four: '4: a pair at each end',
      'six-middle': '6: extra pair in the middle',
      'six-front': '6: extra pair nearer the nose',
      'six-wide': '6: extra pair in the middle, wider',
      eight: '8: two extra pairs',
    },
    default: 'four',
    group: 'Layout',
    parameters: ['columns'],
    help: 'Nearer the nose: halfway from the middle to the front pair. Wider: half as far out again as the others.',
  },
  foreAft: {
    label: 'Front pair to rear pair',
    symbol: 'a',
    quantity: 'length',
    default: 90 * MM,
    min: 20 * MM,
    max: 250 * MM,
    step: 1 * MM,
    group: 'Layout',
    frameField: 'body.standoff.foreAft',
    help: 'Middle to middle, along the body.',
  },
  across: {
    label: 'Across a pair',
    symbol: 'b',
    quantity: 'length',
    default: 36 * MM,
    min: 10 * MM,
    max: 120 * MM,
    step: 1 * MM,
    group: 'Layout',
    frameField: 'body.standoff.across',
    help: 'Middle to middle, across the body.',
  },
  ends: {
    label: 'How the ends are held',
    choices: {
      plates: 'by carbon plates that bend a little',
      fixed: 'rigidly, the stiffest case',
      'pinned-heads': 'rigidly below, loose at the top plate',
    },
    default: 'plates',
    group: 'Ends',
    parameters: ['foot', 'head'],
    help: 'A screwed face on a carbon plate is neither rigid nor loose. Loose: what is left when the top screws have opened.',
  },
  bottomPlate: { ...plateEndInputs.bottomPlate, shownWhen: byPlates },
  topPlate: { ...plateEndInputs.topPlate, shownWhen: byPlates },
  plateRadius: { ...plateEndInputs.plateRadius, shownWhen: byPlates },
  ...standoffScrewInputs,
  mass: frameMassInputs.mass,
  speed: {
    label: 'Speed of the hit',
    symbol: 'v',
    quantity: 'speed',
    default: 5,
    min: 0.5,
    max: 40,
    step: 0.5,
    group: 'Hit',
    help: 'Straight into the nose. Most hits happen at 3 to 12 m/s.',
  },
  hitHeight: {
    label: 'Hit above the top plate',
    symbol: 'h',
    quantity: 'length',
    default: 2 * MM,
    min: -30 * MM,
    max: 40 * MM,
    step: 1 * MM,
    group: 'Hit',
    parameters: ['z'],
    help: 'Height of the blow over the top plate: an edge strike is near 0, a camera or antenna mount on top is higher, one below it is negative.',
  },
  hitAside: {
    label: 'Hit to one side',
    symbol: 'e',
    quantity: 'length',
    default: 8 * MM,
    min: 0,
    max: 60 * MM,
    step: 1 * MM,
    group: 'Hit',
    parameters: ['y'],
    help: 'How far beside the centre line the blow lands. Off the line, the top plate turns as well.',
  },
  contactStiffness: frameMassInputs.contactStiffness,
  pitchRadius: frameMassInputs.pitchRadius,
  centreHeight: frameMassInputs.centreHeight,
  ...electronicsInputs,
} as const;

export type SwayValues = Values<typeof inputs>;
