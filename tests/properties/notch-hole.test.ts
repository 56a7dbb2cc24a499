import fc from 'fast-check';
import { InputError } from '@frameworthy/shared';
import { orthotropicHoleFactor } from '@frameworthy/shared/joint';
import {
  bendingHoleStress,
  biaxialHoleStress,
  drilledStripArm,
  drilledTubeArm,
  holeInArm,
  type DrilledArm,
  type HoleStation,
} from '@frameworthy/shared/notch';
import { describe, expect, test } from 'vitest';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const near = (value: number, expected: number, relative = 1e-9): void =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(relative * Math.abs(expected) + 1e-300);
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const tube = { outerDiameter: 0.014, wall: 0.001 };
const strip = { width: 0.012, height: 0.005 };
const material = { holeFactor: 4.5, pointLength: 0.8e-3, meanLength: 1.8e-3 };
const PLANES = ['vertical', 'horizontal'] as const;

/** Any part with a hole across it, as a function of the hole and of the plane of bending; the hole's axis is vertical. */
const parts = fc.record({
  kind: fc.constantFrom('tube, both walls', 'tube, one wall', 'strip'),
  size: between(0.008, 0.03),
  share: between(0.03, 0.15),
  hole: between(0.02, 0.85),
  holeFactor: between(3, 7),
  pointLength: between(0.3e-3, 2e-3),
  meanLength: between(0.5e-3, 5e-3),
});
type Part = typeof parts extends fc.Arbitrary<infer T> ? T : never;
function drilled(part: Part, bending: (typeof PLANES)[number], scale = 1): DrilledArm {
  const { kind, size, share, hole, ...rest } = part;
  const common = { holeAxis: 'vertical', bending, material: rest } as const;
  if (kind === 'strip')
    return drilledStripArm({ strip: { width: size, height: 0.005 }, holeDiameter: scale * hole * size, ...common });
  const wall = share * size;
  const walls = kind === 'tube, one wall' ? 'one' : 'both';
  return drilledTubeArm({
    tube: { outerDiameter: size, wall },
    walls,
    holeDiameter: scale * hole * (size - 2 * wall),
    ...common,
  });
}

const arm: HoleStation = {
  drilled: drilledTubeArm({
    tube,
    walls: 'both',
    holeDiameter: 0.003,
    holeAxis: 'vertical',
    bending: 'vertical',
    material,
  }),
  holeDiameter: 0.003,
  station: 0.04,
  armLength: 0.095,
  bendingStrength: 600e6,
  shearStrength: 80e6,
  shearPerForce: 2 / 40.8e-6,
};

