import type { Inputs } from '~/island/declaration.ts';

const length = { quantity: 'length', step: 0.001 } as const;

/** Inputs of propellers and plan that more than one calculator asks for. Defaults: the Dunnock, revision D. */
export const layoutInputs = {
  propellerDiameter: {
    ...length,
    label: 'Propeller diameter',
    symbol: 'D',
    help: 'Of the circle that the tips run on. A 5-inch propeller has 127 mm, many sold as such have 129 or 130.',
    group: 'Propellers',
    default: 0.129,
    min: 0.04,
    max: 0.4,
    frameField: 'propeller.diameter',
  },
  tipGap: {
    ...length,
    label: 'Tip gap',
    symbol: 'g',
    help: 'Between the tip circles of the nearest neighbours. Usual on 5-inch frames: 2 to 30 mm. Negative: the circles overlap.',
    group: 'Propellers',
    default: 0.03,
    min: -0.1,
    max: 0.3,
    frameField: 'layout.tipGap',
  },
  shape: {
    label: 'Shape',
    help: 'True X is a square. Stretched is longer fore and aft, wide is longer from side to side.',
    group: 'Shape',
    choices: { 'true-x': 'true X', stretched: 'stretched', wide: 'wide' },
    default: 'true-x',
    frameField: 'layout.shape',
  },
  stretch: {
    quantity: 'ratio',
    label: 'Longer over shorter spacing',
    symbol: 'q',
    help: 'Of the motor spacings. Stretched frames lie near 1.1 to 1.3.',
    group: 'Shape',
    default: 1.15,
    min: 1,
    max: 2,
    step: 0.01,
    shownWhen: (values) => values['shape'] !== 'true-x',
    frameField: 'layout.stretch',
  },
} as const satisfies Inputs;

/** Inputs of a body that tapers from its middle to both ends. */
export const bodyInputs = {
  bodyLength: {
    ...length,
    label: 'Length of the body',
    symbol: '\\ell_b',
    help: 'From the front end to the rear end of whatever stands as high as the propellers.',
    group: 'Body',
    default: 0.15,
    min: 0.03,
    max: 0.5,
    frameField: 'body.length',
  },
  bodyWaist: {
    ...length,
    label: 'Width in the middle',
    symbol: 'w_m',
    help: 'Of the body between the arms, boards and standoffs included.',
    group: 'Body',
    default: 0.056,
    min: 0.01,
    max: 0.3,
    frameField: 'body.width',
  },
  bodyEnd: {
    ...length,
    label: 'Width at the ends',
    symbol: 'w_e',
    help: 'Where camera and transmitter sit between the propellers.',
    group: 'Body',
    default: 0.026,
    min: 0.01,
    max: 0.3,
    frameField: 'body.end',
  },
} as const satisfies Inputs;
