import type { QuantityInput } from '~/island/declaration.ts';

/** Inputs of an arm's root that more than one calculator asks for. Defaults: the tube arm of the Dunnock, revision D, bare. */
const length = (input: Omit<QuantityInput, 'quantity'>): QuantityInput => ({ quantity: 'length', ...input });

export const outerDiameter = length({
  label: 'Outside diameter of the tube',
  symbol: 'D',
  help: 'Across the bare tube, with calipers. 5-inch tube arms have 12 to 16 mm.',
  group: 'Tube',
  default: 0.014,
  min: 0.008,
  max: 0.03,
  step: 0.0005,
  frameField: 'arm.tube.outerDiameter',
});

export const wall = length({
  label: 'Wall of the tube',
  symbol: 't',
  help: 'Half of outside less inside diameter. Usual: 0.75 to 1.5 mm.',
  group: 'Tube',
  default: 0.001,
  min: 0.0004,
  max: 0.0035,
  step: 0.0001,
  frameField: 'arm.tube.wall',
});

export const sleeveWall = length({
  label: 'Wall of the sleeve',
  symbol: 't_s',
  help: 'Of a tube bonded into the root so that it covers both screws. 0 for a bare tube.',
  group: 'Tube',
  default: 0,
  min: 0,
  max: 0.003,
  step: 0.0001,
  frameField: 'arm.sleeve.wall',
});

export const armLength = length({
  label: 'Outer screw to motor axis',
  symbol: 'L',
  help: 'Along the arm. 65 to 80 mm on most 5-inch frames.',
  group: 'Arm',
  default: 0.07,
  min: 0.03,
  max: 0.25,
  step: 0.001,
  frameField: 'arm.length',
});

export const screwSpacing = length({
  label: 'Screw spacing',
  symbol: 's',
  help: 'Between the two root screws, centre to centre, along the arm. Usual: 10 to 25 mm.',
  group: 'Arm',
  default: 0.024,
  min: 0.006,
  max: 0.06,
  step: 0.0005,
  frameField: 'arm.root.screwSpacing',
});
