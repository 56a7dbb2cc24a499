import fc from 'fast-check';
import { CholeskyDecomposition, EigenvalueDecomposition, Matrix, inverse } from 'ml-matrix';
import type { ArmSegment } from '@frameworthy/shared/beam';
import { roundTubeSection } from '@frameworthy/shared/section';
import {
  armModes,
  armSensitivity,
  crossings,
  cylinderMotor,
  firstFrequencies,
  naturalFrequency,
  propellerLines,
  quickTipFrequency,
  ringFrequency,
  uniformArmFrequencies,
  uniformCantileverFrequency,
  uniformShaftFrequency,
  type MotorAtTip,
  type UniformArm,
} from '@frameworthy/shared/vibration';
import { describe, expect, test } from 'vitest';
import { assembleArm } from '../../shared/src/vibration/modes-assembly.ts';
import { addTo, banded, type Banded } from '../../shared/src/vibration/modes-banded.ts';
import { lowestModes } from '../../shared/src/vibration/modes-solver.ts';
import { space } from '../../shared/src/vibration/modes-space.ts';
import { bendingMass, bendingStiffness } from '../../shared/src/vibration/modes-element.ts';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const near = (value: number, expected: number, relative: number): void =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const segment = fc
  .record({
    length: between(0.02, 0.08),
    outerDiameter: between(8e-3, 0.018),
    youngsModulus: between(5e10, 1.4e11),
    shearModulus: between(3e9, 3e10),
    density: between(1400, 1700),
  })
  .map(({ length, outerDiameter, ...material }): ArmSegment => ({
    length,
    layers: [{ section: roundTubeSection({ outerDiameter, wall: 1e-3 }), ...material }],
  }));
const segments = fc.array(segment, { minLength: 1, maxLength: 3 });
const motor = fc
  .record({
    mass: between(0.005, 0.06),
    diameter: between(0.01, 0.04),
    height: between(0.01, 0.03),
    offset: between(0, 0.03),
  })
  .map(cylinderMotor);
const plane = fc.constantFrom('vertical' as const, 'horizontal' as const);
const spring = fc.option(between(50, 20000), { nil: undefined });

function dense({ size, half, entries }: Banded): Matrix {
  const matrix = Matrix.zeros(size, size);
  for (let i = 0; i < size; i++) {
    for (let d = 0; d <= Math.min(half, i); d++) {
      matrix.set(i, i - d, entries[i * (half + 1) + d]!);
      matrix.set(i - d, i, entries[i * (half + 1) + d]!);
    }
  }
  return matrix;
}

/** The largest eigenvalues of L⁻¹ M L⁻ᵀ with K = L Lᵀ are one over the lowest ω². */
function referenceFrequencies(stiffness: Matrix, mass: Matrix, count: number): number[] {
  const half = inverse(new CholeskyDecomposition(stiffness).lowerTriangularMatrix);
  const whole = half.mmul(mass).mmul(half.transpose());
  const symmetric = Matrix.add(whole, whole.transpose()).mul(0.5);
  const values = new EigenvalueDecomposition(symmetric, { assumeSymmetric: true }).realEigenvalues.sort(
    (a, b) => b - a,
  );
  return values.slice(0, count).map((value) => 1 / (2 * Math.PI * Math.sqrt(value)));
}

/** A beam so stiff in shear and so light in rotation that it is slender, for the exact equation. */
const slender = (length: number): ArmSegment => {
  const section = roundTubeSection({ outerDiameter: 0.01, wall: 1e-3 });
  return { length, layers: [{ section, youngsModulus: 9e10, shearModulus: 1e14, density: 1550 }] };
};
const still = (mass: number, inertia = 0): MotorAtTip => ({
  mass,
  offset: 0,
  rollInertia: inertia,
  pitchInertia: inertia,
  yawInertia: inertia,
});

