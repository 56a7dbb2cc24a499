import fc from 'fast-check';
import type { InputError } from '@frameworthy/shared';
import { preloadFromTorque } from '@frameworthy/shared/joint';
import {
  cautiousPullOut,
  CLEARANCE_HOLES,
  engagementFor,
  flangeArea,
  frustumStiffness,
  jointLoadFactor,
  insertHold,
  LOST_TURNS,
  majorLimits,
  pitchTolerance,
  preloadBand,
  SCREW_MATERIALS,
  screwedJoint,
  SEAT_DIAMETERS,
  seatPressure,
  separationForce,
  strippingForce,
  tappedHole,
  THREAD_LIMITS,
  threadShearArea,
  type FrameThread,
  type ScrewedJoint,
} from '@frameworthy/shared/fastener';
import { expect, test } from 'vitest';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (value: number, expected: number, relative = 1e-9): void =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(relative * Math.abs(expected) + 1e-300);
const NAMES = Object.keys(THREAD_LIMITS) as FrameThread[];
const names = fc.constantFrom(...NAMES);
const materials = fc.constantFrom(...Object.values(SCREW_MATERIALS));
const nuts = fc.record({ flangeDiameter: within(0.0075, 0.015), nutHole: within(0.0045, 0.007) });
const inserts = fc.record({
  insertDiameter: within(0.0045, 0.01),
  insertLength: within(0.002, 0.02),
  parentShearStrength: within(5e6, 300e6),
});
const plain: fc.Arbitrary<ScrewedJoint> = fc.record({
  limits: names.map((name) => THREAD_LIMITS[name]),
  material: materials,
  torque: within(0.05, 4),
  torqueCoefficient: within(0.1, 0.3),
  engagement: within(0.003, 0.02),
  tappedShearStrength: within(50e6, 600e6),
  seatDiameter: within(0.0055, 0.012),
  holeDiameter: within(0.002, 0.005),
  plateStrength: within(20e6, 500e6),
});
const joints: fc.Arbitrary<ScrewedJoint> = fc.oneof(
  plain,
  fc.tuple(plain, nuts).map(([joint, pressNut]) => ({ ...joint, pressNut })),
  fc.tuple(plain, inserts).map(([joint, insert]) => ({ ...joint, insert })),
);

test('limits of every thread lie in the order that a screw in a tapped hole needs', () => {
  for (const name of NAMES) {
    const { thread, majorLeast, pitchLeast, tappedPitchLargest, tappedMinorLargest } = THREAD_LIMITS[name];
    const basic = tappedHole(thread);
    expect(majorLeast, name).toBeLessThan(thread.diameter);
    expect(pitchLeast, name).toBeLessThan(basic.pitchDiameter);
    expect(tappedPitchLargest, name).toBeGreaterThan(basic.pitchDiameter);
    expect(tappedMinorLargest, name).toBeGreaterThan(basic.minorDiameter);
    expect(majorLeast, name).toBeGreaterThan(tappedPitchLargest);
  }
});

test('recalled limits agree with the tolerance formulas that ISO 965-1 rounds to its tables', () => {
  // Grades 6 and 6H, recalled: P and d in mm, tolerances in µm; d is the mean of the size range (1.4-2.8 and 2.8-5.6).
  for (const name of NAMES) {
    const { thread, majorLeast, pitchLeast, tappedPitchLargest, tappedMinorLargest } = THREAD_LIMITS[name];
    const basic = tappedHole(thread);
    const pitch = thread.pitch * 1e3;
    const range = thread.diameter < 2.8e-3 ? Math.sqrt(1.4 * 2.8) : Math.sqrt(2.8 * 5.6);
    const ofScrew = pitchTolerance({ diameter: range * 1e-3, pitch: thread.pitch }, 6);
    const major = majorLimits(thread);
    const allowance = thread.diameter - major.largest;
    // The tables are rounded to preferred numbers, which miss by up to 6 %, and to whole micrometres.
    const agrees = (tolerance: number, formula: number): void => near(tolerance, formula, 0.06);
    agrees(major.largest - majorLeast, major.largest - major.least);
    agrees(basic.pitchDiameter - allowance - pitchLeast, ofScrew);
    agrees(tappedPitchLargest - basic.pitchDiameter, 1.32 * ofScrew);
    agrees(tappedMinorLargest - basic.minorDiameter, (433 * pitch - 190 * pitch ** 1.22) * 1e-6);
  }
});

test('clearance holes pass the screw, grow from fine to coarse, and stay under every washer', () => {
  for (const name of NAMES) {
    const { fine, medium, coarse } = CLEARANCE_HOLES[name];
    expect(fine).toBeGreaterThan(THREAD_LIMITS[name].thread.diameter);
    expect(medium).toBeGreaterThan(fine);
    expect(coarse).toBeGreaterThan(medium);
    expect(SEAT_DIAMETERS[name].washer).toBeGreaterThan(coarse);
  }
});

