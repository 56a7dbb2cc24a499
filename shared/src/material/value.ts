/** What a material number is worth. */
export type MaterialValueKind =
  'data sheet' | 'standard minimum' | 'typical published' | 'common practice' | 'estimate';

/** A material number with its spread: materials differ by maker, batch and lay-up. SI. */
export interface MaterialValue {
  low: number;
  typical: number;
  high: number;
  kind: MaterialValueKind;
  /** Key in the bibliography. */
  source: string;
  /** What the number leaves out, or how it was arrived at. */
  note?: string;
}

export const materialValue = (
  [low, typical, high]: readonly [number, number, number],
  kind: MaterialValueKind,
  source: string,
  note?: string,
): MaterialValue => ({ low, typical, high, kind, source, ...(note === undefined ? {} : { note }) });

export const GPA = 1e9;
export const MPA = 1e6;

/** Multiplies the three figures of a spread into SI. */
export const spread = (unit: number, low: number, typical: number, high: number): readonly [number, number, number] => [
  low * unit,
  typical * unit,
  high * unit,
];