describe('hole in an arm', () => {
  test('never strengthens, elastically or notched, and the carbon keeps at least what the elastic peak leaves', () => {
    fc.assert(
      fc.property(parts, fc.constantFrom(...PLANES), (part, bending) => {
        const arm = drilled(part, bending);
        for (const share of [
          arm.netShare,
          arm.elasticShare,
          arm.pointShare,
          arm.meanShare,
          arm.notchedShare,
          arm.shearShare,
        ]) {
          expect(share).toBeGreaterThan(0);
          expect(share).toBeLessThanOrEqual(1);
        }
        expect(arm.notchedShare).toBeLessThanOrEqual(arm.netShare);
        // A chart factor below 3 lowers the elastic peak and is not credited to the laminate.
        const credit = arm.place === 'extreme fibre' ? Math.min(1, arm.isotropicFactor / 3) : 1;
        expect(arm.notchedShare).toBeGreaterThanOrEqual(arm.elasticShare * credit * (1 - 1e-9));
      }),
    );
  });

  test('costs less at the neutral axis than at the extreme fibre', () => {
    fc.assert(
      fc.property(parts, (part) => {
        const [extreme, neutral] = [drilled(part, 'vertical'), drilled(part, 'horizontal')];
        expect([extreme.place, neutral.place]).toEqual(['extreme fibre', 'neutral axis']);
        for (const share of ['netShare', 'elasticShare', 'notchedShare'] as const)
          expect(neutral[share], share).toBeGreaterThan(extreme[share]);
      }),
    );
  });

  test('a wider hole never costs less', () => {
    fc.assert(
      fc.property(parts, fc.constantFrom(...PLANES), between(0.3, 0.99), (part, bending, smaller) => {
        const [small, large] = [drilled(part, bending, smaller), drilled(part, bending)];
        expect(large.netShare).toBeLessThanOrEqual(small.netShare * (1 + 1e-9));
        expect(large.notchedShare).toBeLessThanOrEqual(small.notchedShare * (1 + 1e-9));
      }),
    );
  });

  test('a vanishing hole costs nothing as a notch, and elastically still its whole factor', () => {
    for (const bending of PLANES) {
      const common = { holeDiameter: 1e-6, holeAxis: 'vertical', bending, material } as const;
      for (const arm of [drilledTubeArm({ tube, walls: 'both', ...common }), drilledStripArm({ strip, ...common })]) {
        near(arm.notchedShare, 1, 2e-3);
        near(arm.elasticShare, bending === 'vertical' ? 1 / material.holeFactor : 1, 2e-3);
      }
    }
  });

  test('a hole that is huge against the laminate’s lengths keeps what the elastic peak leaves', () => {
    for (const holeFactor of [3, 4.5, 6]) {
      const arm = drilledStripArm({
        strip: { width: 90, height: 1 },
        holeDiameter: 5,
        holeAxis: 'vertical',
        bending: 'vertical',
        material: { ...material, holeFactor },
      });
      near(arm.pointShare, 1 / arm.laminateFactor, 0.01);
      near(arm.meanShare, 1 / arm.laminateFactor, 0.01);
    }
  });

  test('off centre it costs more and more', () => {
    const at = (offset: number): number =>
      drilledStripArm({ strip, holeDiameter: 0.002, offset, holeAxis: 'vertical', bending: 'horizontal', material })
        .notchedShare;
    for (let i = 0; i < 8; i++) expect(at((i + 1) * 0.0005)).toBeLessThanOrEqual(at(i * 0.0005));
    near(at(-0.002), at(0.002));
  });

  test('one wall costs less than both', () => {
    const common = { tube, holeDiameter: 0.003, holeAxis: 'vertical', material } as const;
    for (const bending of PLANES) {
      const [one, both] = (['one', 'both'] as const).map((walls) => drilledTubeArm({ ...common, bending, walls }));
      expect(one!.notchedShare).toBeGreaterThan(both!.notchedShare);
      expect(one!.elasticShare).toBeGreaterThan(both!.elasticShare);
    }
  });

  test('turning the hole and the load together changes nothing in a tube', () => {
    const common = { tube, walls: 'both', holeDiameter: 0.003, material } as const;
    expect(drilledTubeArm({ ...common, holeAxis: 'vertical', bending: 'vertical' })).toEqual(
      drilledTubeArm({ ...common, holeAxis: 'horizontal', bending: 'horizontal' }),
    );
  });

  test('is refused where it does not fit', () => {
    const refused = (run: () => unknown): string => {
      try {
        run();
      } catch (error) {
        if (error instanceof InputError) return error.parameter;
      }
      return 'accepted';
    };
    const common = { holeAxis: 'vertical', bending: 'vertical', material } as const;
    expect(refused(() => drilledTubeArm({ tube, walls: 'both', holeDiameter: 0.012, ...common }))).toBe('holeDiameter');
    expect(refused(() => drilledStripArm({ strip, holeDiameter: 0.012, ...common }))).toBe('holeDiameter');
    expect(refused(() => drilledStripArm({ strip, holeDiameter: 0.004, offset: 0.004, ...common }))).toBe('offset');
    for (const station of [-0.01, 0.001, 0.0945, 0.095, 0.2])
      expect(
        refused(() => holeInArm({ ...arm, station })),
        String(station),
      ).toBe('station');
  });

  test('with a hole the arm never bears more, and from a stated station on no less', () => {
    fc.assert(
      fc.property(between(0.004, 0.09), (station) => {
        const { armForce, rootForce, holeForce, wholeForce, harmlessFrom } = holeInArm({ ...arm, station });
        expect(armForce).toBeLessThanOrEqual(rootForce);
        expect(holeForce).toBeLessThanOrEqual(wholeForce);
        expect(holeForce >= rootForce * (1 - 1e-9)).toBe(station >= harmlessFrom * (1 - 1e-12));
      }),
    );
  });
});

