import { FORMAT, VERSION } from './schema.ts';

type Document = Record<string, unknown>;

const isObject = (value: unknown): value is Document =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A step from one version to the next. Step 0 reads drafts, which knew one arrangement and no version. */
const STEPS: readonly ((old: Document) => Document)[] = [
  (draft) => {
    const { electronics } = draft;
    const one = isObject(electronics) && !('arrangements' in electronics);
    return {
      ...draft,
      format: FORMAT,
      version: 1,
      suits: draft['suits'] ?? '',
      electronics: one ? { current: 'As it is', arrangements: [{ name: 'As it is', ...electronics }] } : electronics,
    };
  },
];

/** The document in the version of today, or why it can't be read. */
export function migrate(given: unknown): { document: Document; from: number } | { problem: string } {
  if (!isObject(given)) return { problem: 'This is no frame record: a record is one object in braces.' };
  const version = Object.hasOwn(given, 'version') ? given['version'] : 0;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 0)
    return { problem: 'version: this must be a whole number.' };
  if (version > VERSION)
    return {
      problem: `version: the record is of version ${version}; these pages read up to ${VERSION}. Open it with newer pages.`,
    };
  if (version > 0 && given['format'] !== FORMAT)
    return { problem: `format: this must be "${FORMAT}"; the file may be meant for something else.` };
  let document = given;
  for (let at = version; at < VERSION; at++) document = STEPS[at]!(document);
  return { document, from: version };
}
