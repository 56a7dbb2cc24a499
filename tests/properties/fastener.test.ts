import fc from 'fast-check';
import { preloadFromTorque } from '@frameworthy/shared/joint';
import {
  cautiousPullOut,
  CLEARANCE_HOLES,
  engagementFor,
  frustumStiffness,
  jointLoadFactor,
  LOST_TURNS,
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
const joints: fc.Arbitrary<ScrewedJoint> = fc.record({
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
    const allowance = (15 + 11 * pitch) * 1e-6;
    // The tables are rounded to preferred numbers, which miss by up to 6 %, and to whole micrometres.
    const agrees = (tolerance: number, formula: number): void => near(tolerance, formula, 0.06);
    agrees(thread.diameter - allowance - majorLeast, (180 * pitch ** (2 / 3) - 3.15 / Math.sqrt(pitch)) * 1e-6);
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
      near(at.use[result.limiter], 0.65 * 1.25);
      for (const use of Object.values(at.use)) expect(use).toBeLessThanOrEqual(0.65 * 1.25 * (1 + 1e-9));
      expect(at.warnings.map(({ code }) => code)).not.toContain('torque-too-high');
      near(screwedJoint({ ...joint, torque: other }).advisedTorque, result.advisedTorque);
      expect(result.damageTorque).toBeGreaterThan(result.advisedTorque);
    }),
  );
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
      refusesOrFinite(() => separationForce(a, b));
      refusesOrFinite(() => jointLoadFactor({ screw: a, clamped: b, loadingPlane: c }));
      refusesOrFinite(() => tappedHole({ diameter: a, pitch: b }));
    }),
  );
});