describe('frequencies of an arm', () => {
  test('agree to 1e-9 with a general eigenvalue solver on the same matrices', () => {
    fc.assert(
      fc.property(segments, motor, plane, spring, spring, (parts, tip, which, rootBending, rootTwist) => {
        const count = which === 'vertical' ? 2 : 3;
        const input = { segments: parts, plane: which, motor: tip, rootBending, rootTwist };
        const system = assembleArm({ ...input, elements: 16 }, space());
        const expected = referenceFrequencies(dense(system.stiffness), dense(system.mass), count);
        const ours = armModes({ ...input, count }).modes.map((mode) => mode.frequency);
        ours.forEach((value, i) => near(value, expected[i]!, 1e-9));
      }),
      { numRuns: 120 },
    );
  });

  test('agree to 1e-9 with it where bending and twist have nearly or exactly one frequency', () => {
    // A motor in the plane of the arm does not couple the two; its inertia brings twist to the frequency of bending.
    fc.assert(
      fc.property(segments, motor, fc.constantFrom(0, 1e-13, 1e-10, 1e-7, 1e-4), (parts, { mass, yawInertia }, off) => {
        const tip = (rollInertia: number): MotorAtTip => ({
          ...still(0),
          mass,
          offset: off * 0.01,
          yawInertia,
          rollInertia,
        });
        const input = (inertia: number) => ({ segments: parts, plane: 'horizontal' as const, motor: tip(inertia) });
        const bending = armModes({ ...input(1e-9), count: 1 }).modes[0]!.frequency;
        const twist = (inertia: number): number =>
          armModes({ ...input(inertia), count: 4 }).modes.find(({ twistShare }) => twistShare > 0.5)?.frequency ?? 1e9;
        let [low, high] = [1e-9, 1];
        for (let i = 0; i < 60; i++) {
          const middle = Math.sqrt(low * high);
          if (twist(middle) > bending) low = middle;
          else high = middle;
        }
        const system = assembleArm({ ...input(low), elements: 16 }, space());
        const expected = referenceFrequencies(dense(system.stiffness), dense(system.mass), 3);
        const ours = armModes({ ...input(low), count: 3 }).modes.map((mode) => mode.frequency);
        near(ours[1]!, ours[0]!, 1e-3);
        ours.forEach((value, i) => near(value, expected[i]!, 1e-9));
      }),
      { numRuns: 30 },
    );
  });

  test('of equal eigenvalues, none is passed over', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 5 }), { minLength: 6, maxLength: 40 }), (diagonal) => {
        const [stiffness, mass] = [banded(diagonal.length, 1, space()), banded(diagonal.length, 1, space())];
        diagonal.forEach((value, i) => {
          addTo(stiffness, i, i, value);
          addTo(mass, i, i, 1);
        });
        const expected = [...diagonal].sort((a, b) => a - b);
        lowestModes(stiffness, mass, 4, space()).forEach(({ value }, i) => near(value, expected[i]!, 1e-12));
      }),
    );
  });

  test('agree with the exact equation of a slender beam with mass and inertia at its tip', () => {
    fc.assert(
      fc.property(between(0, 20), between(0, 0.5), (massRatio, inertiaRatio) => {
        const part = slender(1.2);
        const { section, youngsModulus, density } = part.layers[0]!;
        const [massPerLength, length] = [section.area * density!, part.length];
        const beam = massPerLength * length;
        const { modes } = armModes({
          segments: [part],
          plane: 'vertical',
          motor: still(massRatio * beam, inertiaRatio * beam * length ** 2),
          elements: 60,
        });
        modes.forEach(({ frequency }, i) => {
          const exact = uniformCantileverFrequency({
            flexuralRigidity: youngsModulus * section.vertical.secondMomentOfArea,
            massPerLength,
            length,
            mode: i + 1,
            massRatio,
            inertiaRatio,
          });
          // The rotary inertia of the beam itself is left in: some 1e-3 in the second mode.
          near(frequency, exact, 2e-3);
          expect(frequency).toBeLessThanOrEqual(exact * (1 + 1e-5));
        });
      }),
      { numRuns: 40 },
    );
  });

  test('the quick rule is never below the exact equation', () => {
    fc.assert(
      fc.property(between(0, 1e3), (massRatio) => {
        const exact = uniformCantileverFrequency({
          flexuralRigidity: 1,
          massPerLength: 1,
          length: 1,
          mode: 1,
          massRatio,
        });
        const quick = quickTipFrequency({ flexuralRigidity: 1, length: 1, beamMass: 1, tipMass: massRatio });
        expect(quick).toBeGreaterThanOrEqual(exact * (1 - 1e-9));
        expect(quick).toBeLessThan(exact * 1.0147);
      }),
    );
  });

  test('twist alone agrees with the exact equation of a shaft with a disc', () => {
    fc.assert(
      fc.property(segment, between(1e-7, 2e-5), (part, inertia) => {
        const { section, shearModulus, density } = part.layers[0]!;
        const polar = section.vertical.secondMomentOfArea + section.horizontal.secondMomentOfArea;
        const exact = uniformShaftFrequency({
          torsionalRigidity: shearModulus * section.torsionConstant,
          inertiaPerLength: density! * polar,
          length: part.length,
          tipInertia: inertia,
        });
        // A tip with next to no mass leaves the bending modes far above the twist.
        const { modes } = armModes({
          segments: [part],
          plane: 'horizontal',
          motor: { ...still(0), rollInertia: inertia },
          count: 4,
          elements: 40,
        });
        const twist = modes.filter((mode) => mode.twistShare > 0.5).map((mode) => mode.frequency);
        near(twist[0]!, exact, 2e-4);
      }),
      { numRuns: 40 },
    );
  });

  test('a mass above a nearly massless arm has the two frequencies of the closed form', () => {
    fc.assert(
      fc.property(between(0.01, 0.06), between(0.005, 0.03), between(1e-6, 1e-5), (mass, offset, rollInertia) => {
        const section = roundTubeSection({ outerDiameter: 0.012, wall: 1e-3 });
        const part: ArmSegment = {
          length: 0.09,
          layers: [{ section, youngsModulus: 9e10, shearModulus: 1e10, density: 1e-3 }],
        };
        const { modes } = armModes({
          segments: [part],
          plane: 'horizontal',
          motor: { mass, offset, rollInertia, pitchInertia: 0, yawInertia: 0 },
          count: 2,
        });
        const shear = part.length / (section.shearCoefficient * section.area * 1e10);
        const k = 1 / (part.length ** 3 / (3 * 9e10 * section.vertical.secondMomentOfArea) + shear);
        const c = (1e10 * section.torsionConstant) / part.length;
        // det(K − ω² M) = 0 with M = [m, mh; mh, I + mh²]
        const [a, b, d] = [mass * rollInertia, k * (rollInertia + mass * offset ** 2) + c * mass, k * c];
        const root = Math.sqrt(b ** 2 - 4 * a * d);
        near(modes[0]!.frequency, Math.sqrt((2 * d) / (b + root)) / (2 * Math.PI), 1e-4);
        near(modes[1]!.frequency, Math.sqrt((b + root) / (2 * a)) / (2 * Math.PI), 1e-4);
      }),
      { numRuns: 60 },
    );
  });

  test('more mass, a longer arm or a softer root never raises a frequency', () => {
    const lowest = (parts: readonly ArmSegment[], tip: MotorAtTip, rootBending?: number) =>
      armModes({ segments: parts, plane: 'vertical', motor: tip, rootBending }).modes[0]!.frequency;
    fc.assert(
      fc.property(segments, motor, between(1.01, 3), (parts, tip, factor) => {
        const base = lowest(parts, tip);
        expect(lowest(parts, { ...tip, mass: tip.mass * factor })).toBeLessThan(base);
        expect(
          lowest(
            parts.map((part) => ({ ...part, length: part.length * factor })),
            tip,
          ),
        ).toBeLessThan(base);
        const soft = lowest(parts, tip, 1000);
        expect(soft).toBeLessThan(base);
        expect(lowest(parts, tip, 1000 / factor)).toBeLessThan(soft);
        near(lowest(parts, tip, 1e12), base, 1e-6);
      }),
      { numRuns: 60 },
    );
  });

  test('cutting a segment in two changes nothing but the mesh', () => {
    fc.assert(
      fc.property(segment, motor, between(0.2, 0.8), (part, tip, share) => {
        const whole = armModes({ segments: [part], plane: 'vertical', motor: tip, elements: 40 });
        const cut = armModes({
          segments: [share, 1 - share].map((s) => ({ ...part, length: s * part.length })),
          plane: 'vertical',
          motor: tip,
          elements: 40,
        });
        whole.modes.forEach((mode, i) => near(cut.modes[i]!.frequency, mode.frequency, 2e-4));
      }),
      { numRuns: 40 },
    );
  });

  test('the element moves and turns as one piece without force, and then weighs what it weighs', () => {
    fc.assert(
      fc.property(segment, (part) => {
        const { section, youngsModulus, shearModulus, density } = part.layers[0]!;
        const l = part.length;
        const values = {
          length: l,
          flexural: youngsModulus * section.vertical.secondMomentOfArea,
          shear: section.shearCoefficient * section.area * shearModulus,
          torsional: 1,
          mass: section.area * density!,
          rotary: density! * section.vertical.secondMomentOfArea,
          polar: 1,
        };
        const energy = (matrix: readonly (readonly number[])[], u: readonly number[]) =>
          matrix.reduce((sum, row, i) => sum + row.reduce((s, entry, j) => s + entry * u[i]! * u[j]!, 0), 0);
        const turn = [-l / 2, 1, l / 2, 1];
        expect(Math.abs(energy(bendingStiffness(values), turn))).toBeLessThan(1e-9 * bendingStiffness(values)[1]![1]!);
        near(energy(bendingMass(values), [1, 0, 1, 0]), values.mass * l, 1e-12);
        near(energy(bendingMass(values), turn), (values.mass * l ** 3) / 12 + values.rotary * l, 1e-12);
      }),
    );
  });
});

