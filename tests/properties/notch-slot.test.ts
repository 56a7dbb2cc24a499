import fc from 'fast-check';
import { InputError } from '@frameworthy/shared';
import {
  slottedTwist,
  tipSlot,
  wireSlot,
  type SlottedLength,
  type TipSlot,
  type WireSlot,
} from '@frameworthy/shared/notch';
import {
  drilledTubeSection,
  openTubeTorsion,
  openWallTorsionConstant,
  roundTubeSection,
  slottedTubeSection,
} from '@frameworthy/shared/section';
import { describe, expect, test } from 'vitest';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const near = (value: number, expected: number, relative = 1e-9): void =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(relative * Math.abs(expected) + 1e-300);
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const tube = { outerDiameter: 0.014, wall: 0.001 };
const material = { holeFactor: 4.5, pointLength: 0.8e-3, meanLength: 1.8e-3 };
const PLANES = ['vertical', 'horizontal'] as const;

const slotted: SlottedLength = {
  tube,
  slotWidth: 0.005,
  length: 0.012,
  torque: 1,
  youngsModulus: 90e9,
  shearModulus: 10e9,
};

const tip: TipSlot = {
  ...slotted,
  slotFaces: 'vertical',
  slotReach: 0.015,
  mountGrip: 0.008,
  armLength: 0.095,
  verticalForce: 60,
  horizontalForce: 200,
  strikeHeight: 0.02,
  reactionTorque: 0.2,
  material,
  bendingStrength: 600e6,
  shearStrength: 80e6,
};

describe('slotted tube', () => {
  const widths = between(0.0002, 0.0105);

  test('area and second moments agree with a sum over small patches of the wall', () => {
    for (const slotWidth of [0.001, 0.004, 0.009]) {
      const section = slottedTubeSection({ ...tube, slotWidth, slotFaces: 'vertical' });
      const count = 1400;
      const cell = tube.outerDiameter / count;
      let [area, first, along, across] = [0, 0, 0, 0];
      for (let i = 0; i < count; i++)
        for (let j = 0; j < count; j++) {
          const x = -0.007 + (i + 0.5) * cell;
          const y = -0.007 + (j + 0.5) * cell;
          const r = Math.hypot(x, y);
          if (r > 0.007 || r < 0.006 || (y > 0 && Math.abs(x) < slotWidth / 2)) continue;
          area += cell ** 2;
          first += y * cell ** 2;
          along += y ** 2 * cell ** 2;
          across += x ** 2 * cell ** 2;
        }
      near(section.area, area, 3e-3);
      near(section.centroidOffset, -first / area, 1e-2);
      near(section.vertical.secondMomentOfArea, along - first ** 2 / area, 3e-3);
      near(section.horizontal.secondMomentOfArea, across, 3e-3);
    }
  });

  test('lies between the tube and the tube drilled through both walls; a slit of no width only opens it', () => {
    fc.assert(
      fc.property(widths, (slotWidth) => {
        const slot = slottedTubeSection({ ...tube, slotWidth, slotFaces: 'vertical' });
        const both = drilledTubeSection({ ...tube, holeDiameter: slotWidth, holeAxis: 'vertical' });
        const whole = roundTubeSection(tube);
        expect(slot.area).toBeLessThan(whole.area);
        expect(slot.area).toBeGreaterThan(both.area);
        near(whole.area - slot.area, (whole.area - both.area) / 2, 1e-6);
        expect(slot.vertical.secondMomentOfArea).toBeLessThan(whole.vertical.secondMomentOfArea);
        expect(slot.vertical.secondMomentOfArea).toBeGreaterThan(both.vertical.secondMomentOfArea);
        expect(slot.torsionConstant).toBeLessThan(whole.torsionConstant / 50);
      }),
    );
    const slit = slottedTubeSection({ ...tube, slotWidth: 1e-9, slotFaces: 'vertical' });
    near(slit.vertical.secondMomentOfArea, roundTubeSection(tube).vertical.secondMomentOfArea, 1e-6);
  });

  test('twist lies between the whole tube and the open one: near the first when short, near the second when long', () => {
    fc.assert(
      fc.property(widths, between(1e-4, 5), (slotWidth, length) => {
        const { whole, held, free } = slottedTwist({ ...slotted, slotWidth, length });
        expect(held).toBeGreaterThan(whole * 0.999999);
        expect(held).toBeLessThanOrEqual(free);
      }),
    );
    const short = slottedTwist({ ...slotted, length: 1e-5 });
    expect(short.held / short.whole).toBeLessThan(1.3);
    const long = slottedTwist({ ...slotted, length: 50 });
    expect(long.held / long.free).toBeGreaterThan(0.98);
  });

  test('the twist of a held slot agrees with the beam equation solved step by step', () => {
    const length = 0.3;
    const { torsionConstant: J, warpingConstant: W } = openTubeTorsion({ ...tube, slotWidth: 0.005 });
    const section = slottedTubeSection({ ...tube, slotWidth: 0.005, slotFaces: 'vertical' });
    const polar = section.vertical.secondMomentOfArea + section.horizontal.secondMomentOfArea;
    const [gj, ew] = [10e9 * J, 90e9 * W];
    // g = φ', -ew g'' + gj g = 1, g(0) = 0, g'(l) = 0, by second differences.
    const n = 4000;
    const h = length / n;
    const [lower, diagonal] = [-ew / h ** 2, (2 * ew) / h ** 2 + gj];
    const [upper, right] = [new Array<number>(n + 1).fill(0), new Array<number>(n + 1).fill(0)];
    for (let i = 1; i <= n; i++) {
      // Mirrored at the free end.
      const low = i === n ? 2 * lower : lower;
      const pivot = diagonal - low * upper[i - 1]!;
      upper[i] = lower / pivot;
      right[i] = (1 - low * right[i - 1]!) / pivot;
    }
    const g = new Array<number>(n + 1).fill(0);
    for (let i = n; i >= 1; i--) g[i] = right[i]! - (i === n ? 0 : upper[i]! * g[i + 1]!);
    const twist = g.reduce((sum, value, i) => sum + (i === 0 || i === n ? value / 2 : value) * h, 0);
    near(slottedTwist({ ...slotted, length }).held, twist + length / (10e9 * polar), 1e-3);
  });

  test('a slot that reaches as far as it may is used as much as the root when the root breaks', () => {
    for (const slotFaces of PLANES) {
      const { farthest } = tipSlot({ ...tip, slotFaces });
      const whole = roundTubeSection(tube).vertical;
      const root = (600e6 * whole.secondMomentOfArea) / whole.extremeFibre;
      const { use } = tipSlot({
        ...tip,
        slotFaces,
        slotReach: farthest,
        verticalForce: root / 0.095,
        horizontalForce: (root - 0.2) / 0.095,
      });
      near(Math.max(use.vertical, use.horizontal), 1, 1e-9);
    }
  });

  test('outside of the motor axis it carries nothing, under the mount it does not twist', () => {
    const outside = tipSlot({ ...tip, slotReach: -0.002 });
    expect([outside.use.vertical, outside.use.horizontal, outside.twist.free]).toEqual([0, 0, 0]);
    expect(tipSlot({ ...tip, slotReach: 0.008 }).openLength).toBe(0);
    near(tipSlot({ ...tip, slotReach: 0.02 }).openLength, 0.012);
  });
});

