import {
  angularAcceleration,
  agility,
  boxBody,
  circleMoments,
  comparePlacements,
  costOfGrams,
  craftParts,
  cylinderBody,
  discBody,
  fourMotors,
  hoverSplit,
  inertiaAboutCentre,
  inertiaAboutPoint,
  inertiaFromPivot,
  inertiaFromTwist,
  inertiaMatrix,
  inertiaOnPlatform,
  massProperties,
  pivotPeriod,
  placement,
  plateBody,
  pointBody,
  polygonMoments,
  principalAxes,
  radiusOfGyration,
  rodBody,
  rotateInertia,
  rotationMatrix,
  subtractAreas,
  thrustMoment,
  transferAreaMoment,
  triangleInequality,
  type InertiaTensor,
  type Placed,
  type PlacementInput,
} from '@frameworthy/shared/mass';
import fc from 'fast-check';
import { InputError } from '@frameworthy/shared';
import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const size = fc.double({ min: 1e-3, max: 0.3, noNaN: true });
const mass = fc.double({ min: 1e-3, max: 1, noNaN: true });
const place = fc.double({ min: -0.3, max: 0.3, noNaN: true });
const angle = fc.double({ min: -7, max: 7, noNaN: true });
const position = fc.record({ x: place, y: place, z: place });
const orientation = fc.record({ roll: angle, pitch: angle, yaw: angle });
const body = fc.oneof(
  fc.record({ mass, length: size, width: size, height: size }).map(boxBody),
  fc
    .record({ mass, outerRadius: size, length: size })
    .map((solid) => cylinderBody({ ...solid, innerRadius: 0.8 * solid.outerRadius })),
  fc.record({ mass, radius: size }).map(discBody),
  fc.record({ mass, length: size }).map(rodBody),
);
const part: fc.Arbitrary<Placed> = fc.record({ body, position, orientation });
const parts = fc.array(part, { minLength: 1, maxLength: 8 });
const tensor = parts.map((all) => massProperties(all).inertia);

const trace = ({ xx, yy, zz }: InertiaTensor) => xx + yy + zz;
const entries = ({ xx, yy, zz, xy, xz, yz }: InertiaTensor) => [xx, yy, zz, xy, xz, yz];
/** Entries agree within a share of the trace: a single entry may be near zero. */
function alike(a: InertiaTensor, b: InertiaTensor, share = 1e-9): void {
  const scale = Math.max(trace(a), trace(b), 1e-12);
  entries(a).forEach((value, i) =>
    expect(Math.abs(value - (entries(b)[i] as number))).toBeLessThanOrEqual(share * scale),
  );
}

