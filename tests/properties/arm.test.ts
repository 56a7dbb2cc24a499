import fc from 'fast-check';
import {
  bundleDiameter,
  largestTipForce,
  matchingSize,
  roundEndArea,
  stripRoot,
  stripSection,
  stripSegments,
} from '@frameworthy/shared/arm';
import { armTwist, tipStiffness, variedSegments } from '@frameworthy/shared/beam';
import { drilledRectangleSection, roundTubeSection, thinClosedTorsionConstant } from '@frameworthy/shared/section';
import { describe, expect, test } from 'vitest';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (value: number, expected: number, relative = 1e-9): void =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));
const material = { youngsModulus: 70e9, shearModulus: 5e9, density: 1600 };
const edges = fc.constantFrom('square', 'round') as fc.Arbitrary<'square' | 'round'>;
const strip = fc.record({
  length: between(0.05, 0.2),
  rootWidth: between(0.01, 0.03),
  tipWidth: between(0.01, 0.03),
  thickness: between(0.002, 0.009),
  edges,
});
const tube = fc.record({ outerDiameter: between(0.008, 0.02), wall: between(0.0005, 0.003) });
const tubeStiffness = ({ outerDiameter, wall }: { outerDiameter: number; wall: number }, length: number) =>
  tipStiffness([{ length, layers: [{ section: roundTubeSection({ outerDiameter, wall }), ...material }] }]);

