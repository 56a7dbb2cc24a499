import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { InputError } from '../../shared/src/error.ts';
import * as bond from '../../shared/src/bond/index.ts';
import { refusesOrFinite } from './garbage.ts';

const { balancedDoubleLapStrength, doubleLap, doubleLapPlateau, edgeMoment, singleLap, sleeveBond, usefulOverlap } =
  bond;

const length = fc.double({ min: 1e-4, max: 0.1, noNaN: true });
const modulus = fc.double({ min: 1e9, max: 3e11, noNaN: true });
const softModulus = fc.double({ min: 1e8, max: 4e9, noNaN: true });
const gap = fc.double({ min: 2e-5, max: 1e-3, noNaN: true });
const adherend = fc.record({ modulus, thickness: fc.double({ min: 2e-4, max: 1e-2, noNaN: true }) });
const lap = fc.record({
  loadPerWidth: fc.double({ min: 1, max: 1e6, noNaN: true }),
  overlap: length,
  first: adherend,
  second: adherend,
  layer: fc.record({ shearModulus: softModulus, thickness: gap }),
});
const sleeve = fc
  .record({
    tubeInside: fc.double({ min: 4e-3, max: 0.03, noNaN: true }),
    wall: fc.double({ min: 5e-4, max: 3e-3, noNaN: true }),
    gap,
    part: fc.double({ min: 0.05, max: 0.9, noNaN: true }),
    load: fc.double({ min: 0.1, max: 5e3, noNaN: true }),
    overlap: length,
    tubeModulus: modulus,
    sleeveModulus: modulus,
    shearModulus: softModulus,
  })
  .map(({ wall, gap: h, part, ...rest }) => {
    const sleeveOutside = rest.tubeInside - 2 * h;
    return { ...rest, tubeOutside: rest.tubeInside + 2 * wall, sleeveOutside, sleeveWall: (sleeveOutside / 2) * part };
  });
const kind = fc.constantFrom('axial', 'torque', 'bending' as const) as fc.Arbitrary<'axial' | 'torque' | 'bending'>;

const near = (a: number, b: number, relative = 1e-6): void =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b), 1e-12));

describe('laps', () => {
  test('the shear along the bond adds up to the load', () => {
    fc.assert(
      fc.property(lap, (given) => {
        const { at, jointNumber } = singleLap(given);
        fc.pre(jointNumber < 50);
        const n = 2000;
        const sum = Array.from({ length: n }, (_, i) => at(((i + 0.5) * given.overlap) / n)).reduce((s, v) => s + v, 0);
        near((sum * given.overlap) / n, given.loadPerWidth, 1e-3);
      }),
      { numRuns: 60 },
    );
  });
  test('twice the load doubles the peak, and swapping the adherends swaps the ends', () => {
    fc.assert(
      fc.property(lap, (given) => {
        const once = singleLap(given);
        near(singleLap({ ...given, loadPerWidth: 2 * given.loadPerWidth }).peak, 2 * once.peak);
        const swapped = singleLap({ ...given, first: given.second, second: given.first });
        near(swapped.atEnd, once.atStart);
        near(swapped.at(0), once.at(given.overlap));
      }),
    );
  });
  test('the peak is never below the mean, never rises with overlap, and has stopped falling at the useful overlap', () => {
    fc.assert(
      fc.property(lap, (given) => {
        const { peak, mean, lambda } = singleLap(given);
        expect(peak).toBeGreaterThanOrEqual(mean * (1 - 1e-9));
        expect(singleLap({ ...given, overlap: given.overlap * 1.5 }).peak).toBeLessThanOrEqual(peak * (1 + 1e-9));
        const useful = singleLap({ ...given, overlap: usefulOverlap(lambda) }).peak;
        const endless = singleLap({ ...given, overlap: 4 * usefulOverlap(lambda) }).peak;
        expect(useful).toBeLessThanOrEqual(endless * 1.014);
      }),
    );
  });
  test('a thicker bond line lowers the elastic peak', () => {
    fc.assert(
      fc.property(lap, (given) => {
        const thicker = { ...given, layer: { ...given.layer, thickness: 2 * given.layer.thickness } };
        expect(singleLap(thicker).peak).toBeLessThanOrEqual(singleLap(given).peak * (1 + 1e-9));
      }),
    );
  });
  test('a double lap shears as a single lap of half the load between half the inner and one outer sheet', () => {
    fc.assert(
      fc.property(lap, ({ first, second, ...rest }) => {
        const both = doubleLap({ ...rest, inner: first, outer: second });
        near(both.mean * 2 * rest.overlap, rest.loadPerWidth);
        near(
          both.lambda ** 2,
          (rest.layer.shearModulus / rest.layer.thickness) *
            (2 / (first.modulus * first.thickness) + 1 / (second.modulus * second.thickness)),
        );
      }),
    );
  });
  test('the edge-moment factor falls with load between its two limits', () => {
    fc.assert(
      fc.property(lap, fc.double({ min: 0, max: 0.5, noNaN: true }), ({ loadPerWidth, overlap, first }, poisson) => {
        const given = { loadPerWidth, overlap, adherend: first, poisson };
        const { factor } = edgeMoment(given);
        expect(factor).toBeLessThanOrEqual(1);
        expect(factor).toBeGreaterThanOrEqual(1 / (1 + 2 * Math.SQRT2) - 1e-12);
        expect(edgeMoment({ ...given, loadPerWidth: loadPerWidth * 2 }).factor).toBeLessThanOrEqual(factor);
      }),
    );
  });
});

