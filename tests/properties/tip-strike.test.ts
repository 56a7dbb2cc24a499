import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { axialStiffness, thrustLoad, type ArmSegment } from '@frameworthy/shared/beam';
import * as impact from '@frameworthy/shared/impact';
import { massProperties, type Placed } from '@frameworthy/shared/mass';
import { roundTubeSection, solidRectangleSection, type Section } from '@frameworthy/shared/section';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const DIRECTIONS = ['vertical', 'sideways', 'along'] as const;

const segment = (length: number, section: Section, youngsModulus: number, shearModulus: number): ArmSegment => ({
  length,
  layers: [{ section, youngsModulus, shearModulus }],
});
const sections = fc.oneof(
  fc
    .tuple(within(0.01, 0.02), within(0.0008, 0.003))
    .map(([outerDiameter, wall]) => roundTubeSection({ outerDiameter, wall })),
  fc
    .tuple(within(0.008, 0.016), within(0.003, 0.008))
    .map(([width, height]) => solidRectangleSection({ width, height })),
);
const segments = fc.array(
  fc
    .tuple(within(0.02, 0.1), sections, within(20e9, 200e9), within(3e9, 30e9))
    .map(([length, section, e, g]) => segment(length, section, e, g)),
  { minLength: 1, maxLength: 3 },
);
const place = fc.record({ x: within(-0.1, 0.1), y: within(-0.1, 0.1), z: within(-0.05, 0.05) });
/** Lumps of mass anywhere: a real body, with whatever products of inertia. */
const lumps = fc.array(
  fc
    .record({ mass: within(0.01, 0.3), position: place, size: within(0.005, 0.05) })
    .map(({ mass, position, size }): Placed => {
      const own = (mass * size ** 2) / 6;
      return { position, body: { mass, inertia: { xx: own, yy: own, zz: own, xy: 0, xz: 0, yz: 0 } } };
    }),
  { minLength: 2, maxLength: 6 },
);
const strikes = fc.record({
  craft: lumps.map((parts) => massProperties(parts)),
  motor: fc.record({ x: within(0.03, 0.2), y: within(-0.2, 0.2) }),
  hitHeight: within(-0.03, 0.04),
  segments,
  root: fc.record({ vertical: within(100, 1e4), horizontal: within(100, 1e4), torsion: within(100, 1e4) }),
  contactStiffness: within(1e3, 1e6),
  speed: within(0.1, 30),
});

