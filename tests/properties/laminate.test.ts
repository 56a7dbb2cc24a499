import fc from 'fast-check';
import { inverse, Matrix } from 'ml-matrix';
import {
  firstPlyFailure,
  flatCompliance,
  flexuralConstants,
  flexuralStrength,
  inPlaneConstants,
  inPlaneStrength,
  joinedPlies,
  laminateCompliance,
  laminateResponse,
  laminateStiffness,
  layupFromCounts,
  massPerArea,
  maximumStress,
  plyFromFibre,
  plyInvariants,
  plyMaterial,
  reducedStiffness,
  rotatedStiffness,
  stressInPly,
  tsaiWu,
  turned,
  UNIDIRECTIONAL_PLY,
  WOVEN_PLY,
  type LibraryPly,
  type Ply,
  type PlyMaterial,
  type Vector3,
} from '@frameworthy/shared/laminate';
import { InputError } from '@frameworthy/shared';
import { describe, expect, test } from 'vitest';
import { sources } from '../../content/sources/index.ts';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const near = (value: number, expected: number, relative: number, absolute = 0): void =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(relative * Math.abs(expected) + absolute);
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const strengths = fc.record({
  alongTension: between(3e8, 2e9),
  alongCompression: between(3e8, 2e9),
  acrossTension: between(2e7, 8e7),
  acrossCompression: between(1e8, 3e8),
  shear: between(4e7, 1e8),
});
const material: fc.Arbitrary<PlyMaterial> = fc.record({
  modulusAlong: between(3e10, 3e11),
  modulusAcross: between(5e9, 2e10),
  shearModulus: between(2e9, 1e10),
  poissonRatio: between(0.01, 0.4),
  strengths,
});
const ply: fc.Arbitrary<Ply> = fc.record({
  material,
  angle: between(-Math.PI, Math.PI),
  thickness: between(5e-5, 5e-4),
});
const stack = fc.array(ply, { minLength: 1, maxLength: 8 });
const symmetric = fc.array(ply, { minLength: 1, maxLength: 5 }).map((half) => [...half, ...[...half].reverse()]);
const load = between(-1e5, 1e5);
const forces = fc.tuple(load, load, load);
const moments = fc.tuple(between(-50, 50), between(-50, 50), between(-50, 50));

/** T of the textbooks, as the library takes it: stress from the axes of the part to those of the ply. */
function turning(angle: number): Matrix {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return new Matrix([
    [c * c, s * s, 2 * c * s],
    [s * s, c * c, -2 * c * s],
    [-c * s, c * s, c * c - s * s],
  ]);
}