describe('adhesive that yields', () => {
  const adhesive = fc.record({
    shearModulus: softModulus,
    thickness: gap,
    yieldShear: fc.double({ min: 1e6, max: 6e7, noNaN: true }),
    plasticRatio: fc.double({ min: 0, max: 30, noNaN: true }),
  });
  const stiffness = fc.double({ min: 1e7, max: 1e9, noNaN: true });
  test('strength rises with overlap, never passes the plateau nor the fully yielded bond', () => {
    fc.assert(
      fc.property(adhesive, stiffness, length, (glue, inner, overlap) => {
        const { strength } = balancedDoubleLapStrength({ adhesive: glue, stiffness: inner, overlap });
        const plateau = doubleLapPlateau({ adhesive: glue, stiffness: { inner, outer: inner / 2 } });
        expect(strength).toBeLessThanOrEqual(plateau * (1 + 1e-6));
        expect(strength).toBeLessThanOrEqual(2 * glue.yieldShear * overlap * (1 + 1e-9));
        expect(
          balancedDoubleLapStrength({ adhesive: glue, stiffness: inner, overlap: overlap * 1.3 }).strength,
        ).toBeGreaterThanOrEqual(strength * (1 - 1e-6));
      }),
    );
  });
  test('a brittle adhesive breaks at its elastic peak', () => {
    fc.assert(
      fc.property(adhesive, stiffness, length, (glue, inner, overlap) => {
        const brittle = { ...glue, plasticRatio: 0 };
        const { strength } = balancedDoubleLapStrength({ adhesive: brittle, stiffness: inner, overlap });
        const { peak } = doubleLap({
          loadPerWidth: strength,
          overlap,
          inner: { modulus: inner / 1e-3, thickness: 1e-3 },
          outer: { modulus: inner / 2e-3, thickness: 1e-3 },
          layer: brittle,
        });
        near(peak, glue.yieldShear, 1e-4);
      }),
    );
  });
});

describe('sleeves', () => {
  test('mean shear is the load over the bond; the peak lies above it and scales with the load', () => {
    fc.assert(
      fc.property(sleeve, kind, (given, of) => {
        const { peak, mean, geometry } = sleeveBond({ ...given, kind: of });
        const r = geometry.bondRadius;
        const per = { axial: 2 * Math.PI * r, torque: 2 * Math.PI * r ** 2, bending: Math.PI * r ** 2 }[of];
        near(mean * per * given.overlap, given.load);
        expect(peak).toBeGreaterThanOrEqual(mean * (1 - 1e-9));
        near(sleeveBond({ ...given, kind: of, load: 3 * given.load }).peak, 3 * peak);
      }),
    );
  });
  test('thin walls: a pull on the sleeve is a flat lap rolled up', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.05, noNaN: true }),
        modulus,
        modulus,
        softModulus,
        length,
        (bore, tubeModulus, sleeveModulus, shearModulus, overlap) => {
          const wall = bore * 1e-4;
          const h = bore * 1e-4;
          const round = sleeveBond({
            kind: 'axial',
            load: 100,
            overlap,
            tubeInside: bore,
            tubeOutside: bore + 2 * wall,
            sleeveOutside: bore - 2 * h,
            sleeveWall: wall,
            tubeModulus,
            sleeveModulus,
            shearModulus,
          });
          const flat = singleLap({
            loadPerWidth: 100 / (2 * Math.PI * round.geometry.bondRadius),
            overlap,
            first: { modulus: tubeModulus, thickness: wall },
            second: { modulus: sleeveModulus, thickness: wall },
            layer: { shearModulus, thickness: h },
          });
          near(round.peak, flat.peak, 1e-3);
        },
      ),
    );
  });
  test('a sleeve that does not fit the bore is refused at the sleeve', () => {
    fc.assert(
      fc.property(sleeve, kind, fc.double({ min: 0, max: 0.01, noNaN: true }), (given, of, excess) => {
        const refused = (): unknown => sleeveBond({ ...given, kind: of, sleeveOutside: given.tubeInside + excess });
        expect(refused).toThrow(InputError);
        expect(refused).toThrow(/gap for adhesive/);
      }),
    );
  });
});

