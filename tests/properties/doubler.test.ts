import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  armStress,
  doubledTube,
  layeredSection,
  leadInLength,
  leastSleeveWall,
  padDoubler,
  requiredLength,
  rootMoment,
  shareReached,
  taperFactor,
  tubeDoubler,
} from '../../shared/src/doubler/index.ts';
import { ordinaryArm } from '../published/doubler.ts';
import { refusesOrFinite } from './garbage.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const arm = fc
  .record({
    tipForce: between(10, 1500),
    armLength: between(0.06, 0.2),
    screwSpacing: between(0.008, 0.03),
    edgeDistance: between(0.004, 0.015),
    sleeveWall: between(3e-4, 4e-3),
    gap: between(5e-5, 3e-4),
    taper: between(0, 0.008),
    part: between(0.3, 1),
    tubeModulus: between(3e10, 2e11),
    sleeveModulus: between(3e10, 2e11),
    shearModulus: between(2e8, 2e9),
    tubeStrength: between(1e8, 1e9),
    squareEndFactor: between(1, 2),
    plane: fc.constantFrom('vertical', 'horizontal' as const) as fc.Arbitrary<'vertical' | 'horizontal'>,
  })
  .map(({ gap, part, ...given }) => ({
    ...ordinaryArm,
    ...given,
    sleeveOutside: ordinaryArm.tubeInside - 2 * gap,
    length: Math.max(part * (given.edgeDistance + given.screwSpacing + given.armLength), given.taper),
  }));

describe('lead-in', () => {
  const bond = fc.record({ lambda: between(10, 5000), taper: between(0, 0.05) });
  test('share rises from 0 to 1 and has 95 % or more after the lead-in, taper or not', () => {
    fc.assert(
      fc.property(bond, between(0, 0.1), between(0, 0.1), (given, a, b) => {
        const [near, far] = [Math.min(a, b), Math.max(a, b)].map((distance) =>
          shareReached({ ...given, distance }),
        ) as [number, number];
        expect(near).toBeGreaterThanOrEqual(0);
        expect(far).toBeLessThanOrEqual(1);
        expect(far).toBeGreaterThanOrEqual(near - 1e-9);
        expect(shareReached({ ...given, distance: leadInLength(given) })).toBeGreaterThanOrEqual(0.95);
        expect(leadInLength(given)).toBeGreaterThanOrEqual(leadInLength({ ...given, taper: 0 }) * (1 - 1e-9));
      }),
    );
  });
  test('a taper leaves the share of the peak that the slope of the take-up shows', () => {
    fc.assert(
      fc.property(fc.record({ lambda: between(50, 3000), taper: between(1e-3, 0.03) }), (given) => {
        const step = 1e-7;
        const slope =
          (shareReached({ ...given, distance: given.taper }) -
            shareReached({ ...given, distance: given.taper - step })) /
          step;
        expect(Math.abs(slope / given.lambda / taperFactor(given) - 1)).toBeLessThan(1e-3);
      }),
    );
  });
});