describe('a blow at the end of an arm', () => {
  test('never meets more than the whole mass, in any direction at any point', () => {
    fc.assert(
      fc.property(strikes, (given) => {
        const hit = impact.tipStrike(given);
        for (const direction of DIRECTIONS) {
          expect(hit[direction].effectiveMass).toBeGreaterThan(0);
          expect(hit[direction].effectiveMass).toBeLessThanOrEqual(given.craft.mass * (1 + 1e-9));
        }
      }),
    );
  });

  test('less inertia about every axis never raises the force, at the same mass', () => {
    fc.assert(
      fc.property(strikes, within(0.05, 1), (given, share) => {
        const { inertia } = given.craft;
        const less = Object.fromEntries(Object.entries(inertia).map(([key, value]) => [key, value * share]));
        const before = impact.tipStrike(given);
        const after = impact.tipStrike({
          ...given,
          craft: { ...given.craft, inertia: less as unknown as typeof inertia },
        });
        for (const direction of DIRECTIONS)
          expect(after[direction].peakForce).toBeLessThanOrEqual(before[direction].peakForce * (1 + 1e-9));
      }),
    );
  });

  test('mass moved from the middle to the four tips never lowers the force of a blow in the middle plane', () => {
    fc.assert(
      fc.property(within(0.02, 0.06), within(0, 0.03), within(0.07, 0.15), (motorMass, moved, reach) => {
        const craft = (tip: number) =>
          massProperties([
            {
              position: { x: 0, y: 0, z: 0 },
              body: { mass: 0.7 - 4 * tip, inertia: { xx: 4e-4, yy: 6e-4, zz: 8e-4, xy: 0, xz: 0, yz: 0 } },
            },
            ...[1, -1].flatMap((x) =>
              [1, -1].map((y): Placed => ({
                position: { x: x * reach * Math.SQRT1_2, y: y * reach * Math.SQRT1_2, z: 0 },
                body: { mass: tip, inertia: { xx: 1e-6, yy: 1e-6, zz: 1e-6, xy: 0, xz: 0, yz: 0 } },
              })),
            ),
          ]);
        const force = (tip: number) =>
          impact.tipStrike({
            craft: craft(tip),
            motor: { x: reach * Math.SQRT1_2, y: reach * Math.SQRT1_2 },
            hitHeight: 0,
            segments: [segment(0.09, roundTubeSection({ outerDiameter: 0.014, wall: 0.001 }), 90e9, 10e9)],
            contactStiffness: 1e5,
            speed: 5,
          }).sideways.peakForce;
        expect(force(motorMass + moved)).toBeGreaterThanOrEqual(force(motorMass) * (1 - 1e-12));
      }),
    );
  });

  test('the energy closes: F²/2k is m_eff v²/2', () => {
    fc.assert(
      fc.property(strikes, (given) => {
        const hit = impact.tipStrike(given);
        for (const direction of DIRECTIONS) {
          const { peakForce, stiffness, effectiveMass } = hit[direction];
          expect(peakForce ** 2 / stiffness / (effectiveMass * given.speed ** 2)).toBeCloseTo(1, 9);
        }
      }),
    );
  });

  test('force, moment and stress grow in step with the speed; the series is softer than arm and contact', () => {
    fc.assert(
      fc.property(strikes, within(1, 5), (given, faster) => {
        const slow = impact.tipStrike(given);
        const fast = impact.tipStrike({ ...given, speed: given.speed * faster });
        for (const direction of DIRECTIONS) {
          expect(fast[direction].peakForce / slow[direction].peakForce / faster).toBeCloseTo(1, 9);
          expect(fast[direction].rootStress / slow[direction].rootStress / faster).toBeCloseTo(1, 9);
          expect(slow[direction].stiffness).toBeLessThan(
            Math.min(slow[direction].armStiffness, given.contactStiffness),
          );
        }
      }),
    );
  });

  test('a craft turned about the vertical with its arm is hit the same', () => {
    fc.assert(
      fc.property(lumps, within(0, 2 * Math.PI), within(0.05, 0.15), (parts, angle, reach) => {
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        const about = ({ x, y }: { x: number; y: number }) => ({ x: c * x - s * y, y: s * x + c * y });
        const rest = {
          hitHeight: 0.015,
          segments: [segment(0.09, roundTubeSection({ outerDiameter: 0.014, wall: 0.001 }), 90e9, 10e9)],
          contactStiffness: 1e5,
          speed: 5,
        };
        const before = impact.tipStrike({ craft: massProperties(parts), motor: { x: reach, y: 0 }, ...rest });
        const turned = parts.map((part) => ({ ...part, position: { ...part.position, ...about(part.position) } }));
        const after = impact.tipStrike({ craft: massProperties(turned), motor: about({ x: reach, y: 0 }), ...rest });
        for (const direction of DIRECTIONS)
          expect(after[direction].peakForce / before[direction].peakForce).toBeCloseTo(1, 8);
      }),
    );
  });

  test('pushed along, an arm is softer than its softest segment', () => {
    fc.assert(
      fc.property(segments, (parts) => {
        expect(axialStiffness(parts)).toBeLessThanOrEqual(
          Math.min(...parts.map((part) => axialStiffness([part]))) * (1 + 1e-12),
        );
      }),
    );
  });

  test('thrust: the root moment is thrust times length, and torque the same at the root as at the motor', () => {
    fc.assert(
      fc.property(segments, within(0, 100), within(0.005, 0.03), (parts, thrust, torquePerThrust) => {
        const load = thrustLoad({ segments: parts, thrust, torquePerThrust });
        const length = parts.reduce((sum, part) => sum + part.length, 0);
        expect(load.rootMoment.vertical).toBeCloseTo(thrust * length, 9);
        expect(load.rootMoment.horizontal).toBeCloseTo(thrust * torquePerThrust, 12);
      }),
    );
  });
});

