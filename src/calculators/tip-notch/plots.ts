import { sweep, type Plot } from '~/island/declaration.ts';
import type { NotchResult } from './compute.ts';
import type { NotchValues } from './inputs.ts';

export const plots: readonly Plot<NotchValues, NotchResult>[] = [
  {
    id: 'twist-over-reach',
    title: 'Stiffness in twist against the reach of the slot',
    caption:
      'Open over whole tube, past the mount. A real slot lies between the curves, near the upper one while it is short.',
    x: { label: 'Slot inwards of the motor axis', quantity: 'length' },
    y: { label: 'Stiffness in twist kept', quantity: 'percent' },
    data: (values, _result, compute) =>
      sweep(values, compute, { input: 'slotReach', from: 0, to: Math.max(0.04, 1.1 * values.slotReach) }, [
        { label: 'inner end held', of: ({ heldShare }) => heldShare, role: 'main' },
        { label: 'free to warp', of: ({ freeShare }) => freeShare, role: 'second' },
      ]),
  },
  {
    id: 'stand-over-angle',
    title: 'Tube needed past the wires against the angle of the scrape',
    caption: 'Wires that lie inside the tube need only the wear.',
    x: { label: 'Scrape', quantity: 'angle' },
    y: { label: 'Tube past the wires', quantity: 'length' },
    data: (values, _result, compute) =>
      sweep(values, compute, { input: 'scrapeAngle', from: Math.PI / 18, to: Math.PI / 2 }, [
        { label: 'needed', of: ({ wires }) => wires.needed, role: 'main' },
        { label: 'as it is', of: ({ wires }) => wires.standPast, role: 'limit' },
      ]),
  },
];
