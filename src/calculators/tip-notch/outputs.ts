import type { Output } from '~/island/declaration.ts';
import { verdictOfUse } from '../verdict-of-use.ts';
import type { NotchResult } from './compute.ts';
import type { NotchValues } from './inputs.ts';

type NotchOutput = Output<NotchValues, NotchResult>;
const inGroup = (group: string, list: readonly NotchOutput[]): NotchOutput[] =>
  list.map((output) => ({ group, ...output }));

const bending: readonly NotchOutput[] = [
  {
    key: 'useVertical',
    label: 'Up or down, at the slot’s end',
    quantity: 'percent',
    digits: 2,
    meaning: 'Of the open section’s strength.',
    value: ({ slot }) => slot.use.vertical,
    verdict: ({ slot }) => verdictOfUse(slot.use.vertical, 'the open section'),
  },
  {
    key: 'useHorizontal',
    label: 'Sideways, at the slot’s end',
    quantity: 'percent',
    digits: 2,
    meaning: 'Strike and reaction torque together.',
    value: ({ slot }) => slot.use.horizontal,
    verdict: ({ slot }) => verdictOfUse(slot.use.horizontal, 'the open section'),
  },
  {
    key: 'netArea',
    label: 'Net area',
    quantity: 'area',
    meaning: 'Of the tube with the slot taken away.',
    value: ({ slot }) => slot.section.area,
  },
  {
    key: 'secondMoment',
    label: 'Second moment, through the slot',
    symbol: 'I',
    quantity: 'secondMomentOfArea',
    meaning: 'Of the open section, in the plane of its slot: the lower one.',
    value: ({ slot }, { slotFaces }) => slot.section[slotFaces].secondMomentOfArea,
  },
];

const torsion: readonly NotchOutput[] = [
  {
    key: 'torsionShare',
    label: 'Torsion constant, open over closed',
    quantity: 'percent',
    digits: 2,
    meaning: 'A slit tube has lost nearly all of it.',
    value: ({ slot }) => slot.twist.share,
    verdict: ({ slot }) =>
      slot.openLength > 0
        ? { level: 'bad', text: 'open, and not held by the mount' }
        : { level: 'good', text: 'the mount closes the slot' },
  },
  {
    key: 'openLength',
    label: 'Open length past the mount',
    symbol: 'l',
    quantity: 'length',
    meaning: 'From the mount’s grip to the whole tube.',
    value: ({ slot }) => slot.openLength,
  },
  {
    key: 'torsionClosed',
    label: 'Torsion constant, closed',
    symbol: 'J_0',
    quantity: 'secondMomentOfArea',
    meaning: 'Of the whole tube.',
    value: ({ whole }) => whole.torsionConstant,
  },
  {
    key: 'torsionOpen',
    label: 'Torsion constant, open',
    symbol: 'J',
    quantity: 'secondMomentOfArea',
    meaning: 'Of the slotted one.',
    value: ({ slot }) => slot.section.torsionConstant,
  },
  {
    key: 'torque',
    label: 'Torque of the strike',
    symbol: 'T',
    quantity: 'moment',
    meaning: 'About the shear centre: forces through the axis twist it too.',
    value: ({ slot }) => slot.torque,
  },
  {
    key: 'openTorque',
    label: 'Torque that the open wall bears',
    quantity: 'moment',
    meaning: 'Free to warp. A short slot bears more.',
    value: ({ slot }) => slot.openTorque,
    verdict: ({ slot }) =>
      slot.openLength > 0 ? verdictOfUse(slot.torque / slot.openTorque, 'it, if free to warp') : undefined,
  },
  {
    key: 'wholeTorque',
    label: 'Torque that the whole tube bears',
    quantity: 'moment',
    meaning: 'For comparison.',
    value: ({ slot }) => slot.wholeTorque,
  },
  {
    key: 'twistHeld',
    label: 'Twist, open, inner end held',
    symbol: '\\varphi',
    quantity: 'angle',
    meaning: 'Where the whole tube keeps it from warping: a short slot.',
    value: ({ slot }) => slot.twist.held,
  },
  {
    key: 'twistFree',
    label: 'Twist, open, free to warp',
    quantity: 'angle',
    meaning: 'The most that it can be.',
    value: ({ slot }) => slot.twist.free,
  },
  {
    key: 'warpingStress',
    label: 'Stress at the slot’s corners from the twist',
    quantity: 'stress',
    meaning: 'Along the tube, on top of bending. Cracks start here.',
    value: ({ slot }) => slot.twist.warpingStress,
    verdict: ({ slot, warpingUse }) =>
      slot.openLength > 0 ? verdictOfUse(warpingUse, 'the notched strength') : undefined,
  },
  {
    key: 'shearCentre',
    label: 'Shear centre from the tube’s axis',
    symbol: 'e',
    quantity: 'length',
    meaning: 'Away from the slot.',
    value: ({ slot }) => slot.shearCentre,
  },
];

export const outputs: readonly NotchOutput[] = [
  {
    key: 'farthest',
    label: 'Slot may reach inwards to',
    symbol: 'a_{max}',
    quantity: 'length',
    meaning: 'Until it is weaker in bending than the root.',
    headline: true,
    value: ({ slot }) => slot.farthest,
    verdict: ({ slot }, { slotReach }) =>
      slotReach <= slot.farthest
        ? { level: 'good', text: 'your slot ends before' }
        : { level: 'bad', text: 'your slot reaches past it' },
  },
  {
    key: 'standPast',
    label: 'Tube past the wires',
    symbol: 's',
    quantity: 'length',
    meaning: 'From the outermost wire to the end of the tube.',
    headline: true,
    value: ({ wires }) => wires.standPast,
    verdict: ({ wires }) =>
      wires.standPast >= wires.needed ? { level: 'good', text: 'tube first' } : { level: 'bad', text: 'wire first' },
  },
  ...inGroup('Wires', [
    {
      key: 'neededStand',
      label: 'Tube needed past the wires',
      symbol: 's_{min}',
      quantity: 'length',
      meaning: 'For wear and a shallow scrape.',
      value: ({ wires }) => wires.needed,
    },
  ]),
  ...inGroup('Bending', bending),
  ...inGroup('Torsion', torsion),
];
