import fc from 'fast-check';
import { InputError } from '@frameworthy/shared';
import {
  drilledRectangleSection,
  drilledTubeSection,
  massPerLength,
  rectangleTorsionConstant,
  rectangleTorsionModulus,
  roundEndedSection,
  roundTubeSection,
  solidRectangleSection,
  solidRoundSection,
  tubePeakShearStress,
} from '@frameworthy/shared/section';
import { describe, expect, test } from 'vitest';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const length = fc.double({ min: 1e-3, max: 0.1, noNaN: true });
const tube = fc
  .record({ outerDiameter: length, share: fc.double({ min: 0.02, max: 0.45, noNaN: true }) })
  .map(({ outerDiameter, share }) => ({ outerDiameter, wall: share * outerDiameter }));
const near = (value: number, expected: number, relative = 1e-9): void =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));

/** Second moment about the axis across `plane` by summing thin strips along x: independent of the closed forms. */
function integrated(outer: number, inner: number, half: number): { along: number; across: number } {
  const count = 20000;
  let [along, across] = [0, 0];
  const width = (outer - half) / count;
  for (let i = 0; i < count; i++) {
    // x = outer sinθ would be smoother; even strips are plain, so that the test cannot share a mistake.
    const x = half + (i + 0.5) * width;
    const top = Math.sqrt(outer ** 2 - x ** 2);
    const bore = x < inner ? Math.sqrt(inner ** 2 - x ** 2) : 0;
    along += (4 / 3) * (top ** 3 - bore ** 3) * width;
    across += 4 * x ** 2 * (top - bore) * width;
  }
  return { along, across };
}

