import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  arrheniusFactor,
  bentFibreShare,
  capstanRatio,
  loopStressFactor,
  motorScrewFit,
  motorScrewPlaces,
  motorScrewShare,
  mountBondStress,
  mountLoads,
  resinMass,
  screwMass,
  strapStress,
  tangentBondWidth,
  tangentGap,
  timeAtTemperature,
  wrapPath,
  wrapPull,
  wrapStrength,
} from '../../shared/src/mount/index.ts';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (actual: number, expected: number, share = 1e-9) =>
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(share * Math.abs(expected) + 1e-15);

const plates = fc.record({
  tubeDiameter: within(0.008, 0.03),
  bondLine: within(5e-5, 5e-4),
  fillLimit: within(6e-4, 3e-3),
  filletRadius: within(0, 0.0035),
  plateWidth: within(0.008, 0.05),
});
/** None, or one of a size that keeps its digits. */
const load = (max: number) => fc.oneof(fc.constant(0), within(1e-3, max));
const loads = fc.record({ shear: load(500), lift: load(500), torque: load(10), tipping: load(10) });
const strength = { shear: 15e6, tension: 8e6 };
const bands = fc.record({
  turns: fc.integer({ min: 1, max: 40 }),
  linearDensity: within(6e-5, 2e-3),
  edgeRadius: within(3e-4, 3e-3),
  bandWidth: within(1e-3, 0.02),
  fibreFraction: within(0.25, 0.7),
  handLay: within(0.1, 1),
});

test('the bond never narrows with a rounder fillet, a better filling glue or a wider plate, and ends within plate and tube', () => {
  fc.assert(
    fc.property(plates, within(1, 1.5), (plate, more) => {
      const { width, workingWidth, edgeGap } = tangentBondWidth(plate);
      const least = width * (1 - 1e-12);
      expect(
        tangentBondWidth({ ...plate, filletRadius: Math.min(0.0039, plate.filletRadius * more) }).width,
      ).toBeGreaterThanOrEqual(least);
      expect(tangentBondWidth({ ...plate, fillLimit: plate.fillLimit * more }).width).toBeGreaterThanOrEqual(least);
      expect(tangentBondWidth({ ...plate, plateWidth: plate.plateWidth * more }).width).toBeGreaterThanOrEqual(least);
      expect(width).toBeLessThanOrEqual(Math.min(plate.plateWidth, plate.tubeDiameter) * (1 + 1e-12));
      expect(edgeGap).toBeGreaterThanOrEqual(plate.bondLine);
      expect(workingWidth).toBeLessThanOrEqual(width * (1 + 1e-9));
    }),
  );
});

test('the fillet’s circle touches plate and tube', () => {
  fc.assert(
    fc.property(plates, (plate) => {
      fc.pre(2 * plate.filletRadius > plate.bondLine * 1.01);
      const { radius, filletReachOnPlate, filletReach, bondLine } = tangentBondWidth(plate);
      const r = plate.filletRadius;
      near(Math.hypot(filletReachOnPlate, radius + bondLine - r), radius + r, 1e-9);
      // The hollow is as far as an upright line between tube and plate meets no air.
      if (filletReachOnPlate > r) near(filletReachOnPlate - filletReach, r, 1e-9);
    }),
  );
});

test('stress in the glue grows in step with the load', () => {
  fc.assert(
    fc.property(plates, within(0.01, 0.05), loads, within(1, 5), (plate, length, load, times) => {
      const bond = tangentBondWidth(plate);
      const one = mountBondStress(bond, length, load, strength);
      const more = mountBondStress(
        bond,
        length,
        {
          shear: load.shear * times,
          lift: load.lift * times,
          torque: load.torque * times,
          tipping: load.tipping * times,
        },
        strength,
      );
      near(more.use, one.use * times);
      near(more.tension.across, one.tension.across * times);
      near(more.peakShear, one.peakShear * times);
    }),
  );
});