describe('stiffness of a stack', () => {
  test('A, B and D agree with matrix products and integrals by a general matrix library', () => {
    fc.assert(
      fc.property(stack, (plies) => {
        const ours = laminateStiffness(plies);
        const engineering = Matrix.diag([1, 1, 2]);
        const sums = [Matrix.zeros(3, 3), Matrix.zeros(3, 3), Matrix.zeros(3, 3)];
        let z = -plies.reduce((sum, { thickness }) => sum + thickness, 0) / 2;
        for (const { material: m, angle, thickness } of plies) {
          const compliance = new Matrix([
            [1 / m.modulusAlong, -m.poissonRatio / m.modulusAlong, 0],
            [-m.poissonRatio / m.modulusAlong, 1 / m.modulusAcross, 0],
            [0, 0, 1 / m.shearModulus],
          ]);
          const t = turning(angle);
          const q = inverse(t).mmul(inverse(compliance)).mmul(engineering).mmul(t).mmul(inverse(engineering));
          const next = z + thickness;
          sums.forEach((sum, n) => sum.add(Matrix.mul(q, (next ** (n + 1) - z ** (n + 1)) / (n + 1))));
          z = next;
        }
        for (const [n, matrix] of [ours.a, ours.b, ours.d].entries()) {
          const scale = ours.a[0][0] * ours.thickness ** n;
          for (const i of [0, 1, 2] as const) {
            for (const j of [0, 1, 2] as const) near(matrix[i][j], sums[n]!.get(i, j), 1e-9, 1e-11 * scale);
          }
        }
      }),
    );
  });

  test('its inverse agrees with a general matrix library', () => {
    fc.assert(
      fc.property(stack, (plies) => {
        const stiffness = laminateStiffness(plies);
        const h = stiffness.thickness;
        // In units of h, or the library loses digits between N/m and N·m.
        const block = (i: number, j: number): number => {
          const [r, c] = [(i % 3) as 0 | 1 | 2, (j % 3) as 0 | 1 | 2];
          return i < 3
            ? j < 3
              ? stiffness.a[r][c]
              : stiffness.b[r][c] / h
            : j < 3
              ? stiffness.b[r][c] / h
              : stiffness.d[r][c] / h ** 2;
        };
        const reference = inverse(
          new Matrix([0, 1, 2, 3, 4, 5].map((i) => [0, 1, 2, 3, 4, 5].map((j) => block(i, j)))),
        );
        const { a, b, d } = laminateCompliance(stiffness);
        const size = reference.get(2, 2);
        for (const i of [0, 1, 2] as const) {
          for (const j of [0, 1, 2] as const) {
            near(a[i][j], reference.get(i, j), 1e-9, 1e-10 * size);
            near(b[i][j] * h, reference.get(i, j + 3), 1e-9, 1e-9 * size);
            near(d[i][j] * h ** 2, reference.get(i + 3, j + 3), 1e-9, 1e-9 * size);
          }
        }
        near(flatCompliance(stiffness)[0][0], inverse(new Matrix(stiffness.a.map((row) => [...row]))).get(0, 0), 1e-9);
      }),
    );
  });

  test('stresses through the thickness carry the load', () => {
    fc.assert(
      fc.property(stack, forces, moments, (plies, n, m) => {
        const { points } = laminateResponse(plies, { forces: n, moments: m });
        const scale = Math.max(...n.map(Math.abs), ...m.map((x) => Math.abs(x) / 1e-3), 1);
        for (const i of [0, 1, 2] as const) {
          let [force, moment] = [0, 0];
          plies.forEach((layer, k) => {
            const own = points.filter((point) => point.ply === k);
            // Simpson's rule is exact: stress is linear in a ply, stress times z quadratic.
            const weights = [1, 4, 1];
            own.forEach((point, p) => {
              force += (weights[p]! / 6) * layer.thickness * point.stress[i]!;
              moment += (weights[p]! / 6) * layer.thickness * point.stress[i]! * point.z;
            });
          });
          near(force, n[i]!, 1e-8, 1e-8 * scale);
          near(moment, m[i]!, 1e-8, 1e-11 * scale);
        }
      }),
    );
  });

  test('a symmetric stack does not couple; a single off-axis ply shears; each is named', () => {
    fc.assert(
      fc.property(symmetric, (plies) => {
        expect(laminateStiffness(plies).bendingCoupling).toBeLessThan(1e-12);
        expect(laminateStiffness(plies).warnings.map((w) => w.code)).not.toContain('unsymmetric');
      }),
    );
    const material = plyMaterial(UNIDIRECTIONAL_PLY);
    const skew = laminateStiffness([{ material, angle: 0.5, thickness: 1e-3 }]);
    expect(skew.warnings.map((w) => w.code)).toEqual(['unbalanced']);
    const two = laminateStiffness([0, Math.PI / 2].map((angle) => ({ material, angle, thickness: 1e-3 })));
    expect(two.warnings.map((w) => w.code)).toEqual(['unsymmetric']);
  });

  test('the trace of Q̄ does not turn, and a half turn changes nothing', () => {
    fc.assert(
      fc.property(material, between(-7, 7), (m, angle) => {
        const trace = (q: ReturnType<typeof reducedStiffness>) => q[0][0] + q[1][1] + 2 * q[2][2];
        near(trace(rotatedStiffness(m, angle)), trace(reducedStiffness(m)), 1e-12);
        near(rotatedStiffness(m, angle + Math.PI)[0][0], rotatedStiffness(m, angle)[0][0], 1e-9);
        near(
          rotatedStiffness(m, Math.PI / 2)[0][0],
          m.modulusAcross / (1 - (m.poissonRatio ** 2 * m.modulusAcross) / m.modulusAlong),
          1e-9,
        );
      }),
    );
  });

  test('a stack of one angle has the same constants in bending as in plane', () => {
    fc.assert(
      fc.property(ply, fc.integer({ min: 1, max: 12 }), (layer, count) => {
        const plies = Array.from({ length: count }, () => layer);
        const [plane, bending] = [inPlaneConstants(plies), flexuralConstants(plies)];
        near(bending.modulusX, plane.modulusX, 1e-8);
        near(bending.shearModulus, plane.shearModulus, 1e-8);
      }),
    );
  });

  test('directions three or more, evenly spread and held flat, are as stiff every way', () => {
    fc.assert(
      fc.property(material, fc.integer({ min: 3, max: 7 }), between(0, 3), (m, count, direction) => {
        const plies = Array.from({ length: count }, (_, i): Ply => ({
          material: m,
          angle: (i * Math.PI) / count,
          thickness: 2e-4,
        }));
        const [here, there] = [inPlaneConstants(plies, 'held'), inPlaneConstants(turned(plies, direction), 'held')];
        near(there.modulusX, here.modulusX, 1e-8);
        near(here.shearModulus, here.modulusX / (2 * (1 + here.poissonRatio)), 1e-8);
      }),
    );
  });

  test('plies moved outwards stiffen bending and leave the plane alone', () => {
    const base = {
      material: plyMaterial(UNIDIRECTIONAL_PLY),
      plyThickness: 2e-4,
      counts: { '0': 4, '+45': 2, '-45': 2, '90': 4 },
      mirrored: true,
    };
    const out = layupFromCounts({ ...base, order: ['0', '+45', '-45', '90'] });
    const inside = layupFromCounts({ ...base, order: ['90', '+45', '-45', '0'] });
    expect(flexuralConstants(out).modulusX).toBeGreaterThan(2 * flexuralConstants(inside).modulusX);
    near(inPlaneConstants(out).modulusX, inPlaneConstants(inside).modulusX, 1e-9);
  });
});

