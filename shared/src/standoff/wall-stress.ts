import { requireFinite, requireNotNegative } from '../require.ts';
import { standoffSection } from './round-standoff.ts';

export interface LoadedWall {
  outerDiameter: number;
  bore: number;
  /** Resultant bending moment [N·m]. */
  moment: number;
  /** Along the standoff [N]. */
  axial: number;
}

/**
 * Largest stress along the wall of a standoff.
 * $$\sigma = \frac{|N|}{A} + \frac{M c}{I}$$
 * @param wall - sizes and loads
 * @returns stress [Pa]
 * @validity elastic; the end of a thread raises it locally, which a ductile metal evens out
 * @throws InputError when a number is out of range
 * @source gere-2004-mechanics, § 5.12, axial load and bending together
 */
export function wallStress(wall: LoadedWall): number {
  requireNotNegative(wall.moment, { parameter: 'moment', quantity: 'bending moment', kind: 'moment' });
  requireFinite(wall.axial, { parameter: 'axial', quantity: 'force along the standoff', kind: 'force' });
  const { area, vertical } = standoffSection(wall);
  return Math.abs(wall.axial) / area + (wall.moment * vertical.extremeFibre) / vertical.secondMomentOfArea;
}
