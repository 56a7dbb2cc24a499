import { withValue, type FrameRecord } from '@frameworthy/shared/frame';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fileName, fileText, readText, readValue } from '~/frame/read.ts';
import { FIRST_SAMPLE, SAMPLES } from '~/frame/samples.ts';
import { SAMPLE_FILES } from './samples.ts';

/** The first sample with one value otherwise, as it may come from outside. */
const withAt = (path: string, value: unknown): unknown => withValue(FIRST_SAMPLE, path, value);

function problemsOf(given: unknown): string[] {
  const reading = readValue(given);
  expect(reading.ok).toBe(false);
  return reading.ok ? [] : reading.problems;
}

function recordOf(given: unknown): FrameRecord {
  const reading = readValue(given);
  expect(reading.ok ? [] : reading.problems).toEqual([]);
  return (reading as { record: FrameRecord }).record;
}

/** Sets a value on a path that may go through lists. */
function setIn(root: unknown, path: string, value: unknown): unknown {
  const keys = path.split('.');
  const last = keys.pop()!;
  const at = keys.reduce((node, key) => (node as Record<string, unknown>)[key], root);
  (at as Record<string, unknown>)[last] = value;
  return root;
}

/** A copy without the values at some paths: JSON leaves out what is undefined. */
const without = (...paths: string[]): unknown =>
  JSON.parse(
    JSON.stringify(paths.reduce<unknown>((copy, path) => setIn(copy, path, undefined), structuredClone(FIRST_SAMPLE))),
  );

test.each(SAMPLE_FILES)('%s passes unchanged, and comes back from its own file text', (_, value) => {
  const read = readValue(value);
  expect(read).toEqual({ ok: true, record: value, notices: [] });
  expect(readText(fileText(value as FrameRecord))).toEqual({ ok: true, record: value, notices: [] });
});

describe('versions', () => {
  test('a record from newer pages is refused, with both versions named', () => {
    const [problem, ...rest] = problemsOf(withAt('version', 2));
    expect(rest).toEqual([]);
    expect(problem).toMatch(/^version: .*version 2;.*up to 1\./);
  });

  test.each(['1', 1.5, -1, {}, true, null])('a version of %j is no version of today', (version) => {
    expect(problemsOf(withAt('version', version))).toEqual(['version: this must be a whole number.']);
  });

  test('a file of another kind is refused by its format', () => {
    expect(problemsOf(withAt('format', 'some-kite'))[0]).toMatch(/^format: .*"frameworthy-frame"/);
    expect(problemsOf(without('format'))[0]).toMatch(/^format: /);
  });

  test('a draft of version 0 is brought forward: its one arrangement gets a name, nothing else changes', () => {
    const { name, ...arrangement } = FIRST_SAMPLE.electronics.arrangements[0]!;
    const draft = setIn(without('format', 'version', 'suits'), 'electronics', arrangement) as object;
    for (const given of [draft, { ...draft, version: 0 }]) {
      const read = readValue(given);
      expect(read.ok).toBe(true);
      if (!read.ok) return;
      expect(read.notices).toEqual(['Brought forward from version 0 to 1.']);
      const { current } = read.record.electronics;
      expect(current).not.toBe(name);
      const expected = { current, arrangements: [{ ...arrangement, name: current }] };
      expect(read.record).toEqual({ ...FIRST_SAMPLE, suits: '', electronics: expected });
      // What came in as a draft is a record of today from then on.
      expect(readValue(JSON.parse(fileText(read.record)))).toEqual({ ok: true, record: read.record, notices: [] });
    }
  });

  test('a draft with arrangements already keeps them', () => {
    expect(recordOf(without('version')).electronics).toEqual(FIRST_SAMPLE.electronics);
  });
});

