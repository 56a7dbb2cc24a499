import fc from 'fast-check';
import { Matrix, solve } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import * as plate from '@frameworthy/shared/plate';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const edge = fc.constantFrom('supported' as const, 'fixed' as const);
const load = fc.constantFrom('uniform' as const, 'centre' as const);
const strip = fc.record({ thickness: within(0.001, 0.006), youngsModulus: within(30e9, 80e9) });
const twoPlated = fc.record({
  width: within(0.01, 0.06),
  bottom: strip,
  top: strip,
  gap: within(0, 0.02),
  length: within(0.01, 0.08),
  shearModulus: within(4e9, 25e9),
});
const links = ['sliding', 'tied', 'bonded'] as const;

describe('a plate held along its edges', () => {
  test('fixed is stiffer than supported, and longer is softer', () => {
    fc.assert(
      fc.property(within(1, 8), within(1.01, 2), within(0, 0.45), load, (ratio, times, nu, how) => {
        const at = (r: number, e: plate.PlateEdge) => plate.rectangularPlate(r, e, how, nu).deflection;
        expect(at(ratio, 'fixed')).toBeLessThan(at(ratio, 'supported'));
        expect(at(ratio * times, 'supported')).toBeGreaterThanOrEqual(at(ratio, 'supported') * (1 - 1e-9));
        // A fixed plate some three times as long as wide overshoots the endless strip by half a per cent.
        expect(at(ratio * times, 'fixed')).toBeGreaterThanOrEqual(at(ratio, 'fixed') * 0.99);
      }),
    );
  });

  test('a square does not care which side is which, nor a rectangle in which order its sides are named', () => {
    const sides = fc.record({ width: within(0.02, 0.1), length: within(0.02, 0.1) });
    fc.assert(
      fc.property(sides, edge, within(1, 500), ({ width, length }, e, force) => {
        const of = (shape: { width: number; length: number }) =>
          plate.loadedPlate({ shape, edge: e, force, thickness: 0.002, youngsModulus: 47e9, spotRadius: 0.002 });
        expect(of({ width, length })).toEqual(of({ width: length, length: width }));
      }),
    );
    for (const e of ['supported', 'fixed'] as const)
      for (const how of ['uniform', 'centre'] as const) {
        const { across, along } = plate.rectangularPlate(1, e, how);
        expect(Math.abs(across - along)).toBeLessThan(2e-4 * Math.abs(across));
      }
  });

  test('agrees with finite differences of the plate equation, solved by a general-purpose library', () => {
    for (const e of ['supported', 'fixed'] as const)
      for (const how of ['uniform', 'centre'] as const) {
        const ours = plate.rectangularPlate(1.5, e, how).deflection;
        expect(Math.abs(differences(1.5, e, how) / ours - 1), `${e} ${how}`).toBeLessThan(0.03);
      }
  });

  test('twice as thick: an eighth of the deflection, a quarter of the stress of a spread load', () => {
    fc.assert(
      fc.property(within(0.001, 0.004), edge, within(1, 300), (thickness, e, force) => {
        const at = (t: number) =>
          plate.loadedPlate({ shape: { radius: 0.03 }, edge: e, force, thickness: t, youngsModulus: 47e9 });
        expect(at(thickness).deflection / at(2 * thickness).deflection).toBeCloseTo(8, 6);
        expect(at(thickness).middleStress / at(2 * thickness).middleStress).toBeCloseTo(4, 6);
      }),
    );
  });
});

