import { requireBetween } from '../require.ts';
import {
  foldingForce,
  foldingMovement,
  movementAt,
  noseHit,
  roundStandoff,
  type EndFixity,
} from '../standoff/index.ts';
import { swayShortening } from './sway-shortening.ts';
import type { PlanPoint } from './types.ts';

/** A nose-first hit on the top plate, and the standoffs that take it. */
export interface BodyHit {
  standoff: {
    outerDiameter: number;
    bore: number;
    youngsModulus: number;
    shearModulus: number;
    yieldStrength: number;
    foot: EndFixity;
    head: EndFixity;
  };
  /** All-up [kg]. */
  mass: number;
  /** [m] */
  pitchRadius: number;
  /** [m] */
  yawRadius: number;
  /** Above the bottom plate [m]. */
  centreHeight: number;
  /** Straight ahead [m/s]. */
  speed: number;
  /** Real peak over the linear one: 1.5 as measured, 1 for the linear peak itself. */
  peakFactor: number;
  /** Place of the hit in plan [m]. */
  at: PlanPoint;
  /** Above the top plate [m]. */
  height: number;
  /** Of obstacle and nose in series [N/m]. */
  contactStiffness: number;
}

export interface TopPlateInHit {
  /** Movement of each standoff's head in plan [m]. */
  heads: readonly PlanPoint[];
  /** The largest of them [m]. */
  sway: number;
  /** How far the top plate comes down over a point in plan [m]. */
  dipAt: (point: PlanPoint) => number;
  /** Whether the standoffs fold, and stay folded. */
  folds: boolean;
}

/**
 * Where the top plate goes in a nose-first hit: every head sideways, and down over a point.
 * $$\delta = \delta_{el}\,\frac{u}{u_{el}},\qquad
 * w = w_{rock} + \max\Bigl(\frac{3\delta^2}{5L},\ L-\sqrt{L^2-\delta^2}\Bigr)$$
 * @param hit - standoffs, mass, speed, place of the hit
 * @param columns - where the standoffs stand [m]
 * @param length - of the standoffs [m]
 * @returns movement of the heads, dip over a point, whether they fold
 * @validity as noseHit and foldingMovement; once they fold, all heads keep the shares of the elastic movement
 * @throws InputError when a number is out of range, or the standoffs leave the plate free to move
 * @derivation u with folding over u elastic at the head that moves most scales the elastic plan; δ lowers the plate, see
 * swayShortening; rocking grows with the force, which stops at the folding force
 */
export function topPlateInHit(hit: BodyHit, columns: readonly PlanPoint[], length: number): TopPlateInHit {
  const { standoff, speed, peakFactor, mass, at } = hit;
  requireBetween(peakFactor, 1, 10, { parameter: 'peakFactor', quantity: 'real over linear peak' });
  const beam = roundStandoff({ ...standoff, length });
  const found = noseHit({
    columns: columns.map((place) => ({ ...beam, ...place })),
    mass,
    pitchRadius: hit.pitchRadius,
    yawRadius: hit.yawRadius,
    centreOfMass: { x: 0, y: 0, z: hit.centreHeight - length },
    at: { ...at, z: hit.height },
    contactStiffness: hit.contactStiffness,
    speed,
  });
  const elastic = columns.map(({ x, y }) => movementAt(found.plate, { x, y, z: 0 }));
  const largest = Math.max(...elastic.map(({ x, y }) => Math.hypot(x, y)));
  const limit = foldingForce({
    ...standoff,
    count: columns.length,
    length,
    hinges: standoff.head === 'pinned' || standoff.foot === 'pinned' ? 1 : 2,
  });
  const sway = foldingMovement(
    {
      mass: found.effectiveMass,
      stiffness: found.stiffness,
      compliance: largest / found.peakForce,
      foldingForce: limit,
    },
    speed * peakFactor,
  );
  const scale = sway / largest;
  const peak = found.peakForce * peakFactor;
  const rocking = Math.min(peak, limit) / found.peakForce;
  const { displacement, rotation } = found.plate;
  const lowered = swayShortening(sway, length);
  return {
    heads: elastic.map(({ x, y }) => ({ x: x * scale, y: y * scale })),
    sway,
    dipAt: ({ x, y }) => lowered - rocking * (displacement.z + rotation.x * y - rotation.y * x),
    folds: peak > limit,
  };
}
