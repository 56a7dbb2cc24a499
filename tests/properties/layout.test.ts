import fc from 'fast-check';
import { InputError } from '@frameworthy/shared';
import {
  armFreeLength,
  bodyClearance,
  discOverlap,
  motorLayout,
  overlapPowerFactor,
  ringGap,
  taperedOutline,
  wireGauge,
  type LayoutShape,
} from '@frameworthy/shared/layout';
import { expect, test } from 'vitest';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (value: number, expected: number, absolute = 1e-12): void =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(absolute);
const shapes = fc.constantFrom<LayoutShape>('true-x', 'stretched', 'wide');
const layouts = fc
  .record({ propellerDiameter: within(0.04, 0.4), share: within(-0.25, 1), shape: shapes, stretch: within(1, 2) })
  .map(({ share, ...layout }) => ({ ...layout, tipGap: share * layout.propellerDiameter }));

test('nearest neighbours stand exactly the gap apart, and the middle of the motors is the origin', () => {
  fc.assert(
    fc.property(layouts, (layout) => {
      const { motors, wheelbase } = motorLayout(layout);
      const distances = motors.flatMap((a, i) => motors.slice(i + 1).map((b) => Math.hypot(a.x - b.x, a.y - b.y)));
      near(Math.min(...distances) - layout.propellerDiameter, layout.tipGap, 1e-9);
      near(Math.max(...distances), wheelbase, 1e-9);
      near(
        motors.reduce((sum, { x }) => sum + x, 0),
        0,
      );
      near(
        motors.reduce((sum, { y }) => sum + y, 0),
        0,
      );
    }),
  );
});

test('stretched and wide are one layout turned by a quarter', () => {
  fc.assert(
    fc.property(layouts, (layout) => {
      const [long, wide] = [motorLayout({ ...layout, shape: 'stretched' }), motorLayout({ ...layout, shape: 'wide' })];
      near(long.lateralSpacing, wide.longitudinalSpacing);
      near(long.longitudinalSpacing, wide.lateralSpacing);
      near(long.armAngle + wide.armAngle, Math.PI / 2, 1e-9);
    }),
  );
});

test('discs overlap exactly when the gap is negative, they say so, and it costs power', () => {
  fc.assert(
    fc.property(layouts, (layout) => {
      const result = motorLayout(layout);
      const warned = result.warnings.some(({ code }) => code === 'propellers-overlap');
      expect(warned).toBe(layout.tipGap <= 0);
      if (layout.tipGap > 0) expect(result.overlap).toBe(0);
      if (layout.tipGap < -1e-6) expect(result.overlapPowerFactor).toBeGreaterThan(1);
      expect(result.overlapPowerFactor).toBeLessThanOrEqual(Math.SQRT2);
    }),
  );
});

test('overlap shrinks from all to nothing as discs part, and power with it', () => {
  fc.assert(
    fc.property(within(0, 0.99), within(0.001, 0.01), (spacing, step) => {
      const [near1, far] = [spacing, spacing + step].map((s) => discOverlap({ spacing: s, diameter: 1 })) as [
        number,
        number,
      ];
      expect(far).toBeLessThan(near1);
      expect(overlapPowerFactor(far)).toBeLessThan(overlapPowerFactor(near1));
    }),
  );
  expect(discOverlap({ spacing: 0, diameter: 1 })).toBe(1);
  expect(discOverlap({ spacing: 1, diameter: 1 })).toBe(0);
});

test('four motors on a circle are the square of the same wheelbase', () => {
  fc.assert(
    fc.property(within(0.04, 0.4), within(0, 0.5), (propellerDiameter, share) => {
      const { wheelbase, gapPerDiameter } = motorLayout({
        propellerDiameter,
        tipGap: share * propellerDiameter,
        shape: 'true-x',
        stretch: 1,
      });
      near(ringGap({ circleRatio: wheelbase / propellerDiameter, motors: 4 }), gapPerDiameter, 1e-9);
    }),
  );
});

test('arm and root together reach the motor', () => {
  fc.assert(
    fc.property(layouts, within(0.05, 0.9), (layout, share) => {
      const { motors, wheelbase } = motorLayout(layout);
      const rootDistance = (share * wheelbase) / 2;
      near(armFreeLength({ motor: motors[0]!, rootDistance }) + rootDistance, wheelbase / 2, 1e-9);
    }),
  );
});

