import { firstFrequencies, propellerLines } from '@frameworthy/shared/vibration';
import type { Plot } from '~/island/declaration.ts';
import { armOf, type FrequencyResult } from './compute.ts';
import type { FrequencyValues } from './inputs.ts';

const POINTS = 31;
const even = (from: number, to: number): number[] =>
  Array.from({ length: POINTS }, (_, i) => from + ((to - from) * i) / (POINTS - 1));

export const plots: readonly Plot<FrequencyValues, FrequencyResult>[] = [
  {
    id: 'lines-over-speed',
    title: 'Propeller lines and arm frequencies over speed',
    caption:
      'The slanting lines are what shakes, the level ones what can be shaken. Where they cross within the throttle range, the arm swells the shaking.',
    x: { label: 'propeller speed', quantity: 'rotationalSpeed' },
    y: { label: 'frequency', quantity: 'frequency' },
    data: ({ fullSpeed, hoverSpeed, blades }, { modes, crossings }) => {
      const x = even(fullSpeed / POINTS, fullSpeed * 1.05);
      const level = (frequency: number): number[] => x.map(() => frequency);
      return {
        x,
        marker: hoverSpeed,
        series: [
          { label: 'once per turn', role: 'main', y: x.map((speed) => propellerLines(speed, blades).oncePerRev) },
          { label: 'blade pass', role: 'second', y: x.map((speed) => propellerLines(speed, blades).bladePass) },
          { label: 'up and down', role: 'limit', y: level(modes.upDown[0].frequency) },
          { label: 'sideways', role: 'comparison', y: level(modes.sideways[0].frequency) },
          { label: 'sideways with twist', role: 'comparison', y: level(modes.sideways[1].frequency) },
        ],
        stations: crossings.map(({ mode, line, speed }) => ({ x: speed, label: `${mode}, ${line}` })),
      };
    },
  },
  {
    id: 'frequency-over-length',
    title: 'First frequencies against arm length',
    caption: 'A longer arm falls fast: length counts to the power of one and a half.',
    x: { label: 'outer screw to motor axis', quantity: 'length' },
    y: { label: 'frequency', quantity: 'frequency' },
    data: (values, { full, hover }) => {
      const x = even(values.armLength * 0.6, values.armLength * 1.6);
      const modes = x.map((armLength) => firstFrequencies(armOf({ ...values, armLength })));
      return {
        x,
        marker: values.armLength,
        series: [
          { label: 'up and down', role: 'main', y: modes.map(({ upDown }) => upDown) },
          { label: 'sideways', role: 'second', y: modes.map(({ sideways }) => sideways) },
          { label: 'once per turn in hover', role: 'limit', y: x.map(() => hover.oncePerRev) },
          { label: 'once per turn at full throttle', role: 'limit', y: x.map(() => full.oncePerRev) },
        ],
      };
    },
  },
];