describe('an inertia tensor', () => {
  test('keeps its trace and principal moments however the body is turned', () => {
    fc.assert(
      fc.property(tensor, orientation, (own, turn) => {
        const turned = rotateInertia(own, turn);
        expect(trace(turned)).toBeCloseTo(trace(own), 12);
        const [before, after] = [principalAxes(own), principalAxes(turned)];
        before.forEach(({ moment }, k) =>
          expect(Math.abs(moment - (after[k]?.moment ?? NaN))).toBeLessThanOrEqual(1e-10 * trace(own)),
        );
      }),
    );
  });

  test('of a thin rod that was turned is taken, with nothing or a hair of rounding about its own axis', () => {
    const own = {
      xx: 3.596928203842613e-11,
      yy: 4.736405129490722e-11,
      zz: 8.333333333333334e-11,
      xy: -4.1275306413266035e-11,
      xz: 0,
      yz: 0,
    };
    const turned = rotateInertia(own, { roll: 0, pitch: 0, yaw: 6.999999997238199 });
    expect(Math.min(turned.xx, turned.yy)).toBeLessThan(1e-12 * own.zz);
    expect(() => principalAxes(turned)).not.toThrow();
    expect(() => principalAxes({ ...own, xx: -1e-15 })).toThrow(InputError);
  });

  test('a rotation matrix is orthogonal and does not mirror', () => {
    fc.assert(
      fc.property(orientation, (turn) => {
        const r = new Matrix(rotationMatrix(turn));
        expect(r.mmul(r.transpose()).sub(Matrix.eye(3)).norm()).toBeLessThan(1e-12);
        const [[a, b, c], [d, e, f], [g, h, i]] = rotationMatrix(turn);
        expect(a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)).toBeCloseTo(1, 12);
      }),
    );
  });

  test('a quarter turn of yaw takes x to y and swaps the two moments', () => {
    fc.assert(
      fc.property(tensor, (own) => {
        const turned = rotateInertia(own, { yaw: Math.PI / 2 });
        alike(turned, { xx: own.yy, yy: own.xx, zz: own.zz, xy: -own.xy, xz: -own.yz, yz: own.xz });
      }),
    );
  });

  test('has the principal moments that a general linear-algebra library finds', () => {
    fc.assert(
      fc.property(tensor, (own) => {
        const reference = new EigenvalueDecomposition(new Matrix(inertiaMatrix(own)), {
          assumeSymmetric: true,
        }).realEigenvalues.sort((a, b) => a - b);
        principalAxes(own).forEach(({ moment }, k) =>
          expect(Math.abs(moment - (reference[k] as number))).toBeLessThanOrEqual(1e-10 * trace(own)),
        );
      }),
    );
  });

  test('principal axes are orthogonal unit vectors that the tensor only stretches', () => {
    fc.assert(
      fc.property(tensor, (own) => {
        const axes = principalAxes(own);
        const v = new Matrix(axes.map(({ direction: { x, y, z } }) => [x, y, z])).transpose();
        expect(v.transpose().mmul(v).sub(Matrix.eye(3)).norm()).toBeLessThan(1e-10);
        const stretched = v.mmul(Matrix.diag(axes.map(({ moment }) => moment)));
        expect(new Matrix(inertiaMatrix(own)).mmul(v).sub(stretched).norm()).toBeLessThanOrEqual(1e-10 * trace(own));
      }),
    );
  });

  test('of any assembly satisfies the triangle inequality', () => {
    fc.assert(
      fc.property(parts, (all) => {
        expect(triangleInequality(massProperties(all).inertia)).toEqual({ shortfall: 0, warnings: [] });
      }),
    );
  });

  test('that no body can have is named, however it is turned', () => {
    fc.assert(
      fc.property(mass, fc.double({ min: 2.01, max: 50, noNaN: true }), orientation, (small, times, turn) => {
        const impossible = { xx: small, yy: small, zz: times * small, xy: 0, xz: 0, yz: 0 };
        const { shortfall, warnings } = triangleInequality(rotateInertia(impossible, turn));
        expect(shortfall).toBeCloseTo(1 - 2 / times, 9);
        expect(warnings.map(({ code }) => code)).toEqual(['inertia-impossible']);
      }),
    );
  });

  test('moved to any point and back is the same', () => {
    fc.assert(
      fc.property(tensor, mass, position, (own, m, offset) => {
        const there = inertiaAboutPoint({ inertia: own, mass: m, offset });
        alike(inertiaAboutCentre({ inertia: there, mass: m, offset }), own, 1e-6);
        expect(trace(there)).toBeGreaterThanOrEqual(trace(own));
      }),
    );
  });
});