describe('fields beside a hole', () => {
  test('agree with plain tension, die out, and add up', () => {
    fc.assert(
      fc.property(between(0.01, 1), between(-1, 1), (q, ratio) => {
        near(biaxialHoleStress(q, 0), (2 + q ** 2 + 3 * q ** 4) / 2);
        // One stress turned by a right angle, by superposition of the two single ones.
        near(biaxialHoleStress(q, ratio) + biaxialHoleStress(q, -ratio), 2 * biaxialHoleStress(q, 0));
      }),
    );
    near(biaxialHoleStress(0, 0.3), 1);
    near(bendingHoleStress(0, 6), 1);
  });

  test('at the neutral axis: a numerical solution of the hole’s boundary gives the same peak', () => {
    for (const sheet of [
      { modulusX: 90e9, modulusY: 25e9, shearModulus: 10e9, poissonRatio: 0.3 },
      { modulusX: 127e9, modulusY: 9e9, shearModulus: 4.5e9, poissonRatio: 0.3 },
    ]) {
      const a = sheet.modulusX / sheet.modulusY;
      const b = sheet.modulusX / sheet.shearModulus - 2 * sheet.poissonRatio;
      // β⁴ - b β² + a = 0 for x along the load.
      const root = Math.sqrt(b ** 2 - 4 * a);
      const betas = [Math.sqrt((b + root) / 2), Math.sqrt((b - root) / 2)] as const;
      near(betas[0] + betas[1], orthotropicHoleFactor(sheet) - 1, 1e-9);
      near(peakBySolving(betas), bendingHoleStress(1, orthotropicHoleFactor(sheet)), 1e-6);
    }
  });
});

/**
 * Sheet with real roots β under the far stress y, with a hole of radius one: hoop stress at the top of the hole over the far
 * stress there. The Airy function is y³/6 plus the potentials Re F(x + iβy) with dF/dz = iγ ζ^-2; γ by least squares from a
 * boundary without tractions, the stress by numerical differentiation.
 */
function peakBySolving(betas: readonly [number, number]): number {
  const [b1, b2] = betas;
  let [n11, n12, n22, r1, r2] = [0, 0, 0, 0, 0];
  const add = (x1: number, x2: number, y: number): void => {
    n11 += x1 * x1;
    n12 += x1 * x2;
    n22 += x2 * x2;
    r1 += x1 * y;
    r2 += x2 * y;
  };
  const samples = 720;
  const c: [number, number] = [0, 0];
  for (let i = 0; i < samples; i++) {
    const t = (2 * Math.PI * (i + 0.5)) / samples;
    // On the hole ζ = e^{iθ}: ∂U/∂x has γ sin 2θ, ∂U/∂y has -βγ cos 2θ beside y²/2; both must be constant.
    add(Math.sin(2 * t), Math.sin(2 * t), 0);
    add(-b1 * Math.cos(2 * t), -b2 * Math.cos(2 * t), -(Math.sin(t) ** 2 / 2 - 1 / 4));
  }
  const det = n11 * n22 - n12 ** 2;
  c[0] = (r1 * n22 - r2 * n12) / det;
  c[1] = (r2 * n11 - r1 * n12) / det;
  // Outside of it, on the line x = 0: ζ = is from the mapping of the hole.
  const dUdy = (y: number): number => {
    let sum = y ** 2 / 2;
    betas.forEach((b, k) => {
      const s = (b * y + Math.sqrt(b ** 2 * y ** 2 + 1 - b ** 2)) / (1 + b);
      sum += (b * c[k]!) / s ** 2;
    });
    return sum;
  };
  const h = 1e-5;
  return (-3 * dUdy(1) + 4 * dUdy(1 + h) - dUdy(1 + 2 * h)) / (2 * h);
}

test('garbage is refused with the package error, or gives finite numbers', () => {
  fc.assert(
    fc.property(fc.tuple(...Array.from({ length: 7 }, () => anyNumber)), fc.constantFrom(...PLANES), (n, plane) => {
      const [a, b, c, d, e, f, g] = n as [number, number, number, number, number, number, number];
      const anyTube = { outerDiameter: a, wall: b };
      const hole = {
        holeDiameter: c,
        holeAxis: plane,
        bending: 'vertical',
        material: { holeFactor: d, pointLength: e, meanLength: f },
      } as const;
      const runs: (() => unknown)[] = [
        () => biaxialHoleStress(a, b),
        () => bendingHoleStress(a, b),
        () => drilledTubeArm({ tube: anyTube, walls: 'both', ...hole }),
        () => drilledTubeArm({ tube: anyTube, walls: 'one', ...hole }),
        () => drilledTubeArm({ tube, walls: 'one', ...hole }),
        () => drilledStripArm({ strip: { width: a, height: b }, offset: g, ...hole }),
        () => drilledStripArm({ strip, offset: g, ...hole }),
        () =>
          holeInArm({
            ...arm,
            holeDiameter: a,
            station: b,
            armLength: c,
            bendingStrength: d,
            shearStrength: e,
            shearPerForce: f,
          }),
      ];
      for (const run of runs) refusesOrFinite(run);
    }),
    { numRuns: 500 },
  );
});
