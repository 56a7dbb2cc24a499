import { InputError } from '@frameworthy/shared';
import {
  checkArrangement,
  distanceToPath,
  findCollisions,
  freeMargins,
  heightStack,
  patternScrew,
  placeItem,
  shortestBody,
  shortestStandoff,
  tiltedBox,
  topPlateInHit,
  type Arrangement,
  type BodyHit,
  type FitBody,
  type FitItem,
} from '@frameworthy/shared/fit';
import { CATALOGUE_LENGTHS } from '@frameworthy/shared/standoff';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const MM = 1e-3;
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((value) => value * MM);

const anyItem = fc
  .record({
    kind: fc.constantFrom('board', 'camera', 'transmitter', 'capacitor') as fc.Arbitrary<FitItem['kind']>,
    length: mm(5, 40),
    width: mm(5, 38),
    height: mm(3, 20),
    x: mm(-70, 70),
    y: mm(-6, 6),
    z: mm(0, 12),
    mass: mm(0, 40),
    tilt: fc.double({ min: 0, max: 1, noNaN: true }),
    lens: fc.option(mm(1, 10), { nil: undefined }),
    wires: fc.constantFrom<FitItem['wires']>(
      undefined,
      [
        { side: 'left', reach: 3 * MM },
        { side: 'rear', reach: 4 * MM },
      ],
      [{ side: 'right', reach: 2 * MM }],
    ),
  })
  .map(({ lens, wires, ...rest }): Omit<FitItem, 'name'> => ({
    ...rest,
    ...(lens ? { lens: { reach: lens, diameter: rest.height / 2 } } : {}),
    ...(wires ? { wires } : {}),
  }));

const anyArrangement = fc
  .record({
    items: fc.array(anyItem, { minLength: 1, maxLength: 5 }),
    stations: fc.array(fc.record({ x: mm(-65, 65), y: mm(8, 19) }), { minLength: 1, maxLength: 3 }),
  })
  .map(({ items, stations }): Arrangement => ({
    name: 'any',
    standoffs: stations.flatMap(({ x, y }) => [
      { x, y },
      { x, y: -y },
    ]),
    items: items.map((item, i) => ({ ...item, name: `part ${i}` })),
  }));

const body: FitBody = {
  plate: { length: 0.16, width: 0.046, nose: { width: 0.04, length: 0.02 }, tail: { width: 0.036, length: 0.03 } },
  standoffDiameter: 5 * MM,
  clearance: { columns: 1.5 * MM, items: 1 * MM, edge: 1 * MM, height: 1.5 * MM },
};
const hit: BodyHit = {
  standoff: {
    outerDiameter: 5 * MM,
    bore: 3 * MM,
    youngsModulus: 69e9,
    shearModulus: 26e9,
    yieldStrength: 276e6,
    foot: 'fixed',
    head: 'fixed',
  },
  mass: 0.65,
  pitchRadius: 0.048,
  yawRadius: 0.068,
  centreHeight: 0.022,
  speed: 5,
  peakFactor: 1.5,
  at: { x: 0.075, y: 0.008 },
  height: 0.002,
  contactStiffness: 100e3,
};
const heights = { hanging: 1 * MM, rise: 0.5 * MM, hit };
const corners = [40, -40].flatMap((x) => [18, -18].map((y) => ({ x: x * MM, y: y * MM })));
const box = (name: string, x: number, size: Partial<FitItem> = {}): FitItem => ({
  name,
  kind: 'other',
  length: 20 * MM,
  width: 20 * MM,
  height: 10 * MM,
  x,
  y: 0,
  z: 0,
  mass: 0.01,
  ...size,
});

const mirrored = ({ standoffs, items, name }: Arrangement): Arrangement => ({
  name,
  standoffs: standoffs.map(({ x, y }) => ({ x, y: -y })),
  items: items.map((item) => ({
    ...item,
    y: -item.y,
    ...(item.wires
      ? {
          wires: item.wires.map(({ side, reach }) => ({
            side: side === 'left' ? ('right' as const) : side === 'right' ? ('left' as const) : side,
            reach,
          })),
        }
      : {}),
  })),
});
const swapSides = (text: string) => text.replace(/left|right/, (side) => (side === 'left' ? 'right' : 'left'));