test('the tension in the glue balances lift and tipping', () => {
  fc.assert(
    fc.property(plates, within(0.01, 0.05), within(0.1, 10), within(1, 500), (plate, length, tipping, lift) => {
      const bond = tangentBondWidth(plate);
      fc.pre(bond.width < plate.tubeDiameter * 0.98);
      // σ = (a + b x)/g with a and b from the two peaks; integrated over the bond it must give the load back.
      const pulled = mountBondStress(bond, length, { shear: 0, torque: 0, tipping: 0, lift }, strength);
      const tipped = mountBondStress(bond, length, { shear: 0, torque: 0, tipping, lift: 0 }, strength);
      const a = pulled.tension.across * bond.bondLine;
      const b = (tipped.tension.across * tangentGap(bond, tipped.peakAt)) / tipped.peakAt;
      const n = 20_000;
      let [force, moment] = [0, 0];
      for (let i = 0; i < n; i++) {
        const x = (bond.width * (i + 0.5)) / n - bond.width / 2;
        const strip = (bond.width / n) * length;
        force += (a * strip) / tangentGap(bond, x);
        moment += (b * x * x * strip) / tangentGap(bond, x);
      }
      near(force, lift, 1e-4);
      near(moment, tipping, 1e-4);
      // Lengthwise the pull grows in step with the distance from the middle: ∫∫ σ y dA.
      const end = (tipped.tension.along * bond.bondLine) / (length / 2);
      near((end * (force / a / length) * length ** 3) / 12, tipping, 1e-4);
    }),
    { numRuns: 30 },
  );
});

test('the shear in the glue balances a twist', () => {
  fc.assert(
    fc.property(plates, within(0.01, 0.05), within(0.1, 10), (plate, length, torque) => {
      const bond = tangentBondWidth(plate);
      fc.pre(bond.width < plate.tubeDiameter * 0.98);
      const { peakShear } = mountBondStress(bond, length, { shear: 0, lift: 0, tipping: 0, torque }, strength);
      // τ = k r/g: k from the peak at the bond's end, then ∫∫ τ r dA.
      const n = 4000;
      let [highest, polar] = [0, 0];
      for (let i = 0; i < n; i++) {
        const x = (bond.width * (i + 0.5)) / n - bond.width / 2;
        const gap = tangentGap(bond, x);
        highest = Math.max(highest, Math.hypot(x, length / 2) / gap);
        polar += ((length * x ** 2 + length ** 3 / 12) / gap) * (bond.width / n);
      }
      near((peakShear / highest) * polar, torque, 0.01);
    }),
    { numRuns: 30 },
  );
});

test('a longer bond is never worse', () => {
  fc.assert(
    fc.property(plates, within(0.01, 0.05), within(1, 2), loads, (plate, length, times, load) => {
      const bond = tangentBondWidth(plate);
      expect(mountBondStress(bond, length * times, load, strength).use).toBeLessThanOrEqual(
        mountBondStress(bond, length, load, strength).use * (1 + 1e-12),
      );
    }),
  );
});

test('more turns are never weaker, nor is a rounder edge, a wider band or a better hand', () => {
  fc.assert(
    fc.property(bands, fc.integer({ min: 1, max: 10 }), within(1, 2), (band, more, times) => {
      const { side, ideal } = wrapStrength(band);
      const least = side * (1 - 1e-12);
      expect(wrapStrength({ ...band, turns: band.turns + more }).side).toBeGreaterThanOrEqual(least);
      expect(wrapStrength({ ...band, edgeRadius: band.edgeRadius * times }).side).toBeGreaterThanOrEqual(least);
      expect(wrapStrength({ ...band, bandWidth: band.bandWidth * times }).side).toBeGreaterThanOrEqual(least);
      expect(side).toBeLessThanOrEqual(ideal);
    }),
  );
});

