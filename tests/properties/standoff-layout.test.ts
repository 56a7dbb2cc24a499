import fc from 'fast-check';
import { InputError } from '@frameworthy/shared';
import { effectiveMassAt } from '@frameworthy/shared/impact';
import * as standoff from '@frameworthy/shared/standoff';
import type { Column, Place } from '@frameworthy/shared/standoff';
import { describe, expect, test } from 'vitest';
import layoutCalculator from '../../src/calculators/standoff-layout/index.ts';
import tongueCalculator from '../../src/calculators/plate-tongue/index.ts';
import { evaluate, explain } from '../../src/island/evaluate.ts';
import { showIn } from '../../src/island/show.ts';
import { startValues, type ValueSet } from '../../src/island/values.ts';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const PLATE = { length: 0.14, width: 0.08 };
const DIAMETER = 0.005;
const accepted = (places: readonly Place[]) => {
  try {
    standoff.requirePlan(places, PLATE, DIAMETER);
    return true;
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
};
const place = fc.record({ x: within(-0.065, 0.065), y: within(-0.035, 0.035) });
/** Three to ten standoffs anywhere on the plate, no two at one place, not on one line. */
const plan = fc
  .array(place, { minLength: 3, maxLength: 10 })
  .filter((p) => accepted(p) && standoff.spreadAcross(p) > 2e-3);
const beam = standoff.roundStandoff({
  outerDiameter: DIAMETER,
  bore: 0.003,
  length: 0.022,
  youngsModulus: 69e9,
  shearModulus: 26e9,
  foot: 60,
  head: 'pinned',
});
const on = (places: readonly Place[], head: standoff.EndFixity = 20): Column[] =>
  places.map(({ x, y }) => ({ ...beam, head, x, y }));
const direction = fc
  .record({ heading: within(-Math.PI, Math.PI), down: within(-1.5, 1.5) })
  .map(({ heading, down }) => ({
    x: -Math.cos(heading) * Math.cos(down),
    y: -Math.sin(heading) * Math.cos(down),
    z: -Math.sin(down),
  }));
const point = fc.record({ x: within(-0.07, 0.07), y: within(-0.04, 0.04), z: within(-0.01, 0.04) });
const hit = {
  mass: 0.65,
  rollRadius: 0.045,
  pitchRadius: 0.048,
  yawRadius: 0.068,
  centreOfMass: { x: 0, y: 0, z: -0.004 },
  contactStiffness: 1e5,
  speed: 6,
};

describe('any three to ten standoffs that are accepted, heads springy or loose', () => {
  test('statics closes: forces and moments on the plate sum to nothing', () => {
    fc.assert(
      fc.property(plan, direction, point, fc.boolean(), (places, push, at, loose) => {
        const force = { x: 900 * push.x, y: 900 * push.y, z: 900 * push.z };
        const { columns } = standoff.plateOnColumns({ columns: on(places, loose ? 'pinned' : 20), force, at });
        const total = (of: (c: standoff.ColumnForces, p: Place) => number) =>
          columns.reduce((sum, c, i) => sum + of(c, places[i]!), 0);
        const near = (ours: number, load: number) => expect(Math.abs(ours - load)).toBeLessThan(1e-4);
        near(
          total((c) => c.shearX),
          force.x,
        );
        near(
          total((c) => c.shearY),
          force.y,
        );
        near(
          total((c) => c.axial),
          force.z,
        );
        near(
          total((c, p) => p.y * c.axial + c.headMomentX),
          at.y * force.z - at.z * force.y,
        );
        near(
          total((c, p) => -p.x * c.axial + c.headMomentY),
          at.z * force.x - at.x * force.z,
        );
        near(
          total((c, p) => p.x * c.shearY - p.y * c.shearX),
          at.x * force.y - at.y * force.x,
        );
      }),
    );
  });

  test('one more standoff never makes the point of any load softer', () => {
    fc.assert(
      fc.property(plan, place, direction, point, (places, extra, push, at) => {
        const stiffness = (all: readonly Place[]) =>
          standoff.bodyHit({ ...hit, columns: on(all, 'pinned'), direction: push, at }).frameStiffness;
        expect(stiffness([...places, extra])).toBeGreaterThanOrEqual(stiffness(places) * (1 - 1e-9));
      }),
    );
  });

  test('mirrored about the centre line: every standoff carries what its mirror image did', () => {
    fc.assert(
      fc.property(plan, direction, point, (places, push, at) => {
        const mirror = <T extends { y: number }>(v: T): T => ({ ...v, y: -v.y });
        const one = standoff.bodyHit({ ...hit, columns: on(places), direction: push, at });
        const other = standoff.bodyHit({
          ...hit,
          columns: on(places.map(mirror)),
          direction: mirror(push),
          at: mirror(at),
        });
        expect(other.peakForce / one.peakForce).toBeCloseTo(1, 9);
        one.plate.columns.forEach((c, i) => {
          const image = other.plate.columns[i]!;
          expect(Math.abs(image.shear - c.shear)).toBeLessThan(1e-6 * one.peakForce);
          expect(Math.abs(image.axial - c.axial)).toBeLessThan(1e-6 * one.peakForce);
        });
      }),
    );
  });

  test('a hit is the same however long the arrow of its direction is drawn; from ahead it is the nose-first hit', () => {
    fc.assert(
      fc.property(plan, direction, point, within(0.1, 10), (places, push, at, times) => {
        const force = (d: typeof push) => standoff.bodyHit({ ...hit, columns: on(places), direction: d, at }).peakForce;
        expect(force({ x: times * push.x, y: times * push.y, z: times * push.z }) / force(push)).toBeCloseTo(1, 9);
        const nose = standoff.noseHit({ ...hit, columns: on(places), at });
        expect(force({ x: -1, y: 0, z: 0 })).toBeCloseTo(nose.peakForce, 6);
      }),
    );
  });

  test('the mass behind the blow is that of the general rigid body', () => {
    fc.assert(
      fc.property(plan, direction, point, (places, push, at) => {
        const { mass, rollRadius, pitchRadius, yawRadius, centreOfMass: c } = hit;
        const inertia = { xx: rollRadius, yy: pitchRadius, zz: yawRadius };
        const general = effectiveMassAt({
          mass,
          inertia: {
            xx: mass * inertia.xx ** 2,
            yy: mass * inertia.yy ** 2,
            zz: mass * inertia.zz ** 2,
            xy: 0,
            xz: 0,
            yz: 0,
          },
          lever: { x: at.x - c.x, y: at.y - c.y, z: at.z - c.z },
          direction: push,
        });
        const ours = standoff.bodyHit({ ...hit, columns: on(places), direction: push, at }).effectiveMass;
        expect(ours / general.effectiveMass).toBeCloseTo(1, 9);
      }),
    );
  });

  test('energy: what the standoffs and the contact hold at the peak is what the mass brought', () => {
    fc.assert(
      fc.property(plan, direction, point, (places, push, at) => {
        const found = standoff.bodyHit({ ...hit, columns: on(places), direction: push, at });
        const moved = standoff.movementAt(found.plate, at);
        const along = moved.x * push.x + moved.y * push.y + moved.z * push.z;
        const held = (found.peakForce * along) / 2 + found.peakForce ** 2 / (2 * hit.contactStiffness);
        expect(held / ((found.effectiveMass * hit.speed ** 2) / 2)).toBeCloseTo(1, 6);
      }),
    );
  });
});

describe('a plan that no body can stand on', () => {
  const told = (change: ValueSet) => {
    const refused = evaluate(layoutCalculator, { ...startValues(layoutCalculator), ...change });
    if (refused.ok) return undefined;
    const { field, text } = explain(layoutCalculator, refused.error, showIn({ system: 'metric' }));
    return { field, text: text.replace(/\u202f/g, ' ') };
  };

  test('is refused at the field to change, with what to do', () => {
    expect(told({ count: 2 })).toEqual({
      field: 'count',
      text: 'Number of standoffs 2 lets the top plate turn: it must be at least 3.',
    });
    expect(told({ count: 4.5 })?.field).toBe('count');
    expect(told({ along3: 0.08 })).toEqual({
      field: 'along3',
      text: 'Standoff 5, fore and aft 80 mm stands off the plate: make the plate larger, or bring it back to at most 62.5 mm.',
    });
    expect(told({ across2: 0.03 })?.field).toBe('across2');
    expect(told({ along3: 0.036 })?.text).toContain('stands in the place of standoff 1');
    expect(told({ across1: 0.001 })).toEqual({
      field: 'across1',
      text: 'Standoff 2 stands in the place of standoff 1: move one of them, or take one away.',
    });
    expect(told({ count: 4, along2: 0.036, across2: 0.01 })).toEqual({
      field: 'along2',
      text: 'Layout puts all standoffs on one line, about which the top plate turns: move one off the line.',
    });
    expect(told({ count: 3, along2: 0.036 })?.field).toBe('along2');
    expect(told({ layout: 'four', foreAft: 0.2 })?.field).toBe('foreAft');
    expect(told({ layout: 'each', y4: -0.06 })).toEqual({
      field: 'y4',
      text: 'Standoff 4, across −60 mm stands off the plate: make the plate larger, or bring it back to at most 25.5 mm.',
    });
    expect(told({ layout: 'each', x3: 0.036 })?.text).toContain('stands in the place of standoff 1');
    expect(told({ layout: 'each', count: 3, x3: 0.036, y3: 0 })?.field).toBe('x3');
    expect(told({ layout: 'six-wide', across: 0.03, plateWidth: 0.044 })?.field).toBe('across');
    expect(told({ foot: 'pinned', head: 'pinned' })?.field).toBe('head');
  });

  test('one that can is not', () => {
    expect(told({})).toBeUndefined();
    for (const layout of ['three', 'four', 'five', 'six-middle', 'six-front', 'eight'])
      expect(told({ layout })).toBeUndefined();
    for (let count = 3; count <= 10; count++) expect(told({ count })).toBeUndefined();
  });
});

test('a cutout that leaves no web is refused at its field, with what to do', () => {
  const told = (change: ValueSet) => {
    const refused = evaluate(tongueCalculator, { ...startValues(tongueCalculator), ...change });
    return refused.ok ? undefined : explain(tongueCalculator, refused.error, showIn({ system: 'metric' }));
  };
  expect(told({ cutoutWidth: 0.06 })?.field).toBe('cutoutWidth');
  expect(told({ cutoutOffset: 0.021 })).toMatchObject({ field: 'cutoutOffset' });
  expect(told({ holeDiameter: 0.0255, holeAt: 0.006, tongueWidth: 0.028 })?.field).toBe('holeDiameter');
  expect(told({ holeDiameter: 0.0032, holeAt: 0.03 })?.field).toBe('holeAt');
});

test('webs past the inner screw carry the whole lever of the blow, webs before it the outer screw alone', () => {
  const start = startValues(tongueCalculator) as Parameters<typeof tongueCalculator.compute>[0];
  const at = (cutoutAt: number) => tongueCalculator.compute({ ...start, link: 'none', cutoutAt, cutoutLength: 0.004 });
  // The bending of one plate of the web's width, by its moment.
  const moment = ({ web: { outOfPlaneStress } }: ReturnType<typeof at>) =>
    (outOfPlaneStress * (start.plateWidth - start.cutoutWidth) * start.bottomPlate ** 2) / 6;
  const { force, armLength, tongueLength } = start;
  expect(moment(at(0.03))).toBeCloseTo(force * (armLength + tongueLength + 0.03), 9);
  expect(moment(at(0.005))).toBeCloseTo(at(0.005).outer * (tongueLength + 0.005), 9);
  const codes = (cutoutAt: number) => at(cutoutAt).warnings.map(({ code }) => code);
  expect(codes(0.013)).toContain('screw-in-cutout');
  expect(codes(0.03)).toEqual([]);
});

test('whatever is put in: finite results or an InputError', () => {
  fc.assert(
    fc.property(fc.array(anyNumber, { minLength: 20, maxLength: 20 }), (n) => {
      const at = (i: number) => ({ x: n[i]!, y: n[i + 1]!, z: n[i + 2]! });
      const places = [at(0), at(3), at(6)];
      refusesOrFinite(() => standoff.spreadAcross(places));
      refusesOrFinite(() => standoff.requirePlan(places, { length: n[9]!, width: n[10]! }, n[11]!));
      refusesOrFinite(() =>
        standoff.bodyHit({
          ...hit,
          mass: n[12]!,
          rollRadius: n[13]!,
          columns: on([
            { x: 0.04, y: 0.02 },
            { x: 0.04, y: -0.02 },
            { x: -0.04, y: 0 },
          ]),
          direction: at(14),
          at: at(17),
        }),
      );
      refusesOrFinite(() =>
        standoff.plateFootPullStress(
          { thickness: n[0]!, youngsModulus: n[1]!, bossRadius: n[2]!, plateRadius: n[3]!, edge: 'fixed' },
          n[4]!,
        ),
      );
    }),
    { numRuns: 400 },
  );
});
