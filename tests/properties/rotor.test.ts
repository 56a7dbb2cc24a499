import fc from 'fast-check';
import {
  discInFlight,
  figureOfMerit,
  hoverPower,
  hoverPowerRatio,
  hoverReserve,
  standardAtmosphere,
  staticPropeller,
  thrustAndPower,
} from '@frameworthy/shared/rotor';
import { expect, test } from 'vitest';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (value: number, expected: number, relative = 1e-9): void =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(relative * Math.abs(expected) + 1e-300);
const rotors = fc.record({
  thrust: within(0.1, 100),
  diameter: within(0.03, 1),
  density: within(0.5, 1.4),
  figureOfMerit: within(0.2, 1),
});

test('hover power goes as thrust to the power 3/2 and falls in proportion as the propeller grows', () => {
  fc.assert(
    fc.property(rotors, within(1.01, 4), (rotor, factor) => {
      const base = hoverPower(rotor).power;
      near(hoverPower({ ...rotor, thrust: rotor.thrust * factor }).power, base * factor ** 1.5);
      near(hoverPower({ ...rotor, diameter: rotor.diameter * factor }).power, base / factor);
    }),
  );
});

test('the air that momentum theory moves carries exactly the thrust', () => {
  fc.assert(
    fc.property(rotors, (rotor) => {
      const { inducedSpeed } = hoverPower(rotor);
      // Far below a hovering disc the air moves at twice the speed it has in the disc.
      const flow = discInFlight({
        diameter: rotor.diameter,
        density: rotor.density,
        flightSpeed: 0,
        wakeSpeed: 2 * inducedSpeed,
      });
      near(flow.thrust, rotor.thrust);
    }),
  );
});

test('a figure of merit taken from coefficients gives back the power of the coefficients', () => {
  fc.assert(
    fc.property(
      within(0.05, 0.2),
      within(0.03, 0.2),
      within(0.03, 1),
      within(10, 500),
      (thrustCoefficient, powerCoefficient, diameter, turns) => {
        const propeller = { thrustCoefficient, powerCoefficient, diameter, density: 1.2 };
        const merit = figureOfMerit(propeller);
        fc.pre(merit <= 1 && merit >= 0.05);
        const { thrust, power } = thrustAndPower(propeller, turns);
        near(hoverPower({ thrust, diameter, density: 1.2, figureOfMerit: merit }).power, power);
        const constants = staticPropeller(propeller);
        const omega = 2 * Math.PI * turns;
        near(constants.thrustPerSpeedSquared * omega ** 2, thrust);
        near(constants.torquePerThrust * thrust * omega, power);
      },
    ),
  );
});

test('adding mass in two steps costs the same power as in one', () => {
  fc.assert(
    fc.property(within(0.1, 3), within(0, 1), within(0, 1), (mass, first, second) => {
      near(
        hoverPowerRatio({ mass, addedMass: first }) * hoverPowerRatio({ mass: mass + first, addedMass: second }),
        hoverPowerRatio({ mass, addedMass: first + second }),
      );
    }),
  );
});

test('thrust share and thrust to weight are each other’s inverse, and the speed share lies between share and one', () => {
  fc.assert(
    fc.property(within(0.1, 3), within(10, 40), (mass, fullThrust) => {
      const reserve = hoverReserve({ mass, rotors: 4, fullThrust });
      near(reserve.thrustShare * reserve.thrustToWeight, 1);
      expect(reserve.speedShare).toBeGreaterThanOrEqual(reserve.thrustShare);
      expect(reserve.speedShare).toBeLessThan(1);
    }),
  );
});

test('air gets thinner with height and its pressure falls by its own weight', () => {
  fc.assert(
    fc.property(within(-400, 10_900), (height) => {
      const [low, high] = [standardAtmosphere(height - 50), standardAtmosphere(height + 50)];
      const { density } = standardAtmosphere(height);
      expect(high.density).toBeLessThan(low.density);
      // Gravity falls a little with height, which the standard folds into its geopotential.
      const gravity = 9.80665 * (6_356_766 / (6_356_766 + height)) ** 2;
      near((low.pressure - high.pressure) / 100, density * gravity, 1e-4);
    }),
  );
});

test('refuses or stays finite whatever is put in', () => {
  fc.assert(
    fc.property(anyNumber, anyNumber, anyNumber, anyNumber, (a, b, c, d) => {
      refusesOrFinite(() => hoverPower({ thrust: a, diameter: b, density: c, figureOfMerit: d }));
      refusesOrFinite(() => hoverReserve({ mass: a, rotors: b, fullThrust: c }));
      refusesOrFinite(() => discInFlight({ diameter: a, density: b, flightSpeed: c, wakeSpeed: d }));
      refusesOrFinite(() => staticPropeller({ thrustCoefficient: a, powerCoefficient: b, diameter: c, density: d }));
      refusesOrFinite(() => hoverPowerRatio({ mass: a, addedMass: b }));
      refusesOrFinite(() => standardAtmosphere(a));
    }),
  );
});