describe('an assembly', () => {
  test('does not depend on the order of its parts', () => {
    fc.assert(
      fc.property(parts, (all) => {
        const [a, b] = [massProperties(all), massProperties([...all].reverse())];
        expect(a.mass).toBeCloseTo(b.mass, 12);
        alike(a.inertia, b.inertia);
      }),
    );
  });

  test('put together in two halves is the same as at once', () => {
    fc.assert(
      fc.property(parts, parts, (left, right) => {
        const whole = massProperties([...left, ...right]);
        const halves = [left, right].map((half) => {
          const { mass: m, centre, inertia } = massProperties(half);
          return { body: { mass: m, inertia }, position: centre };
        });
        const joined = massProperties(halves);
        expect(joined.mass).toBeCloseTo(whole.mass, 12);
        for (const axis of ['x', 'y', 'z'] as const) expect(joined.centre[axis]).toBeCloseTo(whole.centre[axis], 12);
        alike(joined.inertia, whole.inertia);
      }),
    );
  });

  test('carried to another place keeps its inertia, and its centre goes along', () => {
    fc.assert(
      fc.property(parts, position, (all, by) => {
        const moved = all.map((one) => ({
          ...one,
          position: { x: one.position.x + by.x, y: one.position.y + by.y, z: one.position.z + by.z },
        }));
        const [here, there] = [massProperties(all), massProperties(moved)];
        expect(there.centre.x).toBeCloseTo(here.centre.x + by.x, 12);
        alike(there.inertia, here.inertia);
      }),
    );
  });

  test('turned as a whole has the turned tensor', () => {
    fc.assert(
      fc.property(parts, angle, (all, by) => {
        const [c, s] = [Math.cos(by), Math.sin(by)];
        const turned = all.map(({ body: own, position: { x, y, z }, orientation: lie }) => ({
          body: own,
          position: { x: c * x - s * y, y: s * x + c * y, z },
          orientation: { ...lie, yaw: (lie?.yaw ?? 0) + by },
        }));
        alike(massProperties(turned).inertia, rotateInertia(massProperties(all).inertia, { yaw: by }));
      }),
    );
  });

  test('with its mirror image has no sideways offset and no products with y', () => {
    fc.assert(
      fc.property(fc.array(fc.record({ body, position }), { minLength: 1, maxLength: 5 }), (all) => {
        const mirrored = all.map((one) => ({ ...one, position: { ...one.position, y: -one.position.y } }));
        const { centre, inertia } = massProperties([...all, ...mirrored]);
        expect(Math.abs(centre.y)).toBeLessThan(1e-12);
        expect(Math.abs(inertia.xy)).toBeLessThanOrEqual(1e-12 * trace(inertia));
        expect(Math.abs(inertia.yz)).toBeLessThanOrEqual(1e-12 * trace(inertia));
      }),
    );
  });
});

describe('a plate', () => {
  test('cut as a rectangle equals a box', () => {
    fc.assert(
      fc.property(size, size, size, position, (length, width, height, at) => {
        const outline = [
          [1, 1],
          [-1, 1],
          [-1, -1],
          [1, -1],
        ].map(([i, j]) => ({ x: at.x + ((i as number) * length) / 2, y: at.y + ((j as number) * width) / 2 }));
        const { body: plate, centre } = plateBody({ thickness: height, density: 1600, outline });
        expect(centre.x).toBeCloseTo(at.x, 9);
        alike(plate.inertia, boxBody({ mass: 1600 * length * width * height, length, width, height }).inertia);
      }),
    );
  });

  test('is the same whichever way round its corners are given, and whether a cutout is a polygon or a second outline', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.2, noNaN: true }),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        (a, share) => {
          const square = (half: number) => [
            { x: half, y: half },
            { x: -half, y: half },
            { x: -half, y: -half },
            { x: half, y: -half },
          ];
          const cut = plateBody({
            thickness: 0.002,
            density: 1600,
            outline: square(a).reverse(),
            cutouts: [square(a * share)],
          });
          const whole = plateBody({ thickness: 0.002, density: 1600, outline: square(a) });
          const gone = plateBody({ thickness: 0.002, density: 1600, outline: square(a * share) });
          expect(cut.body.mass + gone.body.mass).toBeCloseTo(whole.body.mass, 12);
          expect(cut.body.inertia.zz + gone.body.inertia.zz).toBeCloseTo(whole.body.inertia.zz, 12);
        },
      ),
    );
  });

  test('with very many corners becomes a disc', () => {
    const corners = Array.from({ length: 2000 }, (_, i) => ({
      x: 0.05 * Math.cos((i * Math.PI) / 1000),
      y: 0.05 * Math.sin((i * Math.PI) / 1000),
    }));
    const polygon = polygonMoments(corners);
    const circle = circleMoments({ centre: { x: 0, y: 0 }, radius: 0.05 });
    expect(polygon.area / circle.area).toBeCloseTo(1, 5);
    expect(polygon.aboutX / circle.aboutX).toBeCloseTo(1, 5);
  });
});

const craft = {
  body: { mass: 0.21, length: 0.15, width: 0.045, height: 0.033 },
  bodyDepth: 0.008,
  armMass: 0.015,
  armLength: 0.09,
  motorMass: 0.0375,
  wheelbase: 0.225,
  armAngle: Math.PI / 4,
  propellerHeight: 0.027,
};
const pack = { mass: 0.23, length: 0.078, width: 0.04, height: 0.046 };
const given: PlacementInput = {
  craft,
  battery: { pack, lie: 'crosswise', side: 'above', forward: 0, gap: 0.003 },
  fullThrust: 15,
  torquePerThrust: 0.0135,
};
const forward = fc.double({ min: -0.08, max: 0.08, noNaN: true });

