import { sweep, type Plot } from '~/island/declaration.ts';
import type { PlacementResult, PlacementValues } from './compute.ts';

export const plots: readonly Plot<PlacementValues, PlacementResult>[] = [
  {
    id: 'agility-over-offset',
    title: 'What a step off the middle costs',
    caption:
      'Roll does not care how far forward the pack sits. Pitch and yaw lose with the square of the step: next to nothing for the first centimetre, then more and more.',
    x: { label: 'Pack ahead of the middle', quantity: 'length' },
    y: { label: 'Acceleration, share of that with the pack in the middle', quantity: 'percent' },
    data: (values, _result, compute) => {
      const middle = compute({ ...values, forward: 0 }).chosen.agility;
      return sweep(values, compute, { input: 'forward', from: -0.1, to: 0.1, count: 41 }, [
        { label: 'roll', of: ({ chosen }) => chosen.agility.roll / middle.roll, role: 'comparison' },
        { label: 'pitch', of: ({ chosen }) => chosen.agility.pitch / middle.pitch, role: 'main' },
        { label: 'yaw', of: ({ chosen }) => chosen.agility.yaw / middle.yaw, role: 'second' },
      ]);
    },
  },
  {
    id: 'hover-over-offset',
    title: 'Who carries the hover',
    caption: 'Here every millimetre counts the same: the pairs part in a straight line from the first one.',
    x: { label: 'Pack ahead of the middle', quantity: 'length' },
    y: { label: 'Thrust of one motor in hover, share of full', quantity: 'percent' },
    data: (values, _result, compute) =>
      sweep(values, compute, { input: 'forward', from: -0.1, to: 0.1, count: 21 }, [
        { label: 'front motor', of: ({ chosen }) => chosen.frontShare, role: 'main' },
        { label: 'rear motor', of: ({ chosen }) => chosen.rearShare, role: 'second' },
      ]),
  },
  {
    id: 'agility-over-gap',
    title: 'What height costs',
    caption: 'A pack on stilts is slower about both axes; the other side of the body is drawn for comparison.',
    x: { label: 'Gap between pack and plate', quantity: 'length' },
    y: { label: 'Acceleration', quantity: 'angularAcceleration' },
    data: (values, _result, compute) =>
      sweep(values, compute, { input: 'gap', from: 0, to: 0.06, count: 31 }, [
        { label: 'roll', of: ({ chosen }) => chosen.agility.roll, role: 'second' },
        { label: 'pitch', of: ({ chosen }) => chosen.agility.pitch, role: 'main' },
        { label: 'pitch, other side', of: ({ otherSide }) => otherSide.agility.pitch, role: 'comparison' },
      ]),
  },
];