describe('joined plies', () => {
  test('are the same stack: stiffness, constants and failure', () => {
    fc.assert(
      fc.property(stack, fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 8, maxLength: 8 }), (plies, repeats) => {
        const many = plies.flatMap((layer, i) => Array.from({ length: repeats[i]! }, () => layer));
        const few = joinedPlies(many);
        expect(few.length).toBeLessThanOrEqual(plies.length);
        const [one, other] = [laminateStiffness(many), laminateStiffness(few)];
        near(other.thickness, one.thickness, 1e-12);
        for (const i of [0, 1, 2] as const) near(other.d[i][i], one.d[i][i], 1e-9);
        near(flexuralStrength(few).stress, flexuralStrength(many).stress, 1e-6);
      }),
    );
  });
});

describe('failure of a ply', () => {
  const stress = fc.tuple(between(-1e9, 1e9), between(-1e9, 1e9), between(-1e9, 1e9));

  test('at the factor found, each criterion stands exactly at its limit', () => {
    fc.assert(
      fc.property(stress, strengths, (s, limits) => {
        const r = tsaiWu(s, limits);
        const [x, y, t] = s.map((value) => value * r) as [number, number, number];
        const { alongTension: xt, alongCompression: xc, acrossTension: yt, acrossCompression: yc, shear } = limits;
        const left =
          (1 / xt - 1 / xc) * x +
          (1 / yt - 1 / yc) * y +
          x ** 2 / (xt * xc) +
          y ** 2 / (yt * yc) +
          (t / shear) ** 2 -
          (x * y) / Math.sqrt(xt * xc * yt * yc);
        if (r < 1e11) near(left, 1, 1e-6);
        const m = maximumStress(s, limits).factor;
        const uses = [
          s[0] > 0 ? (m * s[0]) / xt : (-m * s[0]) / xc,
          s[1] > 0 ? (m * s[1]) / yt : (-m * s[1]) / yc,
          (m * Math.abs(s[2])) / shear,
        ];
        if (m < 1e11) near(Math.max(...uses), 1, 1e-9);
      }),
    );
  });

  test('under one stress alone both criteria give the strength, and twice the load halves the factor', () => {
    fc.assert(
      fc.property(strengths, between(1e6, 1e9), (limits, size) => {
        near(tsaiWu([size, 0, 0], limits), limits.alongTension / size, 1e-9);
        near(tsaiWu([0, -size, 0], limits), limits.acrossCompression / size, 1e-9);
        near(tsaiWu([0, 0, size], limits), limits.shear / size, 1e-9);
        near(tsaiWu([2 * size, size, size], limits), 2 * tsaiWu([4 * size, 2 * size, 2 * size], limits), 1e-9);
        expect(maximumStress([0, 0, -size], limits)).toEqual({ mode: 'shear', factor: limits.shear / size });
      }),
    );
  });

  test('no load never fails, and nothing is infinite', () => {
    expect(tsaiWu([0, 0, 0], plyMaterial(WOVEN_PLY).strengths!)).toBe(1e12);
    expect(maximumStress([0, 0, 0], plyMaterial(WOVEN_PLY).strengths!).factor).toBe(1e12);
  });

  test('a stack of plies along the load breaks at the ply’s own strength', () => {
    fc.assert(
      fc.property(material, fc.integer({ min: 1, max: 6 }), (m, count) => {
        const plies = Array.from({ length: count }, (): Ply => ({ material: m, angle: 0, thickness: 2e-4 }));
        near(inPlaneStrength(plies, 'tension').stress, m.strengths!.alongTension, 1e-6);
        near(inPlaneStrength(plies, 'compression').stress, m.strengths!.alongCompression, 1e-6);
        near(flexuralStrength(plies).stress, Math.min(m.strengths!.alongTension, m.strengths!.alongCompression), 1e-6);
        near(inPlaneStrength(plies, 'shear').stress, m.strengths!.shear, 1e-6);
      }),
    );
  });
});

