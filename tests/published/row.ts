import type { SourceId } from '../../content/sources/index.ts';

/**
 * What a row is worth as evidence. Never raise it: a published formula with our own number in it is not a published
 * number.
 */
export type EvidenceKind =
  'published number' | 'published formula, our number' | 'from memory' | 'common practice' | 'own derivation or solver';

/** One check of the package against something outside the project. The test runner and the Checks page read the same rows. */
export interface PublishedCase {
  /** Unique and stable: `gere-example-5-13-peak-shear`. */
  id: string;
  /** Folder of `shared/src` that is checked: `section`. */
  topic: string;
  /** What is checked, in a few plain words. */
  what: string;
  kind: EvidenceKind;
  source: SourceId;
  /** Place in the source: `Example 5-13, p. 345`. */
  where: string;
  /** The inputs as a reader would want to see them. */
  given: string;
  /** Unit in which `expected` and the computed value are stated. */
  unit: string;
  /** The value to agree with, as the source prints it. */
  expected: number;
  /** Our value in the same unit. */
  compute: () => number;
  tolerance: { relative: number } | { absolute: number };
  /** Why the tolerance is what it is: `the book prints three digits`. */
  because: string;
  /** Disagreements, misprints, how the value was obtained. */
  note?: string;
}

/** A value that should be checked against something published, but for which nothing could be read. */
export interface MissingCheck {
  topic: string;
  what: string;
  /** What stands in for it meanwhile. */
  instead: string;
}
