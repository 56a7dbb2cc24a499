import type { Collision } from '@frameworthy/shared/fit';
import type {
  ArrangementFit,
  CaseName,
  Check,
  ModeName,
  PartGroup,
  ThinWeb,
  UnderPropeller,
} from '@frameworthy/shared/frame';
import type { Show } from '~/island/declaration.ts';

/** What happens, as the head of a row and inside a sentence. */
export const CASE_WORDS: Readonly<Record<CaseName, { title: string; when: string }>> = {
  tightening: { title: 'Tightening the arm screws', when: 'When the arm screws are tightened' },
  thrust: { title: 'Full thrust', when: 'At full thrust' },
  running: { title: 'Running motors', when: 'In hover' },
  'strike-vertical': { title: 'Blow at a motor, up or down', when: 'Struck at a motor from below or above' },
  'strike-sideways': { title: 'Blow at a motor, across the arm', when: 'Struck at a motor across the arm' },
  'strike-along': { title: 'Blow at a motor, along the arm', when: 'Struck at a motor along the arm' },
  drop: { title: 'Flat drop on the arm ends', when: 'Dropped flat on its arm ends' },
  nose: { title: 'Nose-first hit on the top plate', when: 'Hit nose-first at the top plate' },
};

interface Explained {
  /** Where it is explained: page, and the calculator that works it out, if one does. */
  page: string;
  calculator?: string;
}

interface ModeWords extends Explained {
  title: string;
  /** What happens, after `first`: a clause. */
  gives: string;
  /** Why, and what helps. */
  why: string;
  /** The same of a plate arm, where that is another matter than of a tube. */
  ofStrip?: Explained;
}

const ROOT = { page: 'arms/arm-joints', calculator: 'two-screw-root', ofStrip: { page: 'arms/arm-joints' } };
const SLEEVE = { page: 'arms/doublers', calculator: 'doubler-length' };
const MOUNT = { page: 'arms/motor-mounts' };
const POSTS = { page: 'body/standoff-lengths', calculator: 'standoff-sway' };

const LEVER = 'The arm is a lever over its two screws: the closer they stand, the harder they press.';

