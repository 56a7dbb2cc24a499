import { InputError } from '@frameworthy/shared';
import { defineCalculator, sweep } from '~/island/declaration.ts';
import { DimensionLine, Drawing, ForceArrow, Outline } from '~/island/drawing/index.ts';

/** A small declaration that uses every feature, to try the island on. */
export const example = defineCalculator({
  id: 'lever',
  title: 'Lever',
  question: 'What does a lever ask of its pivot?',
  inputs: {
    force: {
      label: 'Force',
      symbol: 'F',
      help: 'At the tip.',
      quantity: 'force',
      default: 10,
      min: 1,
      max: 100,
      step: 1,
    },
    arm: {
      label: 'Arm',
      symbol: 'L_\\mathrm{a}',
      help: 'From the pivot to the tip.',
      quantity: 'length',
      default: 0.1,
      min: 0.01,
      max: 0.5,
      step: 0.001,
      group: 'Sizes',
    },
    wall: {
      label: 'Wall',
      symbol: 't',
      help: 'Of the tube.',
      quantity: 'length',
      default: 0.001,
      min: 0.0001,
      max: 0.05,
      step: 0.0001,
      group: 'Sizes',
      parameters: ['thickness'],
    },
    end: {
      label: 'End',
      help: 'How the tip is held.',
      choices: { free: 'free', held: 'held by a plate' },
      default: 'free',
    },
    pad: {
      label: 'Pad',
      help: 'Only where the tip is held.',
      quantity: 'length',
      default: 0.002,
      min: 0,
      max: 0.01,
      step: 0.001,
      shownWhen: (values) => values['end'] === 'held',
    },
  },
  compute: ({ force, arm, wall, end }) => {
    if (wall >= arm) {
      throw new InputError({
        parameter: 'thickness',
        quantity: 'wall thickness',
        value: wall,
        rule: 'must be smaller than the arm',
        limit: arm,
        kind: 'length',
      });
    }
    return { moment: (force * arm) / (end === 'held' ? 2 : 1) };
  },
  outputs: [
    {
      key: 'moment',
      label: 'Moment at the pivot',
      symbol: 'M',
      quantity: 'moment',
      meaning: 'What the pivot must hold.',
      value: ({ moment }) => moment,
      verdict: ({ moment }) =>
        moment > 5 ? { level: 'bad', text: 'more than the pivot holds' } : { level: 'good', text: 'held' },
      headline: true,
    },
    {
      key: 'counterweight',
      label: 'Counterweight on the same arm',
      quantity: 'mass',
      meaning: 'What balances the force.',
      value: (_, { force }) => force / 9.80665,
      impossible: (_, { end }) => (end === 'held' ? 'a held tip needs none' : undefined),
    },
    { key: 'force', label: 'Force', quantity: 'force', meaning: 'As entered.', value: (_, { force }) => force },
  ],
  warnings: ({ moment }) =>
    moment > 8 ? [{ code: 'long', message: 'The lever is longer than the model was made for.' }] : [],
  says: ({ moment }, _, show) => `The pivot holds ${show(moment, 'moment')}.`,
  steps: [
    {
      id: 'moment',
      says: 'Moment at the pivot',
      formula: 'M = \\frac{F L_\\mathrm{a}}{1}',
      numbers: 'M = \\frac{\\slot{F} \\cdot \\slot{L}}{1} = \\slot{M}',
      slots: ({ force, arm }, { moment }) => ({
        F: { value: force, quantity: 'force' },
        L: { value: arm, quantity: 'length' },
        M: { value: moment, quantity: 'moment' },
      }),
    },
  ],
  plots: [
    {
      id: 'arm',
      title: 'Moment over arm',
      caption: 'It grows in step.',
      x: { label: 'Arm', quantity: 'length' },
      y: { label: 'Moment', quantity: 'moment' },
      data: (values, _, compute) => ({
        ...sweep(values, compute, { input: 'arm', from: 0.01, to: 0.5 }, [
          { label: 'moment', of: (result) => result.moment },
          { label: 'half', of: (result) => result.moment / 2, role: 'second' },
          { label: 'pivot holds', of: () => 5, role: 'limit' },
        ]),
        stations: [{ x: 0.3, label: 'stop' }],
      }),
    },
  ],
  maps: [
    {
      id: 'arm-and-wall',
      title: 'Moment over arm and wall',
      caption: 'Only the arm counts.',
      x: { input: 'arm', label: 'Arm', quantity: 'length', from: 0.01, to: 0.25 },
      y: { input: 'wall', label: 'Wall', quantity: 'length', from: 0.001, to: 0.05 },
      impossible: 'wall thicker than the arm is long',
      at: ({ force, arm, wall }) => {
        if (wall >= arm) {
          throw new InputError({ parameter: 'thickness', quantity: 'wall', value: wall, rule: 'must be smaller' });
        }
        return { moment: force * arm, area: arm * wall };
      },
      families: [
        {
          label: 'moment',
          quantity: 'moment',
          of: ({ moment }) => moment,
          levels: 4,
          match: { label: 'as now', at: ({ moment }) => moment },
        },
        { label: 'area', quantity: 'area', of: ({ area }) => area, levels: () => [1e-3, 4e-3] },
      ],
    },
  ],
  Figure: ({ values, result, show }) => (
    <Drawing
      title="Lever"
      description={`Arm ${show(values.arm, 'length')}.`}
      bounds={{ left: 0, right: values.arm, bottom: -0.01, top: 0.01 }}
      show={show}
    >
      <Outline rect={{ x: 0, y: -values.wall / 2, width: values.arm, height: values.wall }} />
      <DimensionLine
        from={{ x: 0, y: 0 }}
        to={{ x: values.arm, y: 0 }}
        offset={-30}
        label={show(values.arm, 'length')}
      />
      <ForceArrow at={{ x: values.arm, y: 0 }} direction={{ x: 0, y: 1 }} label={show(result.moment, 'moment')} />
    </Drawing>
  ),
  figureCaption: 'The lever, to scale.',
  assumptions: ['The lever is stiff.'],
  sources: ['nist-2008-sp811'],
  formulas: ['section/rectangle.ts'],
});
