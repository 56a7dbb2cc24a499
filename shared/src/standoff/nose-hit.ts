import { bodyHit, type BodyHit, type BodyHitResult } from './body-hit.ts';

export type NoseHit = Omit<BodyHit, 'direction' | 'rollRadius'>;
export type NoseHitResult = BodyHitResult;

/**
 * Nose-first hit on the top plate: the frame behind it goes on, the standoffs bring it to rest.
 * $$\frac1{m_{eff}}=\frac1m+\frac{r_z^2}{I_{pitch}}+\frac{r_y^2}{I_{yaw}},\quad F = v\sqrt{k\,m_{eff}},\quad
 * \frac1k=\frac1{k_{contact}}+\frac1{k_{frame}}$$
 * @param hit - columns, mass, where and how fast
 * @returns effective mass, stiffness, peak force, and plate and columns at the peak
 * @validity as bodyHit
 * @throws InputError when a number is out of range, or the columns leave the plate free to move
 * @derivation bodyHit with a push straight back, which turns nothing about the roll axis
 */
export function noseHit(hit: NoseHit): NoseHitResult {
  return bodyHit({ ...hit, rollRadius: hit.pitchRadius, direction: { x: -1, y: 0, z: 0 } });
}
