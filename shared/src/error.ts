import type { QuantityKind } from './quantity/kinds.ts';

/** What an {@link InputError} is made from. */
export interface InputProblem {
  /** Name of the function parameter, as written in code: `wall`. A calculator uses it to find the field. */
  parameter: string;
  /** The same in the reader's words: `wall thickness`. */
  quantity: string;
  /** The value that was refused, in SI. */
  value: unknown;
  /** The rule it broke, as the end of a sentence without numbers: `must be smaller than the outer radius`. */
  rule: string;
  /** The number behind the rule, in SI, where there is one. */
  limit?: number;
  /** What kind of quantity value and limit are, so that they can be shown in the reader's units. */
  kind?: QuantityKind;
}

/** The one error that the package throws: names the quantity, its value and the rule that it broke. */
export class InputError extends Error implements InputProblem {
  readonly parameter: string;
  readonly quantity: string;
  readonly value: unknown;
  readonly rule: string;
  readonly limit?: number;
  readonly kind?: QuantityKind;

  constructor(problem: InputProblem) {
    const limit = problem.limit === undefined ? '' : ` (${problem.limit})`;
    super(`${problem.quantity} ${String(problem.value)} ${problem.rule}${limit}`);
    this.name = 'InputError';
    this.parameter = problem.parameter;
    this.quantity = problem.quantity;
    this.value = problem.value;
    this.rule = problem.rule;
    if (problem.limit !== undefined) this.limit = problem.limit;
    if (problem.kind !== undefined) this.kind = problem.kind;
  }
}

/** A result that stands, with a reason to doubt it: outside a model's validity, or against a rule of the trade. */
export interface Warning {
  /** Stable name, for tests and links: `edge-distance-short`. */
  code: string;
  /** One plain sentence. Numbers in it are avoided: the reader's units are not known here. */
  message: string;
}