describe('any input at all', () => {
  const wild = fc.oneof(
    fc.double(),
    fc.constantFrom(0, -1, 1e308, -1e308, 5e-324, 1e-7, 100, 1e12, 1e13, NaN, Infinity, 0.5),
  );
  test('gives a finite result or an InputError', () => {
    fc.assert(
      fc.property(fc.array(wild, { minLength: 9, maxLength: 9 }), kind, (v, of) => {
        const [a, b, c, d, e, f, g, h, i] = v as [
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
        const layer = { shearModulus: c, thickness: d };
        const glue = { ...layer, yieldShear: e, plasticRatio: f };
        const sheet = { modulus: g, thickness: h };
        refusesOrFinite(() =>
          singleLap({ loadPerWidth: a, overlap: b, first: sheet, second: { modulus: i, thickness: h }, layer }),
        );
        refusesOrFinite(() =>
          doubleLap({ loadPerWidth: a, overlap: b, inner: sheet, outer: { modulus: i, thickness: h }, layer }),
        );
        refusesOrFinite(() => edgeMoment({ loadPerWidth: a, overlap: b, adherend: sheet, poisson: f }));
        refusesOrFinite(() =>
          bond.bendingLapPeakShear({ loadPerWidth: a, overlap: b, adherend: sheet, poisson: f, layer }),
        );
        refusesOrFinite(() => balancedDoubleLapStrength({ adhesive: glue, stiffness: a, overlap: b }));
        refusesOrFinite(() => doubleLapPlateau({ adhesive: glue, stiffness: { inner: a, outer: b } }));
        refusesOrFinite(() => bond.equivalentElasticShear(glue));
        refusesOrFinite(() =>
          sleeveBond({
            kind: of,
            load: a,
            overlap: b,
            tubeModulus: c,
            sleeveModulus: d,
            shearModulus: e,
            tubeOutside: f,
            tubeInside: g,
            sleeveOutside: h,
            sleeveWall: i,
          }),
        );
        refusesOrFinite(() =>
          bond.sleeveBondArea({ overlap: b, tubeOutside: f, tubeInside: g, sleeveOutside: h, sleeveWall: i }),
        );
        refusesOrFinite(() => bond.scarfStress({ stress: a, angle: b }));
        refusesOrFinite(() => bond.meanLapShear({ force: a, width: b, overlap: c }));
        refusesOrFinite(() => bond.strengthAtTemperature({ room: a, kept: b }));
        refusesOrFinite(() => bond.overlapByRule({ thickness: a, joint: 'double lap' }));
        refusesOrFinite(() => bond.scarfLengthByRule(a));
        refusesOrFinite(() => bond.bondLineWarnings(a));
        refusesOrFinite(() => usefulOverlap(a));
      }),
      { numRuns: 2000 },
    );
  });
  test('the widest physical sizes still give a finite sleeve', () => {
    const edge = fc.constantFrom(1e4, 1e9, 1e13);
    const size = fc.constantFrom(1e-7, 3e-7, 1e-6, 1e-3, 0.5, 1, 100);
    fc.assert(
      fc.property(
        edge,
        edge,
        edge,
        fc.array(size, { minLength: 5, maxLength: 5 }),
        kind,
        fc.constantFrom(0, 1, 1e12),
        (a, b, c, [l, o, i, s, w], of, load) => {
          refusesOrFinite(() =>
            sleeveBond({
              kind: of,
              load,
              overlap: l as number,
              tubeModulus: a,
              sleeveModulus: b,
              shearModulus: c,
              tubeOutside: o as number,
              tubeInside: i as number,
              sleeveOutside: s as number,
              sleeveWall: w as number,
            }),
          );
        },
      ),
      { numRuns: 3000 },
    );
  });
  test('bond lines thinner or thicker than usual are named', () => {
    expect(bond.bondLineWarnings(0.02e-3).map(({ code }) => code)).toEqual(['bond-line-starved']);
    expect(bond.bondLineWarnings(0.1e-3)).toEqual([]);
    expect(bond.bondLineWarnings(0.3e-3)).toEqual([]);
    expect(bond.bondLineWarnings(0.5e-3).map(({ code }) => code)).toEqual(['bond-line-thick']);
  });
});
