import fc from 'fast-check';
import { Matrix, solve } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import { InputError } from '@frameworthy/shared';
import type { Vector } from '@frameworthy/shared/mass';
import * as standoff from '@frameworthy/shared/standoff';
import type { Column, EndFixity } from '@frameworthy/shared/standoff';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const fixity: fc.Arbitrary<EndFixity> = fc.oneof(fc.constant('fixed' as const), within(5, 5e3));
const place = fc.record({ x: within(-0.08, 0.08), y: within(-0.04, 0.04) });
const point = fc.record({ x: within(-0.1, 0.1), y: within(-0.05, 0.05), z: within(0, 0.03) });
const force = fc.record({ x: within(-2000, 2000), y: within(-2000, 2000), z: within(-2000, 2000) });

const beam = fc
  .record({ outerDiameter: within(0.003, 0.008), length: within(0.012, 0.05), foot: fixity, head: fixity })
  .map((size) => standoff.roundStandoff({ ...size, bore: 0.002, youngsModulus: 69e9, shearModulus: 26e9 }));

/** Four corners keep the layout stable; the others stand anywhere. */
const layout: fc.Arbitrary<Column[]> = fc
  .record({ beam, extra: fc.array(place, { maxLength: 5 }) })
  .map(({ beam, extra }) =>
    [{ x: 0.04, y: 0.016 }, { x: 0.042, y: -0.018 }, { x: -0.045, y: 0.017 }, { x: -0.04, y: -0.016 }, ...extra].map(
      (at) => ({ ...beam, ...at }),
    ),
  );

const work = (columns: Column[], at: Vector, f: Vector): number => {
  const moved = standoff.movementAt(standoff.plateOnColumns({ columns, force: f, at }), at);
  return moved.x * f.x + moved.y * f.y + moved.z * f.z;
};