describe('sleeve in a tube arm', () => {
  test('a harder blow, a weaker tube or a longer arm never asks for less length', () => {
    fc.assert(
      fc.property(arm, (given) => {
        const { required } = tubeDoubler(given);
        const least = required.length - 1e-12;
        expect(tubeDoubler({ ...given, tipForce: given.tipForce * 1.2 }).required.length).toBeGreaterThanOrEqual(least);
        expect(
          tubeDoubler({ ...given, tubeStrength: given.tubeStrength / 1.2 }).required.length,
        ).toBeGreaterThanOrEqual(least);
        expect(tubeDoubler({ ...given, armLength: given.armLength * 1.2 }).required.length).toBeGreaterThanOrEqual(
          least,
        );
      }),
    );
  });
  test('force and strength scale together: the reserve stays, the length stays', () => {
    fc.assert(
      fc.property(arm, (given) => {
        const once = tubeDoubler(given);
        const twice = tubeDoubler({
          ...given,
          tipForce: 2 * given.tipForce,
          tubeStrength: 2 * given.tubeStrength,
          sleeveStrength: 2 * given.sleeveStrength,
        });
        expect(Math.abs(twice.reserve / once.reserve - 1)).toBeLessThan(1e-9);
        expect(Math.abs(twice.required.length - once.required.length)).toBeLessThan(1e-9);
        expect(Math.abs(twice.bondPeak - 2 * once.bondPeak)).toBeLessThanOrEqual(1e-9 * twice.bondPeak);
      }),
    );
  });
  test('at the required length the bare tube past the sleeve holds', () => {
    fc.assert(
      fc.property(arm, (given) => {
        const { required } = tubeDoubler(given);
        const whole = given.edgeDistance + given.screwSpacing + given.armLength;
        fc.pre(required.length <= whole && given.taper <= required.length);
        const { section, endStep } = tubeDoubler({ ...given, length: required.length });
        const { secondMomentOfArea, extremeFibre } = section.whole.tube;
        const stress = (endStep * rootMoment(given, required.pastScrew) * extremeFibre) / secondMomentOfArea;
        expect(stress).toBeLessThanOrEqual(given.tubeStrength * (1 + 1e-9));
      }),
    );
  });
  test('a sleeve that ends where the bare tube is overloaded shows it, with the end factor', () => {
    fc.assert(
      fc.property(arm, (given) => {
        const { section, endStep, reserve, required, worst } = tubeDoubler(given);
        const end = given.length - given.edgeDistance - given.screwSpacing;
        const { secondMomentOfArea, extremeFibre } = section.whole.tube;
        const past = (endStep * rootMoment(given, end) * extremeFibre) / secondMomentOfArea;
        expect(reserve * past).toBeLessThanOrEqual(given.tubeStrength * (1 + 1e-9));
        if (worst === 'sleeve end') expect(Math.abs((reserve * past) / given.tubeStrength - 1)).toBeLessThan(1e-9);
        if (end > 0 && end < required.bareEnough * 0.999) expect(reserve).toBeLessThan(1);
      }),
    );
  });
  test('at its end the sleeve carries nothing, far inside it carries its share, and the two add up to the moment', () => {
    fc.assert(
      fc.property(arm, between(0, 1), (given, part) => {
        const section = doubledTube(given);
        const end = given.length - given.edgeDistance - given.screwSpacing;
        const { whole } = section;
        const outside = armStress(given, section, { position: end, sharing: whole });
        expect(outside.tube).toBe(outside.bare);
        expect(outside.sleeve).toBe(0);
        const inside = armStress(given, section, { position: end - part * 0.02, sharing: whole });
        const carried = (
          stress: number,
          { secondMomentOfArea, extremeFibre }: { secondMomentOfArea: number; extremeFibre: number },
        ): number => (stress * secondMomentOfArea) / extremeFibre;
        const sum = carried(inside.tube, whole.tube) + carried(inside.sleeve, whole.sleeve);
        expect(Math.abs(sum - rootMoment(given, end - part * 0.02))).toBeLessThan(1e-9);
        expect(inside.tube).toBeGreaterThanOrEqual(inside.bare * (1 - whole.share) * (1 - 1e-9));
      }),
    );
  });
  test('the least wall just holds at the outer hole, and a thinner one does not', () => {
    fc.assert(
      fc.property(arm, (drawn) => {
        const given = { ...drawn, sleeveStrength: 1e12, taper: 0 };
        const { wall, enough, length, mass } = leastSleeveWall(given);
        expect(mass).toBeGreaterThanOrEqual(0);
        fc.pre(enough && wall > 1e-5);
        const whole = given.edgeDistance + given.screwSpacing + given.armLength;
        const at = (sleeveWall: number): number =>
          tubeDoubler({ ...given, sleeveWall, length: whole }).outerHole.tube / (given.holeShare * given.tubeStrength);
        expect(at(wall)).toBeLessThanOrEqual(1 + 1e-6);
        expect(at(wall * 0.98)).toBeGreaterThan(1);
        expect(length).toBeGreaterThan(given.edgeDistance + given.screwSpacing);
      }),
    );
  });
  test('grams past the required length are wasted, none before it', () => {
    fc.assert(
      fc.property(arm, (given) => {
        const { mass, wasted, required } = tubeDoubler(given);
        if (given.length <= required.length) expect(wasted).toBe(0);
        else expect(wasted).toBeGreaterThan(0);
        expect(wasted).toBeLessThanOrEqual(mass * 1.2);
      }),
    );
  });
  test('share rises with the wall and with the modulus of the sleeve', () => {
    fc.assert(
      fc.property(arm, (given) => {
        const { share } = doubledTube(given).whole;
        expect(doubledTube({ ...given, sleeveWall: given.sleeveWall * 1.1 }).whole.share).toBeGreaterThan(share);
        expect(doubledTube({ ...given, sleeveModulus: given.sleeveModulus * 1.1 }).whole.share).toBeGreaterThan(share);
      }),
    );
  });
  test('two equal layers are one layer of both thicknesses', () => {
    fc.assert(
      fc.property(
        between(1e9, 2e11),
        between(1e-3, 0.1),
        between(1e-4, 0.01),
        between(-10, 10),
        (modulus, width, thickness, moment) => {
          const layer = { modulus, width, thickness };
          const two = layeredSection({ layers: [layer, layer], moment });
          const one = layeredSection({ layers: [{ ...layer, thickness: 2 * thickness }], moment });
          expect(Math.abs(two.bendingStiffness / one.bendingStiffness - 1)).toBeLessThan(1e-9);
        },
      ),
    );
  });
});