describe('a tongue', () => {
  test('a second plate never makes it softer; joined is never softer than sliding', () => {
    fc.assert(
      fc.property(
        twoPlated,
        within(10, 500),
        fc.constantFrom('vertical' as const, 'horizontal' as const),
        (sizes, force, plane) => {
          const of = (link: plate.PlateLink) =>
            plate.tongue({ ...sizes, link, plane, loads: [{ at: sizes.length, force }] });
          const [sliding, tied, bonded] = links.map(of) as [plate.TongueResult, plate.TongueResult, plate.TongueResult];
          expect(sliding.deflection).toBeLessThan(sliding.deflectionAlone);
          expect(tied.deflection).toBeLessThanOrEqual(sliding.deflection * (1 + 1e-12));
          expect(bonded.deflection).toBeLessThanOrEqual(tied.deflection * (1 + 1e-12));
          expect(bonded.deflection).toBeGreaterThan(0);
        },
      ),
    );
  });

  test('statics closes: own moments and the couple of pull and push are the moment at the root', () => {
    fc.assert(
      fc.property(
        twoPlated,
        within(-500, 500),
        within(0, 1),
        fc.constantFrom(...links),
        (sizes, inner, share, link) => {
          const loads = [
            { at: sizes.length, force: 200 },
            { at: sizes.length * share, force: inner },
          ];
          const found = plate.tongue({ ...sizes, link, plane: 'vertical', loads });
          const h = plate.twoPlates(sizes).distance;
          const [bottom, top] = found.plates as [plate.TonguePlate, plate.TonguePlate];
          expect(bottom.axial + top.axial).toBeCloseTo(0, 6);
          const held = bottom.rootMoment + top.rootMoment + bottom.axial * h;
          expect(Math.abs(held - found.rootMoment)).toBeLessThan(1e-9 * (1 + Math.abs(found.rootMoment)));
          expect(found.rootMoment).toBeCloseTo(200 * sizes.length + inner * sizes.length * share, 9);
        },
      ),
    );
  });

  test('tied: agrees with a frame of two beams and a stiff tie, by a general-purpose library', () => {
    fc.assert(
      fc.property(twoPlated, (sizes) => {
        const ours = plate.tongue({
          ...sizes,
          link: 'tied',
          plane: 'vertical',
          loads: [{ at: sizes.length, force: 1 }],
        });
        expect(ours.deflection / tiedFrame(sizes)).toBeCloseTo(1, 6);
      }),
    );
  });

  test('a hole makes it softer and its net stress higher, the more the wider', () => {
    fc.assert(
      fc.property(twoPlated, within(0.1, 0.4), within(1.05, 2), within(0, 0.9), (sizes, cut, times, at) => {
        const of = (diameter: number) =>
          plate.tongue({
            ...sizes,
            link: 'sliding',
            plane: 'vertical',
            loads: [{ at: sizes.length, force: 1 }],
            hole: { at: at * sizes.length, diameter },
          });
        const [small, large] = [of(cut * sizes.width), of(cut * times * sizes.width)];
        expect(large.deflection).toBeGreaterThan(small.deflection);
        expect(large.plates[0]!.holeStress).toBeGreaterThan(small.plates[0]!.holeStress);
      }),
    );
  });
});

describe('webs beside a cutout', () => {
  const cut = fc.record({
    plateWidth: within(0.03, 0.08),
    thickness: within(0.001, 0.005),
    share: within(0.2, 0.7),
    aside: within(-0.8, 0.8),
    cutoutLength: within(0.01, 0.08),
    youngsModulus: within(30e9, 80e9),
    shearModulus: within(4e9, 25e9),
  });
  const loads = fc.record({
    axial: within(-2e3, 2e3),
    shear: within(-500, 500),
    moment: within(-20, 20),
    outOfPlane: within(0, 5),
  });
  const sized = ({
    share,
    aside,
    ...rest
  }: {
    plateWidth: number;
    share: number;
    aside: number;
    thickness: number;
    cutoutLength: number;
    youngsModulus: number;
    shearModulus: number;
  }) => ({
    ...rest,
    cutoutWidth: share * rest.plateWidth,
    cutoutOffset: (aside * (1 - share) * rest.plateWidth) / 2,
  });

  test('statics closes: pull, shear and moment of both webs are those of the plate', () => {
    fc.assert(
      fc.property(cut, loads, (given, load) => {
        const size = sized(given);
        const [left, right] = plate.webs(size, load);
        expect(left.width + right.width + size.cutoutWidth).toBeCloseTo(size.plateWidth, 12);
        expect(left.axial + right.axial).toBeCloseTo(load.axial, 6);
        expect(left.shear + right.shear).toBeCloseTo(load.shear, 6);
        // About the middle line: pull times place, and what each web bends by itself. The S of the shear adds nothing.
        const y = (web: plate.Web, side: number) => side * (size.plateWidth / 2 - web.width / 2);
        const curved = (web: plate.Web) => web.moment - (Math.abs(web.shear) * size.cutoutLength) / 2;
        const couple = left.axial * y(left, 1) + right.axial * y(right, -1);
        const own = curved(left) + curved(right);
        const off = Math.min(...[1, -1].map((side) => Math.abs(couple + side * own - load.moment)));
        expect(off).toBeLessThan(1e-7 * (1 + Math.abs(load.moment) + Math.abs(load.axial)));
      }),
    );
  });

  test('mirrored, left and right change places', () => {
    fc.assert(
      fc.property(cut, loads, (given, load) => {
        const size = sized(given);
        const [left, right] = plate.webs(size, load);
        const [mirroredLeft, mirroredRight] = plate.webs(
          { ...size, cutoutOffset: -size.cutoutOffset },
          { ...load, moment: -load.moment, shear: -load.shear },
        );
        const near = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.max(1, a, b));
        near(left.stress, mirroredRight.stress);
        near(right.stress, mirroredLeft.stress);
      }),
    );
  });

  test('a narrower cutout never raises the stress of a middle one', () => {
    fc.assert(
      fc.property(cut, loads, within(0.5, 0.99), (given, load, times) => {
        const wide = { ...sized(given), cutoutOffset: 0 };
        const worst = (size: plate.CutPlate) => Math.max(...plate.webs(size, load).map((web) => web.stress));
        expect(worst({ ...wide, cutoutWidth: wide.cutoutWidth * times })).toBeLessThanOrEqual(worst(wide) * (1 + 1e-9));
      }),
    );
  });
});