describe('turning and hovering', () => {
  test('acceleration answers the moment as Euler says', () => {
    fc.assert(
      fc.property(parts, position, (all, moment) => {
        // A box among them: rods in line alone resist nothing about their own axis, and are refused.
        const solid = {
          body: boxBody({ mass: 0.1, length: 0.05, width: 0.05, height: 0.05 }),
          position: { x: 0, y: 0, z: 0 },
        };
        const { inertia } = massProperties([solid, ...all]);
        const { x, y, z } = angularAcceleration(inertia, moment);
        const back = new Matrix(inertiaMatrix(inertia)).mmul(Matrix.columnVector([x, y, z])).to1DArray();
        [moment.x, moment.y, moment.z].forEach((value, k) => expect(back[k]).toBeCloseTo(value, 9));
      }),
    );
  });

  test('doubling thrust doubles every acceleration; a frame twice the size and eight times the mass turns sixteen times slower', () => {
    const base = placement(given).agility;
    const strong = placement({ ...given, fullThrust: 30 }).agility;
    const grown = fourMotors({ wheelbase: 0.45, armAngle: Math.PI / 4, height: 0 });
    const small = fourMotors({ wheelbase: 0.225, armAngle: Math.PI / 4, height: 0 });
    const solid = (k: number) =>
      massProperties([
        {
          body: boxBody({ mass: 0.5 * k ** 3, length: 0.1 * k, width: 0.08 * k, height: 0.05 * k }),
          position: { x: 0, y: 0, z: 0 },
        },
      ]);
    const of = (k: number) =>
      agility({ properties: solid(k), motors: k === 1 ? small : grown, fullThrust: 15, torquePerThrust: 0.0135 });
    expect(strong.roll / base.roll).toBeCloseTo(2, 12);
    expect(strong.yaw / base.yaw).toBeCloseTo(2, 12);
    expect(of(1).roll / of(2).roll).toBeCloseTo(16, 9);
    expect(of(1).yaw / of(2).yaw).toBeCloseTo(32, 9);
  });

  test('hover thrusts carry the weight and turn nothing', () => {
    fc.assert(
      fc.property(position, mass, fc.double({ min: 0.3, max: 1.2, noNaN: true }), (centre, m, armAngle) => {
        const motors = fourMotors({ wheelbase: 0.225, armAngle, height: 0.03 });
        const { thrusts } = hoverSplit({ motors, mass: m, centre, fullThrust: 15 });
        expect(thrusts.reduce((sum, t) => sum + t, 0)).toBeCloseTo(m * 9.80665, 9);
        const moment = thrustMoment({ motors, thrusts, torquePerThrust: 0.0135, about: centre });
        for (const value of Object.values(moment)) expect(Math.abs(value)).toBeLessThan(1e-9);
      }),
    );
  });

  test('a centre of mass outside the motors is named', () => {
    const motors = fourMotors({ wheelbase: 0.225, armAngle: Math.PI / 4, height: 0 });
    const far = hoverSplit({ motors, mass: 0.65, centre: { x: 0.2, y: 0, z: 0 }, fullThrust: 15 });
    const heavy = hoverSplit({ motors, mass: 10, centre: { x: 0, y: 0, z: 0 }, fullThrust: 15 });
    expect(far.warnings.map(({ code }) => code)).toEqual(['hover-outside-motors']);
    expect(heavy.warnings.map(({ code }) => code)).toEqual(['hover-above-full-thrust']);
  });

  test('a battery moved forward loads the front motors as the same step back loads the rear ones', () => {
    fc.assert(
      fc.property(forward, (step) => {
        const [ahead, behind] = [step, -step].map((x) =>
          placement({ ...given, battery: { ...given.battery, forward: x } }),
        );
        expect(ahead?.frontShare).toBeCloseTo(behind?.rearShare ?? NaN, 12);
        expect(ahead?.agility.pitch).toBeCloseTo(behind?.agility.pitch ?? NaN, 8);
        if (step > 1e-6) expect(ahead?.frontShare).toBeGreaterThan(ahead?.rearShare ?? NaN);
      }),
    );
  });

  test('any step off the middle costs pitch and yaw and leaves roll alone', () => {
    const { agility: middle } = placement(given);
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 0.08, noNaN: true }), (step) => {
        const off = placement({ ...given, battery: { ...given.battery, forward: step } });
        expect(off.agility.pitch).toBeLessThan(middle.pitch);
        expect(off.agility.yaw).toBeLessThan(middle.yaw);
        expect(off.agility.roll / middle.roll).toBeCloseTo(1, 9);
      }),
    );
  });

  test('turning the pack a quarter trades roll for pitch and leaves yaw and the hover alone', () => {
    fc.assert(
      fc.property(forward, (step) => {
        const { chosen, turned } = comparePlacements({ ...given, battery: { ...given.battery, forward: step } });
        expect(turned.agility.roll).toBeGreaterThan(chosen.agility.roll);
        expect(turned.agility.pitch).toBeLessThan(chosen.agility.pitch);
        expect(turned.agility.yaw / chosen.agility.yaw).toBeCloseTo(1, 9);
        expect(turned.frontShare).toBeCloseTo(chosen.frontShare, 12);
      }),
    );
  });

  test('a gram costs with the square of its place, nothing in the middle, and the same in climb everywhere', () => {
    const motors = fourMotors({ wheelbase: 0.225, armAngle: Math.PI / 4, height: 0 });
    const frame = [
      { body: boxBody({ mass: 0.5, length: 0.1, width: 0.08, height: 0.05 }), position: { x: 0, y: 0, z: 0 } },
    ];
    const at = (reach: number) =>
      costOfGrams({ parts: frame, motors, fullThrust: 15, torquePerThrust: 0.0135, mass: 1e-6, reach });
    expect(at(0).roll).toBeLessThan(1e-12);
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 1, noNaN: true }), (reach) => {
        expect(at(reach).roll / at(1).roll).toBeCloseTo(reach ** 2, 4);
        expect(at(reach).climb).toBeCloseTo(at(1).climb, 12);
      }),
    );
  });
});