describe('a rigid plate on standoffs', () => {
  test('statics closes: forces and moments on the plate sum to nothing', () => {
    fc.assert(
      fc.property(layout, force, point, (columns, f, at) => {
        const { columns: carried } = standoff.plateOnColumns({ columns, force: f, at });
        const sum = { x: 0, y: 0, z: 0, mx: 0, my: 0, mz: 0 };
        carried.forEach((c, i) => {
          const { x, y } = columns[i]!;
          sum.x += c.shearX;
          sum.y += c.shearY;
          sum.z += c.axial;
          sum.mx += y * c.axial + c.headMomentX;
          sum.my += -x * c.axial + c.headMomentY;
          sum.mz += x * c.shearY - y * c.shearX;
        });
        const size = 1 + Math.hypot(f.x, f.y, f.z);
        const near = (ours: number, load: number) => expect(Math.abs(ours - load)).toBeLessThan(1e-6 * size);
        near(sum.x, f.x);
        near(sum.y, f.y);
        near(sum.z, f.z);
        near(sum.mx, at.y * f.z - at.z * f.y);
        near(sum.my, at.z * f.x - at.x * f.z);
        near(sum.mz, at.x * f.y - at.y * f.x);
      }),
    );
  });

  test('one more standoff anywhere never makes it softer', () => {
    fc.assert(
      fc.property(layout, place, force, point, (columns, at, f, hit) => {
        const with_ = work([...columns, { ...columns[0]!, ...at }], hit, f);
        expect(with_).toBeLessThanOrEqual(work(columns, hit, f) * (1 + 1e-9));
      }),
    );
  });

  test('two points: each moves under the other’s load alike (Maxwell)', () => {
    fc.assert(
      fc.property(layout, point, point, (columns, a, b) => {
        const unit = { x: 1, y: 0, z: 0 };
        const upwards = { x: 0, y: 0, z: 1 };
        const ab = standoff.movementAt(standoff.plateOnColumns({ columns, force: unit, at: a }), b).z;
        const ba = standoff.movementAt(standoff.plateOnColumns({ columns, force: upwards, at: b }), a).x;
        const size = Math.sqrt(work(columns, a, unit) * work(columns, b, upwards));
        expect(Math.abs(ab - ba)).toBeLessThan(1e-6 * size);
      }),
    );
  });

  test('mirrored, it moves mirrored; moved in the plan, it moves alike', () => {
    fc.assert(
      fc.property(layout, force, point, within(-0.5, 0.5), (columns, f, at, shift) => {
        const whole = standoff.movementAt(standoff.plateOnColumns({ columns, force: f, at }), at);
        const mirror = <T extends { y: number }>(v: T): T => ({ ...v, y: -v.y });
        const mirrored = standoff.movementAt(
          standoff.plateOnColumns({ columns: columns.map(mirror), force: mirror(f), at: mirror(at) }),
          mirror(at),
        );
        const along = <T extends { x: number }>(v: T): T => ({ ...v, x: v.x + shift });
        const moved = standoff.movementAt(
          standoff.plateOnColumns({ columns: columns.map(along), force: f, at: along(at) }),
          along(at),
        );
        const size = Math.hypot(whole.x, whole.y, whole.z);
        for (const axis of ['x', 'y', 'z'] as const) {
          expect(Math.abs(mirrored[axis] - (axis === 'y' ? -1 : 1) * whole[axis])).toBeLessThanOrEqual(
            1e-6 * size + 1e-15,
          );
          expect(Math.abs(moved[axis] - whole[axis])).toBeLessThanOrEqual(1e-6 * size + 1e-15);
        }
      }),
    );
  });

  test('symmetric layout, straight hit: no turn to the side, both sides carry alike', () => {
    fc.assert(
      fc.property(beam, within(-0.05, 0.05), within(0, 0.03), (one, x, z) => {
        const columns = standoff
          .patternPositions({ pattern: 'six-wide', foreAft: 0.09, across: 0.035 })
          .map((at) => ({ ...one, ...at }));
        const plate = standoff.plateOnColumns({ columns, force: { x: -500, y: 0, z: 0 }, at: { x, y: 0, z } });
        expect(Math.abs(plate.displacement.y)).toBeLessThan(1e-12);
        expect(Math.abs(plate.rotation.z)).toBeLessThan(1e-12);
        for (let i = 0; i < columns.length; i += 2)
          expect(plate.columns[i]!.shear / plate.columns[i + 1]!.shear).toBeCloseTo(1, 6);
      }),
    );
  });

  test('slender posts, fixed at both ends: moment grows as L, sway as L³', () => {
    fc.assert(
      fc.property(within(0.02, 0.05), within(1.1, 3), (length, times) => {
        const at = (l: number) => {
          const one = {
            length: l,
            flexuralRigidity: 2,
            shearRigidity: 1e12,
            axialRigidity: 1e12,
            foot: 'fixed',
            head: 'fixed',
          } as const;
          const columns = standoff
            .patternPositions({ pattern: 'four', foreAft: 0.09, across: 0.035 })
            .map((p) => ({ ...one, ...p }));
          const plate = standoff.plateOnColumns({ columns, force: { x: 100, y: 0, z: 0 }, at: { x: 0, y: 0, z: 0 } });
          return { sway: plate.displacement.x, moment: plate.columns[0]!.footMoment };
        };
        expect(at(length * times).sway / at(length).sway / times ** 3).toBeCloseTo(1, 5);
        expect(at(length * times).moment / at(length).moment / times).toBeCloseTo(1, 5);
      }),
    );
  });

  test('agrees with beam elements assembled node by node and solved by a general-purpose library', () => {
    fc.assert(
      fc.property(layout, force, point, (columns, f, at) => {
        const ours = standoff.plateOnColumns({ columns, force: f, at });
        const theirs = nodeByNode(columns, f, at);
        const size = Math.hypot(...theirs.slice(0, 3));
        const got = [ours.displacement.x, ours.displacement.y, ours.displacement.z];
        got.forEach((value, i) => expect(Math.abs(value - theirs[i]!)).toBeLessThanOrEqual(1e-5 * size));
      }),
      { numRuns: 60 },
    );
  });

  test('shear adds some ten per cent to the sway of a short standoff', () => {
    const size = {
      outerDiameter: 0.005,
      bore: 0.003,
      length: 0.025,
      youngsModulus: 69e9,
      shearModulus: 26e9,
      foot: 'fixed',
      head: 'fixed',
    } as const;
    const one = standoff.roundStandoff(size);
    const added =
      standoff.columnHeadStiffness({ ...one, shearRigidity: 1e12 }).sway / standoff.columnHeadStiffness(one).sway - 1;
    expect(added).toBeGreaterThan(0.05);
    expect(added).toBeLessThan(0.25);
  });

  test('layouts that leave the plate free are refused by name', () => {
    const one = standoff.roundStandoff({
      outerDiameter: 0.005,
      bore: 0.003,
      length: 0.025,
      youngsModulus: 69e9,
      shearModulus: 26e9,
      foot: 'pinned',
      head: 'pinned',
    });
    const hit = { force: { x: 1, y: 0, z: 0 }, at: { x: 0, y: 0, z: 0 } };
    const square = standoff.patternPositions({ pattern: 'four', foreAft: 0.09, across: 0.035 });
    const refused = (columns: Column[]) => {
      try {
        standoff.plateOnColumns({ columns, ...hit });
        return 'accepted';
      } catch (error) {
        return error instanceof InputError ? error.parameter : 'crashed';
      }
    };
    expect(refused(square.map((p) => ({ ...one, ...p })))).toBe('columns');
    expect(refused([0, 1, 2].map((i) => ({ ...one, foot: 'fixed', x: 0.02 * i, y: 0 })))).toBe('columns');
    expect(refused([{ ...one, foot: 'fixed', head: 'fixed', x: 0, y: 0 }])).toBe('columns');
    expect(refused([])).toBe('columns');
    // In one line, but held against tilt at the heads: it stands.
    expect(refused([0, 1, 2].map((i) => ({ ...one, foot: 'fixed', head: 'fixed', x: 0.02 * i, y: 0 })))).toBe(
      'accepted',
    );
  });
});