describe('a flat drop', () => {
  const supports = fc.record({
    mass: within(0.1, 3),
    count: fc.integer({ min: 1, max: 8 }),
    stiffness: within(1e3, 1e6),
  });

  test('the energy closes: weight times the whole way down is what the supports hold', () => {
    fc.assert(
      fc.property(supports, within(0, 30), (on, height) => {
        const { peakForce, deflection } = impact.flatDrop(on, height);
        expect((peakForce * deflection) / 2 / (on.mass * 9.80665 * (height + deflection))).toBeCloseTo(1, 9);
      }),
    );
  });

  test('each support carries its stiffness times the give, and n of them are one of n times the stiffness', () => {
    fc.assert(
      fc.property(supports, within(0, 30), (on, height) => {
        const drop = impact.flatDrop(on, height);
        expect(drop.each / (on.stiffness * drop.deflection)).toBeCloseTo(1, 9);
        const one = impact.flatDrop({ ...on, count: 1, stiffness: on.count * on.stiffness }, height);
        expect(drop.peakForce / one.peakForce).toBeCloseTo(1, 9);
      }),
    );
  });

  test('more supports: more force in all, less on each', () => {
    fc.assert(
      fc.property(supports, within(0, 30), (on, height) => {
        const few = impact.flatDrop(on, height);
        const more = impact.flatDrop({ ...on, count: on.count + 1 }, height);
        expect(more.peakForce).toBeGreaterThanOrEqual(few.peakForce * (1 - 1e-12));
        expect(more.each).toBeLessThan(few.each);
      }),
    );
  });

  test('from the survivable height each support carries what it may', () => {
    fc.assert(
      fc.property(supports, within(1, 2000), (on, allowable) => {
        const height = impact.survivableHeight(on, allowable);
        if (height === 0) expect(on.count * allowable).toBeLessThanOrEqual(2 * on.mass * 9.80665 * (1 + 1e-9));
        else if (height < 1e4) expect(impact.flatDrop(on, height).each / allowable).toBeCloseTo(1, 6);
      }),
    );
  });
});

test('whatever is put in: a finite number or an InputError', () => {
  const section = roundTubeSection({ outerDiameter: 0.014, wall: 0.001 });
  fc.assert(
    fc.property(fc.array(anyNumber, { minLength: 14, maxLength: 14 }), (n) => {
      const [a, b, c, d, e, f, g, h, i, j, k, l, m, o] = n as [
        number,
        number,
        number,
        number,
        number,
        number,
        number,
        number,
        number,
        number,
        number,
        number,
        number,
        number,
      ];
      const inertia = { xx: a, yy: b, zz: c, xy: d, xz: e, yz: f };
      const segments = [segment(g, section, h, i)];
      refusesOrFinite(() =>
        impact.effectiveMassAt({ mass: g, inertia, lever: { x: h, y: i, z: j }, direction: { x: k, y: l, z: m } }),
      );
      refusesOrFinite(() =>
        impact.tipStrike({
          craft: { mass: j, centre: { x: k, y: 0, z: l }, inertia },
          motor: { x: m, y: o },
          hitHeight: k,
          segments,
          root: { vertical: l },
          contactStiffness: m,
          speed: o,
        }),
      );
      refusesOrFinite(() => axialStiffness(segments));
      refusesOrFinite(() => thrustLoad({ segments, thrust: j, torquePerThrust: k, root: { vertical: l } }));
      refusesOrFinite(() => impact.flatDrop({ mass: a, count: b, stiffness: c }, d));
      refusesOrFinite(() => impact.survivableHeight({ mass: a, count: b, stiffness: c }, d));
    }),
    { numRuns: 2000 },
  );
});