test('whatever is put in: finite results or an InputError', () => {
  fc.assert(
    fc.property(
      fc.array(anyNumber, { minLength: 12, maxLength: 12 }),
      edge,
      load,
      fc.constantFrom(...links),
      (n, e, how, link) => {
        const [a, b, c, d, f, g, h, i] = n as [number, number, number, number, number, number, number, number];
        refusesOrFinite(() => plate.rectangularPlate(a, e, how, b));
        refusesOrFinite(() => plate.circularPlate(e, how, a));
        refusesOrFinite(() => plate.loadSpot(a, b));
        refusesOrFinite(() => plate.plateRigidity({ thickness: a, youngsModulus: b, poissonRatio: c }));
        const sheet = { edge: e, force: a, thickness: b, youngsModulus: c };
        refusesOrFinite(() => plate.loadedPlate({ ...sheet, shape: { width: d, length: f }, spotRadius: g }));
        refusesOrFinite(() => plate.loadedPlate({ ...sheet, shape: { radius: d } }));
        const two = {
          width: a,
          bottom: { thickness: b, youngsModulus: c },
          top: { thickness: d, youngsModulus: f },
          gap: g,
        };
        refusesOrFinite(() => plate.twoPlates(two));
        for (const plane of ['vertical', 'horizontal'] as const)
          refusesOrFinite(() =>
            plate.tongue({
              ...two,
              length: h,
              shearModulus: c,
              link,
              plane,
              loads: [{ at: h, force: i }],
              hole: { at: n[8]!, diameter: n[9]! },
            }),
          );
        refusesOrFinite(() => plate.plateBendingHoleFactor({ width: a, thickness: b, holeDiameter: c }));
        refusesOrFinite(() =>
          plate.webs(
            {
              plateWidth: a,
              thickness: b,
              cutoutWidth: c,
              cutoutLength: d,
              cutoutOffset: f,
              youngsModulus: g,
              shearModulus: h,
            },
            { axial: i, shear: n[8]!, moment: n[9]!, outOfPlane: n[10]! },
          ),
        );
        refusesOrFinite(() => plate.leastWeb(a, b));
      },
    ),
    { numRuns: 500 },
  );
});

/** Deflection in the middle of a quarter plate by the 13-point molecule, in units of the short side. */
function differences(ratio: number, edge: plate.PlateEdge, load: plate.PlateLoad): number {
  const n = 10;
  const m = Math.round(n * ratio);
  const step = 0.5 / n;
  const mirror = edge === 'fixed' ? 1 : -1;
  const matrix = Matrix.zeros(n * m, n * m);
  const right = Array.from({ length: n * m }, () => [load === 'uniform' ? step ** 4 : 0]);
  // The quarter's corner is the middle of the plate: a quarter of the force, over a quarter of its cell.
  if (load === 'centre') right[0] = [step ** 2];
  const put = (row: number, i: number, j: number, weight: number) => {
    const [a, b] = [Math.abs(i), Math.abs(j)];
    if (a === n || b === m) return;
    // One past the edge mirrors one before it: same where fixed, opposite on a support.
    const [x, y, sign] = a > n ? [2 * n - a, b, mirror] : b > m ? [a, 2 * m - b, mirror] : [a, b, 1];
    matrix.set(row, x * m + y, matrix.get(row, x * m + y) + sign * weight);
  };
  for (let i = 0; i < n; i++)
    for (let j = 0; j < m; j++) {
      const row = i * m + j;
      put(row, i, j, 20);
      for (const [x, y] of [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
      ] as const) {
        put(row, i + x, j + y, -8);
        put(row, i + 2 * x, j + 2 * y, 1);
      }
      for (const [x, y] of [
        [1, 1],
        [1, -1],
        [-1, 1],
        [-1, -1],
      ] as const)
        put(row, i + x, j + y, 2);
    }
  return solve(matrix, new Matrix(right)).get(0, 0);
}

/** Tip movement of two cantilevers whose tips share movement and slope and stand on one stiff tie, which shifts with them. */
function tiedFrame({ width, bottom, top, gap, length }: plate.TwoPlates & { length: number }): number {
  const h = gap + (bottom.thickness + top!.thickness) / 2;
  // Unknowns: movement and slope of the tie, shift of its lower end.
  const k = Matrix.zeros(3, 3);
  for (const [strip, arm] of [
    [bottom, 0],
    [top!, h],
  ] as const) {
    const ei = (strip.youngsModulus * width * strip.thickness ** 3) / 12;
    const ea = (strip.youngsModulus * width * strip.thickness) / length;
    const beam = [
      [(12 * ei) / length ** 3, (-6 * ei) / length ** 2],
      [(-6 * ei) / length ** 2, (4 * ei) / length],
    ];
    for (let a = 0; a < 2; a++) for (let b = 0; b < 2; b++) k.set(a, b, k.get(a, b) + beam[a]![b]!);
    // The end of this plate moves along by shift - slope × arm.
    const row = [0, -arm, 1];
    for (let a = 0; a < 3; a++) for (let b = 0; b < 3; b++) k.set(a, b, k.get(a, b) + ea * row[a]! * row[b]!);
  }
  return solve(k, new Matrix([[1], [0], [0]])).get(0, 0);
}