describe('wires in a slot', () => {
  const slot: WireSlot = {
    slotWidth: 0.005,
    slotLength: 0.02,
    wireCount: 3,
    wireDiameter: 0.002,
    proud: 0.001,
    scrapeAngle: 0.5,
    wear: 0.002,
  };

  test('take rows that hold them all, and leave the rest of the slot as stand', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9 }), between(0.001, 0.005), (wireCount, wireDiameter) => {
        const { abreast, rows, bundle, standPast } = wireSlot({ ...slot, slotLength: 0.1, wireCount, wireDiameter });
        expect(abreast * wireDiameter).toBeLessThanOrEqual(slot.slotWidth * (1 + 1e-8));
        expect(abreast * rows).toBeGreaterThanOrEqual(wireCount);
        expect(abreast * (rows - 1)).toBeLessThan(wireCount);
        near(bundle + standPast, 0.1);
      }),
    );
  });

  test('a plane at the scrape’s angle just clears wires that have just the needed stand', () => {
    fc.assert(
      fc.property(between(0.0001, 0.006), between(0.1, 1.5), (proud, scrapeAngle) => {
        const { needed } = wireSlot({ ...slot, proud, scrapeAngle, wear: 0 });
        near(needed * Math.tan(scrapeAngle), proud, 1e-9);
      }),
    );
    expect(wireSlot({ ...slot, proud: -0.001 }).needed).toBe(slot.wear);
  });

  test('wires that do not fit are refused', () => {
    expect(() => wireSlot({ ...slot, wireDiameter: 0.006 })).toThrow(InputError);
    expect(() => wireSlot({ ...slot, wireCount: 20 })).toThrow(InputError);
  });
});

test('garbage is refused with the package error, or gives finite numbers', () => {
  fc.assert(
    fc.property(fc.tuple(...Array.from({ length: 12 }, () => anyNumber)), fc.constantFrom(...PLANES), (n, plane) => {
      const [a, b, c, d, e, f, g, h, i, j, k, l] = n as [
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
      const anyTube = { outerDiameter: a, wall: b };
      const loads = { verticalForce: g, horizontalForce: h, strikeHeight: i, reactionTorque: j };
      const slot = { ...loads, slotWidth: c, slotFaces: plane, slotReach: d, mountGrip: e, armLength: f };
      const twisted = { slotWidth: c, length: d, torque: e, youngsModulus: f, shearModulus: g };
      const runs: (() => unknown)[] = [
        () => openWallTorsionConstant([{ length: a, thickness: b }]),
        () => openWallTorsionConstant([]),
        () => openTubeTorsion({ ...anyTube, slotWidth: c }),
        () => slottedTubeSection({ ...anyTube, slotWidth: c, slotFaces: plane }),
        () => slottedTwist({ tube: anyTube, ...twisted }),
        () => slottedTwist({ tube, ...twisted }),
        () => tipSlot({ ...tip, ...slot, tube: anyTube, bendingStrength: k, shearStrength: l }),
        () => tipSlot({ ...tip, ...slot, youngsModulus: a, shearModulus: b }),
        () => tipSlot({ ...tip, ...slot, material: { holeFactor: a, pointLength: k, meanLength: l } }),
        () =>
          wireSlot({
            slotWidth: a,
            slotLength: b,
            wireCount: c,
            wireDiameter: d,
            proud: e,
            scrapeAngle: f,
            wear: g,
          }),
      ];
      for (const run of runs) refusesOrFinite(run);
    }),
    { numRuns: 500 },
  );
});