describe('a nose-first hit', () => {
  const body = (length: number, pattern: standoff.PatternName = 'four') => {
    const one = standoff.roundStandoff({
      outerDiameter: 0.005,
      bore: 0.003,
      length,
      youngsModulus: 69e9,
      shearModulus: 26e9,
      foot: 'fixed',
      head: 'fixed',
    });
    return standoff.patternPositions({ pattern, foreAft: 0.09, across: 0.035 }).map((p) => ({ ...one, ...p }));
  };
  const hit = {
    mass: 0.65,
    pitchRadius: 0.05,
    yawRadius: 0.07,
    centreOfMass: { x: 0, y: 0, z: -0.01 },
    at: { x: 0.06, y: 0.01, z: 0.003 },
    contactStiffness: 1e5,
  };

  test('force and every load grow in step with the speed', () => {
    fc.assert(
      fc.property(within(0.1, 20), within(1.1, 5), within(0.015, 0.04), (speed, times, length) => {
        const slow = standoff.noseHit({ ...hit, columns: body(length), speed });
        const fast = standoff.noseHit({ ...hit, columns: body(length), speed: speed * times });
        expect(fast.peakForce / slow.peakForce / times).toBeCloseTo(1, 9);
        slow.plate.columns.forEach((c, i) =>
          expect(fast.plate.columns[i]!.footMoment / c.footMoment / times).toBeCloseTo(1, 6),
        );
      }),
    );
  });

  test('a softer contact or a longer standoff never hits harder', () => {
    fc.assert(
      fc.property(within(0.015, 0.04), within(1.01, 2), within(1e3, 1e6), (length, times, contactStiffness) => {
        const force = (l: number, k: number) =>
          standoff.noseHit({ ...hit, columns: body(l), speed: 5, contactStiffness: k }).peakForce;
        expect(force(length * times, contactStiffness)).toBeLessThan(force(length, contactStiffness));
        expect(force(length, contactStiffness / times)).toBeLessThan(force(length, contactStiffness));
      }),
    );
  });

  test('at the speed of each limit, that limit is just used up', () => {
    const strength = {
      outerDiameter: 0.005,
      bore: 0.003,
      length: 0.03,
      youngsModulus: 69e9,
      yieldStrength: 276e6,
      screwLoad: 4200,
      plateStrength: 420e6,
    };
    const at = (speed: number) => {
      const { plate } = standoff.noseHit({ ...hit, columns: body(0.03), speed });
      return standoff.bodyLimits({ columns: plate.columns, speed }, strength);
    };
    const first = at(5);
    expect(first.map(({ speed }) => speed)).toEqual([...first.map(({ speed }) => speed)].sort((a, b) => a! - b!));
    for (const { name, speed } of first) {
      const there = at(speed!).find((limit) => limit.name === name)!;
      expect(there.applied / there.allowable).toBeCloseTo(1, 6);
    }
  });
});