const ARM: UniformArm = {
  shape: { kind: 'tube', outerDiameter: 0.014, wall: 1e-3 },
  length: 0.095,
  youngsModulus: 9e10,
  shearModulus: 1e10,
  density: 1550,
  motor: { mass: 0.04, diameter: 0.028, height: 0.02, offset: 0.018 },
};

describe('an arm of one section', () => {
  test('slopes and curves have the same first frequencies as the result', () => {
    fc.assert(
      fc.property(between(0.04, 0.2), between(0.008, 0.02), between(0.002, 0.1), (length, outerDiameter, mass) => {
        const arm: UniformArm = {
          ...ARM,
          length,
          shape: { kind: 'tube', outerDiameter, wall: 1e-3 },
          motor: { ...ARM.motor, mass },
        };
        const alone = firstFrequencies(arm);
        const all = uniformArmFrequencies(arm);
        near(alone.upDown, all.upDown[0].frequency, 1e-10);
        near(alone.sideways, all.sideways[0].frequency, 1e-10);
      }),
      { numRuns: 40 },
    );
  });

  test('sensitivities point the right way and predict a small step', () => {
    const slopes = armSensitivity(ARM);
    expect(slopes.length.upDown).toBeLessThan(0);
    expect(slopes.mass.sideways).toBeLessThan(0);
    expect(slopes.size.upDown).toBeGreaterThan(0);
    const base = uniformArmFrequencies(ARM).upDown[0].frequency;
    const longer = uniformArmFrequencies({ ...ARM, length: ARM.length + 1e-4 }).upDown[0].frequency;
    near(longer - base, slopes.length.upDown * 1e-4, 0.01);
  });

  test('names a stubby arm and a wall like foil', () => {
    const codes = (arm: UniformArm) => uniformArmFrequencies(arm).warnings.map((warning) => warning.code);
    expect(codes(ARM)).toEqual([]);
    expect(codes({ ...ARM, length: 0.04 })).toContain('arm-too-stubby');
    expect(codes({ ...ARM, shape: { kind: 'tube', outerDiameter: 0.08, wall: 5e-5 }, length: 0.5 })).toContain(
      'wall-too-thin',
    );
  });

  test('a ring as thick as it is bent stiffly goes oval later', () => {
    const ring = { outerDiameter: 0.02, hoopModulus: 1e10, density: 1550 };
    expect(ringFrequency({ ...ring, wall: 2e-3 })).toBeGreaterThan(2 * ringFrequency({ ...ring, wall: 1e-3 }));
  });

  test('a strip wider than thick is slower up and down than sideways when its motor sits in its plane', () => {
    const flat = uniformArmFrequencies({
      ...ARM,
      shape: { kind: 'strip', width: 0.012, height: 0.005 },
      motor: { ...ARM.motor, offset: 0 },
    });
    expect(flat.upDown[0].frequency).toBeLessThan(flat.sideways[0].frequency);
  });
});

