import type { Warning } from '../error.ts';
import { requireBelow, requireNotNegative, requirePositive } from '../require.ts';
import { requireTube, type RoundTube } from '../section/index.ts';
import { edgeDistanceWarnings } from './edge-distance.ts';
import { holeUses, type HoleUse } from './hole-uses.ts';
import { twoScrewRoot, type RootReactions } from './two-screw-root.ts';

export interface TubeRoot {
  tube: RoundTube;
  /** Wall of a sleeve bonded in the bore, 0 for none [m]. */
  sleeveWall: number;
  /** In tube and sleeve, upright through both walls [m]. */
  holeDiameter: number;
  /** Nominal [m]. */
  screwDiameter: number;
  /** From the outer screw to the motor axis [m]. */
  armLength: number;
  /** [m] */
  screwSpacing: number;
  /** From the inner screw's centre to the inner end of the tube [m]. */
  endDistance: number;
  /** At the motor, in the plane of the propellers [N]. */
  horizontalForce: number;
  /** At the motor, up or down [N]. */
  verticalForce: number;
  /** Force that clamping friction takes off each screw; 0 unless it is to be counted on [N]. */
  slipForce?: number;
  strengths: RootStrengths;
}

export interface RootStrengths {
  /** [Pa] */
  bearing: number;
  /** In-plane shear of the wall [Pa]. */
  shear: number;
  /** Bending strength along the arm [Pa]. */
  bending: number;
  /** Over which the laminate evens out the peak at a hole [m]. */
  characteristicLength: number;
}

export interface TubeRootResult {
  /** In the plane of the propellers: the holes press on the screws. */
  horizontal: RootReactions;
  /** Up and down: plates press on the tube, screws are pulled. */
  vertical: RootReactions;
  uses: readonly HoleUse[];
  /** The first to fail. */
  weakest: HoleUse;
  warnings: readonly Warning[];
}

/**
 * Both screws and both planes of a tube arm's root: reactions, and how much of the wall's strength each mode uses.
 * $$F_{inner} = \frac{F L}{s},\quad F_{outer} = \frac{F(L+s)}{s},\quad u = \frac{\sigma}{\sigma_{allow}}$$
 * @param root - tube, sleeve, holes, forces, strengths
 * @returns reactions per plane, uses per hole and mode, the weakest
 * @validity sleeve bonded and of the tube's material; loads static; modes do not help or hurt each other
 * @throws InputError when sizes do not fit each other or a number is out of range
 * @derivation twoScrewRoot in both planes, then holeUses at each screw
 */
export function tubeRoot(root: TubeRoot): TubeRootResult {
  requireRoot(root);
  const { armLength, screwSpacing } = root;
  const horizontal = twoScrewRoot({ tipForce: root.horizontalForce, armLength, screwSpacing });
  const vertical = twoScrewRoot({ tipForce: root.verticalForce, armLength, screwSpacing });
  const uses = holeUses(root, horizontal, vertical);
  const weakest = uses.reduce((worst, use) => (use.use > worst.use ? use : worst));
  return {
    horizontal,
    vertical,
    uses,
    weakest,
    warnings: edgeDistanceWarnings({
      diameter: root.holeDiameter,
      end: root.endDistance,
      pitch: screwSpacing,
      // Each hole has half the circumference of the wall to itself.
      width: (Math.PI * (root.tube.outerDiameter - root.tube.wall)) / 2,
    }),
  };
}

function requireRoot(root: TubeRoot): void {
  requireTube(root.tube);
  const hole = { parameter: 'holeDiameter', quantity: 'hole diameter', kind: 'length' } as const;
  requirePositive(root.holeDiameter, hole);
  requirePositive(root.screwDiameter, { parameter: 'screwDiameter', quantity: 'screw diameter', kind: 'length' });
  if (root.screwDiameter > root.holeDiameter) {
    requireBelow(root.screwDiameter, root.holeDiameter, 'must not be larger than its hole', {
      parameter: 'screwDiameter',
      quantity: 'screw diameter',
      kind: 'length',
    });
  }
  requireNotNegative(root.sleeveWall, { parameter: 'sleeveWall', quantity: 'wall of the sleeve', kind: 'length' });
  const bore = root.tube.outerDiameter / 2 - root.tube.wall;
  requireBelow(root.sleeveWall, bore, 'must be smaller than half the bore of the tube', {
    parameter: 'sleeveWall',
    quantity: 'wall of the sleeve',
    kind: 'length',
  });
  requirePositive(root.endDistance, { parameter: 'endDistance', quantity: 'distance to the end', kind: 'length' });
  requireBelow(root.holeDiameter / 2, root.endDistance, 'must leave wall between hole and end', {
    parameter: 'endDistance',
    quantity: 'hole radius',
    kind: 'length',
  });
  requirePositive(root.screwSpacing, { parameter: 'screwSpacing', quantity: 'screw spacing', kind: 'length' });
  requireBelow(root.holeDiameter, root.screwSpacing, 'must leave wall between the holes', {
    parameter: 'screwSpacing',
    quantity: 'hole diameter',
    kind: 'length',
  });
  requireNotNegative(root.slipForce ?? 0, { parameter: 'slipForce', quantity: 'friction of the clamp', kind: 'force' });
  for (const [parameter, quantity] of [
    ['bearing', 'bearing strength'],
    ['shear', 'shear strength'],
    ['bending', 'bending strength'],
  ] as const) {
    requirePositive(root.strengths[parameter], { parameter, quantity, kind: 'stress' });
  }
}