describe('a body that folds', () => {
  const hits = fc.record({
    mass: within(0.1, 3),
    stiffness: within(1e4, 1e6),
    compliance: within(1e-7, 1e-5),
    foldingForce: within(200, 5000),
  });

  test('faster is farther, without a jump where folding begins', () => {
    fc.assert(
      fc.property(hits, within(0.1, 20), within(1.001, 2), (hit, speed, times) => {
        expect(standoff.foldingMovement(hit, speed * times)).toBeGreaterThan(standoff.foldingMovement(hit, speed));
        const begins = hit.foldingForce / Math.sqrt(hit.stiffness * hit.mass);
        const jump =
          standoff.foldingMovement(hit, begins * 1.000001) / standoff.foldingMovement(hit, begins * 0.999999);
        expect(jump).toBeLessThan(1.01);
      }),
    );
  });

  test('at the touch speed the movement is the gap', () => {
    fc.assert(
      fc.property(hits, within(1e-4, 0.02), (hit, gap) => {
        expect(standoff.foldingMovement(hit, standoff.touchSpeed(hit, gap)) / gap).toBeCloseTo(1, 6);
      }),
    );
  });

  test('twice as many fold at twice the force, twice as long at half', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        within(0.01, 0.05),
        within(0.004, 0.008),
        (count, length, outerDiameter) => {
          const body = { count, length, outerDiameter, bore: 0.003, yieldStrength: 276e6, hinges: 2 } as const;
          expect(standoff.foldingForce({ ...body, count: 2 * count }) / standoff.foldingForce(body)).toBeCloseTo(2, 9);
          expect(standoff.foldingForce({ ...body, length: 2 * length }) / standoff.foldingForce(body)).toBeCloseTo(
            0.5,
            9,
          );
        },
      ),
    );
  });
});

