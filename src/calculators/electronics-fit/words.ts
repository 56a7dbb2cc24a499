import type { Show } from '~/island/declaration.ts';
import { clash, type Filled } from './compute.ts';

const MOST = 2;

/** What collides, in a clause: `the transmitter runs into the rear standoffs (move it 2 mm forward)`. */
export function collisionWords({ collisions }: Filled, show: Show): string {
  const [worst, rest] = [collisions.slice(0, MOST), collisions.length - MOST];
  const each = worst.map((one) => `${clash(one)} (move it ${show(one.move, 'length', 2)} ${one.direction})`);
  return each.join(rest > 0 ? ', ' : ' and ') + (rest > 0 ? ` and ${rest} more` : '');
}

/** One arrangement in a sentence. */
export function says(one: Filled, show: Show): string {
  const { letter, collisions, shortestBody, shortestStandoff: standoff } = one;
  const first = collisions.length === 0 ? `${letter} fits` : `In ${letter} ${collisionWords(one, show)}`;
  const body = shortestBody
    ? `moved together it takes a plate of ${show(shortestBody.length, 'length')}`
    : 'no plate is long enough';
  const sold = standoff.bySway.sold;
  const governs =
    standoff.governs === 'sway' ? 'for the dip of the plate in the hit' : `for the ${standoff.tallest.name}`;
  const posts =
    sold === undefined
      ? 'folds onto the electronics in this hit, with any standoff sold'
      : `needs standoffs of ${show(sold, 'length')} ${governs}`;
  return `${first}; ${body}; it ${posts}.`;
}