describe('each message names its field by the dotted path', () => {
  test.each([
    'arm',
    'arm.root',
    'arm.root.holeDiameter',
    'body.standoff.material',
    'materials.tube.bendingStrength',
    'materials.tube.bendingStrength.low',
    'electronics',
    'electronics.current',
    'electronics.arrangements',
    'electronics.arrangements.0.standoffs',
    'electronics.arrangements.0.items.1.mass',
    'hardware',
    'hardware.2.count',
    'name',
    'notes',
    'cases.strike.speed',
    'costs.standoff',
  ])('%s is missing', (path) => {
    expect(problemsOf(without(path))).toEqual([`${path}: this is missing.`]);
  });

  test.each([
    ['arm', 'a tube'],
    ['arm', null],
    ['arm.length', null],
    ['arm.length', true],
    ['arm.length', [0.07]],
    ['arm.length', { value: 0.07 }],
    ['arm.length', NaN],
    ['arm.length', Infinity],
    ['arm.kind', 'box'],
    ['arm.kind', 'toString'],
    ['arm.root.thread', 3],
    ['materials.tube.density', 1550],
    ['materials.tube.density.low', 'dense'],
    ['body.standoff', 5],
    ['electronics.current', 7],
    ['electronics.current', 'zzz'],
    ['electronics.arrangements', {}],
    ['electronics.arrangements', []],
    ['electronics.arrangements', [...FIRST_SAMPLE.electronics.arrangements, FIRST_SAMPLE.electronics.arrangements[0]]],
    ['electronics.arrangements.0.standoffs', [{ x: 0, y: 0 }]],
    ['electronics.arrangements.0.items.1.kind', 'kettle'],
    ['hardware', 'screws'],
    ['hardware.0.count', 1.5],
    ['propeller.blades', 2.5],
    ['name', 5],
    ['name', 'x'.repeat(81)],
  ])('%s as %j', (path, value) => {
    const problems = problemsOf(
      path.includes('.0.') || path.includes('.1.')
        ? setIn(structuredClone(FIRST_SAMPLE), path, value)
        : withAt(path, value),
    );
    expect(problems.length).toBe(1);
    expect(problems[0]).toMatch(new RegExp(`^${path.replaceAll('.', '\\.')}: .{8,}\\.$`));
  });

  test.each([
    ['arm.length', 0.0199, 'arm.length: this must be at least 20 mm.'],
    ['arm.length', 0.301, 'arm.length: this must be at most 300 mm.'],
    ['arm.length', -0.07, 'arm.length: this must be at least 20 mm.'],
    ['motor.mass', 37.5, 'motor.mass: this must be at most 300 g.'],
    ['arm.length', '2 m', 'arm.length: this must be at most 300 mm.'],
    ['arm.sleeve.wall', -1e-6, 'arm.sleeve.wall: this must be at least 0 mm.'],
    ['materials.tube.density.high', 1e6, 'materials.tube.density.high: this must be at most'],
    ['mount.wrapTurns', 41, 'mount.wrapTurns: this must be at most 40.'],
  ])('%s of %j is out of range', (path, value, text) => {
    const problems = problemsOf(withAt(path, value));
    expect(problems.length).toBe(1);
    expect(problems[0]!.startsWith(text)).toBe(true);
  });

  test('low, typical and high out of order', () => {
    const { low, high } = FIRST_SAMPLE.materials.tube.density;
    expect(problemsOf(withAt('materials.tube.density', { low: high, typical: low, high }))).toEqual([
      'materials.tube.density: low, typical and high must stand in order.',
    ]);
  });

  test('many problems at once are listed up to a dozen, the rest counted', () => {
    const problems = problemsOf({ format: 'frameworthy-frame', version: 1 });
    expect(problems.length).toBe(13);
    expect(problems.at(-1)).toMatch(/^and \d+ more\.$/);
    for (const problem of problems.slice(0, -1)) expect(problem).toMatch(/^[\w.]+: this is missing\.$/);
  });
});

describe('numbers as text with a unit', () => {
  test.each([
    ['arm.root.screwSpacing', '20 mm', 0.02],
    ['arm.root.screwSpacing', '0.79 in', 0.020066],
    ['arm.root.screwSpacing', '2,4cm', 0.024],
    ['arm.root.screwSpacing', '3/4 in', 0.01905],
    ['motor.mass', '30 g', 0.03],
    ['motor.mass', '1 oz', 0.028349523125],
    ['motor.fullThrust', '1500 gf', 14.709975],
    ['arm.root.torque', '0.6 N·m', 0.6],
    ['materials.tube.youngsModulus.typical', '90 GPa', 90e9],
    ['electronics.arrangements.0.items.0.x', '-30 mm', -0.03],
    ['electronics.arrangements.0.items.0.tilt', '25°', (25 * Math.PI) / 180],
    ['mount.wrapTurns', '8', 8],
    ['layout.stretch', '1.2', 1.2],
    ['materials.tow.handLay.typical', '60 %', 0.6],
  ])('%s: %s', (path, text, value) => {
    const record = recordOf(setIn(structuredClone(FIRST_SAMPLE), path, text));
    const found = path.split('.').reduce<unknown>((node, key) => (node as Record<string, unknown>)[key], record);
    expect(found).toBeCloseTo(value, 12);
    expect(typeof found).toBe('number');
  });

  test.each(['20', ' 20 ', '0,02', '1e-2', '3/4', '-20', '−20', '½', '1 ½', '2 × 10⁻²', '2*10^1', '1\u202f000'])(
    '%j has no unit and is refused',
    (text) => {
      expect(problemsOf(withAt('arm.root.screwSpacing', text))).toEqual([
        `arm.root.screwSpacing: "${text}" has no unit.`,
      ]);
    },
  );

  test.each([
    ['30 g', /is a mass/],
    ['20 parsec', /not a unit known here/],
    ['', /./],
    ['mm', /not a number/],
    ['1e400 mm', /too large/],
    ['NaN mm', /not a number/],
  ])('%j', (text, problem) => {
    const [first, ...rest] = problemsOf(withAt('arm.root.screwSpacing', text));
    expect(rest).toEqual([]);
    expect(first).toMatch(/^arm\.root\.screwSpacing: /);
    expect(first).toMatch(problem);
  });
});

