import type { Step } from '~/island/declaration.ts';

interface Tightened {
  torque: number;
  torqueCoefficient: number;
}

/** The worked step from tightening torque to clamping force; `diameter` is the screw's [m]. */
export const preloadStep = <R extends { preload: { nominal: number } }>(
  diameter: (result: R) => number,
): Step<Tightened, R> => ({
  id: 'preload',
  says: 'The torque makes a clamping force',
  formula: 'F = \\frac{T}{K\\,d}',
  numbers: 'F = \\frac{\\slot{torque}}{\\slot{coefficient}\\cdot\\slot{diameter}} = \\slot{force}',
  slots: ({ torque, torqueCoefficient }, result) => ({
    torque: { value: torque, quantity: 'moment' },
    coefficient: { value: torqueCoefficient, quantity: 'ratio' },
    diameter: { value: diameter(result), quantity: 'length' },
    force: { value: result.preload.nominal, quantity: 'force' },
  }),
});