describe('lines of a propeller', () => {
  test('every crossing lies on its line, within the range, in order', () => {
    fc.assert(
      fc.property(
        fc.array(between(50, 900), { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 1, max: 6 }),
        between(300, 1000),
        (frequencies, blades, from) => {
          const to = from + 2500;
          const found = crossings({
            modes: frequencies.map((frequency, i) => ({ name: String(i), frequency })),
            blades,
            from,
            to,
          });
          for (const { line, speed, frequency } of found) {
            const lines = propellerLines(speed, blades);
            near(line === 'once per turn' ? lines.oncePerRev : lines.bladePass, frequency, 1e-12);
            expect(speed >= from && speed <= to).toBe(true);
          }
          const expected = frequencies
            .flatMap((f) => [f, f / blades])
            .filter((f) => 2 * Math.PI * f >= from && 2 * Math.PI * f <= to).length;
          expect(found).toHaveLength(expected);
          expect(found.every(({ speed }, i) => i === 0 || speed >= found[i - 1]!.speed)).toBe(true);
        },
      ),
    );
  });
});

describe('garbage', () => {
  test('is refused, or the result is finite', () => {
    fc.assert(
      fc.property(fc.array(anyNumber, { minLength: 12, maxLength: 12 }), plane, (n, which) => {
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
        refusesOrFinite(() => naturalFrequency(a, b));
        refusesOrFinite(() => quickTipFrequency({ flexuralRigidity: a, length: b, beamMass: c, tipMass: d }));
        refusesOrFinite(() =>
          uniformCantileverFrequency({
            flexuralRigidity: a,
            massPerLength: b,
            length: c,
            mode: 1,
            massRatio: d,
            inertiaRatio: e,
          }),
        );
        refusesOrFinite(() =>
          uniformShaftFrequency({ torsionalRigidity: a, inertiaPerLength: b, length: c, tipInertia: d }),
        );
        refusesOrFinite(() => propellerLines(a, b));
        refusesOrFinite(() => crossings({ modes: [{ name: 'a', frequency: a }], blades: b, from: c, to: d }));
        refusesOrFinite(() => ringFrequency({ outerDiameter: a, wall: b, hoopModulus: c, density: d }));
        const arm: UniformArm = {
          shape: { kind: 'tube', outerDiameter: a, wall: b },
          length: c,
          youngsModulus: d,
          shearModulus: e,
          density: f,
          motor: { mass: g, diameter: h, height: i, offset: j },
          root: { vertical: k, horizontal: l },
        };
        refusesOrFinite(() => uniformArmFrequencies(arm));
        refusesOrFinite(() => uniformArmFrequencies({ ...arm, shape: { kind: 'strip', width: a, height: b } }));
        refusesOrFinite(() => armSensitivity(arm));
        refusesOrFinite(() =>
          armModes({
            segments: [slender(0.1)],
            plane: which,
            motor: { mass: a, offset: b, rollInertia: c, pitchInertia: d, yawInertia: e },
            rootBending: f,
            rootTwist: g,
            count: h,
          }),
        );
      }),
      { numRuns: 400 },
    );
  });
});