describe('a tapered strip', () => {
  test('without taper is the uniform strip, in any number of segments', () => {
    fc.assert(
      fc.property(strip, fc.integer({ min: 1, max: 40 }), (shape, count) => {
        const even = { ...shape, tipWidth: shape.rootWidth };
        const section = stripSection({ width: even.rootWidth, thickness: even.thickness, edges: even.edges });
        const one = tipStiffness([{ length: even.length, layers: [{ section, ...material }] }]);
        const layersAt = () => [{ section, ...material }];
        const many = tipStiffness(variedSegments({ length: even.length, count, layersAt }));
        const ours = tipStiffness(stripSegments(even, material));
        for (const key of ['vertical', 'horizontal', 'torsion'] as const) {
          near(many[key], one[key]);
          near(ours[key], one[key]);
        }
      }),
    );
  });

  test('agrees with the closed form of a width that changes evenly, up and down', () => {
    fc.assert(
      fc.property(strip, (shape) => {
        const { length: L, rootWidth: b, tipWidth: a, thickness: h } = shape;
        // δ = 12F/(E h³) ∫ (L−x)²/b(x) dx with u = (L−x)/L and b = a + (b−a)u, in closed form by a logarithm.
        const k = (b - a) / a;
        fc.pre(Math.abs(k) > 0.05);
        const integral = (k ** 2 / 2 - k + Math.log1p(k)) / (a * k ** 3);
        const bending = ((12 * L ** 3) / (material.youngsModulus * h ** 3)) * integral;
        const stiff = { ...material, shearModulus: 1e15 };
        const { vertical } = tipStiffness(stripSegments({ ...shape, edges: 'square' }, stiff));
        near(1 / vertical, bending, 1e-3);
      }),
    );
  });

  test('lies between the strips as narrow as its tip and as wide as its root, and settles as segments grow', () => {
    fc.assert(
      fc.property(strip, (shape) => {
        const [low, high] = [Math.min(shape.rootWidth, shape.tipWidth), Math.max(shape.rootWidth, shape.tipWidth)];
        const at = (rootWidth: number, tipWidth: number, count?: number) =>
          tipStiffness(stripSegments({ ...shape, rootWidth, tipWidth }, material, count));
        const [narrow, ours, wide, fine] = [
          at(low, low),
          at(shape.rootWidth, shape.tipWidth),
          at(high, high),
          at(shape.rootWidth, shape.tipWidth, 400),
        ];
        for (const key of ['vertical', 'horizontal', 'torsion'] as const) {
          expect(ours[key]).toBeGreaterThanOrEqual(narrow[key] * (1 - 1e-9));
          expect(ours[key]).toBeLessThanOrEqual(wide[key] * (1 + 1e-9));
          near(ours[key], fine[key], 6e-3);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('is stiffer with its wide end at the root than the other way round', () => {
    fc.assert(
      fc.property(strip, (shape) => {
        fc.pre(shape.rootWidth > 1.02 * shape.tipWidth);
        const turned = { ...shape, rootWidth: shape.tipWidth, tipWidth: shape.rootWidth };
        const [right, wrong] = [shape, turned].map((s) => tipStiffness(stripSegments(s, material)));
        expect(right!.vertical).toBeGreaterThan(wrong!.vertical);
        expect(right!.horizontal).toBeGreaterThan(wrong!.horizontal);
        // Twist does not care which way round it is.
        near(
          armTwist({ segments: stripSegments(shape, material), torque: 1 }),
          armTwist({ segments: stripSegments(turned, material), torque: 1 }),
        );
      }),
    );
  });

  test('drilled with square edges is the drilled rectangle of the section topic', () => {
    const net = stripRoot({ width: 0.015, thickness: 0.005, edges: 'square', holeDiameter: 0.0032 });
    const other = drilledRectangleSection({ width: 0.015, height: 0.005, holeDiameter: 0.0032 });
    near(net.vertical.secondMomentOfArea, other.vertical.secondMomentOfArea, 1e-12);
    near(net.horizontal.secondMomentOfArea, other.horizontal.secondMomentOfArea, 1e-12);
  });
});

describe('a size that matches', () => {
  test('a strip as wide as found is as stiff as the tube', () => {
    let found = 0;
    fc.assert(
      fc.property(
        strip,
        tube,
        fc.constantFrom('vertical', 'horizontal') as fc.Arbitrary<'vertical' | 'horizontal'>,
        (shape, t, plane) => {
          const taper = shape.tipWidth / shape.rootWidth;
          const at = (rootWidth: number) =>
            tipStiffness(
              stripSegments({ ...shape, edges: 'square', rootWidth, tipWidth: taper * rootWidth }, material),
            )[plane];
          const target = tubeStiffness(t, shape.length)[plane];
          const match = matchingSize({ of: at, target, from: 0.004, to: 0.2 });
          if ('size' in match) {
            found++;
            near(at(match.size), target, 1e-9);
            expect(at(match.size * 1.01)).toBeGreaterThan(target);
          } else {
            expect(match.outOfReach === 'below the smallest' ? at(0.004) > target : at(0.2) < target).toBe(true);
          }
        },
      ),
      { numRuns: 60 },
    );
    expect(found).toBeGreaterThan(20);
  });

  test('a wall as thick as found is as stiff as another tube’s, and that is its own wall', () => {
    fc.assert(
      fc.property(tube, between(0.05, 0.2), (t, length) => {
        const of = (wall: number) => tubeStiffness({ ...t, wall }, length).vertical;
        const match = matchingSize({ of, target: of(t.wall), from: 5e-5, to: 0.499 * t.outerDiameter });
        expect('size' in match).toBe(true);
        if ('size' in match) near(match.size, t.wall, 1e-7);
      }),
      { numRuns: 60 },
    );
  });

  test('a tube is stiffer, heavier and stronger with more wall', () => {
    fc.assert(
      fc.property(tube, between(0.05, 0.2), between(1.01, 1.3), (t, length, factor) => {
        fc.pre(t.wall * factor < t.outerDiameter / 2);
        const thick = { ...t, wall: t.wall * factor };
        const [a, b] = [tubeStiffness(t, length), tubeStiffness(thick, length)];
        for (const key of ['vertical', 'horizontal', 'torsion'] as const) expect(b[key]).toBeGreaterThan(a[key]);
        const force = (size: typeof t) =>
          largestTipForce({ plane: roundTubeSection(size).vertical, lever: length, strength: 6e8 });
        expect(force(thick)).toBeGreaterThan(force(t));
      }),
    );
  });

  test('is found for steep and for flat functions alike', () => {
    for (const power of [-0.5, 0.1, 1, 3, 9]) {
      const of = (x: number) => (power < 0 ? 5 - x ** power : x ** power);
      const match = matchingSize({ of, target: of(0.037), from: 1e-3, to: 1 });
      expect('size' in match && match.size).toBeCloseTo(0.037, 12);
    }
    expect(matchingSize({ of: (x) => x, target: 0.5, from: 0.6, to: 1 })).toEqual({ outOfReach: 'below the smallest' });
    expect(matchingSize({ of: (x) => x, target: 2, from: 0.6, to: 1 })).toEqual({ outOfReach: 'above the largest' });
    expect(matchingSize({ of: (x) => x, target: 0.6, from: 0.6, to: 1 })).toEqual({ size: 0.6 });
    expect(matchingSize({ of: (x) => x, target: 1, from: 0.6, to: 1 })).toEqual({ size: 1 });
  });
});

describe('wires in a bore', () => {
  test('the centres laid out in the circle found are a diameter apart and inside', () => {
    for (const count of [2, 3, 4, 5, 6]) {
      const radius = (bundleDiameter(count, 1) - 1) / 2;
      const centres = Array.from({ length: count }, (_, i) => (2 * Math.PI * i) / count).map((angle) => [
        radius * Math.cos(angle),
        radius * Math.sin(angle),
      ]);
      const gaps = centres.flatMap(([ax, ay], i) =>
        centres.slice(i + 1).map(([bx, by]) => Math.hypot(ax! - bx!, ay! - by!)),
      );
      expect(Math.min(...gaps)).toBeCloseTo(1, 12);
    }
  });
  test('more wires never need less room, and room grows in step with the wire', () => {
    const rooms = [1, 2, 3, 4, 5, 6, 7].map((count) => bundleDiameter(count, 1));
    expect([...rooms].sort((a, b) => a - b)).toEqual(rooms);
    fc.assert(
      fc.property(between(1e-4, 1e-2), (d) => {
        near(bundleDiameter(3, d), d * rooms[2]!);
      }),
    );
  });
});

describe('a round end', () => {
  test('is a half disc where it is as wide as the strip, a whole one on a thread of strip', () => {
    near(roundEndArea({ diameter: 0.02, width: 0.02 }), (Math.PI * 0.02 ** 2) / 8);
    near(roundEndArea({ diameter: 0.02, width: 1e-9 }), (Math.PI * 0.02 ** 2) / 4, 1e-6);
  });
  test('agrees with counting small squares', () => {
    const [diameter, width] = [0.026, 0.01];
    const step = 1e-4;
    let area = 0;
    for (let x = -diameter / 2 + step / 2; x < diameter / 2; x += step)
      for (let y = -diameter / 2 + step / 2; y < diameter / 2; y += step)
        if (Math.hypot(x, y) < diameter / 2 && !(x < 0 && Math.abs(y) < width / 2)) area += step ** 2;
    near(roundEndArea({ diameter, width }), area, 5e-3);
  });
});

test('Bredt’s tube tends to the round tube as its wall thins', () => {
  for (const [wall, within] of [
    [1e-3, 6e-3],
    [1e-4, 6e-5],
  ] as const) {
    const mean = 0.014 - wall;
    near(
      thinClosedTorsionConstant({ enclosedArea: (Math.PI * mean ** 2) / 4, perimeter: Math.PI * mean, wall }),
      roundTubeSection({ outerDiameter: 0.014, wall }).torsionConstant,
      within,
    );
  }
});

test('garbage is refused or gives finite numbers', () => {
  fc.assert(
    fc.property(fc.array(anyNumber, { minLength: 6, maxLength: 6 }), edges, (n, e) => {
      const [a, b, c, d, f, g] = n as [number, number, number, number, number, number];
      refusesOrFinite(() =>
        tipStiffness(
          stripSegments(
            { length: a, rootWidth: b, tipWidth: c, thickness: d, edges: e },
            { youngsModulus: f, shearModulus: g, density: 1600 },
          ),
        ),
      );
      refusesOrFinite(() => stripSection({ width: a, thickness: b, edges: e }));
      refusesOrFinite(() => stripRoot({ width: a, thickness: b, edges: e, holeDiameter: c }));
      refusesOrFinite(() => roundEndArea({ diameter: a, width: b }));
      refusesOrFinite(() => bundleDiameter(a, b));
      refusesOrFinite(() => matchingSize({ of: (x) => x * f, target: a, from: b, to: c }));
      refusesOrFinite(() => thinClosedTorsionConstant({ enclosedArea: a, perimeter: b, wall: c }));
      refusesOrFinite(() =>
        largestTipForce({ plane: { secondMomentOfArea: a, extremeFibre: b }, lever: c, strength: d }),
      );
    }),
    { numRuns: 400 },
  );
});