test('a turn of tow is no shorter than the tube’s girth and the plate’s two faces, and its leg touches the tube', () => {
  fc.assert(
    fc.property(plates, within(0.001, 0.006), (plate, plateThickness) => {
      const { tubeDiameter, plateWidth } = plate;
      const path = wrapPath({ ...plate, plateThickness });
      expect(path.length).toBeGreaterThan(Math.max(Math.PI * tubeDiameter, 2 * plateWidth));
      // The leg is a tangent: its line through the corner passes the tube's axis at the tube's radius.
      near(path.corner.x * Math.sin(path.meets) + path.corner.y * Math.cos(path.meets), tubeDiameter / 2, 1e-9);
      // Distance of the tube's top from the line through corner and touching point, by the cross product.
      const radius = tubeDiameter / 2;
      const on = { x: radius * Math.sin(path.meets), y: radius * Math.cos(path.meets) };
      const leg = { x: path.corner.x - on.x, y: path.corner.y - on.y };
      const long = Math.hypot(leg.x, leg.y);
      near(Math.abs(leg.x * (radius - on.y) + leg.y * on.x) / long, path.lever, 1e-6);
      near(leg.y / long, path.downShare, 1e-6);
    }),
  );
});

test('legs of a wrap balance lift and tipping', () => {
  fc.assert(
    fc.property(plates, within(0.01, 0.05), within(0, 500), within(0, 10), (plate, spacing, lift, tipping) => {
      const path = wrapPath({ ...plate, plateThickness: 0.002 });
      const lifted = wrapPull(path, spacing, { lift, tipping: 0 }).pull;
      near(4 * lifted * path.downShare, lift);
      const tipped = wrapPull(path, spacing, { lift: 0, tipping });
      const lever = tipped.worst === 'across' ? 2 * path.lever : 2 * spacing * path.downShare;
      near(tipped.pull * lever, tipping);
    }),
  );
});

test('resin is positive and falls with the fibre fraction', () => {
  fc.assert(
    fc.property(within(1e-4, 1), within(0.2, 0.7), within(1.01, 1.2), (mass, fibreFraction, more) => {
      const parts = { fibreDensity: 1760, resinDensity: 1200 };
      const resin = resinMass(mass, { ...parts, fibreFraction });
      expect(resin).toBeGreaterThan(0);
      expect(resinMass(mass, { ...parts, fibreFraction: fibreFraction * more })).toBeLessThan(resin);
    }),
  );
});

test('the inside of a loop carries the mean and more, less so in a thin one', () => {
  fc.assert(
    fc.property(within(1e-4, 0.05), within(1e-3, 3), within(1, 50), (innerRadius, thickness, stiffnessRatio) => {
      const factor = (share: number) =>
        loopStressFactor({ innerRadius, outerRadius: innerRadius * (1 + thickness * share), stiffnessRatio });
      expect(factor(1)).toBeGreaterThanOrEqual(1);
      expect(factor(0.5)).toBeLessThanOrEqual(factor(1));
      near(factor(1e-5), 1, 1e-3);
    }),
  );
});

test('four motor screws never carry more in one than two of them do', () => {
  const distance = within(0.006, 0.03);
  fc.assert(
    fc.property(distance, distance, within(1, 1.6), loads, fc.boolean(), (along, across, rim, load, keepAlong) => {
      const baseDiameter = Math.max(along, across) * rim;
      const four = motorScrewShare({ screws: motorScrewPlaces({ along, across }), baseDiameter, load });
      const two = motorScrewShare({
        screws: motorScrewPlaces(keepAlong ? { along } : { across }),
        baseDiameter,
        load,
      });
      expect(four.tension).toBeLessThanOrEqual(two.tension * (1 + 1e-9));
      expect(four.shear).toBeLessThanOrEqual(two.shear * (1 + 1e-9));
    }),
  );
});

test('motor screws share a lift evenly and balance tipping about the edge of the base', () => {
  fc.assert(
    fc.property(within(0.006, 0.03), within(1, 1.6), within(1, 500), (across, rim, lift) => {
      const still = { shear: 0, torque: 0, tipping: 0, lift: 0 };
      const baseDiameter = across * rim;
      for (const [pairs, n] of [
        [{ across }, 2],
        [{ along: across, across }, 4],
      ] as const)
        near(
          motorScrewShare({ screws: motorScrewPlaces(pairs), baseDiameter, load: { ...still, lift } }).tension,
          lift / n,
        );
      // Both of a pair on the axis of tipping pull alike, at half the base's diameter: no direction is easier on them.
      const { tension } = motorScrewShare({
        screws: motorScrewPlaces({ across }),
        baseDiameter,
        load: { ...still, tipping: 1 },
      });
      expect(tension).toBeGreaterThanOrEqual((1 / baseDiameter) * (1 - 1e-9));
    }),
  );
});