test('the engagement asked for holds exactly the force asked for', () => {
  fc.assert(
    fc.property(names, within(50e6, 500e6), within(100, 10_000), (name, shearStrength, force) => {
      const hole = { limits: THREAD_LIMITS[name], shearStrength };
      near(strippingForce({ ...hole, engagement: engagementFor(hole, force) }), force, 1e-6);
    }),
  );
});

test('the handbook rule is the lower bound of the shear area once a few diameters are engaged', () => {
  for (const name of NAMES) {
    const { thread } = THREAD_LIMITS[name];
    const engagement = 3 * thread.diameter;
    const strip = strippingForce({ limits: THREAD_LIMITS[name], engagement, shearStrength: 200e6 });
    expect(
      cautiousPullOut({ pitchDiameter: tappedHole(thread).pitchDiameter, engagement, shearStrength: 200e6 }),
    ).toBeLessThan(strip);
  }
});

test('advised torque leaves the weakest part below its limit even at the high end of the scatter, and torque does not change it', () => {
  fc.assert(
    fc.property(joints, within(0.1, 3), (joint, other) => {
      const result = screwedJoint(joint);
      fc.pre(result.advisedTorque > 0);
      const at = screwedJoint({ ...joint, torque: result.advisedTorque });
      near(at.use[result.limiter]!, 0.65 * 1.25);
      for (const use of Object.values(at.use)) expect(use).toBeLessThanOrEqual(0.65 * 1.25 * (1 + 1e-9));
      expect(at.warnings.map(({ code }) => code)).not.toContain('torque-too-high');
      near(screwedJoint({ ...joint, torque: other }).advisedTorque, result.advisedTorque);
      expect(result.damageTorque).toBeGreaterThan(result.advisedTorque);
    }),
  );
});

test('a press nut or an insert never makes a joint take more, and the part named is the one that gives', () => {
  fc.assert(
    fc.property(plain, nuts, inserts, (joint, pressNut, insert) => {
      const bare = screwedJoint(joint);
      for (const held of [screwedJoint({ ...joint, pressNut }), screwedJoint({ ...joint, insert })]) {
        expect(held.advisedTorque).toBeLessThanOrEqual(bare.advisedTorque * (1 + 1e-12));
        expect(held.limit[held.limiter]).toBe(held.least);
        expect(Math.min(...Object.values(held.limit))).toBe(held.least);
        expect(held.hold.low).toBeLessThanOrEqual(held.limit.thread);
        expect(held.hold.high).toBeGreaterThanOrEqual(held.hold.low);
      }
      expect(bare.hold).toEqual({ low: bare.limit.thread, high: bare.limit.thread });
    }),
  );
});

test('a nut as wide as the head, in a hole like the head’s, gives at the same force', () => {
  fc.assert(
    fc.property(plain, within(0.0045, 0.006), within(0.0075, 0.012), (joint, nutHole, flangeDiameter) => {
      const same = { ...joint, holeDiameter: nutHole, seatDiameter: flangeDiameter };
      const { limit } = screwedJoint({ ...same, pressNut: { nutHole, flangeDiameter } });
      near(limit.flange!, limit.plate);
    }),
  );
});

test('an insert holds in proportion to its length, its width and its parent, and the bold rule gives 21/8 of the careful one', () => {
  fc.assert(
    fc.property(inserts, within(1.1, 3), (insert, more) => {
      const { low, high } = insertHold(insert, 0.002);
      near(high / low, 21 / 8);
      for (const key of ['insertDiameter', 'insertLength', 'parentShearStrength'] as const) {
        near(insertHold({ ...insert, [key]: more * insert[key] }, 0.002).low, more * low);
      }
    }),
  );
});

test('nuts and inserts that the screw does not fit into are refused, thin ones are named', () => {
  const parameter = (work: () => unknown): string => {
    try {
      work();
    } catch (error) {
      return (error as InputError).parameter;
    }
    return 'none';
  };
  const insert = { insertDiameter: 0.0045, insertLength: 0.005, parentShearStrength: 25e6 };
  expect(parameter(() => insertHold(insert, 0.003))).toBe('none');
  expect(parameter(() => insertHold(insert, 0.0045))).toBe('insertDiameter');
  expect(parameter(() => flangeArea({ flangeDiameter: 0.0065, nutHole: 0.0042 }, 0.003))).toBe('none');
  expect(parameter(() => flangeArea({ flangeDiameter: 0.0065, nutHole: 0.003 }, 0.003))).toBe('nutHole');
  expect(parameter(() => flangeArea({ flangeDiameter: 0.0065, nutHole: 0.0065 }, 0.003))).toBe('nutHole');
  const codes = (name: FrameThread): string[] =>
    screwedJoint({
      limits: THREAD_LIMITS[name],
      material: SCREW_MATERIALS['8.8'],
      torque: 0.1,
      torqueCoefficient: 0.2,
      engagement: 0.005,
      tappedShearStrength: 200e6,
      seatDiameter: 0.009,
      holeDiameter: 0.0045,
      plateStrength: 150e6,
      insert,
    }).warnings.map(({ code }) => code);
  expect(codes('M3')).not.toContain('holder-wall-thin');
  expect(codes('M4')).toContain('holder-wall-thin');
});

