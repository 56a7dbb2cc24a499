import { survivableSpeed } from '../impact/index.ts';
import { requireBetween } from '../require.ts';
import { bucklingStress } from './buckling.ts';
import type { ColumnForces } from './column-forces.ts';
import { plateFootPullStress, plateFootStress, type PlateFoot } from './plate-foot.ts';
import { standoffSection } from './round-standoff.ts';
import { screwTension } from './screwed-end.ts';
import { wallStress } from './wall-stress.ts';

export type LimitName = 'standoff' | 'screw' | 'bottom plate' | 'top plate' | 'buckling';

/** What the parts of a body stand. */
export interface BodyStrength {
  outerDiameter: number;
  bore: number;
  length: number;
  /** [Pa] */
  youngsModulus: number;
  /** Of the standoff [Pa]. */
  yieldStrength: number;
  /** Tension at which the screw yields [N]. */
  screwLoad: number;
  /** Where the plates' own bending is to be checked. */
  bottomPlate?: PlateFoot;
  topPlate?: PlateFoot;
  /** Bending strength of the plates [Pa]. */
  plateStrength: number;
}

export interface LoadedBody {
  columns: readonly ColumnForces[];
  /** Speed of the hit that these belong to [m/s]. */
  speed: number;
}

/** One way in which a body reaches its end. */
export interface Limit {
  name: LimitName;
  /** In the unit of the limit: Pa or N. */
  applied: number;
  allowable: number;
  /** At which it is reached; undefined where nothing loads it [m/s]. */
  speed: number | undefined;
  /** Index of the column that it happens to. */
  column: number;
}

/** Loads below this share of the limit are rounding, not load. */
const NOTHING = 1e-9;

/**
 * Every limit of strength of the body in a hit, the first to be reached first. Touching the electronics is another
 * matter: see touchSpeed.
 * $$v_i = v\,\frac{\text{allowable}_i}{\text{applied}_i},\quad \sigma_{plate} = \sigma_M(M) + \sigma_F(|F_z|)$$
 * @param body - loads of a hit at a given speed
 * @param strength - what the parts stand
 * @returns limits in order of the speed at which they are reached
 * @validity linear; stripping of the standoff's thread and cracks from a hole to a cutout are not among them
 * @throws InputError when a number is out of range
 * @derivation each load grows in step with the speed; the worst column is taken for each limit by itself. A plate is rocked
 * by the moment and pulled or pressed through by the force; both stresses are largest at the rim of the boss and are added
 */
export function bodyLimits(body: LoadedBody, strength: BodyStrength): readonly Limit[] {
  const { outerDiameter, bore, length, youngsModulus, yieldStrength } = strength;
  requireBetween(yieldStrength, 1e3, 1e12, { parameter: 'yieldStrength', quantity: 'yield strength', kind: 'stress' });
  requireBetween(strength.screwLoad, 1e-3, 1e9, {
    parameter: 'screwLoad',
    quantity: 'strength of the screw',
    kind: 'force',
  });
  requireBetween(strength.plateStrength, 1e3, 1e12, {
    parameter: 'plateStrength',
    quantity: 'bending strength of the plates',
    kind: 'stress',
  });
  const size = { outerDiameter, bore };
  const { area, vertical } = standoffSection(size);
  const worst = (name: LimitName, allowable: number, load: (forces: ColumnForces) => number): Limit => {
    const loads = body.columns.map(load);
    const applied = Math.max(...loads);
    const loaded = applied > NOTHING * allowable;
    const speed = loaded ? survivableSpeed({ speed: body.speed, applied, allowable }) : undefined;
    return { name, applied, allowable, speed, column: loads.indexOf(applied) };
  };
  const inPlate = (
    name: LimitName,
    plate: PlateFoot | undefined,
    moment: (forces: ColumnForces) => number,
  ): Limit[] => {
    if (!plate) return [];
    const [perMoment, perPull] = [plateFootStress(plate, 1), plateFootPullStress(plate, 1)];
    const stress = (forces: ColumnForces) => perMoment * moment(forces) + perPull * Math.abs(forces.axial);
    return [worst(name, strength.plateStrength, stress)];
  };
  const { bottomPlate, topPlate } = strength;
  const limits = [
    worst('standoff', yieldStrength, ({ footMoment, headMoment, axial }) =>
      wallStress({ ...size, moment: Math.max(footMoment, headMoment), axial }),
    ),
    worst('screw', strength.screwLoad, ({ footMoment, headMoment, axial }) =>
      screwTension({ ...size, moment: Math.max(footMoment, headMoment), axial }),
    ),
    worst(
      'buckling',
      bucklingStress({
        effectiveLength: length,
        radiusOfGyration: Math.sqrt(vertical.secondMomentOfArea / area),
        youngsModulus,
        yieldStrength,
      }),
      ({ axial }) => Math.max(0, -axial) / area,
    ),
    ...inPlate('bottom plate', bottomPlate, ({ footMoment }) => footMoment),
    ...inPlate('top plate', topPlate, ({ headMoment }) => headMoment),
  ];
  return limits.sort((a, b) => (a.speed ?? Infinity) - (b.speed ?? Infinity));
}