export const MODE_WORDS: Readonly<Record<ModeName, ModeWords>> = {
  'bare-arm': {
    title: 'Arm, away from its holes',
    gives: 'the arm breaks beside its root',
    why: 'The moment is largest next to the body, or where the sleeve ends. A larger tube or a thicker plate helps most.',
    page: 'arms/tube-or-plate',
    calculator: 'tube-or-plate',
  },
  'sleeve-end': {
    title: 'Tube at its sleeve',
    gives: 'the tube breaks at the end of its sleeve, or beside the outer hole before the sleeve has taken its share',
    why: 'A sleeve needs length to take up load, and makes a step where it ends.',
    ...SLEEVE,
  },
  'outer-hole': {
    title: 'Arm at its outer hole',
    gives: 'the drilled arm breaks at the outer screw',
    why: 'The moment is largest there, and the hole sits in the fibre that works hardest.',
    ...ROOT,
    ofStrip: { page: 'arms/tube-or-plate', calculator: 'tube-or-plate' },
  },
  'bearing-outer': {
    title: 'Outer hole, bearing',
    gives: 'the outer screw crushes the edge of its hole',
    why: LEVER,
    ...ROOT,
  },
  'bearing-inner': {
    title: 'Inner hole, bearing',
    gives: 'the inner screw crushes the edge of its hole',
    why: LEVER,
    ...ROOT,
  },
  'tear-out-outer': {
    title: 'Outer hole, tear-out',
    gives: 'the wall tears out past the outer screw',
    why: `${LEVER} The wall between the holes is all that holds.`,
    ...ROOT,
  },
  'tear-out-inner': {
    title: 'Inner hole, tear-out',
    gives: 'the end of the arm tears out past the inner screw',
    why: `${LEVER} The wall behind the inner hole is all that holds.`,
    ...ROOT,
  },
  'bond-peak': {
    title: 'Bond of the sleeve',
    gives: 'the bond opens at the outer end of the sleeve',
    why: 'A stiff sleeve hands over its load in the last millimetres. A taper spreads it.',
    ...SLEEVE,
  },
  'arm-screw': {
    title: 'Outer arm screw',
    gives: 'the outer arm screw breaks',
    why: 'Across the arm it is sheared between the plates, up and down it is pulled.',
    ...ROOT,
  },
  tongue: {
    title: 'Plates at the outer arm screw',
    gives: 'the tongue of the plates that holds the outer screw cracks',
    why: 'The outer screw pulls the tongue up with the leverage of the arm. Thickness counts twice, width once, spacing of the screws nearly once.',
    page: 'body/tongues-and-webs',
    calculator: 'plate-tongue',
  },
  'mount-bond': {
    title: 'Bond of the motor plate',
    gives: 'the motor plate comes off its glue',
    why: 'A flat plate meets a round tube on a narrow line, and a blow at the motor tips it: peel.',
    ...MOUNT,
    calculator: 'mount-bond',
  },
  'mount-wrap': {
    title: 'Wrap of the motor plate',
    gives: 'the tow over the motor plate breaks',
    why: 'Once the glue has gone the wrap holds alone.',
    ...MOUNT,
    calculator: 'tow-wrap',
  },
  'tube-crush': {
    title: 'Tube crushed by its screws',
    gives: 'the tube cracks between the plates',
    why: 'A round tube pinched between two plates bends its wall. A sleeve or a longer clamp helps, and so does less torque.',
    page: 'arms/arm-joints',
    calculator: 'clamp-torque',
  },
  'standoff-wall': {
    title: 'Standoff, wall',
    gives: 'a standoff yields at its end',
    why: 'The moment at its ends grows with its length.',
    ...POSTS,
  },
  'standoff-screw': {
    title: 'Standoff, screw',
    gives: 'a standoff’s screw stretches',
    why: 'Once the face lifts, the screw holds the moment.',
    ...POSTS,
  },
  'standoff-buckling': {
    title: 'Standoff, buckling',
    gives: 'a standoff buckles',
    why: 'Thin and long posts go sideways.',
    ...POSTS,
  },
  'main-plate-foot': {
    title: 'Main plate round a standoff',
    gives: 'the main plate cracks round a standoff',
    why: 'The foot of a standoff bends a small patch of plate.',
    ...POSTS,
  },
  'top-plate-foot': {
    title: 'Top plate round a standoff',
    gives: 'the top plate cracks round a standoff',
    why: 'The head of a standoff bends a small patch of plate.',
    ...POSTS,
  },
  electronics: {
    title: 'Top plate against the electronics',
    gives: 'the top plate, or a standoff, reaches the electronics',
    why: 'Sway grows with the third power of the standoffs’ length. Room helps as well as stiffness.',
    ...POSTS,
  },
  'motor-tilt': {
    title: 'Tilt of the motor',
    gives: 'the motor tilts by more than a degree',
    why: 'Nothing breaks, but the thrust no longer points up.',
    page: 'arms/tube-or-plate',
    calculator: 'tube-or-plate',
  },
  resonance: {
    title: 'Arm against once per turn',
    gives: 'an arm rings near its propeller’s speed',
    why: 'Nothing breaks at once, but the gyro hears it and screws work loose.',
    page: 'arms/vibration',
    calculator: 'arm-frequency',
  },
};

/** Where a mode is explained for a frame with arms of this kind. */
export const explainedAt = (mode: ModeName, kind: 'tube' | 'strip'): Explained =>
  (kind === 'strip' ? MODE_WORDS[mode].ofStrip : undefined) ?? MODE_WORDS[mode];

