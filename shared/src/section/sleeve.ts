import { requireBelow } from '../require.ts';
import { roundTubeSection } from './round-tube.ts';
import type { Section } from './section.ts';

/**
 * Section of a tube glued into a tube: it fills the bore but for the bond line.
 * $$D_s = D - 2t - 2t_b$$
 * @param sleeve - outside and wall of the tube D and t, bond line t_b, wall of the sleeve [m]
 * @param parameter - name that a refusal goes by
 * @returns section of the sleeve alone
 * @validity bond line of one thickness all round
 * @throws InputError when the wall does not leave a bore in the sleeve: names the sleeve, and not the tube
 * @derivation bore less twice the bond line
 */
export function sleeveSection(
  sleeve: { outerDiameter: number; wall: number; bondLine: number; sleeveWall: number },
  parameter = 'sleeveWall',
): Section {
  const outside = sleeve.outerDiameter - 2 * sleeve.wall - 2 * sleeve.bondLine;
  requireBelow(
    sleeve.sleeveWall,
    Math.max(outside / 2, 0),
    'must be less than half of what the bore of the tube leaves beside the bond line',
    { parameter, quantity: 'wall of the sleeve', kind: 'length' },
  );
  return roundTubeSection({ outerDiameter: outside, wall: sleeve.sleeveWall });
}