describe('strength in shear', () => {
  test('of a stack is that of the same stack seen at 45°, pulled one way and pushed the other', () => {
    fc.assert(
      fc.property(symmetric, (plies) => {
        const seen = turned(plies, Math.PI / 4);
        const pulled = [1, -1].map(
          (sign) => firstPlyFailure(seen, { forces: [sign, -sign, 0], moments: [0, 0, 0] }).factor,
        );
        const { thickness } = laminateStiffness(plies);
        near(inPlaneStrength(plies, 'shear').stress, Math.min(...pulled) / thickness, 1e-6);
      }),
    );
  });
});

describe('bad stacks', () => {
  test('no plies at all is refused by name', () => {
    const none = layupFromCounts.bind(null, {
      material: plyMaterial(WOVEN_PLY),
      plyThickness: 2e-4,
      counts: { '0': 0, '+45': 0, '-45': 0, '90': 0 },
      order: ['0', '+45', '-45', '90'],
      mirrored: true,
    });
    for (const run of [none, () => laminateStiffness([]), () => inPlaneConstants([])]) {
      expect(run).toThrow(InputError);
      expect(run).toThrow('number of plies 0 must be at least one');
    }
  });

  test('garbage is refused, or the result is finite', () => {
    fc.assert(
      fc.property(fc.array(anyNumber, { minLength: 11, maxLength: 11 }), (n) => {
        const [a, b, c, d, e, f, g, h, i, j, k] = n as [
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
        const m: PlyMaterial = {
          modulusAlong: a,
          modulusAcross: b,
          shearModulus: c,
          poissonRatio: d,
          strengths: { alongTension: e, alongCompression: f, acrossTension: g, acrossCompression: h, shear: i },
        };
        const ordinary = plyMaterial(UNIDIRECTIONAL_PLY);
        const stacks: Ply[][] = [
          [{ material: m, angle: j, thickness: k }],
          [
            { material: ordinary, angle: a, thickness: b },
            { material: ordinary, angle: c, thickness: d },
          ],
        ];
        for (const plies of stacks) {
          for (const run of [laminateStiffness, inPlaneConstants, flexuralConstants, flexuralStrength])
            refusesOrFinite(() => run(plies));
          refusesOrFinite(() => inPlaneStrength(plies, 'tension', 'held'));
          refusesOrFinite(() => inPlaneStrength(plies, 'shear'));
          refusesOrFinite(() => laminateResponse(plies, { forces: [a, b, c], moments: [d, e, f] }));
          refusesOrFinite(() => firstPlyFailure(plies, { forces: [a, b, c], moments: [d, e, f] }));
          refusesOrFinite(() => massPerArea(plies, a));
        }
        refusesOrFinite(() => plyInvariants(m));
        refusesOrFinite(() => stressInPly([a, b, c] as Vector3, d));
        refusesOrFinite(() => tsaiWu([a, b, c] as Vector3, ordinary.strengths!));
        refusesOrFinite(() => maximumStress([a, b, c] as Vector3, m.strengths!));
        refusesOrFinite(() =>
          plyFromFibre({
            fibreFraction: a,
            fibreModulus: b,
            fibreShearModulus: c,
            fibrePoissonRatio: d,
            resinModulus: e,
            resinShearModulus: f,
            resinPoissonRatio: g,
          }),
        );
        refusesOrFinite(() =>
          layupFromCounts({
            material: ordinary,
            plyThickness: a,
            counts: { '0': b, '+45': c, '-45': d, '90': e },
            order: ['0', '+45', '-45', '90'],
            mirrored: true,
          }),
        );
      }),
      { numRuns: 400 },
    );
  });
});

describe('the ply library', () => {
  test('each value is ordered, and its source exists', () => {
    for (const entry of [WOVEN_PLY, UNIDIRECTIONAL_PLY]) {
      for (const [key, value] of Object.entries(entry) as [keyof LibraryPly, LibraryPly['density'] | string][]) {
        if (typeof value === 'string') continue;
        expect(value.low, key).toBeLessThanOrEqual(value.typical);
        expect(value.typical, key).toBeLessThanOrEqual(value.high);
        expect(Object.keys(sources)).toContain(value.source);
      }
    }
  });
});