test('a warning of too much torque comes exactly when the damage torque is passed', () => {
  fc.assert(
    fc.property(joints, (joint) => {
      const result = screwedJoint(joint);
      fc.pre(Math.abs(joint.torque / result.damageTorque - 1) > 1e-9);
      expect(result.warnings.some(({ code }) => code === 'torque-too-high')).toBe(joint.torque > result.damageTorque);
    }),
  );
});

test('incomplete turns hold nothing', () => {
  for (const name of NAMES) {
    const limits = THREAD_LIMITS[name];
    expect(strippingForce({ limits, engagement: LOST_TURNS * limits.thread.pitch, shearStrength: 200e6 })).toBe(0);
  }
});

test('pressure times ring gives back the force', () => {
  fc.assert(
    fc.property(within(1, 1e4), within(0.005, 0.02), within(0.1, 0.9), (force, seatDiameter, share) => {
      const holeDiameter = share * seatDiameter;
      near(
        seatPressure({ force, seatDiameter, holeDiameter }) * (Math.PI / 4) * (seatDiameter ** 2 - holeDiameter ** 2),
        force,
      );
    }),
  );
});

test('a cone is stiffer than the plain ring under the head and less so with thickness', () => {
  fc.assert(
    fc.property(within(0.001, 0.02), within(0.2, 1), (thickness, angle) => {
      const cone = { youngsModulus: 70e9, holeDiameter: 0.003, seatDiameter: 0.006, angle };
      const ring = (70e9 * (Math.PI / 4) * (0.006 ** 2 - 0.003 ** 2)) / thickness;
      const stiffness = frustumStiffness({ ...cone, thickness });
      expect(stiffness).toBeGreaterThan(ring);
      expect(frustumStiffness({ ...cone, thickness: 1.1 * thickness })).toBeLessThan(stiffness);
    }),
  );
});

test('a joint gapes when what the parts are relieved of equals the preload', () => {
  fc.assert(
    fc.property(
      within(100, 1e4),
      within(1e5, 1e9),
      within(1e5, 1e9),
      within(0, 1),
      (preload, screw, clamped, loadingPlane) => {
        const factor = jointLoadFactor({ screw, clamped, loadingPlane });
        fc.pre(factor < 0.98);
        near((1 - factor) * separationForce(preload, factor), preload);
      },
    ),
  );
});

test('the band of preloads is that of the same torque', () => {
  fc.assert(
    fc.property(within(1e-6, 1e-4), within(1e8, 1e9), (stressArea, yieldStrength) => {
      const band = preloadBand({ stressArea, yieldStrength });
      const torque = band.nominal * 0.2 * 0.003;
      const same = preloadFromTorque({ torque, torqueCoefficient: 0.2, diameter: 0.003 });
      near(same.high, band.largest);
      near(same.low / 1.05, band.least);
    }),
  );
});

test('refuses or stays finite whatever is put in', () => {
  fc.assert(
    fc.property(anyNumber, anyNumber, anyNumber, anyNumber, names, (a, b, c, d, name) => {
      const limits = THREAD_LIMITS[name];
      refusesOrFinite(() =>
        screwedJoint({
          limits,
          material: SCREW_MATERIALS['8.8'],
          torque: a,
          torqueCoefficient: b,
          engagement: c,
          tappedShearStrength: d,
          seatDiameter: 0.006,
          holeDiameter: 0.0032,
          plateStrength: a,
        }),
      );
      refusesOrFinite(() =>
        screwedJoint({
          limits,
          material: SCREW_MATERIALS['8.8'],
          torque: 0.5,
          torqueCoefficient: 0.2,
          engagement: 0.006,
          tappedShearStrength: a,
          seatDiameter: b,
          holeDiameter: c,
          plateStrength: d,
        }),
      );
      refusesOrFinite(() =>
        threadShearArea({
          thread: { diameter: 0.003, pitch: 0.0005 },
          majorLeast: a,
          pitchLeast: b,
          tappedPitchLargest: c,
          tappedMinorLargest: d,
        }),
      );
      refusesOrFinite(() =>
        frustumStiffness({ youngsModulus: a, holeDiameter: b, seatDiameter: c, thickness: d, angle: 0.4 }),
      );
      refusesOrFinite(() => flangeArea({ flangeDiameter: a, nutHole: b }, 0.003));
      refusesOrFinite(() => insertHold({ insertDiameter: a, insertLength: b, parentShearStrength: c }, 0.003));
      refusesOrFinite(() => majorLimits({ diameter: a, pitch: b }));
      refusesOrFinite(() => separationForce(a, b));
      refusesOrFinite(() => jointLoadFactor({ screw: a, clamped: b, loadingPlane: c }));
      refusesOrFinite(() => tappedHole({ diameter: a, pitch: b }));
    }),
  );
});