describe('keys that reach behind objects', () => {
  test.each([
    ['__proto__', '{"__proto__": {"polluted": 1}, '],
    ['constructor', '{"constructor": {"prototype": {"polluted": 1}}, '],
    ['prototype', '{"prototype": {"polluted": 1}, '],
  ])('%s at the top is left out and named', (key, head) => {
    const reading = readText(JSON.stringify(FIRST_SAMPLE).replace('{', head));
    expect(reading).toEqual({
      ok: true,
      record: FIRST_SAMPLE,
      notices: [`${key}: left out; a key of this name is not taken.`],
    });
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  test('deep inside, in lists and in unknown fields too', () => {
    const text = JSON.stringify({ ...FIRST_SAMPLE, own: { deep: [{ kept: 1 }] } })
      .replace('"outerDiameter":', '"__proto__":{"wall":9},"outerDiameter":')
      .replace('"kept":1', '"kept":1,"constructor":2')
      .replace('"kind":"camera"', '"kind":"camera","__proto__":{"mass":9}');
    const reading = readText(text);
    expect(reading.ok).toBe(true);
    if (!reading.ok) return;
    expect(reading.notices.map((notice) => notice.split(':')[0])).toEqual([
      'arm.tube.__proto__',
      'electronics.arrangements.0.items.0.__proto__',
      'own.deep.0.constructor',
    ]);
    expect(reading.record).toEqual({ ...FIRST_SAMPLE, own: { deep: [{ kept: 1 }] } });
    expect(Object.getPrototypeOf(reading.record.arm.tube)).toBe(Object.prototype);
    expect(({} as Record<string, unknown>)['wall']).toBeUndefined();
  });
});

test('unknown fields are kept from reading to writing and back, at every depth', () => {
  const given = structuredClone(FIRST_SAMPLE) as unknown as Record<string, unknown>;
  given['makersNote'] = { by: 'two hands', pages: [1, { two: null }] };
  setIn(given, 'arm.coating', 'clear');
  setIn(given, 'materials.tube.density.source', 'scale');
  setIn(given, 'electronics.arrangements.0.items.0.serial', '7');
  setIn(given, 'electronics.arrangements.0.standoffs.0.colour', 'blue');
  setIn(given, 'hardware.0.supplier', 'drawer 4');
  const once = recordOf(given);
  expect(once).toEqual(given);
  expect(recordOf(JSON.parse(fileText(once)))).toEqual(given);
});

describe('junk', () => {
  test.each([
    ['ten megabytes of spaces', ' '.repeat(1e7), /10\.0 MB/],
    ['ten megabytes of a list', `[${'1,'.repeat(5e6)}1]`, /MB/],
    ['no JSON', 'frame: Dunnock', /no JSON/],
    ['nothing', '', /no JSON/],
    ['cut off', fileText(FIRST_SAMPLE).slice(0, -20), /no JSON/],
    ['null', 'null', /no frame record/],
    ['a number', '5', /no frame record/],
    ['a list of records', `[${JSON.stringify(FIRST_SAMPLE)}]`, /no frame record/],
    ['lists half a million deep', `${'['.repeat(4e5)}${']'.repeat(4e5)}`, /./],
    ['objects a hundred thousand deep', `${'{"a":'.repeat(1e5)}1${'}'.repeat(1e5)}`, /./],
  ])('%s', (_, text, problem) => {
    const reading = readText(text);
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.problems[0]).toMatch(problem);
  });

  test('a record with a list longer than any frame has', () => {
    const many = Array.from({ length: 201 }, () => FIRST_SAMPLE.hardware[0]);
    expect(problemsOf(withAt('hardware', many))).toEqual(['hardware: this list is longer than 200.']);
  });

  test('values that are no JSON at all are refused, not thrown at', () => {
    for (const value of [undefined, () => 1, Symbol('frame'), 5n, new Date(), new Map()]) {
      expect(readValue(value).ok).toBe(false);
      expect(readValue(withAt('arm.length', value)).ok).toBe(false);
    }
  });
});

test('files are named so that every system takes the name', () => {
  expect(fileName(FIRST_SAMPLE)).toBe('dunnock-d.frame.json');
  for (const name of ['', '../../etc', 'A/B\\C:*?', '…', 'CON .', 'Ölfarbe'])
    expect(fileName({ ...FIRST_SAMPLE, name, revision: '' })).toMatch(/^[a-z0-9][a-z0-9-]*\.frame\.json$/);
});

test('the samples that the pages offer are the files', () => {
  const files = SAMPLE_FILES.map(([name]) => JSON.parse(readFileSync(`content/frames/${name}.json`, 'utf8')));
  expect([...SAMPLES].sort((a, b) => fileName(a).localeCompare(fileName(b)))).toEqual(files);
});
