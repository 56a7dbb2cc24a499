import { InputError } from '@frameworthy/shared';
import { describe, expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import { explain } from '../../src/island/evaluate.ts';
import { showIn } from '../../src/island/show.ts';
import { startValues, type ValueSet } from '../../src/island/values.ts';

/** Bad input of the calculators on arms and laminates, as a reader meets it: an error at its field, or a named warning. */
const tool = (id: string) => calculators[id]!;
const computed = (id: string, change: ValueSet) => {
  const values = { ...startValues(tool(id)), ...change };
  const result: unknown = tool(id).compute(values);
  const warnings = tool(id).warnings?.(result, values, showIn({ system: 'metric' })) ?? [];
  const output = (key: string): number =>
    tool(id)
      .outputs.find((one) => one.key === key)!
      .value(result, values);
  return {
    output,
    codes: warnings.map(({ code }) => code),
    message: (code: string) => warnings.find((w) => w.code === code)?.message ?? '',
  };
};
const refusal = (id: string, change: ValueSet) => {
  try {
    computed(id, change);
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return explain(tool(id), error, showIn({ system: 'metric' }));
  }
  throw new Error('was not refused');
};

describe('a stack of plies', () => {
  const none = { count0: 0, countPlus: 0, countMinus: 0, count90: 0 };

  test('without any ply is refused at the field of the count', () => {
    expect(refusal('laminate', none)).toEqual({ field: 'count0', text: 'Number of plies 0 must be at least one.' });
    expect(computed('laminate', { ...none, count90: 1 }).output('thickness')).toBeCloseTo(0.5e-3, 12);
  });

  test('of half a ply is refused at its own field', () => {
    for (const [key, direction] of [
      ['count0', '0'],
      ['countPlus', '\\+45'],
      ['countMinus', '-45'],
      ['count90', '90'],
    ] as const) {
      const { field, text } = refusal('laminate', { [key]: 1.5 });
      expect(field).toBe(key);
      expect(text).toMatch(new RegExp(`${direction}°.*whole number`));
    }
  });

  test('that is not balanced is computed, its shear shown and named', () => {
    const skew = { ply: 'unidirectional', countPlus: 4, countMinus: 0 };
    const { output, codes, message } = computed('laminate', skew);
    expect(codes).toContain('unbalanced');
    expect(message('unbalanced')).toMatch(/not balanced/);
    expect(Math.abs(output('shearing'))).toBeGreaterThan(0.05);
    // The stack is named whichever way it is looked at; a balanced one never is.
    expect(computed('laminate', { ...skew, direction: 0.5 }).codes).toContain('unbalanced');
    expect(computed('laminate', { ply: 'unidirectional', direction: 0.5 }).codes).not.toContain('unbalanced');
  });

  test('that is not symmetric is computed, its curl shown and named; a closed tube cannot curl', () => {
    const oneSided = { mirrored: 'no', ply: 'unidirectional', count90: 4 };
    const { output, codes, message } = computed('laminate', oneSided);
    expect(codes).toContain('unsymmetric');
    expect(message('unsymmetric')).toMatch(/not the same above and below/);
    expect(output('curling')).toBeGreaterThan(0.01);
    expect(computed('laminate', { ...oneSided, part: 'tube' }).codes).not.toContain('unsymmetric');
    expect(computed('laminate', {}).codes).toEqual([]);
  });
});

describe('beam theory at its limits', () => {
  const foil = { outerDiameter: 0.03, wall: 0.0004, armLength: 0.25 };

  test('the defaults are well inside', () => {
    for (const id of ['arm-frequency', 'two-screw-root', 'doubler-length', 'laminate']) {
      expect(computed(id, {}).codes, id).toEqual([]);
    }
  });

  test('an arm of a few depths is named, with the limit and where it is from', () => {
    const { codes, message } = computed('arm-frequency', { armLength: 0.06 });
    expect(codes).toContain('arm-too-stubby');
    expect(message('arm-too-stubby')).toMatch(/five times its depth, the limit of common practice/);
  });

  test('a frequency beyond the shear beam is named, with the limit and its source', () => {
    const stub = { outerDiameter: 0.03, wall: 0.0035, armLength: 0.03, motorMass: 0.002, root: 'clamped' };
    const { codes, message } = computed('arm-frequency', stub);
    expect(codes).toContain('beyond-beam-model');
    expect(message('beyond-beam-model')).toMatch(/half of the cut-off.*Cowper \(1966\)/);
    expect(computed('arm-frequency', { armLength: 0.25 }).codes).not.toContain('beyond-beam-model');
  });

  test('a wall that goes oval near the frequency is named, with the limit and its source', () => {
    const thin = { armLength: 0.15, outerDiameter: 0.03, wall: 0.0004, root: 'clamped', material: 'pultruded' };
    const { codes, message } = computed('arm-frequency', thin);
    expect(codes).toContain('wall-too-thin');
    expect(message('wall-too-thin')).toMatch(/half of the ring’s own frequency by Blevins \(1979\), table 9-1/);
    expect(computed('arm-frequency', { ...thin, wall: 0.0015 }).codes).not.toContain('wall-too-thin');
  });

  test('a wall that buckles below the moment is named at the root and beside the sleeve', () => {
    const blow = { horizontalForce: 1000, verticalForce: 1000 };
    const root = computed('two-screw-root', { ...foil, ...blow, tubeMaterial: 'pultruded' });
    expect(root.codes).toContain('wall-buckles');
    expect(root.message('wall-buckles')).toMatch(/NASA SP-8007 \(1968\), eq\. 9 and 10/);
    expect(computed('two-screw-root', { ...foil, ...blow, wall: 0.003 }).codes).not.toContain('wall-buckles');
    const thin = { tubeOutside: 0.03, tubeInside: 0.0292, sleeveOutside: 0.029, sleeveInside: 0.027, armLength: 0.25 };
    expect(computed('doubler-length', { ...thin, tipForce: 2000 }).codes).toContain('wall-buckles');
    expect(computed('doubler-length', { ...thin, tipForce: 20 }).codes).not.toContain('wall-buckles');
  });

  test('a tube without a bore is refused at the wall', () => {
    for (const id of ['arm-frequency', 'two-screw-root']) {
      expect(refusal(id, { outerDiameter: 0.008, wall: 0.0045 }).field, id).toBe('wall');
    }
    expect(refusal('doubler-length', { tubeOutside: 0.01, tubeInside: 0.012 }).field).toMatch(/^tube(In|Out)side$/);
  });
});
