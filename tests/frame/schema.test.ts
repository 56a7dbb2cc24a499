import { FIELDS, withValue, type FrameRecord } from '@frameworthy/shared/frame';
import { describe, expect, test } from 'vitest';
import { readValue } from '~/frame/read.ts';
import { FIRST_SAMPLE } from '~/frame/samples.ts';
import { GET } from '~/pages/frame-record.schema.json.ts';
import { SAMPLE_FILES } from './samples.ts';

/** What the published schema uses of JSON Schema (draft-07); any other word in it stops the test. */
interface Schema {
  type?: string;
  properties?: Record<string, Schema>;
  required?: string[];
  items?: Schema;
  enum?: unknown[];
  const?: unknown;
  anyOf?: Schema[];
  minItems?: number;
  maxItems?: number;
  maxLength?: number;
  minimum?: number;
  maximum?: number;
  additionalProperties?: Schema | boolean;
}
const KNOWN = new Set([
  ...['type', 'properties', 'required', 'items', 'enum', 'const', 'anyOf', 'minItems', 'maxItems', 'maxLength'],
  ...['minimum', 'maximum'],
  ...['additionalProperties', '$schema', 'title', 'description'],
]);

const typeOf = (value: unknown): string => (Array.isArray(value) ? 'array' : value === null ? 'null' : typeof value);

/** Paths at which a value breaks a schema. */
function broken(schema: Schema, value: unknown, at = ''): string[] {
  for (const word of Object.keys(schema)) expect(KNOWN.has(word), `"${word}" at ${at}`).toBe(true);
  const { type, required = [], properties = {}, items, anyOf } = schema;
  if (anyOf) return anyOf.some((one) => broken(one, value, at).length === 0) ? [] : [at];
  if ('const' in schema && schema.const !== value) return [at];
  if (schema.enum && !schema.enum.includes(value)) return [at];
  if (type === 'integer' ? !Number.isInteger(value) : type && type !== typeOf(value)) return [at];
  const { minimum = -Infinity, maximum = Infinity } = schema;
  if (typeof value === 'number' && (value < minimum || value > maximum)) return [at];
  if (typeof value === 'string' && value.length > (schema.maxLength ?? Infinity)) return [at];
  if (Array.isArray(value)) {
    if (value.length < (schema.minItems ?? 0) || value.length > (schema.maxItems ?? Infinity)) return [at];
    return value.flatMap((one, i) => (items ? broken(items, one, `${at}.${i}`) : []));
  }
  if (typeof value !== 'object' || value === null) return [];
  const held = value as Record<string, unknown>;
  const step = (key: string) => (at ? `${at}.${key}` : key);
  return [
    ...required.filter((key) => !Object.hasOwn(held, key)).map(step),
    ...Object.entries(held).flatMap(([key, one]) => {
      const own = Object.hasOwn(properties, key) ? properties[key] : schema.additionalProperties;
      if (own === false) return [step(key)];
      return typeof own === 'object' ? broken(own, one, step(key)) : [];
    }),
  ];
}

const published = (await GET().json()) as Schema & Record<string, unknown>;

describe('the published JSON Schema', () => {
  test('says what it is', () => {
    expect(GET().headers.get('content-type')).toBe('application/schema+json');
    expect(published['$schema']).toMatch(/json-schema\.org\/draft-07/);
    expect(published['title']).toBe('Frame record');
  });

  test.each(SAMPLE_FILES)('%s is valid by it', (_, value) => {
    expect(broken(published, value)).toEqual([]);
  });

  test('text with a unit and unknown fields are valid by it too', () => {
    expect(broken(published, withValue(FIRST_SAMPLE, 'arm.length', '70 mm'))).toEqual([]);
    expect(broken(published, { ...FIRST_SAMPLE, own: 1, arm: { ...FIRST_SAMPLE.arm, coat: 'clear' } })).toEqual([]);
  });

  test('it has every field of the record, and refuses a record without it or with a list in its place', () => {
    for (const path of Object.keys(FIELDS)) {
      const [gone, wrong] = [withValue(FIRST_SAMPLE, path, undefined), withValue(FIRST_SAMPLE, path, [])];
      // JSON leaves out what is undefined.
      expect(broken(published, JSON.parse(JSON.stringify(gone))), path).toEqual([path]);
      expect(broken(published, wrong), path).toEqual([path]);
    }
  });

  test.each([
    ['version', 2],
    ['format', 'kite'],
    ['arm.kind', 'box'],
    ['arm.tube.wall', 0.05],
    ['propeller.blades', 2.5],
    ['name', 'x'.repeat(81)],
    ['electronics.arrangements', []],
    ['hardware', [{ name: 'Screw' }]],
    ['arm', null],
  ])('what is wrong at %s is wrong by schema and door alike', (path, value) => {
    const record = withValue(FIRST_SAMPLE as FrameRecord, path, value);
    expect(broken(published, record).length).toBeGreaterThan(0);
    expect(readValue(record).ok).toBe(false);
  });
});
