import fc from 'fast-check';
import {
  armPlay,
  bearingStress,
  clampLimit,
  clampUse,
  COARSE_THREADS,
  edgeDistanceWarnings,
  fastenerGroup,
  finiteWidthFactor,
  meanStressRatio,
  netSectionStress,
  notchedStrengthRatio,
  orthotropicHoleFactor,
  pinBendingMoment,
  pitchDiameter,
  preloadFromTorque,
  PROPERTY_CLASSES,
  ringClosing,
  ringPinch,
  rootStiffness,
  screwStiffness,
  screwStrength,
  screwUse,
  shearOutStress,
  slipForce,
  stressArea,
  stripHoleFactor,
  torqueCoefficient,
  torqueFromPreload,
  tubeHoleAxialFactor,
  tubeHoleBendingFactor,
  tubeRoot,
  twoScrewRoot,
  type TubeRoot,
} from '@frameworthy/shared/joint';
import { describe, expect, test } from 'vitest';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const near = (value: number, expected: number, relative = 1e-9): void =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(relative * Math.abs(expected) + 1e-300);
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const dunnock: TubeRoot = {
  tube: { outerDiameter: 0.014, wall: 0.001 },
  sleeveWall: 0,
  holeDiameter: 0.0032,
  screwDiameter: 0.003,
  armLength: 0.095,
  screwSpacing: 0.018,
  endDistance: 0.01,
  horizontalForce: 200,
  verticalForce: 60,
  strengths: { bearing: 400e6, shear: 80e6, bending: 600e6, characteristicLength: 1e-3 },
};
const use = (root: Partial<TubeRoot>, hole: 'inner' | 'outer', mode: string): number =>
  tubeRoot({ ...dunnock, ...root }).uses.find((u) => u.hole === hole && u.mode === mode)!.use;

describe('two-screw root', () => {
  test('forces and moments balance, and agree with the general method for screw groups', () => {
    fc.assert(
      fc.property(between(0.1, 500), between(0.01, 0.3), between(5e-3, 0.05), (tipForce, armLength, screwSpacing) => {
        const { inner, outer } = twoScrewRoot({ tipForce, armLength, screwSpacing });
        near(outer - inner, tipForce, 1e-6);
        near(inner * screwSpacing, tipForce * armLength);
        const group = fastenerGroup(
          [
            { x: 0, y: 0 },
            { x: -screwSpacing, y: 0 },
          ],
          { force: { x: 0, y: tipForce }, at: { x: armLength, y: 0 } },
        );
        near(group[0]!.total, outer, 1e-6);
        near(group[1]!.total, inner, 1e-6);
      }),
    );
  });

  test('doubling the spacing halves the inner load exactly and the outer nearly', () => {
    fc.assert(
      fc.property(between(1, 500), between(0.06, 0.3), between(5e-3, 0.03), (tipForce, armLength, screwSpacing) => {
        const near1 = twoScrewRoot({ tipForce, armLength, screwSpacing });
        const far = twoScrewRoot({ tipForce, armLength, screwSpacing: 2 * screwSpacing });
        near(far.inner, near1.inner / 2);
        expect(far.outer / near1.outer).toBeGreaterThan(0.5);
        expect(far.outer / near1.outer).toBeLessThan(0.67);
      }),
    );
  });

  test('a sleeve as thick as the wall halves bearing and tear-out', () => {
    for (const hole of ['inner', 'outer'] as const) {
      near(use({ sleeveWall: 0.001 }, hole, 'bearing'), use({}, hole, 'bearing') / 2);
      near(use({ sleeveWall: 0.001 }, hole, 'tear-out'), use({}, hole, 'tear-out') / 2);
    }
    expect(use({ sleeveWall: 0.001 }, 'outer', 'net-section-vertical')).toBeLessThan(
      use({}, 'outer', 'net-section-vertical'),
    );
  });

  test('the hole costs the vertical plane more than the horizontal one', () => {
    const equal = { horizontalForce: 100, verticalForce: 100 };
    expect(use(equal, 'outer', 'net-section-vertical')).toBeGreaterThan(use(equal, 'outer', 'net-section-horizontal'));
  });

  test('friction takes its share off and never turns a load round', () => {
    near(use({ slipForce: 1e6 }, 'outer', 'bearing'), 0);
    expect(use({ slipForce: 100 }, 'outer', 'bearing')).toBeLessThan(use({}, 'outer', 'bearing'));
  });

  test('short distances are warned of, sound ones are not', () => {
    expect(tubeRoot(dunnock).warnings).toEqual([]);
    expect(tubeRoot({ ...dunnock, endDistance: 0.006 }).warnings.map((w) => w.code)).toEqual(['edge-distance-short']);
    expect(tubeRoot({ ...dunnock, screwSpacing: 0.012 }).warnings.map((w) => w.code)).toEqual(['pitch-short']);
    expect(edgeDistanceWarnings({ diameter: 0.003, width: 0.0149 }).map((w) => w.code)).toEqual(['width-short']);
    expect(edgeDistanceWarnings({ diameter: 0.003, end: 0.009, width: 0.015, pitch: 0.012 })).toEqual([]);
  });
});

