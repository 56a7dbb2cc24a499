import type { QuantityKind } from '../../quantity/index.ts';
import type { FrameRecord, Spread } from '../record.ts';

/** A number in the record, SI. */
export interface NumberField {
  label: string;
  help?: string;
  kind: QuantityKind;
  min: number;
  max: number;
  /** One press of a key. */
  step: number;
  /** The article that explains it: `arms/doublers`. */
  page: string;
}

export interface ChoiceField {
  label: string;
  help?: string;
  choices: Readonly<Record<string, string>>;
  page: string;
}

/** Low, typical and high of a material. */
export interface SpreadField extends NumberField {
  spread: true;
}

export type Field = NumberField | ChoiceField | SpreadField;

type Join<P extends string, K extends string> = P extends '' ? K : `${P}.${K}`;

/** Dotted paths to everything in the record that is one value, lists and free text left out. */
type Leaf<T, P extends string> = {
  [K in keyof T & string]: T[K] extends Spread
    ? Join<P, K>
    : T[K] extends readonly unknown[]
      ? never
      : T[K] extends string | number
        ? P extends ''
          ? never
          : Join<P, K>
        : Leaf<T[K], Join<P, K>>;
}[keyof T & string];

/** The name of the arrangement in use belongs to the list beside it. */
export type LeafPath = Exclude<Leaf<FrameRecord, ''>, 'electronics.current'>;

/** Paths below one section of the record. */
export type PathsOf<S extends keyof FrameRecord> = Extract<LeafPath, `${S}.${string}`>;

export const MM = 1e-3;
export const GRAM = 1e-3;
export const MPA = 1e6;
export const GPA = 1e9;
export const RPM = Math.PI / 30;

type Range = readonly [min: number, max: number, step: number];
type Maker = (label: string, range: Range, page: string, help?: string) => NumberField;

const maker =
  (kind: QuantityKind, unit: number): Maker =>
  (label, [min, max, step], page, help) => ({
    label,
    kind,
    min: min * unit,
    max: max * unit,
    step: step * unit,
    page,
    ...(help ? { help } : {}),
  });

/** [mm] */
export const length = maker('length', MM);
/** [m] */
export const altitude = maker('altitude', 1);
/** [g] */
export const mass = maker('mass', GRAM);
/** [N] */
export const force = maker('force', 1);
/** [N·m] */
export const moment = maker('moment', 1);
/** [rev/min] */
export const turning = maker('rotationalSpeed', RPM);
/** [N·m/rad] */
export const turnStiffness = maker('rotationalStiffness', 1);
/** [N/mm] */
export const stiffness = maker('stiffness', 1e3);
/** [m/s] */
export const speed = maker('speed', 1);
export const ratio = maker('ratio', 1);
export const share = maker('percent', 1);
export const count = maker('count', 1);

export const choice = (label: string, choices: ChoiceField['choices'], page: string, help?: string): ChoiceField => ({
  label,
  choices,
  page,
  ...(help ? { help } : {}),
});

export const spread = (field: NumberField): SpreadField => ({ ...field, spread: true });

/** [MPa] */
export const strength = (label: string, range: Range, page: string): SpreadField =>
  spread(maker('stress', MPA)(label, range, page));
/** [GPa] */
export const modulus = (label: string, range: Range, page: string): SpreadField =>
  spread(maker('modulus', GPA)(label, range, page));
/** [kg/m³] */
export const density = (label: string, range: Range, page: string): SpreadField =>
  spread(maker('density', 1)(label, range, page));
/** [tex] */
export const linearDensity = maker('linearDensity', 1e-6);