describe('the parts round a standoff', () => {
  test('the face lifts at its closing preload, and the screw then holds the moment over the ring', () => {
    fc.assert(
      fc.property(within(0.004, 0.01), within(0, 20), within(-500, 500), (outerDiameter, moment, axial) => {
        const end = { outerDiameter, bore: 0.003, moment, axial };
        const more = { ...end, moment: moment + 1 };
        expect(standoff.closingPreload(more)).toBeGreaterThan(standoff.closingPreload(end));
        expect(standoff.screwTension(more)).toBeGreaterThanOrEqual(standoff.screwTension(end));
        expect(standoff.screwTension({ ...end, axial: -1e5 })).toBe(0);
      }),
    );
  });

  test('a plate twice as thick holds a foot eight times as stiffly at a quarter of the stress', () => {
    fc.assert(
      fc.property(within(0.001, 0.005), within(0.006, 0.03), (thickness, plateRadius) => {
        const plate = { thickness, plateRadius, bossRadius: 0.0025, edge: 'supported', youngsModulus: 47e9 } as const;
        const thick = { ...plate, thickness: 2 * thickness };
        expect(standoff.plateFootStiffness(thick) / standoff.plateFootStiffness(plate)).toBeCloseTo(8, 6);
        expect(standoff.plateFootStress(plate, 1) / standoff.plateFootStress(thick, 1)).toBeCloseTo(4, 6);
      }),
    );
  });

  test('catalogue: what is picked clears, and the next one down does not', () => {
    fc.assert(
      fc.property(within(0.005, 0.025), within(0, 0.005), within(0, 0.005), (height, clearance, movement) => {
        const { length, needed, spare } = standoff.shortestThatClears({ height, clearance, movement });
        expect(length).toBeGreaterThanOrEqual(needed - 1e-8);
        expect(spare).toBeCloseTo(Math.max(0, length - needed), 9);
        const shorter = standoff.CATALOGUE_LENGTHS.filter((l) => l < length);
        for (const l of shorter) expect(l).toBeLessThan(needed);
      }),
    );
  });

  test('a stack higher than any standoff is refused with the longest length named', () => {
    expect(() => standoff.shortestThatClears({ height: 0.034, clearance: 0.001, movement: 0.001 })).toThrow(InputError);
  });

  test('strut: more slender, sooner buckled, never above yield', () => {
    fc.assert(
      fc.property(within(1e-3, 1), within(1.01, 3), (effectiveLength, times) => {
        const strut = { effectiveLength, radiusOfGyration: 1.4e-3, youngsModulus: 69e9, yieldStrength: 276e6 };
        expect(standoff.bucklingStress(strut)).toBeLessThanOrEqual(276e6);
        expect(standoff.bucklingStress({ ...strut, effectiveLength: effectiveLength * times })).toBeLessThan(
          standoff.bucklingStress(strut),
        );
      }),
    );
  });

  test('anything within the allowed ranges, however odd together: finite results or an InputError', () => {
    const decades = (from: number, to: number) => within(from, to).map((power) => 10 ** power);
    const odd = fc.record({
      length: decades(-4, 3),
      flexuralRigidity: decades(-9, 12),
      shearRigidity: decades(-6, 15),
      axialRigidity: decades(-6, 15),
    });
    fc.assert(
      fc.property(odd, decades(-10, 2), decades(-10, 2), fixity, force, (one, foreAft, across, foot, f) => {
        refusesOrFinite(() => {
          const columns = standoff
            .patternPositions({ pattern: 'eight', foreAft, across })
            .map((p) => ({ ...one, ...p, foot, head: 'fixed' as const }));
          return standoff.plateOnColumns({ columns, force: f, at: { x: foreAft, y: 0, z: across } });
        });
      }),
      { numRuns: 500 },
    );
  });

  test('whatever is put in: finite results or an InputError', () => {
    const some = fc.array(anyNumber, { minLength: 16, maxLength: 16 });
    fc.assert(
      fc.property(
        some,
        fc.constantFrom(...(Object.keys(standoff.PATTERNS) as standoff.PatternName[])),
        fc.boolean(),
        (n, pattern, pinned) => {
          const [a, b, c, d, e, f, g, h] = n as [number, number, number, number, number, number, number, number];
          const foot: EndFixity = pinned ? 'pinned' : e;
          const one = { length: a, flexuralRigidity: b, shearRigidity: c, axialRigidity: d, foot, head: f };
          const place = { x: g, y: h, z: n[8]! };
          refusesOrFinite(() => standoff.columnHeadStiffness(one));
          refusesOrFinite(() =>
            standoff.plateOnColumns({
              columns: [one, one, one].map((c_, i) => ({ ...c_, x: n[i + 8]!, y: n[i + 11]! })),
              force: place,
              at: place,
            }),
          );
          refusesOrFinite(() =>
            standoff.roundStandoff({
              outerDiameter: a,
              bore: b,
              length: c,
              youngsModulus: d,
              shearModulus: e,
              foot: f,
              head: 'fixed',
            }),
          );
          refusesOrFinite(() => standoff.patternPositions({ pattern, foreAft: a, across: b }));
          refusesOrFinite(() =>
            standoff.rigidDiaphragm([
              { x: a, y: b, stiffnessX: c, stiffnessY: d },
              { x: e, y: f, stiffnessX: g, stiffnessY: h },
            ]),
          );
          const plate = {
            thickness: a,
            youngsModulus: b,
            bossRadius: c,
            plateRadius: d,
            edge: pinned ? 'fixed' : 'supported',
          } as const;
          refusesOrFinite(() => standoff.plateFootStiffness(plate));
          refusesOrFinite(() => standoff.plateFootStress(plate, e));
          const end = { outerDiameter: a, bore: b, moment: c, axial: d };
          refusesOrFinite(() => standoff.wallStress(end));
          refusesOrFinite(() => standoff.closingPreload(end));
          refusesOrFinite(() => standoff.screwTension(end));
          refusesOrFinite(() =>
            standoff.bucklingStress({ effectiveLength: a, radiusOfGyration: b, youngsModulus: c, yieldStrength: d }),
          );
          refusesOrFinite(() => standoff.eulerLoad(a, b));
          refusesOrFinite(() =>
            standoff.foldingForce({ count: a, length: b, outerDiameter: c, bore: d, yieldStrength: e, hinges: 2 }),
          );
          refusesOrFinite(() => standoff.foldingMovement({ mass: a, stiffness: b, compliance: c, foldingForce: d }, e));
          refusesOrFinite(() => standoff.touchSpeed({ mass: a, stiffness: b, compliance: c, foldingForce: d }, e));
          refusesOrFinite(() => standoff.shortestThatClears({ height: a, clearance: b, movement: c }));
          const columns = [0.04, -0.04].flatMap((x) => [0.02, -0.02].map((y) => ({ ...one, x, y })));
          refusesOrFinite(() =>
            standoff.noseHit({
              columns,
              mass: g,
              pitchRadius: h,
              yawRadius: n[9]!,
              centreOfMass: place,
              at: place,
              contactStiffness: n[10]!,
              speed: n[11]!,
            }),
          );
        },
      ),
      { numRuns: 500 },
    );
  });
});

