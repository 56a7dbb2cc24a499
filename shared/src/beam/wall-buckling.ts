import type { Warning } from '../error.ts';
import { requireNotNegative, requirePositive } from '../require.ts';
import { requireTube, type RoundTube } from '../section/index.ts';
import { tubeBuckling } from './tube-buckling.ts';

export interface BentTube {
  tube: RoundTube;
  /** Young's modulus along the tube [Pa]. */
  modulusAlong: number;
  /** Round the tube [Pa]. */
  modulusRound: number;
  /** Largest on the tube alone [N·m]. */
  moment: number;
}

/**
 * Names a tube whose wall gives way under a moment before the tube has bent as a beam.
 * $$M > \min(M_{buckling},\,M_{oval}),\quad E=\sqrt{E_x E_y}$$
 * @param bent - tube, moduli along and round it, moment
 * @returns `wall-buckles` above the lower of the two moments of tubeBuckling
 * @validity a screen: an orthotropic wall counts as one of the geometric mean of its moduli
 * @throws InputError when a size, a modulus or the moment is out of range
 * @source nasa-1968-sp8007, eq. 9 and 10, and the flattening of a long tube; the mean is our stand-in for carbon
 */
export function wallBucklingWarnings({ tube, modulusAlong, modulusRound, moment }: BentTube): Warning[] {
  requireTube(tube);
  requirePositive(modulusAlong, { parameter: 'modulusAlong', quantity: 'modulus along the tube', kind: 'modulus' });
  requirePositive(modulusRound, { parameter: 'modulusRound', quantity: 'modulus round the tube', kind: 'modulus' });
  requireNotNegative(moment, { parameter: 'moment', quantity: 'moment on the tube', kind: 'moment' });
  const { bucklingMoment, ovalisationMoment } = tubeBuckling({
    radius: (tube.outerDiameter - tube.wall) / 2,
    wall: tube.wall,
    youngsModulus: Math.sqrt(modulusAlong * modulusRound),
  });
  if (moment <= Math.min(bucklingMoment, ovalisationMoment)) return [];
  return [
    {
      code: 'wall-buckles',
      message:
        'The tube is too thin for beam theory here: its wall buckles or flattens below this moment, by the limits of NASA SP-8007 (1968), eq. 9 and 10. For carbon they are a screen.',
    },
  ];
}
