import type { Output, Step, Verdict } from '~/island/declaration.ts';
import { CLOSE_GAP } from '@frameworthy/shared/layout';
import type { LayoutResult, LayoutValues } from './compute.ts';

/** Gap over diameter: spacing of four radii, the widest of lei-2020-micro. */
const WIDEST_TESTED = 1;

function gapVerdict(share: number): Verdict {
  if (share <= 0) return { level: 'bad', text: 'the circles overlap: different heights or other arms' };
  if (share < CLOSE_GAP) return { level: 'marginal', text: 'close: expect unsteady thrust and more noise' };
  if (share > WIDEST_TESTED) return { level: 'marginal', text: 'wider than what was tested: you pay in arm' };
  return { level: 'good', text: 'within the spacings that were tested' };
}

export const outputs: readonly Output<LayoutValues, LayoutResult>[] = [
  {
    key: 'wheelbase',
    label: 'Wheelbase',
    quantity: 'length',
    meaning: 'Between opposite motors: the size that frames are sold by.',
    value: ({ layout }) => layout.wheelbase,
    headline: true,
  },
  {
    key: 'freeLength',
    label: 'Free length of an arm',
    symbol: 'L',
    quantity: 'length',
    meaning: 'From the outer root screw to the motor: the lever of every load on the root.',
    value: ({ freeLength }) => freeLength,
    headline: true,
  },
  {
    key: 'gapPerDiameter',
    label: 'Gap over diameter',
    symbol: 'g/D',
    quantity: 'percent',
    meaning: 'The form in which tests state it.',
    value: ({ layout }) => layout.gapPerDiameter,
    verdict: ({ layout }) => gapVerdict(layout.gapPerDiameter),
  },
  {
    key: 'lateralSpacing',
    label: 'Spacing from side to side',
    symbol: 'b_x',
    quantity: 'length',
    meaning: 'Between the two front motors, and between the two rear ones.',
    value: ({ layout }) => layout.lateralSpacing,
    group: 'Motors',
  },
  {
    key: 'longitudinalSpacing',
    label: 'Spacing fore and aft',
    symbol: 'b_y',
    quantity: 'length',
    meaning: 'Between front and rear motor of one side.',
    value: ({ layout }) => layout.longitudinalSpacing,
    group: 'Motors',
  },
  {
    key: 'motorX',
    label: 'Motor from the middle line',
    symbol: 'x',
    quantity: 'length',
    meaning: 'To either side: with the next number it is what goes into the drawing.',
    value: ({ layout }) => layout.lateralSpacing / 2,
    digits: 4,
    group: 'Motors',
  },
  {
    key: 'motorY',
    label: 'Motor ahead of the middle',
    symbol: 'y',
    quantity: 'length',
    meaning: 'To front and rear alike.',
    value: ({ layout }) => layout.longitudinalSpacing / 2,
    digits: 4,
    group: 'Motors',
  },
  {
    key: 'armAngle',
    label: 'Arm from straight ahead',
    symbol: '\\alpha',
    quantity: 'angle',
    meaning: 'The angle to cut the front arms at; a true X has 45°.',
    value: ({ layout }) => layout.armAngle,
    group: 'Motors',
  },
  {
    key: 'lateralGap',
    label: 'Gap from side to side',
    quantity: 'length',
    meaning: 'Between the tip circles of the two front propellers.',
    value: ({ layout }) => layout.lateralGap,
    group: 'Gaps',
  },
  {
    key: 'longitudinalGap',
    label: 'Gap fore and aft',
    quantity: 'length',
    meaning: 'Between front and rear tip circle of one side.',
    value: ({ layout }) => layout.longitudinalGap,
    group: 'Gaps',
  },
  {
    key: 'bodyRoom',
    label: 'Room from body to propellers',
    symbol: 'c',
    quantity: 'length',
    meaning: 'Least distance from the outline to a tip circle; negative where a propeller runs over the body.',
    value: ({ body }) => body.clearance,
    verdict: ({ body }) =>
      body.clearance < 0
        ? { level: 'bad', text: 'a propeller runs over the body' }
        : body.clearance < 3e-3
          ? { level: 'marginal', text: 'a bent arm or a shifted body can touch' }
          : { level: 'good', text: 'clear' },
    group: 'Gaps',
  },
  {
    key: 'overlap',
    label: 'Covered share of each disc',
    symbol: 'm',
    quantity: 'percent',
    meaning: 'What its neighbours cover of it, seen from above.',
    value: ({ layout }) => layout.overlap,
    group: 'Overlap',
  },
  {
    key: 'overlapPower',
    label: 'Induced power over that of discs apart',
    symbol: '\\kappa',
    quantity: 'ratio',
    meaning: 'At the least: it leaves out that the lower blade cuts through the upper one’s wake.',
    value: ({ layout }) => layout.overlapPowerFactor,
    digits: 4,
    group: 'Overlap',
  },
];

export const steps: readonly Step<LayoutValues, LayoutResult>[] = [
  {
    id: 'spacing',
    says: 'Spacing of the nearest neighbours',
    formula: 's = D + g',
    numbers: 's = \\slot{diameter} + \\slot{gap} = \\slot{spacing}',
    slots: (v, { layout }) => ({
      diameter: { value: v.propellerDiameter, quantity: 'length' },
      gap: { value: v.tipGap, quantity: 'length' },
      spacing: { value: Math.min(layout.lateralSpacing, layout.longitudinalSpacing), quantity: 'length' },
    }),
  },
  {
    id: 'wheelbase',
    says: 'Diagonal of the two spacings',
    formula: 'w = \\sqrt{b_x^2 + b_y^2}',
    numbers: 'w = \\sqrt{\\left(\\slot{x}\\right)^2 + \\left(\\slot{y}\\right)^2} = \\slot{wheelbase}',
    slots: (_, { layout }) => ({
      x: { value: layout.lateralSpacing, quantity: 'length' },
      y: { value: layout.longitudinalSpacing, quantity: 'length' },
      wheelbase: { value: layout.wheelbase, quantity: 'length' },
    }),
  },
  {
    id: 'arm',
    says: 'Half of it, less the part that lies in the body',
    formula: 'L = \\frac{w}{2} - r',
    numbers: 'L = \\frac{\\slot{wheelbase}}{2} - \\slot{root} = \\slot{arm}',
    slots: (v, { layout, freeLength }) => ({
      wheelbase: { value: layout.wheelbase, quantity: 'length' },
      root: { value: v.rootDistance, quantity: 'length' },
      arm: { value: freeLength, quantity: 'length' },
    }),
  },
];
