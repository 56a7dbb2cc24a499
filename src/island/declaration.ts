import type { QuantityKind } from '@frameworthy/shared/quantity';
import type { Warning } from '@frameworthy/shared';
import type { FunctionComponent } from 'preact';
import type { SourceId } from '../../content/sources/index.ts';

/**
 * What a calculator is: data, one pure function, and a figure. The island in this folder renders any of them.
 * Numbers are SI throughout; the island converts at the edge.
 */

interface InputBase {
  /** In the reader's words: `Screw spacing`. */
  label: string;
  /** TeX of the trade's symbol, as it stands in the worked steps: `s`. */
  symbol?: string;
  /** What it is, where to measure it, what is usual. One or two sentences. */
  help: string;
  /** Heading under which the field stands; inputs of one group follow each other. */
  group?: string;
  /** Dotted path into the frame record that this value is read from and written to. */
  frameField?: string;
  /** Names of `InputError.parameter` that belong to this field, where they differ from its key. */
  parameters?: readonly string[];
  /** Hides the field while it has no effect. Its value is kept. */
  shownWhen?: (values: Readonly<Record<string, number | string>>) => boolean;
}

export interface QuantityInput extends InputBase {
  quantity: QuantityKind;
  /** SI. */
  default: number;
  /** SI, inclusive: outside it the field shows an error. */
  min: number;
  max: number;
  /** SI: one key press or slider notch. */
  step: number;
}

export interface ChoiceInput extends InputBase {
  choices: Readonly<Record<string, string>>;
  /** A key of `choices`. */
  default: string;
}

export type Input = QuantityInput | ChoiceInput;
export type Inputs = Readonly<Record<string, Input>>;

/** The values that the pure function receives: SI numbers, and the keys of choices. */
export type Values<I extends Inputs> = string extends keyof I
  ? Readonly<Record<string, number | string>>
  : { readonly [K in keyof I]: I[K] extends { choices: infer C } ? keyof C & string : number };

export type VerdictLevel = 'good' | 'marginal' | 'bad';

export interface Verdict {
  level: VerdictLevel;
  /** A few plain words: `below 3 d: the end will shear out`. */
  text: string;
}

export interface Output<V, R> {
  key: string;
  label: string;
  symbol?: string;
  quantity: QuantityKind;
  /** One sentence: what the number means for the frame. */
  meaning: string;
  value: (result: R, values: V) => number;
  /** Against which limit it stands, and how. */
  verdict?: (result: R, values: V) => Verdict | undefined;
  /** Why there is no such number: `even a solid bar is softer`. Shown in its place; `value` is then not asked. */
  impossible?: (result: R, values: V) => string | undefined;
  /** Significant digits, 3 where not given. */
  digits?: number;
  /** The one or two outputs that answer the question, shown large. */
  headline?: boolean;
  group?: string;
}

export interface Slot {
  value: number;
  quantity: QuantityKind;
  digits?: number;
}

/**
 * One line of the worked steps. `formula` is TeX with symbols. `numbers` is the same with `\slot{name}` where a value
 * goes: typeset once at build, the island then replaces the text of each slot.
 */
export interface Step<V, R> {
  id: string;
  /** What the line works out, in words. */
  says: string;
  formula: string;
  numbers: string;
  slots: (values: V, result: R) => Readonly<Record<string, Slot>>;
}

export interface Series {
  label: string;
  /** SI, same length as the plot's x. NaN leaves a gap. */
  y: readonly number[];
  /** Style only: a limit is drawn as a thin dashed line, a comparison in grey. */
  role?: 'main' | 'second' | 'comparison' | 'limit';
}

export interface PlotData {
  x: readonly number[];
  series: readonly Series[];
  /** Where the reader's own value stands on the x axis. */
  marker?: number;
  /** Further named stations on the x axis: `outer screw`. */
  stations?: readonly { x: number; label: string }[];
}

export interface Plot<V, R> {
  id: string;
  title: string;
  /** What to see in it, one sentence. */
  caption: string;
  x: { label: string; quantity: QuantityKind };
  y: { label: string; quantity: QuantityKind };
  /** `compute` is the calculator's own function, for sweeps: see `sweep` in this folder. */
  data: (values: V, result: R, compute: (values: V) => R) => PlotData;
}

/** Numbers of one kind, or words where no quantity is named. */
export interface TableColumn {
  label: string;
  quantity?: QuantityKind;
  /** Significant digits, 3 where not given. */
  digits?: number;
}

export interface TableRow {
  /** One for each column, SI; the first one names the row. */
  cells: readonly (number | string)[];
  /** The reader's own case among others. */
  own?: boolean;
}

/** Numbers that belong side by side: the parts of one result, or cases to choose from. */
export interface Table<V, R> {
  id: string;
  title: string;
  /** What to see in it, one sentence. */
  caption: string;
  columns: readonly TableColumn[];
  /** `compute` is the calculator's own function, for cases beside the reader's. */
  rows: (values: V, result: R, compute: (values: V) => R) => readonly TableRow[];
}

