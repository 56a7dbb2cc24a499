import type { Warning } from '@frameworthy/shared';
import type { Collision, Role } from '@frameworthy/shared/fit';
import type { Show } from '~/island/declaration.ts';
import type { Filled, FitResult } from './compute.ts';

const MOST = 2;

const PARTS: Record<Role, string> = { body: '', lens: 'lens of the ', screw: 'nuts of the ', wires: 'wires of the ' };

/** What meets what, and what clears it: `the receiver runs into the rear standoffs (move it 2 mm forward)`. */
function clash({ kind, gap, move, direction, mover, against, moverPart, againstPart }: Collision, show: Show): string {
  const many = moverPart === 'screw' || moverPart === 'wires';
  const verb =
    gap >= 0
      ? many
        ? 'are too near'
        : 'is too near'
      : many
        ? 'run into'
        : kind === 'edge'
          ? 'stands past'
          : 'runs into';
  const way = `${show(move, 'length', 2)} ${direction}`;
  return `the ${PARTS[moverPart]}${mover} ${verb} the ${PARTS[againstPart]}${against} (move it ${way})`;
}

/** What collides, in a clause; what has to move farthest comes first. */
export function collisionWords({ collisions }: Filled, show: Show): string {
  const worst = [...collisions].sort((a, b) => b.move - a.move).slice(0, MOST);
  const rest = collisions.length - MOST;
  return worst.map((one) => clash(one, show)).join(rest > 0 ? ', ' : ' and ') + (rest > 0 ? ` and ${rest} more` : '');
}

function warningsOf({ letter, collisions, shortestStandoff }: Filled, show: Show): Warning[] {
  const { inHit, longest, bySway } = shortestStandoff;
  const found: Warning[] = collisions.map((one) => ({
    code: `collision-${letter}-${`${one.mover}-${one.against}`.replaceAll(' ', '-')}`,
    message: `${letter}: ${clash(one, show)}.`,
  }));
  if (inHit?.side && inHit.side.gap <= 0 && !collisions.some(({ kind }) => kind === 'standoff'))
    found.push({
      code: `side-${letter}`,
      message: `${letter}: in the hit the ${inHit.side.to} reaches the ${inHit.side.of}${longest === undefined ? ', with any length sold' : ''}.`,
    });
  if (bySway.sold === undefined)
    found.push({
      code: `none-${letter}`,
      message: `${letter}: in this hit the body folds onto the electronics with any length sold. More standoffs, a stronger alloy or a softer nose helps, a longer standoff does not.`,
    });
  else if (inHit && inHit.sway > bySway.sold / 4)
    found.push({
      code: `folds-${letter}`,
      message: `${letter}: the top plate moves by more than a quarter of the standoff. The body folds over, and the figures say no more than that.`,
    });
  return found;
}

/** What stands in the way in both arrangements. */
export const warnings = ({ a, b }: FitResult, show: Show): Warning[] => [a, b].flatMap((one) => warningsOf(one, show));

/** One arrangement in a sentence. */
export function says(one: Filled, plateLength: number, show: Show): string {
  const { letter, collisions, shortestBody, shortestStandoff: standoff } = one;
  const first = collisions.length === 0 ? `${letter} fits` : `In ${letter} ${collisionWords(one, show)}`;
  const over = (shortestBody?.length ?? 0) - plateLength;
  const more = over > 1e-9 ? `, ${show(over, 'length', 2)} more than yours` : '';
  const body = shortestBody
    ? `moved together it takes a plate of ${show(shortestBody.length, 'length')}${more}`
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
