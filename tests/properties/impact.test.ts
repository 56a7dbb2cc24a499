import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as impact from '@frameworthy/shared/impact';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
describe('hits and drops', () => {
  test('a fall never presses with less than twice the weight, and more height or a stiffer frame presses harder', () => {
    fc.assert(
      fc.property(within(0, 30), within(1e-6, 0.1), within(1.01, 10), (height, staticDeflection, more) => {
        const factor = impact.dropFactor({ height, staticDeflection });
        expect(factor).toBeGreaterThanOrEqual(2);
        expect(impact.dropFactor({ height: height * more, staticDeflection })).toBeGreaterThanOrEqual(factor);
        expect(impact.dropFactor({ height, staticDeflection: staticDeflection / more })).toBeGreaterThanOrEqual(factor);
      }),
    );
  });

  test('from high up, the drop and the moving mass agree', () => {
    fc.assert(
      fc.property(within(0.1, 3), within(1e4, 1e6), within(5, 30), (mass, stiffness, height) => {
        const weight = mass * 9.80665;
        const drop = weight * impact.dropFactor({ height, staticDeflection: weight / stiffness });
        const { peakForce } = impact.movingMassImpact({ mass, stiffness, speed: impact.fallSpeed(height) });
        // The drop adds the weight itself, and no more than twice of it.
        expect(drop).toBeGreaterThan(peakForce);
        expect(drop - peakForce).toBeLessThan(2.1 * weight);
      }),
    );
  });

  test('energy in is energy stored', () => {
    fc.assert(
      fc.property(within(0.05, 5), within(0.1, 30), within(1e3, 1e7), (mass, speed, stiffness) => {
        const { peakForce, deflection } = impact.movingMassImpact({ mass, speed, stiffness });
        expect((peakForce * deflection) / 2 / ((mass * speed ** 2) / 2)).toBeCloseTo(1, 9);
      }),
    );
  });

  test('springs in series: softer than the softest, whatever their order', () => {
    fc.assert(
      fc.property(fc.array(within(1, 1e8), { minLength: 1, maxLength: 6 }), (springs) => {
        const all = impact.springsInSeries(springs);
        expect(all).toBeLessThanOrEqual(Math.min(...springs) * (1 + 1e-12));
        expect(impact.springsInSeries([...springs].reverse()) / all).toBeCloseTo(1, 9);
      }),
    );
  });

  test('a blow off the centre never meets more than the whole mass, and less the farther out', () => {
    fc.assert(
      fc.property(within(0.05, 5), within(-0.2, 0.2), within(1e-5, 1e-1), (mass, lever, momentOfInertia) => {
        const at = (r: number) => impact.effectiveMass({ mass, turns: [{ lever: r, momentOfInertia }] });
        expect(at(0)).toBeCloseTo(mass, 12);
        expect(at(lever)).toBeLessThanOrEqual(mass * (1 + 1e-12));
        expect(at(2 * lever)).toBeLessThanOrEqual(at(lever) * (1 + 1e-12));
      }),
    );
  });

  test('half a sine: the peak force undoes the change of speed', () => {
    fc.assert(
      fc.property(within(0.05, 5), within(0.1, 30), within(1e-4, 0.1), (mass, speedChange, duration) => {
        const peak = impact.halfSinePeakForce({ mass, speedChange, duration });
        expect(impact.halfSineSpeedChange({ peakAcceleration: peak / mass, duration }) / speedChange).toBeCloseTo(1, 9);
      }),
    );
  });

  test('at the survivable speed the load is the limit', () => {
    fc.assert(
      fc.property(within(0.1, 30), within(1, 1e9), within(1, 1e9), (speed, applied, allowable) => {
        const survived = impact.survivableSpeed({ speed, applied, allowable });
        expect((applied * survived) / speed / allowable).toBeCloseTo(1, 9);
      }),
    );
  });

  test('whatever is put in: a finite number or an InputError', () => {
    fc.assert(
      fc.property(anyNumber, anyNumber, anyNumber, (a, b, c) => {
        refusesOrFinite(() => impact.dropFactor({ height: a, staticDeflection: b }));
        refusesOrFinite(() => impact.fallSpeed(a, b));
        refusesOrFinite(() => impact.movingMassImpact({ mass: a, speed: b, stiffness: c }));
        refusesOrFinite(() => impact.springsInSeries([a, b, c]));
        refusesOrFinite(() => impact.effectiveMass({ mass: a, turns: [{ lever: b, momentOfInertia: c }] }));
        refusesOrFinite(() => impact.halfSineSpeedChange({ peakAcceleration: a, duration: b }));
        refusesOrFinite(() => impact.sawToothSpeedChange({ peakAcceleration: a, duration: b }));
        refusesOrFinite(() => impact.halfSinePeakForce({ mass: a, speedChange: b, duration: c }));
        refusesOrFinite(() => impact.survivableSpeed({ speed: a, applied: b, allowable: c }));
        refusesOrFinite(() => impact.peakForceBand(a));
      }),
      { numRuns: 1000 },
    );
  });
});