test('no point of the outline is nearer to a disc than the clearance says', () => {
  fc.assert(
    fc.property(layouts, within(0.05, 0.3), within(0.02, 0.1), within(0.02, 0.1), (layout, length, waist, end) => {
      const { motors } = motorLayout(layout);
      const outline = taperedOutline({ length, waist, end });
      fc.pre(Math.max(waist, end) / 2 < motors[0]!.x);
      const { clearance } = bodyClearance({ outline, motors, propellerDiameter: layout.propellerDiameter });
      const sampled = outline.flatMap((a, i) => {
        const b = outline[(i + 1) % outline.length]!;
        return Array.from({ length: 41 }, (_, k) => ({
          x: a.x + ((b.x - a.x) * k) / 40,
          y: a.y + ((b.y - a.y) * k) / 40,
        }));
      });
      const least =
        Math.min(...sampled.flatMap((p) => motors.map((m) => Math.hypot(p.x - m.x, p.y - m.y)))) -
        layout.propellerDiameter / 2;
      expect(least).toBeGreaterThanOrEqual(clearance - 1e-9);
      expect(least - clearance).toBeLessThan(length / 40);
    }),
  );
});

test('a motor inside the body is never called clear', () => {
  const { clearance, warnings } = bodyClearance({
    outline: taperedOutline({ length: 0.4, waist: 0.4, end: 0.4 }),
    motors: [{ x: 0.05, y: 0.05 }],
    propellerDiameter: 0.1,
  });
  expect(clearance).toBeLessThan(-0.05);
  expect(warnings.map(({ code }) => code)).toEqual(['body-under-propeller']);
});

test('wire gets a tenth of the area each ten gauges, roughly, and its resistance is copper’s', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 30 }), (gauge) => {
      const [thick, thin] = [wireGauge(gauge), wireGauge(gauge + 10)];
      expect(thick.area / thin.area).toBeGreaterThan(9.9);
      expect(thick.area / thin.area).toBeLessThan(10.3);
      near(thick.resistancePerLength * thick.area, 1.7241e-8, 1e-15);
    }),
  );
});

test('opposite propellers that would meet are refused', () => {
  expect(() => motorLayout({ propellerDiameter: 0.127, tipGap: -0.05, shape: 'true-x', stretch: 1 })).toThrow(
    InputError,
  );
  expect(() => armFreeLength({ motor: { x: 0.07, y: 0.07 }, rootDistance: 0.1 })).toThrow(
    'must be less than the distance of the motor',
  );
});

test('refuses or stays finite whatever is put in', () => {
  fc.assert(
    fc.property(anyNumber, anyNumber, anyNumber, anyNumber, shapes, (a, b, c, d, shape) => {
      refusesOrFinite(() => motorLayout({ propellerDiameter: a, tipGap: b, shape, stretch: c }));
      refusesOrFinite(() =>
        bodyClearance({
          outline: taperedOutline({ length: a, waist: b, end: c }),
          motors: [{ x: d, y: a }],
          propellerDiameter: b,
        }),
      );
      refusesOrFinite(() => armFreeLength({ motor: { x: a, y: b }, rootDistance: c }));
      refusesOrFinite(() => discOverlap({ spacing: a, diameter: b }));
      refusesOrFinite(() => overlapPowerFactor(a));
      refusesOrFinite(() => wireGauge(a));
    }),
  );
});

test('neighbours may overlap until opposite propellers would meet, whatever the shape', () => {
  fc.assert(
    fc.property(layouts, within(1e-4, 0.2), (layout, beyond) => {
      const { propellerDiameter, shape } = layout;
      const stretch = shape === 'true-x' ? 1 : layout.stretch;
      // Where the diagonal of the motor rectangle is one diameter.
      const limit = propellerDiameter / Math.sqrt(1 + stretch ** 2) - propellerDiameter;
      const touching = motorLayout({ ...layout, tipGap: limit + 1e-9 });
      near(touching.wheelbase, propellerDiameter, 1e-7);
      expect(touching.warnings.map(({ code }) => code)).toEqual(['propellers-overlap']);
      expect(touching.overlap).toBeGreaterThan(0);
      expect(touching.overlap).toBeLessThan(1);
      expect(() => motorLayout({ ...layout, tipGap: limit - beyond * propellerDiameter })).toThrow(
        expect.objectContaining({ parameter: 'tipGap' }) as Error,
      );
    }),
  );
});
