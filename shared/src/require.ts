import { InputError } from './error.ts';
import type { QuantityKind } from './quantity/kinds.ts';

interface Subject {
  parameter: string;
  quantity: string;
  kind?: QuantityKind;
}

/** Absolute size beyond which no quantity of a small airframe in SI makes sense; keeps products of a few inputs finite. */
const LARGEST = 1e15;

/** Positive size below which powers and quotients of a few inputs run out of digits; far under any second moment of area in m⁴. */
const SMALLEST = 1e-30;

/**
 * Refuses anything that is not a finite number of a size that arithmetic can carry.
 * @throws InputError when it is not.
 */
export function requireFinite(value: number, subject: Subject): void {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    throw new InputError({ ...subject, value, rule: 'must be a number' });
  }
  if (Math.abs(value) > LARGEST) throw new InputError({ ...subject, value, rule: 'is too large to compute with' });
}

/**
 * Refuses zero and below.
 * @throws InputError when `value` is not a positive number.
 */
export function requirePositive(value: number, subject: Subject): void {
  requireFinite(value, subject);
  if (value <= 0) throw new InputError({ ...subject, value, rule: 'must be greater than zero' });
  if (value < SMALLEST) throw new InputError({ ...subject, value, rule: 'is too small to compute with' });
}

/**
 * Refuses anything below zero.
 * @throws InputError when `value` is negative or not a number.
 */
export function requireNotNegative(value: number, subject: Subject): void {
  requireFinite(value, subject);
  if (value < 0) throw new InputError({ ...subject, value, rule: 'must not be negative' });
}

/**
 * Refuses a value that is not strictly below a limit; `rule` says why in words: `must be smaller than the outer radius`.
 * @throws InputError when `value >= limit`.
 */
export function requireBelow(value: number, limit: number, rule: string, subject: Subject): void {
  requireFinite(value, subject);
  if (value >= limit) throw new InputError({ ...subject, value, rule, limit });
}

/**
 * Refuses a value outside the closed range.
 * @throws InputError when `value` is outside `minimum`..`maximum`.
 */
export function requireBetween(value: number, minimum: number, maximum: number, subject: Subject): void {
  requireFinite(value, subject);
  if (value < minimum) throw new InputError({ ...subject, value, rule: 'must be at least', limit: minimum });
  if (value > maximum) throw new InputError({ ...subject, value, rule: 'must be at most', limit: maximum });
}