describe('pad on a plate arm', () => {
  const pad = fc.record({
    tipForce: between(5, 300),
    armLength: between(0.05, 0.2),
    screwSpacing: between(0.008, 0.03),
    edgeDistance: between(0.004, 0.015),
    width: between(0.006, 0.02),
    plateThickness: between(0.002, 0.008),
    padThickness: between(5e-4, 4e-3),
    plateModulus: between(3e10, 1e11),
    padModulus: between(3e10, 1e11),
    plateStrength: between(2e8, 8e8),
    shearModulus: between(2e8, 2e9),
    bondLine: between(5e-5, 3e-4),
    holeDiameter: between(0.002, 0.004),
    taper: between(0, 0.01),
    squareEndFactor: between(1, 2),
  });
  test('a pad takes stress off the plate, and a tapered one loads its bond less', () => {
    fc.assert(
      fc.property(pad, (given) => {
        const { plateStress, bareStress } = padDoubler(given);
        expect(plateStress).toBeLessThan(bareStress);
        const at = (taper: number): number => {
          const { bondPeak, required } = padDoubler({ ...given, taper, squareEndFactor: 1 });
          return bondPeak / rootMoment(given, required.pastScrew);
        };
        fc.pre(padDoubler({ ...given, taper: 0.012 }).required.pastScrew < given.armLength * 0.9);
        expect(at(0.012)).toBeLessThan(at(0));
      }),
    );
  });
  test('at the required length the bare plate past the pad holds', () => {
    fc.assert(
      fc.property(pad, (given) => {
        const { required } = padDoubler({ ...given, taper: 0 });
        const stress =
          (6 * given.squareEndFactor * rootMoment(given, required.pastScrew)) /
          (given.width * given.plateThickness ** 2);
        expect(stress).toBeLessThanOrEqual(given.plateStrength * (1 + 1e-9));
      }),
    );
  });
  test('wild values give a finite result or an InputError', () => {
    const wild = fc.oneof(fc.double(), fc.constantFrom(0, -1, 1e308, 5e-324, 1e-7, 100, 1e13, NaN, Infinity));
    const base = {
      tipForce: 60,
      armLength: 0.095,
      screwSpacing: 0.018,
      edgeDistance: 0.01,
      width: 0.012,
      plateThickness: 0.004,
      padThickness: 0.0015,
      plateModulus: 6e10,
      padModulus: 6e10,
      plateStrength: 4e8,
      shearModulus: 8e8,
      bondLine: 1e-4,
      holeDiameter: 0.0032,
      taper: 0,
      squareEndFactor: 1.25,
    };
    const key = fc.constantFrom(...Object.keys(base));
    fc.assert(
      fc.property(key, key, wild, wild, (a, b, x, y) => refusesOrFinite(() => padDoubler({ ...base, [a]: x, [b]: y }))),
      { numRuns: 2000 },
    );
  });
});

describe('any input at all', () => {
  const wild = fc.oneof(
    fc.double(),
    fc.constantFrom(0, -1, 1e308, -1e308, 5e-324, 1e-7, 0.01, 1, 100, 1e12, 1e13, NaN, Infinity),
  );
  test('one or two wild values give a finite result or an InputError', () => {
    const key = fc.constantFrom(
      ...(Object.keys(ordinaryArm).filter((name) => name !== 'plane') as (keyof typeof ordinaryArm)[]),
    );
    fc.assert(
      fc.property(key, key, wild, wild, (a, b, x, y) => {
        const given = { ...ordinaryArm, [a]: x, [b]: y };
        refusesOrFinite(() => tubeDoubler(given));
        refusesOrFinite(() => leastSleeveWall(given));
        refusesOrFinite(() => rootMoment(given, x));
        refusesOrFinite(() => shareReached({ lambda: x, taper: y, distance: x }));
        refusesOrFinite(() => leadInLength({ lambda: x, taper: y }));
        refusesOrFinite(() => layeredSection({ layers: [{ modulus: x, width: y, thickness: x }], moment: y }));
        refusesOrFinite(() =>
          requiredLength({
            ...given,
            bare: { secondMomentOfArea: 8e-10, extremeFibre: 7e-3 },
            allowable: x,
            endStep: y,
            holeReach: x,
            leadIn: y,
          }),
        );
      }),
      { numRuns: 3000 },
    );
  });
});