/** Another calculator that can go on with these values. It is not loaded: a link opens it, with the values filled in. */
export interface Onward<V, R> {
  /** Its id. */
  calculator: string;
  /** The article that it stands in, seen from an article: `../arms/vibration.html`. */
  page: string;
  /** Text of the link: `Frequencies of an arm made of this`. */
  says: string;
  /** By its inputs' keys: a quantity, or a choice. Undefined where these values mean nothing to it. */
  values: (result: R, values: V) => Readonly<Record<string, Slot | string>> | undefined;
}

/** Lines of equal mass, equal stiffness and the like, on a map over two inputs. */
export interface ContourFamily<V, R, P> {
  /** What is equal along a line: `mass`. */
  label: string;
  quantity: QuantityKind;
  of: (point: P, values: V) => number;
  /** About how many lines at round numbers of the reader's unit, or the SI values themselves. */
  levels: number | ((values: V, result: R) => readonly number[]);
  /** One value to compare with, drawn heavy and named: `as stiff as the strip`. */
  match?: { label: string; at: (result: R, values: V) => number };
}

export interface MapAxis<V> {
  /** The input that it stands for. */
  input: keyof V & string;
  label: string;
  quantity: QuantityKind;
  /** SI. */
  from: number;
  to: number;
}

// eslint-disable-next-line @typescript-eslint/no-explicit-any -- maps of one calculator may have points of different kinds; `contourMap` ties each together
export interface ContourMap<V, R, P = any> {
  id: string;
  title: string;
  /** What to see in it, one sentence. */
  caption: string;
  x: MapAxis<V>;
  y: MapAxis<V>;
  /** Worked out some hundred times for each redraw: keep it light. An `InputError` leaves the place grey. */
  at: (values: V) => P;
  /** What grey means: `no bore left`. */
  impossible: string;
  families: readonly ContourFamily<V, R, P>[];
}

/** Lets the compiler tie the points of a map to its families. */
export function contourMap<V, R, P>(map: ContourMap<V, R, P>): ContourMap<V, R> {
  return map;
}

/** Text of a value in the reader's units, for labels in figures. */
export type Show = (value: number, quantity: QuantityKind, digits?: number) => string;

export interface FigureProps<V, R> {
  values: V;
  result: R;
  show: Show;
}

export interface Calculator<I extends Inputs = Inputs, R = unknown> {
  /** Same as its folder: `two-screw-root`. Stands in links, so it never changes. */
  id: string;
  title: string;
  /** The question in the reader's words, ending in a question mark. */
  question: string;
  inputs: I;
  /** Pure. May throw an `InputError` of the package; the island shows it at the field. */
  compute: (values: Values<I>) => R;
  outputs: readonly Output<Values<I>, R>[];
  /** What to doubt or to mend. */
  warnings?: (result: R, values: Values<I>, show: Show) => readonly Warning[];
  /** The answer in one or two sentences with the values in it, shown above the numbers. */
  says: (result: R, values: Values<I>, show: Show) => string;
  steps: readonly Step<Values<I>, R>[];
  plots: readonly Plot<Values<I>, R>[];
  maps?: readonly ContourMap<Values<I>, R>[];
  tables?: readonly Table<Values<I>, R>[];
  carriesTo?: readonly Onward<Values<I>, R>[];
  /** An SVG drawn to scale with the values; built from the parts in `island/drawing`. */
  Figure: FunctionComponent<FigureProps<Values<I>, R>>;
  figureCaption: string;
  assumptions: readonly string[];
  sources: readonly SourceId[];
  /** Where in `shared/src` the formulas are: `joint/two-screw-root.ts`. */
  formulas: readonly string[];
}

/** Lets the compiler tie inputs, compute, outputs, steps and plots of a calculator together. */
export function defineCalculator<const I extends Inputs, R>(calculator: Calculator<I, R>): Calculator<I, R> {
  return calculator;
}

/** A calculator whose exact types are of no interest, as in a list of all. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any -- a list of calculators with different inputs has no narrower common type
export type AnyCalculator = Calculator<any, any>;

/** Plot data of a sweep over one input: computes the calculator at `count` even points between `from` and `to`. */
export function sweep<V extends Readonly<Record<string, number | string>>, R>(
  values: V,
  compute: (values: V) => R,
  over: { input: keyof V & string; from: number; to: number; count?: number },
  series: readonly { label: string; of: (result: R, values: V) => number; role?: Series['role'] }[],
): PlotData {
  const count = over.count ?? 49;
  const marker = values[over.input] as number;
  const even = Array.from({ length: count }, (_, i) => over.from + ((over.to - over.from) * i) / (count - 1));
  // The reader's own value is one of the points, so that the reading there is the result itself.
  const x = marker > over.from && marker < over.to ? [...new Set([...even, marker])].sort((a, b) => a - b) : even;
  const points = x.map((value) => {
    const at = { ...values, [over.input]: value };
    try {
      return { at, result: compute(at) };
    } catch {
      // Part of a sweep may be impossible (a sleeve that no longer fits): the curve has a gap there.
      return undefined;
    }
  });
  return {
    x,
    series: series.map(({ label, of, role }) => ({
      label,
      ...(role ? { role } : {}),
      y: points.map((point) => (point ? of(point.result, point.at) : Number.NaN)),
    })),
    marker,
  };
}