export const GROUP_WORDS: Readonly<Record<PartGroup, string>> = {
  arms: 'Arms',
  motors: 'Motors and propellers',
  plates: 'Plates',
  standoffs: 'Standoffs',
  electronics: 'Electronics',
  hardware: 'Hardware',
  battery: 'Battery',
};

/** One sentence: what gives first in a case, at which speed or with how much in hand. */
export function sentence({ case: name, mode, speed, margin }: Check, show: Show): string {
  const { when } = CASE_WORDS[name];
  const { gives } = MODE_WORDS[mode];
  if (speed) {
    const band = `${show(speed.low, 'speed', 2)} to ${show(speed.high, 'speed', 2)}`;
    return speed.typical < 0.005
      ? `${when}, ${gives} first, and there is no room at all.`
      : `${when}, ${gives} first, at about ${show(speed.typical, 'speed', 2)} (${band}).`;
  }
  return margin.typical < 1
    ? `${when}, ${gives}: ${show(1 / margin.typical, 'percent', 2)} of what it bears.`
    : `${when}, the nearest thing is that ${gives}; ${show(1 / margin.typical, 'percent', 2)} of the way there.`;
}

const capital = (name: string) => name.charAt(0).toUpperCase() + name.slice(1);

/** Which of a part's boxes it is. */
const PARTS: Readonly<Record<Collision['moverPart'], string>> = {
  body: '',
  lens: 'the lens of ',
  screw: 'the nuts of ',
  wires: 'the room for wires of ',
};

interface Told {
  level: 'bad' | 'marginal';
  text: string;
}

/** Propellers that reach into each other's circles. */
export const tipWords = (tips: number, show: Show): Told[] =>
  tips >= 0
    ? []
    : [
        {
          level: 'bad',
          text: `Neighbouring propellers overlap by ${show(-tips, 'length', 2)}: in one plane they strike each other.`,
        },
      ];

/** Holes with too little plate between them. */
export const webWords = (webs: readonly ThinWeb[], show: Show): string[] =>
  webs.map(({ between: [one, other], web }) =>
    web <= 0
      ? `The holes of ${one} and ${other} run into each other.`
      : `Only ${show(web, 'length', 2)} of plate between the holes of ${one} and ${other}.`,
  );

/** What the propellers strike, and what they turn over or under: a sentence for each, the worst first. */
export function propellerWords(room: readonly UnderPropeller[], show: Show): Told[] {
  return room.map(({ name, reach, height }) =>
    height <= 0
      ? {
          level: 'bad',
          text: `${capital(name)} stands ${show(reach, 'length', 2)} inside a propeller’s circle, in the height of the blades: they strike it.`,
        }
      : {
          level: 'marginal',
          text: `${capital(name)} reaches ${show(reach, 'length', 2)} into a propeller’s circle, ${show(height, 'length', 2)} from the blades in height: a bent arm takes that away.`,
        },
  );
}

/** Where neighbouring arms run into each other. */
export const armEndWords = (gap: number, show: Show): string | undefined =>
  gap < 0
    ? `The arms run ${show(-gap, 'length', 2)} into each other in the middle: shorten root or arm, or widen the layout.`
    : undefined;

/** Why an arrangement does not fit, one sentence for each thing. */
export function fitWords({ collisions, tooTall }: ArrangementFit, show: Show): string[] {
  return [
    ...collisions.map(({ mover, against, moverPart, againstPart, gap, move, direction }) => {
      const where = gap < 0 ? `reaches ${show(-gap, 'length', 2)} into` : `stands only ${show(gap, 'length', 2)} from`;
      const other = `${PARTS[againstPart]}${against}`;
      return capital(
        `${PARTS[moverPart]}${mover} ${where} ${other}: ${show(move, 'length', 2)} ${direction} clears it.`,
      );
    }),
    ...tooTall.map(({ name, by }) => `${name} is ${show(by, 'length', 2)} too tall for the standoffs.`),
  ];
}