/** Each standoff as its own node of five movements, foot and head springs as further unknowns, plate by stiff springs. */
function nodeByNode(columns: Column[], f: Vector, at: Vector): number[] {
  // Unknowns: 6 of the plate; per column and plane the rotations of foot and head of the beam.
  const n = 6 + 4 * columns.length;
  const k = Matrix.zeros(n, n);
  const addTo = (rows: number[][], own: number[][]) => {
    for (let a = 0; a < rows.length; a++)
      for (let b = 0; b < rows.length; b++)
        for (let i = 0; i < n; i++)
          for (let j = 0; j < n; j++) {
            const value = rows[a]![i]! * own[a]![b]! * rows[b]![j]!;
            if (value !== 0) k.set(i, j, k.get(i, j) + value);
          }
  };
  const unit = (index: number) => Array.from({ length: n }, (_, i) => (i === index ? 1 : 0));
  columns.forEach((c, index) => {
    const { length: L, flexuralRigidity: ei } = c;
    const phi = (12 * ei) / (c.shearRigidity * L ** 2);
    const e = ei / (L ** 3 * (1 + phi));
    // Przemieniecki's beam: end movement, end rotation at the head, rotation at the foot.
    const element = [
      [12 * e, -6 * e * L, -6 * e * L],
      [-6 * e * L, (4 + phi) * e * L ** 2, (2 - phi) * e * L ** 2],
      [-6 * e * L, (2 - phi) * e * L ** 2, (4 + phi) * e * L ** 2],
    ];
    const spring = (end: EndFixity) => (end === 'fixed' ? 1e9 : end === 'pinned' ? 0 : end);
    const row = (entries: Record<number, number>) => Array.from({ length: n }, (_, i) => entries[i] ?? 0);
    const planes = [
      { move: row({ 0: 1, 5: -c.y }), tilt: row({ 4: 1 }) },
      { move: row({ 1: 1, 5: c.x }), tilt: row({ 3: -1 }) },
    ];
    planes.forEach(({ move, tilt }, plane) => {
      const head = unit(6 + 4 * index + 2 * plane);
      const foot = unit(7 + 4 * index + 2 * plane);
      addTo([move, head, foot], element);
      addTo([foot], [[spring(c.foot)]]);
      addTo([head.map((h, i) => h - tilt[i]!)], [[spring(c.head)]]);
    });
    addTo([row({ 2: 1, 3: c.y, 4: -c.x })], [[c.axialRigidity / L]]);
  });
  const right = Array.from({ length: n }, () => [0]);
  [f.x, f.y, f.z, at.y * f.z - at.z * f.y, at.z * f.x - at.x * f.z, at.x * f.y - at.y * f.x].forEach(
    (value, i) => (right[i] = [value]),
  );
  return solve(k, new Matrix(right)).to1DArray();
}
