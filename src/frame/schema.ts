import { FIELDS, type Field, type FrameRecord, type LeafPath, type SpreadField } from '@frameworthy/shared/frame';
import { FIT_KINDS, HOLE_PATTERNS, SIDES } from '@frameworthy/shared/fit';
import { isBareNumber, parseQuantity, unitsOf, type QuantityKind } from '@frameworthy/shared/quantity';
import * as v from 'valibot';

/** Version that this site writes. Older ones are brought forward by `migrate.ts`. */
export const VERSION = 1;
export const FORMAT = 'frameworthy-frame';

/** Longest text of a field, and longest list. */
const LONG_TEXT = 4000;
const LONG_LIST = 200;

interface Range {
  kind: QuantityKind;
  min: number;
  max: number;
}

const bare = (kind: QuantityKind): boolean => unitsOf(kind).some(({ symbol }) => symbol === '');

function asNumber(given: number | string, { kind, min, max }: Range): number | string {
  let value = given;
  if (typeof value === 'string') {
    const read = parseQuantity(value, kind);
    if (!read.ok) return read.problem;
    if (isBareNumber(value) && !bare(kind)) return `"${value}" has no unit.`;
    value = read.value;
  }
  if (!Number.isFinite(value)) return 'This must be a number.';
  const unit = unitsOf(kind)[0];
  const limit = (bound: number) =>
    `${Number((bound / (unit?.factor ?? 1)).toPrecision(6))} ${unit?.symbol ?? ''}`.trim();
  // A hair outside is rounding of a unit, not a wrong value.
  const hair = 1e-9 * Math.max(Math.abs(min), Math.abs(max));
  if (value < min - hair) return `This must be at least ${limit(min)}.`;
  if (value > max + hair) return `This must be at most ${limit(max)}.`;
  return kind === 'count' && !Number.isInteger(value) ? 'This must be a whole number.' : value;
}

/** SI as a number, or text with a unit: `0.02` or `"20 mm"`. */
const quantity = (range: Range) =>
  v.pipe(
    v.union([v.number(), v.string()], 'This must be a number, or text with a unit.'),
    // For the published schema, which cannot see into the check.
    v.metadata({ minimum: range.min, maximum: range.max, quantity: range.kind }),
    v.rawTransform(({ dataset, addIssue, NEVER }) => {
      const value = asNumber(dataset.value, range);
      if (typeof value === 'number') return value;
      addIssue({ message: value });
      return NEVER;
    }),
  );

const text = (most = 200) =>
  v.pipe(v.string('This must be text.'), v.maxLength(most, `This must be at most ${most} characters long.`));

const oneOf = <const T extends readonly string[]>(names: T) =>
  v.picklist(names, `This must be one of: ${names.join(', ')}.`);

const list = <S extends v.GenericSchema>(item: S) =>
  v.pipe(v.array(item, 'This must be a list.'), v.maxLength(LONG_LIST, `This list is longer than ${LONG_LIST}.`));

const missing = 'This part is missing or of the wrong type.';
const loose = <E extends v.ObjectEntries>(entries: E) => v.looseObject(entries, missing);

function spread(field: SpreadField) {
  const one = quantity(field);
  return v.pipe(
    loose({ low: one, typical: one, high: one }),
    v.check(
      ({ low, typical, high }) => low <= typical && typical <= high,
      'Low, typical and high must stand in order.',
    ),
  );
}

const leaf = (field: Field): v.GenericSchema =>
  'choices' in field ? oneOf(Object.keys(field.choices)) : 'spread' in field ? spread(field) : quantity(field);

const length = (most: number) => quantity({ kind: 'length', min: -most, max: most });
const size = quantity({ kind: 'length', min: 1e-4, max: 1 });
const mass = quantity({ kind: 'mass', min: 0, max: 10 });

const item = loose({
  name: text(80),
  kind: oneOf(FIT_KINDS),
  length: size,
  width: size,
  height: size,
  x: length(1),
  y: length(1),
  z: length(1),
  mass,
  tilt: v.optional(quantity({ kind: 'angle', min: -Math.PI / 2, max: Math.PI / 2 })),
  overhang: v.optional(quantity({ kind: 'length', min: 0, max: 1 })),
  openAbove: v.optional(v.boolean('This must be true or false.')),
  pattern: v.optional(oneOf(HOLE_PATTERNS)),
  lens: v.optional(loose({ reach: length(1), diameter: size })),
  screw: v.optional(
    loose({
      thread: oneOf(['M2', 'M2.5', 'M3', 'M4']),
      hole: size,
      across: size,
      height: quantity({ kind: 'length', min: 0, max: 0.1 }),
    }),
  ),
  wires: v.optional(
    list(loose({ side: oneOf(SIDES), reach: quantity({ kind: 'length', min: 0, max: 1 }), width: v.optional(size) })),
  ),
});

const arrangement = loose({
  name: text(80),
  suits: v.optional(text(400)),
  standoffs: v.pipe(
    list(loose({ x: length(1), y: length(1) })),
    v.minLength(3, 'A top plate needs three standoffs or more, not all on one line.'),
  ),
  items: list(item),
});

const namesOf = ({ arrangements }: { arrangements: readonly { name: string }[] }) =>
  arrangements.map(({ name }) => name);

const electronics = v.pipe(
  loose({
    current: text(80),
    arrangements: v.pipe(list(arrangement), v.minLength(1, 'There must be one arrangement at the least.')),
  }),
  v.forward(
    v.check(
      (given) => given.arrangements.length === 0 || namesOf(given).includes(given.current),
      'This must be the name of an arrangement.',
    ),
    ['current'],
  ),
  v.forward(
    v.check((given) => new Set(namesOf(given)).size === given.arrangements.length, 'Two have the same name.'),
    ['arrangements'],
  ),
);

type Tree = { [key: string]: Tree | v.GenericSchema };

const isSchema = (node: Tree | v.GenericSchema): node is v.GenericSchema =>
  typeof (node as v.GenericSchema).kind === 'string';

/** Nests schemas of dotted paths into objects. */
function nested(): Tree {
  const root: Tree = { electronics };
  for (const [path, field] of Object.entries(FIELDS) as [LeafPath, Field][]) {
    const keys = path.split('.');
    const last = keys.pop() as string;
    const at = keys.reduce<Tree>((node, key) => (node[key] ??= {}) as Tree, root);
    at[last] = leaf(field);
  }
  return root;
}

const objectOf = (tree: Tree): v.GenericSchema =>
  loose(Object.fromEntries(Object.entries(tree).map(([key, node]) => [key, isSchema(node) ? node : objectOf(node)])));

/** The frame record. Unknown fields are kept as they are. */
export const FrameSchema = objectOf({
  format: v.literal(FORMAT, `This must be "${FORMAT}".`),
  version: v.literal(VERSION, `This must be ${VERSION}.`),
  name: text(80),
  revision: text(40),
  notes: text(LONG_TEXT),
  suits: text(LONG_TEXT),
  ...nested(),
  hardware: list(
    loose({
      name: text(80),
      count: quantity({ kind: 'count', min: 0, max: 1000 }),
      mass,
      cost: quantity({ kind: 'ratio', min: 0, max: 1e5 }),
    }),
  ),
}) as v.GenericSchema<unknown, FrameRecord>;