describe('clamp', () => {
  test('a wall twice as thick takes about four times the load', () => {
    const ratio =
      ringPinch({ outerDiameter: 0.1, wall: 0.0005 }, 1).stress /
      ringPinch({ outerDiameter: 0.1, wall: 0.001 }, 1).stress;
    expect(ratio).toBeGreaterThan(3.95);
    expect(ratio).toBeLessThan(4.05);
  });

  test('the curved-bar correction agrees with a numerical sum over the wall', () => {
    const [inner, wall] = [0.005, 0.002];
    const count = 20000;
    // Plane sections of a curved bar: stress = a + b/r, no axial force, moment about the middle of the wall.
    let [s0, s1, m0, m1] = [0, 0, 0, 0];
    for (let i = 0; i < count; i++) {
      const r = inner + ((i + 0.5) * wall) / count;
      const dA = wall / count;
      const arm = inner + wall / 2 - r;
      s0 += dA;
      s1 += dA / r;
      m0 += dA * arm;
      m1 += (dA / r) * arm;
    }
    const { moment, stress } = ringPinch({ outerDiameter: 2 * (inner + wall), wall }, 1000);
    const b = moment / (m1 - (s1 / s0) * m0);
    const a = (-b * s1) / s0;
    near(stress, a + b / inner, 1e-4);
  });

  test('the branch for thin walls meets the exact one', () => {
    const at = (wall: number): number => {
      const { stress, thinStress } = ringPinch({ outerDiameter: 1 + wall, wall }, 1);
      return stress / thinStress;
    };
    near(at(0.01 * 0.9999), at(0.01 * 1.0001), 2e-4);
  });

  test('the largest torque uses the wall up, scatter counted', () => {
    fc.assert(
      fc.property(
        between(0.01, 0.03),
        between(0.0005, 0.003),
        between(0.005, 0.04),
        between(3e7, 4e8),
        (outerDiameter, wall, clampLength, hoopBendingStrength) => {
          const clamp = {
            outerDiameter,
            wall,
            clampLength,
            hoopBendingStrength,
            torqueCoefficient: 0.2,
            screwDiameter: 0.003,
          };
          near(clampUse(clamp, clampLimit(clamp).torque), 1);
        },
      ),
    );
  });
});

describe('screws', () => {
  test('shear alone and tension alone use what they are of the strength', () => {
    const s = screwStrength(COARSE_THREADS.M3, PROPERTY_CLASSES['10.9']);
    near(screwUse({ shear: s.shear, tension: 0, shearPlanes: 1 }, s), 1);
    near(screwUse({ shear: s.shear, tension: 0, shearPlanes: 2 }, s), 0.5);
    near(screwUse({ shear: 0, tension: s.tension, shearPlanes: 2 }, s), 1);
    near(screwUse({ shear: s.shear, tension: 1.4 * 0.5 * s.tension, shearPlanes: 2 }, s), 1);
  });

  test('torque and preload undo each other', () => {
    fc.assert(
      fc.property(between(0, 2), between(0.1, 0.4), between(2e-3, 5e-3), (torque, torqueCoefficient, diameter) => {
        const { nominal, low, high } = preloadFromTorque({ torque, torqueCoefficient, diameter });
        near(torqueFromPreload(nominal, { torqueCoefficient, diameter }), torque);
        expect(low).toBeLessThanOrEqual(nominal);
        expect(high).toBeGreaterThanOrEqual(nominal);
      }),
    );
  });

  test('play grows with clearance and arm length and falls with spacing', () => {
    const play = { armClearance: 1e-4, plateClearance: 2e-4, screwSpacing: 0.018, armLength: 0.095, armHeight: 0.014 };
    near(armPlay({ ...play, armClearance: 2e-4, plateClearance: 4e-4 }).motorError, 2 * armPlay(play).motorError);
    expect(armPlay({ ...play, screwSpacing: 0.036 }).motorError).toBeLessThan(0.55 * armPlay(play).motorError);
    near(armPlay({ ...play, armClearance: 0, plateClearance: 0 }).motorError, 0);
  });

  test('a root spring turns as its two screws give', () => {
    const [k, s, moment] = [1e7, 0.02, 3];
    near(moment / rootStiffness({ screwStiffness: k, screwSpacing: s }), (2 * (moment / s / k)) / s);
  });
});

