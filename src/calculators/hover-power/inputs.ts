import type { Inputs } from '~/island/declaration.ts';

export const inputs = {
  mass: { quantity: 'mass', label: 'All-up mass', symbol: 'm', help: 'Ready to fly, battery and camera on it. A 5-inch frame: 550 to 750 g.', group: 'Aircraft', default: 0.65, min: 0.05, max: 5, step: 0.005, frameField: 'mass.allUp' },
  propellerDiameter: { quantity: 'length', label: 'Propeller diameter', symbol: 'D', help: 'Of the circle that the tips run on: 127 mm for 5 inches.', group: 'Aircraft', default: 0.129, min: 0.04, max: 0.4, step: 0.001, parameters: ['diameter'], frameField: 'propeller.diameter' },
  rotors: { quantity: 'count', label: 'Number of motors', symbol: 'n', help: 'Each with its own air: two on one axis share it and need more than this says.', group: 'Aircraft', default: 4, min: 3, max: 8, step: 1 },
  fullThrust: { quantity: 'force', label: 'Full thrust of one motor', symbol: 'T_\\mathrm{max}', help: 'On a stand near sea level, battery full. A 5-inch motor on 6 cells: 13 to 18 N.', group: 'Aircraft', default: 15, min: 0.2, max: 100, step: 0.1, frameField: 'motor.fullThrust' },
  figureOfMerit: { quantity: 'ratio', label: 'Figure of merit', symbol: 'FM', help: 'Ideal over real shaft power. Measured on small three-blade propellers: 0.44 to 0.52.', group: 'Losses', default: 0.48, min: 0.2, max: 0.8, step: 0.01 },
  driveEfficiency: { quantity: 'percent', label: 'Motor and speed controller', symbol: '\\eta', help: 'Shaft power over battery power in hover. Common practice: 65 to 80 %.', group: 'Losses', default: 0.75, min: 0.3, max: 0.95, step: 0.01 },
  altitude: { quantity: 'altitude', label: 'Altitude', symbol: 'Z', help: 'Above sea level, on a standard day. Hot air is thinner still.', group: 'Air', default: 0, min: -400, max: 5000, step: 50 },
  addedMass: { quantity: 'mass', label: 'Mass added', symbol: '\\Delta m', help: 'To see what it costs: a heavier doubler, four steel screws, a camera.', group: 'What if', default: 0.01, min: 0, max: 0.5, step: 0.001 },
} as const satisfies Inputs;