describe('garbage', () => {
  const vector = fc.record({ x: anyNumber, y: anyNumber, z: anyNumber });
  const wild = fc.record({ xx: anyNumber, yy: anyNumber, zz: anyNumber, xy: anyNumber, xz: anyNumber, yz: anyNumber });
  const turn = fc.record({ roll: anyNumber, pitch: anyNumber, yaw: anyNumber });
  const box = fc.record({ mass: anyNumber, length: anyNumber, width: anyNumber, height: anyNumber });
  const corners = fc.array(fc.record({ x: anyNumber, y: anyNumber }), { maxLength: 6 });
  const swing = fc.record({
    mass: anyNumber,
    period: anyNumber,
    radius: anyNumber,
    wireLength: anyNumber,
    gravity: anyNumber,
  });
  const layout = fc.record({ wheelbase: anyNumber, armAngle: anyNumber, height: anyNumber });
  const runs: Record<string, fc.Arbitrary<() => unknown>> = {
    boxBody: box.map((input) => () => boxBody(input)),
    cylinderBody: fc
      .record({ mass: anyNumber, outerRadius: anyNumber, innerRadius: anyNumber, length: anyNumber })
      .map((input) => () => cylinderBody(input)),
    discBody: fc.record({ mass: anyNumber, radius: anyNumber }).map((input) => () => discBody(input)),
    rodBody: fc.record({ mass: anyNumber, length: anyNumber }).map((input) => () => rodBody(input)),
    pointBody: anyNumber.map((input) => () => pointBody(input)),
    polygonMoments: corners.map((input) => () => polygonMoments(input)),
    plateBody: fc
      .record({
        thickness: anyNumber,
        density: anyNumber,
        outline: corners,
        cutouts: fc.array(corners, { maxLength: 2 }),
        holes: fc.array(fc.record({ centre: fc.record({ x: anyNumber, y: anyNumber }), radius: anyNumber }), {
          maxLength: 2,
        }),
      })
      .map((input) => () => plateBody(input)),
    subtractAreas: fc.tuple(corners, corners).map(
      ([a, b]) =>
        () =>
          subtractAreas(polygonMoments(a), [polygonMoments(b)]),
    ),
    transferAreaMoment: fc
      .record({ secondMoment: anyNumber, area: anyNumber, from: anyNumber, to: anyNumber })
      .map((input) => () => transferAreaMoment(input)),
    massProperties: fc
      .array(fc.record({ body: fc.record({ mass: anyNumber, inertia: wild }), position: vector, orientation: turn }), {
        maxLength: 3,
      })
      .map((input) => () => massProperties(input)),
    rotateInertia: fc.tuple(wild, turn).map(
      ([a, b]) =>
        () =>
          rotateInertia(a, b),
    ),
    inertiaAboutPoint: fc
      .record({ inertia: wild, mass: anyNumber, offset: vector })
      .map((input) => () => inertiaAboutPoint(input)),
    inertiaAboutCentre: fc
      .record({ inertia: wild, mass: anyNumber, offset: vector })
      .map((input) => () => inertiaAboutCentre(input)),
    principalAxes: wild.map((input) => () => principalAxes(input)),
    triangleInequality: wild.map((input) => () => triangleInequality(input)),
    angularAcceleration: fc.tuple(wild, vector).map(
      ([a, b]) =>
        () =>
          angularAcceleration(a, b),
    ),
    inertiaFromTwist: swing.map((input) => () => inertiaFromTwist(input)),
    inertiaOnPlatform: fc.tuple(swing, anyNumber, anyNumber).map(
      ([a, platformMass, platformPeriod]) =>
        () =>
          inertiaOnPlatform({ ...a, platformMass, platformPeriod }),
    ),
    inertiaFromPivot: fc
      .record({ mass: anyNumber, period: anyNumber, distance: anyNumber, gravity: anyNumber })
      .map((input) => () => inertiaFromPivot(input)),
    pivotPeriod: fc
      .record({ radiusOfGyration: anyNumber, distance: anyNumber, gravity: anyNumber })
      .map((input) => () => pivotPeriod(input)),
    radiusOfGyration: fc.tuple(anyNumber, anyNumber).map(
      ([a, b]) =>
        () =>
          radiusOfGyration(a, b),
    ),
    hoverSplit: fc
      .tuple(
        fc.array(fc.record({ position: vector, reaction: fc.constantFrom(1 as const, -1 as const) }), { maxLength: 5 }),
        anyNumber,
        vector,
        anyNumber,
      )
      .map(
        ([motors, m, centre, fullThrust]) =>
          () =>
            hoverSplit({ motors, mass: m, centre, fullThrust }),
      ),
    thrustMoment: fc.tuple(layout, fc.array(anyNumber, { minLength: 3, maxLength: 4 }), anyNumber, vector).map(
      ([a, thrusts, torquePerThrust, about]) =>
        () =>
          thrustMoment({ motors: fourMotors(a), thrusts, torquePerThrust, about }),
    ),
    craftParts: fc
      .record({
        body: box,
        bodyDepth: anyNumber,
        armMass: anyNumber,
        armLength: anyNumber,
        motorMass: anyNumber,
        wheelbase: anyNumber,
        armAngle: anyNumber,
        propellerHeight: anyNumber,
      })
      .map((input) => () => craftParts(input)),
    placement: fc
      .record({
        pack: box,
        forward: anyNumber,
        gap: anyNumber,
        fullThrust: anyNumber,
        torquePerThrust: anyNumber,
        wheelbase: anyNumber,
      })
      .map(
        ({ wheelbase, fullThrust, torquePerThrust, ...battery }) =>
          () =>
            comparePlacements({
              craft: { ...craft, wheelbase },
              battery: { ...given.battery, ...battery },
              fullThrust,
              torquePerThrust,
            }),
      ),
    costOfGrams: fc
      .record({ mass: anyNumber, reach: anyNumber, fullThrust: anyNumber, torquePerThrust: anyNumber })
      .map((input) => () => costOfGrams({ ...input, ...craftParts(craft) })),
  };
  test.each(Object.entries(runs))('%s refuses by name or gives finite numbers', (_, run) => {
    fc.assert(fc.property(run, refusesOrFinite), { numRuns: 400 });
  });
});