describe('holes', () => {
  test('a vanishing hole keeps all strength, a huge one a third; a bigger hole never gains', () => {
    for (const ratio of [notchedStrengthRatio, meanStressRatio]) {
      near(ratio({ holeDiameter: 1e-9, characteristicLength: 1e-3 }), 1, 1e-4);
      near(ratio({ holeDiameter: 1e6, characteristicLength: 1e-3 }), 1 / 3, 1e-4);
      fc.assert(
        fc.property(between(1e-4, 0.05), between(1.01, 3), (holeDiameter, k) => {
          const at = (d: number): number => ratio({ holeDiameter: d, characteristicLength: 1e-3 });
          expect(at(holeDiameter * k)).toBeLessThanOrEqual(at(holeDiameter));
        }),
      );
    }
  });

  test('an isotropic sheet has a factor of three, a finite one more', () => {
    near(orthotropicHoleFactor({ modulusX: 7e10, modulusY: 7e10, shearModulus: 7e10 / 2.6, poissonRatio: 0.3 }), 3);
    near(finiteWidthFactor(0), 1);
    expect(finiteWidthFactor(0.3)).toBeGreaterThan(1);
  });
});

test('garbage is refused with the package error, or gives finite numbers', () => {
  fc.assert(
    fc.property(fc.array(anyNumber, { minLength: 12, maxLength: 12 }), (n) => {
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
      const tube = { outerDiameter: a, wall: b };
      const thread = { diameter: a, pitch: b };
      const clamp = { ...tube, clampLength: c, hoopBendingStrength: d, torqueCoefficient: e, screwDiameter: f };
      const grade = { label: '', tensileStrength: c, proofStress: d, shearRatio: e };
      const runs: (() => unknown)[] = [
        () => twoScrewRoot({ tipForce: a, armLength: b, screwSpacing: c }),
        () =>
          tubeRoot({
            tube,
            sleeveWall: c,
            holeDiameter: d,
            screwDiameter: e,
            armLength: f,
            screwSpacing: g,
            endDistance: h,
            horizontalForce: i,
            verticalForce: j,
            slipForce: k,
            strengths: { bearing: l, shear: k, bending: a, characteristicLength: b },
          }),
        () =>
          tubeRoot({
            ...dunnock,
            screwSpacing: a,
            endDistance: b,
            horizontalForce: c,
            verticalForce: d,
            sleeveWall: e,
          }),
        () => bearingStress({ force: a, diameter: b, thickness: c }),
        () => netSectionStress({ force: a, width: b, diameter: c, thickness: d }),
        () => shearOutStress({ force: a, shearLength: b, thickness: c }),
        () => edgeDistanceWarnings({ diameter: a, end: b, width: c, pitch: d }),
        () => ringPinch(tube, c),
        () => ringClosing(tube, c, d),
        () => clampLimit(clamp),
        () => clampUse(clamp, g),
        () => armPlay({ armClearance: a, plateClearance: b, screwSpacing: c, armLength: d, armHeight: e }),
        () =>
          fastenerGroup(
            [
              { x: a, y: b, weight: c },
              { x: d, y: e },
            ],
            { force: { x: f, y: g }, at: { x: h, y: i } },
          ),
        () => fastenerGroup([], { force: { x: f, y: g }, at: { x: h, y: i } }),
        () => stressArea(thread),
        () => pitchDiameter(thread),
        () => torqueCoefficient(thread, { thread: c, head: d }),
        () => screwUse({ shear: f, tension: g, shearPlanes: h }, screwStrength(thread, grade)),
        () => preloadFromTorque({ torque: a, torqueCoefficient: b, diameter: c }),
        () => torqueFromPreload(a, { torqueCoefficient: b, diameter: c }),
        () => slipForce({ preload: a, friction: b, faces: c }),
        () => pinBendingMoment({ force: a, middle: b, outer: c }),
        () =>
          screwStiffness({
            diameter: a,
            parts: [
              { thickness: b, modulus: c },
              { thickness: d, modulus: e },
            ],
            screwModulus: f,
          }),
        () => rootStiffness({ screwStiffness: a, screwSpacing: b }),
        () => stripHoleFactor(a),
        () => finiteWidthFactor(a),
        () => tubeHoleAxialFactor({ holeRatio: a, boreRatio: b }),
        () => tubeHoleBendingFactor({ holeRatio: a, boreRatio: b }),
        () => orthotropicHoleFactor({ modulusX: a, modulusY: b, shearModulus: c, poissonRatio: d }),
        () => notchedStrengthRatio({ holeDiameter: a, characteristicLength: b, holeFactor: c }),
        () => meanStressRatio({ holeDiameter: a, characteristicLength: b, holeFactor: c }),
      ];
      for (const run of runs) refusesOrFinite(run);
    }),
    { numRuns: 500 },
  );
});
