import { formatNumber } from '@frameworthy/shared/quantity';
import type { EvidenceKind, PublishedCase } from '../../tests/published/row.ts';

/** Strongest evidence first. */
export const KINDS: readonly { kind: EvidenceKind; means: string }[] = [
  { kind: 'published number', means: 'A number printed in the source, reproduced from the inputs printed with it.' },
  {
    kind: 'published formula, our number',
    means: 'The formula is in the source; the number is worked out by us from it.',
  },
  { kind: 'from memory', means: 'Recalled from the named source without the page at hand, then worked out again.' },
  { kind: 'common practice', means: 'A fact of the trade that nobody has published; a wide band.' },
  { kind: 'own derivation or solver', means: 'A limit, an equilibrium or an independent solution of the same model.' },
];

/** Short text of a number of any size. */
export const digits = (value: number): string => formatNumber(value, 6);

/** Less than this, relative, is rounding in the machine. */
const ROUNDING = 1e-12;

export function toleranceText({ tolerance, unit }: PublishedCase): string {
  return 'relative' in tolerance
    ? `${digits(tolerance.relative * 100)} %`
    : `${digits(tolerance.absolute)} ${unit}`.trim();
}

export function difference(row: PublishedCase, ours: number): string {
  if (row.expected === 0) return digits(ours - row.expected);
  const relative = (ours - row.expected) / row.expected;
  return `${digits(Math.abs(relative) < ROUNDING ? 0 : Number((relative * 100).toPrecision(2)))} %`;
}
