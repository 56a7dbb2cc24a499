import { CLOSE_GAP } from '@frameworthy/shared/layout';
import type { Output, Step, Verdict } from '~/island/declaration.ts';
import type { DrawingResult } from './compute.ts';
import type { DrawingValues } from './inputs.ts';

type Numbers = readonly Output<DrawingValues, DrawingResult>[];

/** Least room that a part cut and put together by hand should have. */
const PLAY = 1e-3;

function room(least: number, value: number, texts: { bad: string; marginal: string }): Verdict {
  if (value < 0) return { level: 'bad', text: texts.bad };
  return value < least ? { level: 'marginal', text: texts.marginal } : { level: 'good', text: 'enough' };
}

export const outputs: Numbers = [
  {
    key: 'wheelbase',
    label: 'Wheelbase',
    symbol: 'w',
    quantity: 'length',
    meaning: 'Between opposite motors.',
    value: ({ layout }) => layout.wheelbase,
    digits: 4,
    headline: true,
  },
  {
    key: 'cutLength',
    label: 'Length to cut an arm to',
    symbol: '\\ell',
    quantity: 'length',
    meaning: 'From end to end; the saw takes its kerf from the rest.',
    value: ({ cutLength }) => cutLength,
    digits: 4,
    headline: true,
  },
  {
    key: 'overallLength',
    label: 'Length over the propellers',
    quantity: 'length',
    meaning: 'Fore and aft, the discs and the battery counted.',
    value: ({ overall }) => overall.length,
    group: 'Overall',
  },
  {
    key: 'overallWidth',
    label: 'Width over the propellers',
    quantity: 'length',
    meaning: 'From side to side.',
    value: ({ overall }) => overall.width,
    group: 'Overall',
  },
  {
    key: 'overallHeight',
    label: 'Height',
    quantity: 'length',
    meaning: 'From the lowest point to the highest, battery included.',
    value: ({ overall }) => overall.height,
    group: 'Overall',
  },
  {
    key: 'innerGap',
    label: 'Between the arms in the middle',
    symbol: 'c',
    quantity: 'length',
    meaning: 'From corner to corner of neighbouring inner ends; negative where they run into each other.',
    value: ({ innerGap }) => innerGap,
    verdict: ({ innerGap }) =>
      room(PLAY, innerGap, { bad: 'the arms do not fit', marginal: 'a saw cut out of square closes it' }),
    group: 'Clearances',
  },
  {
    key: 'leastGap',
    label: 'Tip gap',
    quantity: 'length',
    meaning: 'Between the nearest propeller circles; negative where they overlap.',
    value: ({ layout }) => Math.min(layout.lateralGap, layout.longitudinalGap),
    verdict: ({ layout: { gapPerDiameter } }) =>
      room(CLOSE_GAP, gapPerDiameter, { bad: 'the circles overlap', marginal: 'under a tenth of the diameter' }),
    group: 'Clearances',
  },
  {
    key: 'bodyRoom',
    label: 'Top plate to propellers',
    quantity: 'length',
    meaning: 'Seen from above; negative where a propeller runs over or under the plate.',
    value: ({ bodyRoom }) => bodyRoom,
    verdict: ({ bodyRoom }) => room(3e-3, bodyRoom, { bad: 'they cross', marginal: 'a bent arm can touch' }),
    group: 'Clearances',
  },
  {
    key: 'holeEdge',
    label: 'Standoff hole to the edge',
    quantity: 'length',
    meaning: 'Plate that is left between the hole and the outline of the top plate.',
    value: ({ holeEdge }) => holeEdge,
    verdict: ({ holeEdge }, { standoffHole }) =>
      room(standoffHole, holeEdge, { bad: 'the hole breaks out', marginal: 'less than a hole diameter' }),
    group: 'Clearances',
  },
  {
    key: 'area',
    label: 'Plate area',
    quantity: 'area',
    meaning: 'Of the three plates as drawn: no cutouts, so an upper limit.',
    value: ({ area }) => area,
    group: 'Plates',
  },
  {
    key: 'mass',
    label: 'Mass of the plates',
    quantity: 'mass',
    meaning: 'The same in woven carbon plate; cutouts take a quarter to a third of it away.',
    value: ({ mass }) => mass,
    group: 'Plates',
  },
];

export const steps: readonly Step<DrawingValues, DrawingResult>[] = [
  {
    id: 'wheelbase',
    says: 'Diagonal of the motor spacings',
    formula: 'w = \\sqrt{b_x^2 + b_y^2}',
    numbers: 'w = \\sqrt{\\left(\\slot{x}\\right)^2 + \\left(\\slot{y}\\right)^2} = \\slot{w}',
    slots: (_, { layout }) => ({
      x: { value: layout.lateralSpacing, quantity: 'length' },
      y: { value: layout.longitudinalSpacing, quantity: 'length' },
      w: { value: layout.wheelbase, quantity: 'length', digits: 4 },
    }),
  },
  {
    id: 'cut',
    says: 'Arm from end to end: free length, screw spacing, end distance, overhang',
    formula: '\\ell = L + s + e_1 + o',
    numbers: '\\ell = \\slot{L} + \\slot{s} + \\slot{e} + \\slot{o} = \\slot{cut}',
    slots: (v, { cutLength }) => ({
      L: { value: v.armLength, quantity: 'length' },
      s: { value: v.screwSpacing, quantity: 'length' },
      e: { value: v.endDistance, quantity: 'length' },
      o: { value: v.beyondMotor, quantity: 'length' },
      cut: { value: cutLength, quantity: 'length', digits: 4 },
    }),
  },
  {
    id: 'inner-end',
    says: 'Inner end from the middle',
    formula: 'e = \\frac{w}{2} - L - s - e_1',
    numbers: 'e = \\frac{\\slot{w}}{2} - \\slot{L} - \\slot{s} - \\slot{e1} = \\slot{e}',
    slots: (v, { layout, innerEnd }) => ({
      w: { value: layout.wheelbase, quantity: 'length', digits: 4 },
      L: { value: v.armLength, quantity: 'length' },
      s: { value: v.screwSpacing, quantity: 'length' },
      e1: { value: v.endDistance, quantity: 'length' },
      e: { value: innerEnd, quantity: 'length' },
    }),
  },
  {
    id: 'inner-gap',
    says: 'Room between neighbouring ends of width b, θ between the arms',
    formula: 'c = 2\\left(e\\sin\\tfrac{\\theta}{2} - \\tfrac{b}{2}\\cos\\tfrac{\\theta}{2}\\right)',
    numbers:
      'c = 2\\left(\\slot{e}\\cdot\\sin\\tfrac{\\slot{angle}}{2} - \\tfrac{\\slot{b}}{2}\\cdot\\cos\\tfrac{\\slot{angle2}}{2}\\right) = \\slot{c}',
    slots: (v, { innerEnd, between, innerGap }) => ({
      e: { value: innerEnd, quantity: 'length' },
      angle: { value: between, quantity: 'angle' },
      b: { value: v.armKind === 'tube' ? v.outerDiameter : v.width, quantity: 'length' },
      angle2: { value: between, quantity: 'angle' },
      c: { value: innerGap, quantity: 'length' },
    }),
  },
];
