import { requireBetween, requireNotNegative, requirePositive } from './require.ts';
import type { QuantityKind } from './quantity/kinds.ts';

interface Subject {
  parameter: string;
  quantity: string;
  kind?: QuantityKind;
}

/**
 * Refuses a length that no bonded part has: outside 0.1 micrometre to 100 m. Keeps quotients of bonds and doublers finite.
 * @throws InputError when it is outside.
 */
export function requireLength(value: number, subject: Subject): void {
  requirePositive(value, { kind: 'length', ...subject });
  requireBetween(value, 1e-7, 100, { kind: 'length', ...subject });
}

/**
 * Refuses a modulus that no solid has: outside 10 kPa to 10 TPa.
 * @throws InputError when it is outside.
 */
export function requireModulus(value: number, subject: Subject): void {
  requirePositive(value, { kind: 'modulus', ...subject });
  requireBetween(value, 1e4, 1e13, { kind: 'modulus', ...subject });
}

/**
 * Refuses a stress limit that no solid has: outside 1 Pa to 10 TPa.
 * @throws InputError when it is outside.
 */
export function requireStrength(value: number, subject: Subject): void {
  requirePositive(value, { kind: 'stress', ...subject });
  requireBetween(value, 1, 1e13, { kind: 'stress', ...subject });
}

/**
 * Refuses a negative load, and one that no airframe could be under.
 * @throws InputError when it is negative or above 1e12 in SI.
 */
export function requireLoad(value: number, subject: Subject): void {
  requireNotNegative(value, subject);
  requireBetween(value, 0, 1e12, subject);
}
