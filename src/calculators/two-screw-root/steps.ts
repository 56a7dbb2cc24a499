import type { Step } from '~/island/declaration.ts';
import { useOf, type RootResult, type RootValues } from './compute.ts';

export const steps: readonly Step<RootValues, RootResult>[] = [
  {
    id: 'inner',
    says: 'Moments about the outer screw give what the inner one holds down',
    formula: 'F_i = \\frac{F_h\\,L}{s}',
    numbers: 'F_i = \\frac{\\slot{force}\\cdot\\slot{arm}}{\\slot{spacing}} = \\slot{inner}',
    slots: (v, { root }) => ({
      force: { value: v.horizontalForce, quantity: 'force' },
      arm: { value: v.armLength, quantity: 'length' },
      spacing: { value: v.screwSpacing, quantity: 'length' },
      inner: { value: root.horizontal.inner, quantity: 'force' },
    }),
  },
  {
    id: 'outer',
    says: 'The outer screw holds against both',
    formula: 'F_o = F_h + F_i',
    numbers: 'F_o = \\slot{force} + \\slot{inner} = \\slot{outer}',
    slots: (v, { root }) => ({
      force: { value: v.horizontalForce, quantity: 'force' },
      inner: { value: root.horizontal.inner, quantity: 'force' },
      outer: { value: root.horizontal.outer, quantity: 'force' },
    }),
  },
  {
    id: 'bearing',
    says: 'It presses on both walls of tube and sleeve',
    formula: '\\sigma_b = \\frac{F_o}{2\\,d\\,(t+t_s)}',
    numbers:
      '\\sigma_b = \\frac{\\slot{outer}}{2\\cdot\\slot{screw}\\cdot(\\slot{wall}+\\slot{sleeve})} = \\slot{stress}',
    slots: (v, result) => ({
      outer: { value: result.root.horizontal.outer, quantity: 'force' },
      screw: { value: result.screwDiameter, quantity: 'length' },
      wall: { value: v.wall, quantity: 'length' },
      sleeve: { value: v.sleeveWall, quantity: 'length' },
      stress: { value: useOf(result, 'outer', 'bearing').stress, quantity: 'stress' },
    }),
  },
  {
    id: 'tear-out',
    says: 'At the inner hole, the wall between hole and tube end may tear or split out',
    formula: '\\tau = \\frac{F_i}{4\\,(e-d_h/2)\\,(t+t_s)}',
    numbers:
      '\\tau = \\frac{\\slot{inner}}{4\\,(\\slot{end}-\\slot{hole}/2)(\\slot{wall}+\\slot{sleeve})} = \\slot{stress}',
    slots: (v, result) => ({
      inner: { value: result.root.horizontal.inner, quantity: 'force' },
      end: { value: v.endDistance, quantity: 'length' },
      hole: { value: v.holeDiameter, quantity: 'length' },
      wall: { value: v.wall, quantity: 'length' },
      sleeve: { value: v.sleeveWall, quantity: 'length' },
      stress: { value: useOf(result, 'inner', 'tear-out').stress, quantity: 'stress' },
    }),
  },
  {
    id: 'moment',
    says: 'The arm itself bends hardest at the outer hole',
    formula: 'M = F_h\\,L',
    numbers: 'M = \\slot{force}\\cdot\\slot{arm} = \\slot{moment}',
    slots: (v, { root }) => ({
      force: { value: v.horizontalForce, quantity: 'force' },
      arm: { value: v.armLength, quantity: 'length' },
      moment: { value: root.horizontal.moment, quantity: 'moment' },
    }),
  },
];
