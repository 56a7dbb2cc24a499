import { InputError } from '@frameworthy/shared';
import { describe, expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import { explain } from '../../src/island/evaluate.ts';
import { showIn } from '../../src/island/show.ts';
import { shownInputs, startValues, type ValueSet } from '../../src/island/values.ts';

/** What a screw goes into, and a mass that motors cannot lift, as a reader meets them. */
const show = showIn({ system: 'metric' });
const computed = (id: string, change: ValueSet) => {
  const tool = calculators[id]!;
  const values = { ...startValues(tool), ...change };
  const result: unknown = tool.compute(values);
  return {
    says: tool.says(result, values, show),
    shown: shownInputs(tool, values).map(([key]) => key),
    output: (key: string): number => tool.outputs.find((one) => one.key === key)!.value(result, values),
  };
};
const refusal = (id: string, change: ValueSet) => {
  try {
    computed(id, change);
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    const { field, text } = explain(calculators[id]!, error, show);
    // Numbers stand before a space that does not break.
    return { field, text: text.replaceAll('\u202f', ' ') };
  }
  throw new Error('was not refused');
};

describe('a press nut', () => {
  const nut = { into: 'press-nut' };

  test('has fields of its own, and those of a standoff have no effect', () => {
    const { shown, output } = computed('screw-torque', nut);
    expect(shown).toEqual(expect.arrayContaining(['nutHeight', 'nutShearStrength', 'flangeDiameter', 'nutHole']));
    for (const key of ['engagement', 'tappedShearStrength', 'insertLength']) expect(shown).not.toContain(key);
    const other = computed('screw-torque', {
      ...nut,
      engagement: 0.001,
      tappedShearStrength: 50e6,
      insertLength: 0.001,
    });
    expect(other.output('advisedTorque')).toBe(output('advisedTorque'));
    expect(computed('screw-torque', { ...nut, nutHeight: 0.0015 }).output('strippingForce')).toBeLessThan(
      output('strippingForce') / 2,
    );
  });

  test('crushes the plate under its flange, and says so', () => {
    expect(computed('screw-torque', nut).says).toMatch(/crushes under the head/);
    expect(computed('screw-torque', { ...nut, seat: 'washer' }).says).toMatch(/crushes under the flange of the nut/);
    expect(computed('screw-torque', { seat: 'washer' }).says).not.toMatch(/flange/);
  });

  test('that leaves no room for the screw or the flange is refused at its hole', () => {
    expect(refusal('screw-torque', { ...nut, nutHole: 0.003 }).field).toBe('nutHole');
    expect(refusal('screw-torque', { ...nut, nutHole: 0.007 }).field).toBe('nutHole');
  });
});

describe('an insert', () => {
  const insert = { into: 'insert' };

  test('comes out of a soft part between two stated pulls, long before its thread strips', () => {
    const { says, shown, output } = computed('screw-torque', insert);
    expect(shown).not.toContain('engagement');
    expect(says).toMatch(/the insert comes out of its part/);
    expect(output('holdForceMost')).toBeCloseTo((21 / 8) * output('holdForce'), 6);
    expect(output('strippingForce')).toBeGreaterThan(output('holdForceMost'));
    expect(output('holdUse')).toBeGreaterThan(output('threadUse'));
    // The lower of the two pulls is counted on: 65 % of it, by the default coefficient and M3.
    expect(output('advisedTorque')).toBeCloseTo(0.65 * 0.2 * 0.003 * output('holdForce'), 9);
  });

  test('no wider than the screw is refused at its field', () => {
    expect(refusal('screw-torque', { ...insert, thread: 'M4', insertDiameter: 0.0035 }).field).toBe('insertDiameter');
  });

  test('in a standoff there is none: what holds is the thread', () => {
    const { output } = computed('screw-torque', { parentShearStrength: 2e6, nutHole: 0.002 });
    expect(output('holdForce')).toBe(output('strippingForce'));
    expect(output('holdForceMost')).toBe(output('strippingForce'));
  });
});

describe('a mass that the motors cannot lift', () => {
  const heavy = { mass: 5, fullThrust: 12.5 };

  test('is blamed on what was added where the craft flies without it', () => {
    const { field, text } = refusal('hover-power', { ...heavy, addedMass: 0.5 });
    expect(field).toBe('addedMass');
    expect(text).toBe('Mass added 500 g is more than the motors can lift besides: it must be below 98.58 g.');
    expect(() => computed('hover-power', { ...heavy, addedMass: 0.0985 })).not.toThrow();
    expect(refusal('hover-power', { ...heavy, addedMass: 0.0987 }).field).toBe('addedMass');
  });

  test('is blamed on the thrust where it does not fly at all, without the added mass in the number', () => {
    const { field, text } = refusal('hover-power', { mass: 5, fullThrust: 12, addedMass: 0.5 });
    expect(field).toBe('fullThrust');
    expect(text).toContain('12.26 N');
  });

  test('in thin air, names the thrust that was typed and the one it takes on the stand', () => {
    const { field, text } = refusal('hover-power', { ...heavy, altitude: 3000 });
    expect(field).toBe('fullThrust');
    expect(text).toMatch(/ 12\.5 N .*16\.5/);
  });
});
