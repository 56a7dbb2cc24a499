import fc from 'fast-check';
import {
  armBending,
  armTwist,
  tipStiffness,
  tubeBuckling,
  wallBucklingWarnings,
  type ArmSegment,
} from '@frameworthy/shared/beam';
import { drilledTubeSection, roundTubeSection } from '@frameworthy/shared/section';
import { describe, expect, test } from 'vitest';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const near = (value: number, expected: number, relative = 1e-9): void =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(relative * Math.abs(expected) + 1e-300);
const part = fc
  .record({
    length: fc.double({ min: 5e-3, max: 0.1, noNaN: true }),
    outerDiameter: fc.double({ min: 8e-3, max: 0.02, noNaN: true }),
    youngsModulus: fc.double({ min: 3e10, max: 2e11, noNaN: true }),
    shearModulus: fc.double({ min: 3e9, max: 8e10, noNaN: true }),
  })
  .map(({ length, outerDiameter, ...moduli }): ArmSegment => ({
    length,
    layers: [{ section: roundTubeSection({ outerDiameter, wall: 1e-3 }), ...moduli }],
  }));
const arm = fc.array(part, { minLength: 1, maxLength: 4 });
const force = fc.double({ min: -500, max: 500, noNaN: true });
const tip = (segments: readonly ArmSegment[], tipForce: number) =>
  armBending({ segments, plane: 'vertical', tipForce, steps: 3 });

describe('the arm as a stepped beam', () => {
  test('agrees with PL³/3EI + PL/κAG', () => {
    fc.assert(
      fc.property(part, force, (segment, p) => {
        const { section, youngsModulus, shearModulus } = segment.layers[0]!;
        const bend = (p * segment.length ** 3) / (3 * youngsModulus * section.vertical.secondMomentOfArea);
        const shear = (p * segment.length) / (section.shearCoefficient * section.area * shearModulus);
        near(tip([segment], p).tipDeflection, bend + shear);
      }),
    );
  });

  test('agrees with Castigliano: the work of the tip force is the strain energy, summed numerically', () => {
    fc.assert(
      fc.property(arm, (segments) => {
        const total = segments.reduce((sum, s) => sum + s.length, 0);
        let [x, deflection] = [0, 0];
        for (const segment of segments) {
          const { section, youngsModulus, shearModulus } = segment.layers[0]!;
          const count = 400;
          for (let i = 0; i < count; i++) {
            const lever = total - x - ((i + 0.5) * segment.length) / count;
            deflection +=
              ((lever ** 2 / (youngsModulus * section.vertical.secondMomentOfArea) +
                1 / (section.shearCoefficient * section.area * shearModulus)) *
                segment.length) /
              count;
          }
          x += segment.length;
        }
        near(tip(segments, 1).tipDeflection, deflection, 1e-4);
      }),
      { numRuns: 30 },
    );
  });

  test('is linear, and a cut that changes nothing changes nothing', () => {
    fc.assert(
      fc.property(part, force, (segment, p) => {
        const half = { ...segment, length: segment.length / 2 };
        near(tip([half, half], p).tipDeflection, tip([segment], p).tipDeflection);
        near(tip([segment], 2 * p).tipDeflection, 2 * tip([segment], p).tipDeflection);
        near(tip([segment], p).stations.at(-1)!.moment + 1, 1);
      }),
    );
  });

  test('a soft root adds M L/k, a stiff one nothing', () => {
    fc.assert(
      fc.property(part, fc.double({ min: 1, max: 1e4, noNaN: true }), (segment, k) => {
        const bend = (rootStiffness?: number): number =>
          armBending({ segments: [segment], plane: 'horizontal', tipForce: 10, rootStiffness }).tipDeflection;
        near(bend(k) - bend(), (10 * segment.length ** 2) / k, 1e-6);
        near(bend(1e14), bend(), 1e-6);
      }),
    );
  });

  test('a sleeve stiffens, a hole softens in its plane', () => {
    const moduli = { youngsModulus: 90e9, shearModulus: 10e9 };
    const tube = { section: roundTubeSection({ outerDiameter: 0.014, wall: 0.001 }), ...moduli };
    const sleeve = { section: roundTubeSection({ outerDiameter: 0.012, wall: 0.001 }), ...moduli };
    const drilled = {
      section: drilledTubeSection({ outerDiameter: 0.014, wall: 0.001, holeDiameter: 0.003, holeAxis: 'vertical' }),
      ...moduli,
    };
    const k = (layers: ArmSegment['layers']) =>
      tipStiffness([
        { length: 0.02, layers },
        { length: 0.08, layers: [tube] },
      ]);
    expect(k([tube, sleeve]).vertical).toBeGreaterThan(k([tube]).vertical);
    expect(k([drilled]).vertical).toBeLessThan(k([drilled]).horizontal);
    expect(k([drilled]).torsion).toBeLessThan(k([tube]).torsion);
  });

  test('a thin tube is named above the moment that NASA SP-8007 gives for it, 2.578 MN·m', () => {
    // The worked case of the published rows: 70 GPa, radius 1.5 m, wall 5 mm.
    const tube = { outerDiameter: 3.005, wall: 0.005 };
    const named = (moment: number, modulusRound: number) =>
      wallBucklingWarnings({ tube, modulusAlong: 70e9, modulusRound, moment }).map(({ code }) => code);
    expect(named(2.57e6, 70e9)).toEqual([]);
    expect(named(2.59e6, 70e9)).toEqual(['wall-buckles']);
    expect(named(2.57e6, 60e9)).toEqual(['wall-buckles']);
  });

  test('garbage is refused with the package error, or gives finite numbers', () => {
    fc.assert(
      fc.property(fc.array(anyNumber, { minLength: 10, maxLength: 10 }), (n) => {
        const section = {
          area: n[0]!,
          vertical: { secondMomentOfArea: n[1]!, extremeFibre: n[2]! },
          horizontal: { secondMomentOfArea: n[1]!, extremeFibre: n[2]! },
          torsionConstant: n[3]!,
          shearCoefficient: n[4]!,
        };
        const segments = [{ length: n[5]!, layers: [{ section, youngsModulus: n[6]!, shearModulus: n[7]! }] }];
        refusesOrFinite(() =>
          armBending({ segments, plane: 'vertical', tipForce: n[8]!, tipMoment: n[9]!, rootStiffness: n[0] }),
        );
        refusesOrFinite(() => armTwist({ segments, torque: n[8]!, rootStiffness: n[9] }));
        refusesOrFinite(() => tipStiffness(segments));
        refusesOrFinite(() =>
          wallBucklingWarnings({
            tube: { outerDiameter: n[0]!, wall: n[1]! },
            modulusAlong: n[2]!,
            modulusRound: n[3]!,
            moment: n[0]!,
          }),
        );
        refusesOrFinite(() => tubeBuckling({ radius: n[0]!, wall: n[1]!, youngsModulus: n[2]!, poissonRatio: n[3] }));
      }),
      { numRuns: 500 },
    );
    refusesOrFinite(() => armBending({ segments: [], plane: 'vertical', tipForce: 1 }));
  });
});