describe('fit', () => {
  test('moving two parts farther apart never adds a collision between them', () => {
    fc.assert(
      fc.property(anyItem, anyItem, fc.constantFrom('x' as const, 'y' as const), mm(0, 60), (p, q, axis, by) => {
        const pair = (offset: number): Arrangement => {
          const ahead = p[axis] >= q[axis] ? 1 : -1;
          const first = { ...p, name: 'first', [axis]: p[axis] + ahead * offset };
          return { name: 'pair', standoffs: [], items: [{ ...q, name: 'second' }, first] };
        };
        // A body that turns sides (front wires) may come nearer on one side: without wires and lens it is a plain box.
        const between = (offset: number) =>
          findCollisions(body, pair(offset)).filter(({ kind }) => kind === 'part').length;
        if (p.lens || q.lens || p.wires || q.wires) return;
        expect(between(by)).toBeLessThanOrEqual(between(0));
      }),
    );
  });

  test('the stated move clears the two that collide, and nothing shorter in that direction does', () => {
    fc.assert(
      fc.property(anyItem, anyItem, (p, q) => {
        const arrangement = {
          name: 'pair',
          standoffs: [],
          items: [
            { ...q, name: 'other' },
            { ...p, name: 'mover' },
          ],
        };
        const found = findCollisions(body, arrangement).find(({ kind }) => kind === 'part');
        if (!found) return;
        const { move, direction } = found;
        const after = (share: number) => {
          const by = move * share;
          const shift = {
            forward: { x: by },
            rearward: { x: -by },
            left: { y: by },
            right: { y: -by },
            'to either side': { y: by },
            up: { z: by },
          }[direction] as { x?: number; y?: number; z?: number };
          const moved = {
            ...p,
            name: 'mover',
            x: p.x + (shift.x ?? 0),
            y: p.y + (shift.y ?? 0),
            z: p.z + (shift.z ?? 0),
          };
          return findCollisions(body, { ...arrangement, items: [arrangement.items[0]!, moved] }).filter(
            ({ kind }) => kind === 'part',
          ).length;
        };
        expect(after(1)).toBe(0);
        // Nearly all of the way is too little, unless the move is down to rounding.
        if (move > 1e-6) expect(after(0.999)).toBe(1);
      }),
    );
  });

  test('left and right may be swapped: the same collisions, lengths and margins, sides named the other way round', () => {
    fc.assert(
      fc.property(anyArrangement, (arrangement) => {
        const other = mirrored(arrangement);
        const words = (collisions: ReturnType<typeof findCollisions>) =>
          collisions.map(({ kind, mover, against, direction }) => [kind, mover, against, direction].join(' ')).sort();
        const here = findCollisions(body, arrangement);
        const there = findCollisions(body, other);
        expect(
          words(
            there.map((c) => ({
              ...c,
              mover: swapSides(c.mover),
              against: swapSides(c.against),
              direction: swapSides(c.direction) as typeof c.direction,
            })),
          ),
        ).toEqual(words(here));
        const moves = (list: typeof here) => list.map(({ move }) => move).sort((a, b) => a - b);
        moves(there).forEach((move, i) => expect(move).toBeCloseTo(moves(here)[i]!, 12));
        const [a, b] = [shortestBody(body, arrangement), shortestBody(body, other)];
        expect(b?.length).toEqual(a?.length === undefined ? undefined : expect.closeTo(a.length, 12));
        const gaps = (of: Arrangement) => Object.values(freeMargins(body, of)).map((margin) => margin?.gap ?? 0);
        gaps(other).forEach((gap, i) => expect(gap).toBeCloseTo(gaps(arrangement)[i]!, 12));
      }),
    );
  });

  test('the shortest body is free of collisions fore and aft, and 0.1 mm less is not, wherever the parts are put', () => {
    let seen = 0;
    fc.assert(
      fc.property(
        anyArrangement,
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 8, maxLength: 8 }),
        (arrangement, shares) => {
          const found = shortestBody(body, arrangement);
          if (!found) return;
          expect(
            findCollisions({ ...body, plate: { ...body.plate, length: found.length } }, found.arrangement),
          ).toEqual([]);
          const shorter = { ...body, plate: { ...body.plate, length: found.length - 0.1 * MM } };
          if (found.decidedBy[0] === 'the narrowing ends') return;
          seen++;
          expect(findCollisions(shorter, found.arrangement).length).toBeGreaterThan(0);
          // The same order, spread otherwise: squeezed about a random point by random shares of the length lost.
          const squeezed = {
            ...found.arrangement,
            standoffs: found.arrangement.standoffs.map((at) => ({ ...at, x: at.x + (shares[0]! - 0.5) * 0.1 * MM })),
            items: found.arrangement.items.map((item, i) => ({
              ...item,
              x: item.x + (shares[i + 1]! - 0.5) * 0.1 * MM,
            })),
          };
          expect(findCollisions(shorter, squeezed).length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 300 },
    );
    expect(seen).toBeGreaterThan(30);
  });

  test('an arrangement free of collisions is never told that it needs a longer body than it has', () => {
    let free = 0;
    fc.assert(
      fc.property(anyArrangement, (arrangement) => {
        if (findCollisions(body, arrangement).length > 0) return;
        free++;
        expect(shortestBody(body, arrangement)!.length).toBeLessThanOrEqual(body.plate.length + 1e-9);
      }),
      { numRuns: 3000 },
    );
    expect(free).toBeGreaterThan(30);
  });

  test('a tilted box contains its turned corners and touches them', () => {
    fc.assert(
      fc.property(
        mm(5, 40),
        mm(5, 40),
        fc.double({ min: 0, max: Math.PI / 2, noNaN: true }),
        (length, height, tilt) => {
          const { planLength, height: upright } = tiltedBox({ length, height, tilt });
          const turned = [1, -1].flatMap((i) =>
            [1, -1].map((j) => ({
              x: (i * length * Math.cos(tilt)) / 2 - (j * height * Math.sin(tilt)) / 2,
              z: (i * length * Math.sin(tilt)) / 2 + (j * height * Math.cos(tilt)) / 2,
            })),
          );
          expect(2 * Math.max(...turned.map(({ x }) => x))).toBeCloseTo(planLength, 12);
          expect(2 * Math.max(...turned.map(({ z }) => z))).toBeCloseTo(upright, 12);
        },
      ),
    );
  });

  test('the distance to a path is the least over many points of it', () => {
    fc.assert(
      fc.property(mm(-20, 20), mm(-20, 20), mm(-15, 15), mm(-15, 15), mm(1, 20), mm(1, 20), (x, y, dx, dy, w, h) => {
        const rectangle = { x0: -w, x1: w, y0: -h, y1: h };
        const sampled = Math.min(
          ...Array.from({ length: 401 }, (_, i) => {
            const p = { x: x + (dx * i) / 400, y: y + (dy * i) / 400 };
            return Math.hypot(Math.max(Math.abs(p.x) - w, 0), Math.max(Math.abs(p.y) - h, 0));
          }),
        );
        const exact = distanceToPath(rectangle, { x, y }, { x: dx, y: dy });
        expect(exact).toBeLessThanOrEqual(sampled + 1e-12);
        expect(sampled - exact).toBeLessThan(Math.hypot(dx, dy) / 400 + 1e-12);
      }),
    );
  });

  test('standoffs: a higher part never asks for a shorter one, sway never for less than the stack, and what is sold clears', () => {
    fc.assert(
      fc.property(mm(3, 22), mm(0, 6), fc.double({ min: 0.5, max: 12, noNaN: true }), (height, more, speed) => {
        const at = (z: number) =>
          shortestStandoff(
            body,
            { name: 'a', standoffs: corners, items: [box('stack', 0, { height: z })] },
            {
              ...heights,
              hit: { ...hit, speed },
            },
          );
        const [low, high] = [at(height), at(height + more)];
        expect(high.byStack.needed).toBeGreaterThanOrEqual(low.byStack.needed);
        expect(low.bySway.needed).toBeGreaterThanOrEqual(low.byStack.needed);
        const { sold, needed } = low.bySway;
        if (sold !== undefined) {
          expect(sold).toBeGreaterThanOrEqual(needed - 1e-9);
          expect(CATALOGUE_LENGTHS).toContain(sold);
        }
      }),
    );
  });

  test('standoffs that stand farther apart fore and aft let the plate dip less', () => {
    const dip = (half: number) => {
      const columns = corners.map(({ x, y }) => ({ x: Math.sign(x) * half, y }));
      // A blow well over the plate, that rocks it.
      return topPlateInHit({ ...hit, height: 0.03, speed: 1, at: { x: 0.075, y: 0 } }, columns, 0.025).dipAt({
        x: -0.04,
        y: 0,
      });
    };
    expect(dip(0.06)).toBeLessThan(dip(0.03));
  });

  test('an impossible part is refused by name and by how much', () => {
    const stack = {
      pattern: '25.5x25.5',
      thread: 'M3',
      hole: 2.2 * MM,
      boardSide: 34 * MM,
      across: 6 * MM,
      height: 2 * MM,
    } as const;
    const refused = (run: () => unknown) => {
      try {
        run();
      } catch (error) {
        return error as InputError;
      }
      throw new Error('not refused');
    };
    const narrow = refused(() => patternScrew(stack));
    expect([narrow.parameter, narrow.value, narrow.limit]).toEqual(['hole', 2.2 * MM, 3.2 * MM]);
    expect(refused(() => patternScrew({ ...stack, hole: 3.2 * MM, boardSide: 28 * MM })).limit).toBeCloseTo(
      28.7 * MM,
      9,
    );
    expect(refused(() => patternScrew({ ...stack, thread: 'M2', hole: 2.2 * MM, across: 2 * MM })).parameter).toBe(
      'across',
    );
    const item = box('flight stack', 0, { pattern: '25.5x25.5', screw: stack, length: 34 * MM, width: 34 * MM });
    expect(refused(() => findCollisions(body, { name: 'a', standoffs: [], items: [item] })).parameter).toBe('hole');
    expect(
      refused(() => findCollisions(body, { name: 'a', standoffs: [], items: [box('p', 0), box('p', 0.05)] })).rule,
    ).toBe('stands twice');
    const loose: BodyHit = { ...hit, standoff: { ...hit.standoff, foot: 'pinned', head: 'pinned' } };
    const arrangement = { name: 'a', standoffs: corners, items: [box('p', 0)] };
    expect(refused(() => shortestStandoff(body, arrangement, { ...heights, hit: loose })).parameter).toBe('columns');
  });

  test('collisions, margins and mass of a case that can be worked out by hand', () => {
    const items = [box('stack', 0), box('camera', 18 * MM), box('tail', -80 * MM)];
    const found = checkArrangement(
      { ...body, plate: { length: 0.16, width: 0.046 }, ...heights },
      { name: 'a', standoffs: corners, items },
    );
    expect(found.collisions.map(({ mover, against, direction }) => `${mover} ${against} ${direction}`)).toEqual([
      'camera stack forward',
      'tail rear edge forward',
    ]);
    expect(found.collisions.map(({ move }) => Math.round(move * 1e6) / 1e3)).toEqual([3, 11]);
    expect(found.collisions.map(({ gap }) => Math.round(gap * 1e6) / 1e3)).toEqual([-2, -10]);
    // Standoffs at ±18 leave 18 - 10 - 2.5 beside a part 20 wide; the camera ends at 28, so the corner distance counts.
    expect(found.freeMargins.toStandoffs!.gap).toBeCloseTo(Math.hypot(12 * MM, 8 * MM) - 2.5 * MM, 9);
    expect(found.mass).toBeCloseTo(0.03, 12);
    expect(found.balance).toBeCloseTo((-62 / 3) * MM, 12);
  });

  test('a part that no plate covers asks nothing of the standoffs, and still collides', () => {
    const at = (openAbove: boolean): Arrangement => ({
      name: 'a',
      standoffs: corners,
      items: [box('stack', 0), box('camera', 18 * MM, { height: 30 * MM, openAbove })],
    });
    expect(shortestStandoff(body, at(false), heights).tallest.name).toBe('camera');
    expect(shortestStandoff(body, at(true), heights).tallest.name).toBe('stack');
    expect(findCollisions(body, at(true))).toEqual(findCollisions(body, at(false)));
    expect(() => shortestStandoff(body, { ...at(true), items: [box('p', 0, { openAbove: true })] }, heights)).toThrow(
      InputError,
    );
  });

  test('a stack is the sum of its layers', () => {
    const stack = heightStack([
      { name: 'soft mounts', height: 3 * MM },
      { name: 'boards', height: 13 * MM },
      { name: 'nuts', height: 2 * MM },
    ]);
    expect(stack.height).toBeCloseTo(18 * MM, 12);
    expect(stack.levels.map((z) => Math.round(z * 1e6) / 1e3)).toEqual([0, 3, 16]);
    expect(stack.tallest.name).toBe('boards');
    expect(() => heightStack([])).toThrow(InputError);
  });

  test('garbage is refused or gives finite numbers', () => {
    const record = fc.record({
      length: anyNumber,
      width: anyNumber,
      height: anyNumber,
      x: anyNumber,
      y: anyNumber,
      z: anyNumber,
      mass: anyNumber,
      tilt: anyNumber,
    });
    fc.assert(
      fc.property(record, anyNumber, anyNumber, (numbers, place, reach) => {
        const item: FitItem = {
          ...numbers,
          name: 'p',
          kind: 'camera',
          lens: { reach, diameter: reach },
          wires: [{ side: 'front', reach }],
        };
        refusesOrFinite(() => placeItem(item));
        const plain: FitItem = { ...numbers, name: 'p', kind: 'board', overhang: reach };
        refusesOrFinite(() =>
          checkArrangement({ ...body, ...heights }, { name: 'a', standoffs: corners, items: [plain] }),
        );
        refusesOrFinite(() =>
          checkArrangement(
            { ...body, plate: { length: place, width: reach }, ...heights },
            { name: 'a', standoffs: corners, items: [box('p', 0)] },
          ),
        );
        refusesOrFinite(() =>
          checkArrangement(
            { ...body, ...heights, hit: { ...hit, speed: place, mass: reach } },
            { name: 'a', standoffs: corners, items: [box('p', 0)] },
          ),
        );
        refusesOrFinite(() =>
          checkArrangement(
            { ...body, hanging: place, rise: reach },
            { name: 'a', standoffs: [...corners, { x: place, y: reach }], items: [box('p', 0)] },
          ),
        );
        refusesOrFinite(() =>
          patternScrew({
            pattern: '20x20',
            thread: 'M3',
            hole: place,
            boardSide: reach,
            across: numbers.x,
            height: numbers.y,
          }),
        );
      }),
    );
  });
});