describe('sections', () => {
  test('second moment grows with the fourth power of size, area with the square', () => {
    fc.assert(
      fc.property(tube, fc.double({ min: 0.1, max: 10, noNaN: true }), (t, k) => {
        const one = roundTubeSection(t);
        const big = roundTubeSection({ outerDiameter: t.outerDiameter * k, wall: t.wall * k });
        near(big.vertical.secondMomentOfArea, one.vertical.secondMomentOfArea * k ** 4);
        near(big.area, one.area * k ** 2);
        near(big.shearCoefficient, one.shearCoefficient);
      }),
    );
  });

  test('a tube is the outer bar less the bore', () => {
    fc.assert(
      fc.property(tube, (t) => {
        const bore = solidRoundSection({ diameter: t.outerDiameter - 2 * t.wall });
        const bar = solidRoundSection({ diameter: t.outerDiameter });
        near(roundTubeSection(t).area, bar.area - bore.area);
        near(
          roundTubeSection(t).vertical.secondMomentOfArea,
          bar.vertical.secondMomentOfArea - bore.vertical.secondMomentOfArea,
        );
      }),
    );
  });

  test('a thin tube tends to πr³t and 2V/A', () => {
    const t = { outerDiameter: 0.02, wall: 1e-7 };
    near(roundTubeSection(t).vertical.secondMomentOfArea, Math.PI * 0.01 ** 3 * 1e-7, 1e-4);
    near(tubePeakShearStress(t, 10), 20 / roundTubeSection(t).area, 1e-4);
  });

  test('a drilled tube agrees with a sum of thin strips', () => {
    for (const hole of [0.5e-3, 3.2e-3, 6e-3, 11.9e-3, 13e-3]) {
      const section = drilledTubeSection({
        outerDiameter: 0.014,
        wall: 0.001,
        holeDiameter: hole,
        holeAxis: 'vertical',
      });
      const sum = integrated(0.007, 0.006, hole / 2);
      near(section.vertical.secondMomentOfArea, sum.along, 1e-4);
      near(section.horizontal.secondMomentOfArea, sum.across, 2e-3);
    }
  });

  test('a hole costs most in its own plane, swaps with its axis, and vanishes with its size', () => {
    fc.assert(
      fc.property(tube, fc.double({ min: 0.01, max: 0.5, noNaN: true }), (t, share) => {
        const holeDiameter = share * t.outerDiameter;
        const upright = drilledTubeSection({ ...t, holeDiameter, holeAxis: 'vertical' });
        const lying = drilledTubeSection({ ...t, holeDiameter, holeAxis: 'horizontal' });
        const whole = roundTubeSection(t);
        expect(upright.vertical.secondMomentOfArea).toBeLessThan(upright.horizontal.secondMomentOfArea);
        expect(upright.horizontal.secondMomentOfArea).toBeLessThanOrEqual(whole.horizontal.secondMomentOfArea);
        expect(upright.area).toBeLessThan(whole.area);
        expect(lying.horizontal).toEqual(upright.vertical);
        const pin = drilledTubeSection({ ...t, holeDiameter: t.outerDiameter * 1e-9, holeAxis: 'vertical' });
        near(pin.vertical.secondMomentOfArea, whole.vertical.secondMomentOfArea, 1e-6);
      }),
    );
  });

  test('a rectangle turned on its side swaps planes and keeps torsion; a long one tends to ab³/3', () => {
    fc.assert(
      fc.property(length, length, (width, height) => {
        const lying = solidRectangleSection({ width, height });
        const upright = solidRectangleSection({ width: height, height: width });
        near(lying.vertical.secondMomentOfArea, upright.horizontal.secondMomentOfArea);
        near(lying.torsionConstant, upright.torsionConstant);
        expect(lying.torsionConstant).toBeLessThanOrEqual((Math.max(width, height) * Math.min(width, height) ** 3) / 3);
      }),
    );
    near(rectangleTorsionConstant(1, 1e-4), 1e-12 / 3, 1e-4);
    near(rectangleTorsionModulus(1, 1e-4), 1e-8 / 3, 1e-4);
  });

  test('round ends: the circle where width is height, near the strip where long', () => {
    const bar = solidRoundSection({ diameter: 0.01 });
    const round = roundEndedSection({ width: 0.01, height: 0.01 });
    near(round.area, bar.area);
    near(round.horizontal.secondMomentOfArea, bar.horizontal.secondMomentOfArea, 1e-6);
    near(round.torsionConstant, bar.torsionConstant, 1e-6);
    const [long, strip] = [
      { width: 1, height: 0.01 },
      { width: 1, height: 0.01 },
    ].map((s, i) => (i ? solidRectangleSection(s) : roundEndedSection(s)));
    near(long!.vertical.secondMomentOfArea, strip!.vertical.secondMomentOfArea, 0.01);
    near(long!.torsionConstant, strip!.torsionConstant, 0.1);
  });

  test('garbage is refused with the package error, or gives finite numbers', () => {
    fc.assert(
      fc.property(anyNumber, anyNumber, anyNumber, anyNumber, (a, b, c, d) => {
        refusesOrFinite(() => roundTubeSection({ outerDiameter: a, wall: b, poissonRatio: c }));
        refusesOrFinite(() => drilledTubeSection({ outerDiameter: a, wall: b, holeDiameter: c, holeAxis: 'vertical' }));
        refusesOrFinite(() => solidRectangleSection({ width: a, height: b, poissonRatio: d }));
        refusesOrFinite(() => drilledRectangleSection({ width: a, height: b, holeDiameter: c }));
        refusesOrFinite(() => roundEndedSection({ width: a, height: b }));
        refusesOrFinite(() => solidRoundSection({ diameter: a }));
        refusesOrFinite(() => rectangleTorsionModulus(a, b));
        refusesOrFinite(() => tubePeakShearStress({ outerDiameter: a, wall: b }, c));
        refusesOrFinite(() => massPerLength(a, b));
      }),
      { numRuns: 500 },
    );
  });

  test('a wall as thick as the radius and a hole as wide as the tube are refused by name', () => {
    const refused = (run: () => unknown): string => {
      try {
        run();
      } catch (error) {
        if (error instanceof InputError) return error.parameter;
      }
      return 'not refused';
    };
    expect(refused(() => roundTubeSection({ outerDiameter: 0.014, wall: 0.007 }))).toBe('wall');
    expect(
      refused(() =>
        drilledTubeSection({ outerDiameter: 0.014, wall: 0.001, holeDiameter: 0.014, holeAxis: 'vertical' }),
      ),
    ).toBe('holeDiameter');
    expect(refused(() => drilledRectangleSection({ width: 0.01, height: 0.005, holeDiameter: 0.01 }))).toBe(
      'holeDiameter',
    );
  });
});