test('a screw of the longest length leaves the room it should', () => {
  fc.assert(
    fc.property(within(0.001, 0.02), within(0.001, 0.01), within(0.001, 0.02), (grip, threadDepth, windingDepth) => {
      fc.pre(windingDepth > 0.7e-3);
      const { longest } = motorScrewFit({ screwLength: grip + 5e-4, grip, threadDepth, windingDepth });
      near(motorScrewFit({ screwLength: longest, grip, threadDepth, windingDepth }).room, 0.5e-3, 1e-6);
    }),
  );
});

test('there and back in temperature is no change, and warmer is quicker', () => {
  fc.assert(
    fc.property(within(60, 1e6), within(-20, 40), within(1.5, 2.5), (time, warmerBy, rate) => {
      const there = timeAtTemperature({ time, warmerBy }, rate);
      near(timeAtTemperature({ time: there, warmerBy: -warmerBy }, rate), time);
      if (warmerBy > 0.01) expect(there).toBeLessThan(time);
      near(
        arrheniusFactor({ activationEnergy: 5e4, from: 298, to: 298 + warmerBy }) *
          arrheniusFactor({ activationEnergy: 5e4, from: 298 + warmerBy, to: 298 }),
        1,
      );
    }),
  );
});

test('refuses or stays finite whatever is put in', () => {
  fc.assert(
    fc.property(anyNumber, anyNumber, anyNumber, anyNumber, anyNumber, (a, b, c, d, e) => {
      refusesOrFinite(() =>
        tangentBondWidth({ tubeDiameter: a, bondLine: b, fillLimit: c, filletRadius: d, plateWidth: e }),
      );
      refusesOrFinite(() => wrapPath({ tubeDiameter: a, plateWidth: b, plateThickness: c, bondLine: d }));
      refusesOrFinite(() =>
        wrapStrength({ turns: a, linearDensity: b, edgeRadius: c, bandWidth: d, fibreFraction: e, handLay: 0.5 }),
      );
      refusesOrFinite(() => wrapPull({ downShare: a, lever: b }, c, { lift: d, tipping: e }));
      refusesOrFinite(() => {
        const bond = tangentBondWidth({
          tubeDiameter: 0.014,
          bondLine: 2e-4,
          fillLimit: 1e-3,
          filletRadius: 1e-3,
          plateWidth: 0.02,
        });
        return mountBondStress(bond, a, { shear: b, lift: c, torque: d, tipping: e }, strength);
      });
      refusesOrFinite(() =>
        mountLoads({
          fullThrust: a,
          torquePerThrust: 0.01,
          motorMass: b,
          centreHeight: c,
          propellerHeight: d,
          propellerDiameter: 0.13,
          chip: e,
          motorSpeed: 2000,
          deceleration: a,
          bladeForce: b,
        }),
      );
      refusesOrFinite(() =>
        motorScrewShare({
          screws: motorScrewPlaces({ along: a, across: b }),
          baseDiameter: c,
          load: { shear: d, lift: e, torque: d, tipping: e },
        }),
      );
      refusesOrFinite(() => motorScrewFit({ screwLength: a, grip: b, threadDepth: c, windingDepth: d }));
      refusesOrFinite(() => strapStress({ force: a, innerRadius: b, outerRadius: c, width: d }));
      refusesOrFinite(() => loopStressFactor({ innerRadius: a, outerRadius: b, stiffnessRatio: c }));
      refusesOrFinite(() => capstanRatio({ friction: a, angle: b }));
      refusesOrFinite(() => timeAtTemperature({ time: a, warmerBy: b }, c));
      refusesOrFinite(() => resinMass(a, { fibreFraction: b, fibreDensity: c, resinDensity: d }));
      refusesOrFinite(() =>
        bentFibreShare({ youngsModulus: a, tensileStrength: b, filamentDiameter: c, edgeRadius: d }),
      );
      refusesOrFinite(() =>
        screwMass({ thread: { diameter: a, pitch: b }, length: c, head: 'cap', headDiameter: d, density: e }),
      );
    }),
  );
});
