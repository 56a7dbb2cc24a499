import { drilledTubeSection } from '../section/index.ts';
import { bearingStress, shearOutStress } from './loaded-hole.ts';
import { notchedStrengthRatio } from './notched-strength.ts';
import type { TubeRoot } from './tube-root.ts';
import type { RootReactions } from './two-screw-root.ts';

export type HoleMode = 'bearing' | 'tear-out' | 'net-section-horizontal' | 'net-section-vertical';

export interface HoleUse {
  hole: 'outer' | 'inner';
  mode: HoleMode;
  /** [Pa] */
  stress: number;
  /** [Pa] */
  strength: number;
  /** Stress over strength [-]. */
  use: number;
}

const FACES = ['outer', 'inner'] as const;

/**
 * Stress over strength of the wall at each screw of a tube root and in each mode.
 * $$\sigma_b = \frac{F}{2d(t+t_s)},\quad \tau = \frac{F}{4l(t+t_s)},\quad \sigma_n = \frac{M c}{I_{net}}$$
 * @param root - checked root
 * @param horizontal - reactions in the plane of the propellers
 * @param vertical - reactions up and down
 * @returns eight uses: two holes, four modes
 * @validity as tubeRoot
 * @throws InputError through the functions that it calls
 * @derivation the push of the screw is shared by both walls of tube and sleeve. Tear-out: along the arm the wall
 * between hole and end shears on two planes of length l = e - d/2; across the arm the same two areas part in tension
 * (the end splits), so that one mean stress serves both. The outer hole shares the wall between the holes with the
 * inner one, l = (s-d)/2. Net section: bending with the two wall arcs of the hole taken away; where they stand at the
 * extreme fibre (vertical bending) the strength is that of the notched laminate
 */
export function holeUses(root: TubeRoot, horizontal: RootReactions, vertical: RootReactions): HoleUse[] {
  const { strengths, holeDiameter } = root;
  const net = netSection(root);
  const thickness = 2 * (root.tube.wall + root.sleeveWall);
  const notched = notchedStrengthRatio({ holeDiameter, characteristicLength: strengths.characteristicLength });
  const reach = { inner: root.endDistance - holeDiameter / 2, outer: (root.screwSpacing - holeDiameter) / 2 };
  const use = (hole: HoleUse['hole'], mode: HoleMode, stress: number, strength: number): HoleUse => ({
    hole,
    mode,
    stress,
    strength,
    use: stress / strength,
  });
  return FACES.flatMap((hole) => {
    const force = Math.max(0, horizontal[hole] - (root.slipForce ?? 0));
    // The moment of a cantilever on two screws has run out at the inner one.
    const at = hole === 'outer' ? 1 : 0;
    return [
      use(hole, 'bearing', bearingStress({ force, diameter: root.screwDiameter, thickness }), strengths.bearing),
      use(hole, 'tear-out', shearOutStress({ force, shearLength: reach[hole], thickness }), strengths.shear),
      use(hole, 'net-section-horizontal', at * horizontal.moment * net.horizontal, strengths.bending),
      use(hole, 'net-section-vertical', at * vertical.moment * net.vertical, strengths.bending * notched),
    ];
  });
}

/** Outer-fibre stress per moment of the drilled tube with its sleeve, in both planes [1/m³]. */
function netSection({ tube, sleeveWall, holeDiameter }: TubeRoot): { vertical: number; horizontal: number } {
  const drilled = { holeDiameter, holeAxis: 'vertical' } as const;
  const outer = drilledTubeSection({ ...tube, ...drilled });
  const bore = tube.outerDiameter - 2 * tube.wall;
  const inner = sleeveWall > 0 ? drilledTubeSection({ outerDiameter: bore, wall: sleeveWall, ...drilled }) : undefined;
  const perMoment = (plane: 'vertical' | 'horizontal'): number =>
    outer[plane].extremeFibre / (outer[plane].secondMomentOfArea + (inner?.[plane].secondMomentOfArea ?? 0));
  return { vertical: perMoment('vertical'), horizontal: perMoment('horizontal') };
}
