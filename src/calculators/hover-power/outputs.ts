import type { Output, Step, Verdict } from '~/island/declaration.ts';
import type { HoverResult, HoverValues } from './compute.ts';

function reserveVerdict(thrustToWeight: number): Verdict {
  if (thrustToWeight < 2) return { level: 'bad', text: 'little left to steer with' };
  if (thrustToWeight < 4) return { level: 'marginal', text: 'enough to carry and cruise' };
  return { level: 'good', text: 'enough for hard flying' };
}

export const outputs: readonly Output<HoverValues, HoverResult>[] = [
  {
    key: 'batteryPower',
    label: 'Battery power in hover',
    symbol: 'P_b',
    quantity: 'power',
    meaning: 'All motors together, boards and transmitter not counted.',
    value: ({ batteryPower }) => batteryPower,
    headline: true,
  },
  {
    key: 'thrustToWeight',
    label: 'Thrust to weight',
    symbol: 'T/W',
    quantity: 'ratio',
    meaning: 'All thrust at full throttle over the weight.',
    value: ({ reserve }) => reserve.thrustToWeight,
    verdict: ({ reserve }) => reserveVerdict(reserve.thrustToWeight),
    headline: true,
  },
  {
    key: 'hoverThrust',
    label: 'Thrust of one motor',
    symbol: 'T',
    quantity: 'force',
    meaning: 'Its share of the weight.',
    value: ({ reserve }) => reserve.hoverThrust,
    group: 'One rotor',
  },
  {
    key: 'discLoading',
    label: 'Disc loading',
    symbol: 'T/A',
    quantity: 'discLoading',
    meaning: 'Thrust over the area of the propeller circle: what sets the power.',
    value: ({ rotor }) => rotor.discLoading,
    group: 'One rotor',
  },
  {
    key: 'inducedSpeed',
    label: 'Air speed through the disc',
    symbol: 'v_i',
    quantity: 'speed',
    meaning: 'Below the disc it doubles: the wind that the body and the ground feel.',
    value: ({ rotor }) => rotor.inducedSpeed,
    group: 'One rotor',
  },
  {
    key: 'idealPower',
    label: 'Least power of one rotor',
    quantity: 'power',
    meaning: 'What momentum asks for whatever the blades are like.',
    value: ({ rotor }) => rotor.idealPower,
    group: 'One rotor',
  },
  {
    key: 'shaftPower',
    label: 'Shaft power of one rotor',
    symbol: 'P',
    quantity: 'power',
    meaning: 'With the losses of the blades.',
    value: ({ rotor }) => rotor.power,
    group: 'One rotor',
  },
  {
    key: 'massPerPower',
    label: 'Mass carried by each watt',
    quantity: 'powerLoading',
    meaning: 'All-up mass over battery power: the number that thrust stands report.',
    value: ({ batteryPower }, { mass }) => mass / batteryPower,
    group: 'Reserve',
  },
  {
    key: 'thrustShare',
    label: 'Share of full thrust in hover',
    symbol: 's',
    quantity: 'percent',
    meaning: 'Where the motors work when nothing happens.',
    value: ({ reserve }) => reserve.thrustShare,
    group: 'Reserve',
  },
  {
    key: 'speedShare',
    label: 'Share of full speed in hover',
    symbol: '\\sqrt{s}',
    quantity: 'percent',
    meaning: 'Of rotation. The stick shows neither share: controller and radio curve lie between.',
    value: ({ reserve }) => reserve.speedShare,
    group: 'Reserve',
  },
  {
    key: 'addedPower',
    label: 'Power for the added mass',
    symbol: '\\Delta P_b',
    quantity: 'power',
    meaning: 'More battery power in hover with it on board.',
    value: ({ batteryPower, heavier }) => heavier.batteryPower - batteryPower,
    group: 'Added mass',
  },
  {
    key: 'addedPowerShare',
    label: 'The same as a share',
    quantity: 'percent',
    meaning: 'Half as much again as the share of mass added: power goes as mass to the power 3/2.',
    value: ({ batteryPower, heavier }) => heavier.batteryPower / batteryPower - 1,
    group: 'Added mass',
  },
  {
    key: 'addedThrustShare',
    label: 'More of full thrust in hover',
    quantity: 'percent',
    meaning: 'Points by which the hover share rises.',
    value: ({ reserve, heavier }) => heavier.reserve.thrustShare - reserve.thrustShare,
    group: 'Added mass',
  },
  {
    key: 'airDensity',
    label: 'Density of the air',
    symbol: '\\rho',
    quantity: 'airDensity',
    meaning: 'Standard atmosphere at this altitude.',
    value: ({ airDensity }) => airDensity,
    group: 'Air felt',
  },
];

export const steps: readonly Step<HoverValues, HoverResult>[] = [
  {
    id: 'thrust',
    says: 'Each motor carries its share of the weight',
    formula: 'T = \\frac{m g}{n}',
    numbers: 'T = \\frac{\\slot{mass} \\cdot 9.81}{\\slot{rotors}} = \\slot{thrust}',
    slots: (v, { reserve }) => ({
      mass: { value: v.mass, quantity: 'mass' },
      rotors: { value: v.rotors, quantity: 'count' },
      thrust: { value: reserve.hoverThrust, quantity: 'force' },
    }),
  },
  {
    id: 'speed',
    says: 'Air has to be pushed down through the disc this fast',
    formula: 'v_i = \\sqrt{\\frac{T/A}{2\\rho}}',
    numbers: 'v_i = \\sqrt{\\frac{\\slot{loading}}{2 \\cdot \\slot{density}}} = \\slot{speed}',
    slots: (_, { rotor, airDensity }) => ({
      loading: { value: rotor.discLoading, quantity: 'discLoading' },
      density: { value: airDensity, quantity: 'airDensity' },
      speed: { value: rotor.inducedSpeed, quantity: 'speed' },
    }),
  },
  {
    id: 'power',
    says: 'Thrust times that speed, divided by both efficiencies, for all motors',
    formula: 'P_b = \\frac{n\\,T\\,v_i}{FM\\,\\eta}',
    numbers:
      'P_b = \\frac{\\slot{rotors} \\cdot \\slot{thrust} \\cdot \\slot{speed}}{\\slot{merit} \\cdot \\slot{drive}} = \\slot{power}',
    slots: (v, { reserve, rotor, batteryPower }) => ({
      rotors: { value: v.rotors, quantity: 'count' },
      thrust: { value: reserve.hoverThrust, quantity: 'force' },
      speed: { value: rotor.inducedSpeed, quantity: 'speed' },
      merit: { value: v.figureOfMerit, quantity: 'ratio' },
      drive: { value: v.driveEfficiency, quantity: 'percent' },
      power: { value: batteryPower, quantity: 'power' },
    }),
  },
];
