import { InputError } from '../error.ts';
import { requireBetween } from '../require.ts';
import type { Ply, PlyMaterial } from './ply.ts';

export type PlyDirection = '0' | '+45' | '-45' | '90';

const ANGLES: Readonly<Record<PlyDirection, number>> = {
  '0': 0,
  '+45': Math.PI / 4,
  '-45': -Math.PI / 4,
  '90': Math.PI / 2,
};

export interface LayupCounts {
  material: PlyMaterial;
  /** Of each ply [m]. */
  plyThickness: number;
  /** How many plies of each direction in one half, or in all of a stack that is not mirrored. */
  counts: Readonly<Record<PlyDirection, number>>;
  /** From the face inwards. */
  order: readonly PlyDirection[];
  /** Mirrored about the middle, or laid once. */
  mirrored: boolean;
}

/** More plies of one direction than anyone lays in one half. */
const MOST = 200;

/**
 * A stack from counts: blocks of one direction in a stated order from the face inwards, mirrored or laid once.
 * Plies at +45° and −45° that stand next to each other in the order alternate, as they are laid by hand.
 * @param layup - ply, counts, order from the face inwards
 * @returns the plies from z = −h/2 upwards
 * @validity whole numbers of plies
 * @throws InputError when there is no ply, a count is not a whole number, or the order names a direction twice
 * @derivation bookkeeping only
 */
export function layupFromCounts({ material, plyThickness, counts, order, mirrored }: LayupCounts): Ply[] {
  for (const direction of Object.keys(ANGLES) as PlyDirection[]) {
    const subject = {
      parameter: `count${direction}`,
      quantity: `number of plies at ${direction}°`,
      kind: 'count',
    } as const;
    requireBetween(counts[direction], 0, MOST, subject);
    if (!Number.isInteger(counts[direction]))
      throw new InputError({ ...subject, value: counts[direction], rule: 'must be a whole number' });
    if (order.filter((entry) => entry === direction).length !== 1) {
      throw new InputError({
        parameter: 'order',
        quantity: 'order of the plies',
        value: order.join(' '),
        rule: 'must name each direction once',
      });
    }
  }
  const half: PlyDirection[] = [];
  for (let i = 0; i < order.length; i++) {
    const [direction, next] = [order[i]!, order[i + 1]];
    if (direction.endsWith('45') && next?.endsWith('45')) {
      half.push(...alternate(direction, counts[direction], next, counts[next]));
      i++;
    } else half.push(...Array.from({ length: counts[direction] }, () => direction));
  }
  const stack = mirrored ? [...half, ...[...half].reverse()] : half;
  if (stack.length === 0) {
    throw new InputError({
      parameter: 'plies',
      quantity: 'number of plies',
      value: 0,
      rule: 'must be at least one',
      kind: 'count',
    });
  }
  return stack.map((direction) => ({ material, angle: ANGLES[direction], thickness: plyThickness }));
}

function alternate(first: PlyDirection, firstCount: number, second: PlyDirection, secondCount: number): PlyDirection[] {
  return Array.from({ length: Math.max(firstCount, secondCount) }, (_, i) => [
    ...(i < firstCount ? [first] : []),
    ...(i < secondCount ? [second] : []),
  ]).flat();
}

/**
 * Neighbouring plies of one material and angle as one thick ply: the same stack with fewer numbers.
 * @param plies - from z = −h/2 upwards
 * @returns the plies with runs joined
 * @validity stiffness and first ply failure are the same; ply numbers are not
 * @throws InputError never
 * @derivation the integrals over z run on through a face between two equal plies; stress is linear across it
 */
export function joinedPlies(plies: readonly Ply[]): Ply[] {
  const joined: Ply[] = [];
  for (const ply of plies) {
    const last = joined.at(-1);
    if (last && last.material === ply.material && last.angle === ply.angle)
      joined[joined.length - 1] = { ...last, thickness: last.thickness + ply.thickness };
    else joined.push(ply);
  }
  return joined;
}
