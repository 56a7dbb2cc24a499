import { requireBetween, requireNotNegative } from '../require.ts';
import { requireAround } from './require-around.ts';

/** Pull-out of a tapped hole by a handbook rule that counts a third of the cylinder at the pitch diameter.
 * $$F = \tfrac13\,\pi\,d_m\,\tau\,L$$
 * @param hole - pitch diameter [m], engagement [m], shear strength of the tapped metal [Pa]
 * @returns force [N]
 * @validity cautious: about half of what the thread's own shear area gives. Never mix the two rules
 * @throws InputError when a number is out of range
 * @source barrett-1990-fastener, pull-out of a tapped hole
 */
export function cautiousPullOut(hole: { pitchDiameter: number; engagement: number; shearStrength: number }): number {
  requireBetween(hole.pitchDiameter, 1e-4, 1, {
    parameter: 'pitchDiameter',
    quantity: 'pitch diameter',
    kind: 'length',
  });
  requireBetween(hole.engagement, 0, 1, { parameter: 'engagement', quantity: 'thread engagement', kind: 'length' });
  requireNotNegative(hole.shearStrength, {
    parameter: 'shearStrength',
    quantity: 'shear strength of the tapped metal',
    kind: 'stress',
  });
  return (Math.PI * hole.pitchDiameter * hole.shearStrength * hole.engagement) / 3;
}

/**
 * Force at which an area of metal shears: a threaded insert out of its parent.
 * $$F = A_s\,\tau$$
 * @param insert - shear area [m²], shear strength [Pa]
 * @returns force [N]
 * @validity area as the insert's maker states it
 * @throws InputError when a number is out of range
 * @source chambers-1995-tm106943, Tables IV and V
 */
export function insertPullOut(insert: { shearArea: number; shearStrength: number }): number {
  requireBetween(insert.shearArea, 0, 1, { parameter: 'shearArea', quantity: 'shear area', kind: 'area' });
  requireNotNegative(insert.shearStrength, { parameter: 'shearStrength', quantity: 'shear strength', kind: 'stress' });
  return insert.shearArea * insert.shearStrength;
}

/**
 * Shear area of an insert's thread.
 * $$A_s = \tfrac78\,\pi\,L\,D$$
 * @param insert - engagement L and diameter D of the thread [m]
 * @returns area [m²]
 * @validity inner coarse inch threads of the report's table
 * @throws InputError when a length is out of range
 * @source chambers-1995-tm106943, Table III
 */
export function insertThreadArea({ engagement, diameter }: { engagement: number; diameter: number }): number {
  requireBetween(engagement, 0, 1, { parameter: 'engagement', quantity: 'thread engagement', kind: 'length' });
  requireBetween(diameter, 1e-4, 1, { parameter: 'diameter', quantity: 'screw diameter', kind: 'length' });
  return (7 / 8) * Math.PI * engagement * diameter;
}

/** An insert whose inner thread takes the screw and whose outside a softer part holds. */
export interface Insert {
  /** Over its outer thread or knurl [m]. */
  insertDiameter: number;
  /** In the part [m]. */
  insertLength: number;
  /** Of the part, along the insert [Pa]. */
  parentShearStrength: number;
}

/**
 * Pull at which an insert comes out of its parent, by a careful and by a bold rule.
 * $$F_{low} = \tfrac13\,\pi D L\,\tau,\quad F_{high} = \tfrac78\,\pi D L\,\tau$$
 * @param insert - outer diameter D and length L [m], shear strength τ of the parent [Pa]
 * @param screwDiameter - nominal [m]
 * @returns both forces [N]
 * @validity parent solid and grown into knurl or thread; less in a print with hollows. That the two rules, made for
 * tapped holes and for inner threads, serve the outside of an insert is our step
 * @throws InputError when a number is out of range or the insert no wider than the screw
 * @source barrett-1990-fastener, pull-out of a tapped hole; chambers-1995-tm106943, Tables III to V
 */
export function insertHold(
  { insertDiameter, insertLength, parentShearStrength }: Insert,
  screwDiameter: number,
): { low: number; high: number } {
  requireAround(insertDiameter, screwDiameter, { parameter: 'insertDiameter', quantity: 'outside of the insert' });
  requireBetween(insertLength, 0, 1, { parameter: 'insertLength', quantity: 'length of the insert', kind: 'length' });
  requireNotNegative(parentShearStrength, {
    parameter: 'parentShearStrength',
    quantity: 'shear strength round the insert',
    kind: 'stress',
  });
  const hole = { engagement: insertLength, shearStrength: parentShearStrength };
  return {
    low: cautiousPullOut({ ...hole, pitchDiameter: insertDiameter }),
    high: insertPullOut({ ...hole, shearArea: insertThreadArea({ ...hole, diameter: insertDiameter }) }),
  };
}
