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

const number = new Intl.NumberFormat('en-GB', { maximumSignificantDigits: 6, useGrouping: false });

/** Short text of a number of any size. */
export function digits(value: number): string {
  if (value === 0) return '0';
  const size = Math.abs(value);
  return size < 1e-3 || size >= 1e7 ? value.toExponential(4).replace('-', '−') : number.format(value).replace('-', '−');
}

export function toleranceText({ tolerance, unit }: PublishedCase): string {
  return 'relative' in tolerance
    ? `${digits(tolerance.relative * 100)} %`
    : `${digits(tolerance.absolute)} ${unit}`.trim();
}

export function difference(row: PublishedCase, ours: number): string {
  if (row.expected === 0) return digits(ours - row.expected);
  return `${digits(Number((((ours - row.expected) / row.expected) * 100).toPrecision(2)))} %`;
}
