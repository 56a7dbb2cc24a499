import { InputError } from '../error.ts';
import { requireBelow, requireBetween, requireFinite, requireNotNegative } from '../require.ts';
import { requireLength, requireModulus } from '../require-physical.ts';
import { rectangleShearCoefficient, type Plane } from '../section/index.ts';
import { DEFAULT_POISSON_RATIO } from './rigidity.ts';
import { bendTongue, momentAt, type PointLoad, type SoftStretch } from './tongue-bending.ts';
import { requireLink, twoPlates, type PlateLink, type PlateStrip, type TwoPlates } from './two-plates.ts';

export interface Tongue extends TwoPlates {
  /** From the edge of the stiff body to the outer screw [m]. */
  length: number;
  /** Of the plates in their own plane, for sideways loads [Pa]. */
  shearModulus: number;
  link: PlateLink;
  /** Up and down bends the plates out of their plane, sideways in it. */
  plane: Plane;
  /** Screw loads on the tongue. */
  loads: readonly PointLoad[];
  /** A hole on the middle line, centre from the root. */
  hole?: { at: number; diameter: number };
}

/** What one of the plates carries. */
export interface TonguePlate {
  /** Own bending at the root and at the hole [N·m]. */
  rootMoment: number;
  holeMoment: number;
  /** Along the plate at the root, pull positive [N]. */
  axial: number;
  /** Largest stress at the root, and net stress beside the hole [Pa]. */
  rootStress: number;
  holeStress: number;
  /** At the outer screw, where a tie bends the plates back; the screw's own hole is not counted [Pa]. */
  endStress: number;
}

export interface TongueResult {
  rootMoment: number;
  holeMoment: number;
  /** Width left beside the hole, both sides together [m]. */
  netWidth: number;
  /** At the outer screw [m]. */
  deflection: number;
  /** At each load, in their order [m]. */
  movements: readonly number[];
  /** The same with the bottom plate alone [m]. */
  deflectionAlone: number;
  /** Bottom first. */
  plates: readonly TonguePlate[];
}

const requireTongue = ({ length, shearModulus, loads, hole, width, link }: Tongue): void => {
  requireLength(length, { parameter: 'tongueLength', quantity: 'length of the tongue' });
  requireModulus(shearModulus, { parameter: 'shearModulus', quantity: 'shear modulus of the plate' });
  requireLink(link);
  if (!Array.isArray(loads) || loads.length === 0)
    throw new InputError({
      parameter: 'loads',
      quantity: 'loads on the tongue',
      value: loads,
      rule: 'must be at least one',
    });
  for (const { at, force } of loads) {
    requireBetween(at, 0, length, { parameter: 'loadAt', quantity: 'place of a load on the tongue', kind: 'length' });
    requireFinite(force, { parameter: 'force', quantity: 'force on the tongue', kind: 'force' });
    requireBetween(force, -1e9, 1e9, { parameter: 'force', quantity: 'force on the tongue', kind: 'force' });
  }
  if (!hole) return;
  requireNotNegative(hole.at, { parameter: 'holeAt', quantity: 'place of the hole', kind: 'length' });
  requireBetween(hole.at, 0, length, { parameter: 'holeAt', quantity: 'place of the hole', kind: 'length' });
  const subject = { parameter: 'holeDiameter', quantity: 'hole diameter', kind: 'length' } as const;
  requireLength(hole.diameter, subject);
  requireBelow(hole.diameter, 0.9 * width, 'must leave some of the width', subject);
};

/**
 * The tongue of plate that carries an arm's outer screw: a cantilever of one plate or two, with a hole on its way.
 * $$M = \sum F_i(x_i-x),\quad \sigma = \frac{6M}{(w-d)t^2},\quad N h = \eta\,\overline{M}\ \text{tied},\quad \eta = 1-\frac{EI_{sep}}{EI}$$
 * @param tongue - sizes, plates, how they are joined, loads, hole
 * @returns moments, movement at the screw, stress of each plate
 * @validity root held rigidly by the body; over a hole's diameter the net section counts. Sideways a tongue shorter than
 * it is wide is no slender beam: stress there is a nominal one
 * @throws InputError when a number is out of range
 * @derivation sliding plates share by their own rigidity. Tied at the far end they pull and push by N, which is the
 * mean of the moment over the distance h times η: the end turns by ∫(M-Nh)/EI_sep = N L/(EA*)/h. Bonded, the whole
 * section bends
 */
export function tongue(given: Tongue): TongueResult {
  requireTongue(given);
  const { length, width, plane, loads, hole, link } = given;
  const section = twoPlates(given);
  const plates: readonly PlateStrip[] = given.top ? [given.bottom, given.top] : [given.bottom];
  const inPlane = plane === 'horizontal';
  const cut = hole ? hole.diameter : 0;
  const net = inPlane ? 1 - (cut / width) ** 3 : 1 - cut / width;
  const soft: SoftStretch | undefined = hole && {
    from: Math.max(0, hole.at - hole.diameter / 2),
    to: Math.min(length, hole.at + hole.diameter / 2),
    softer: 1 / net,
  };
  const moments = { root: momentAt(loads, 0), hole: hole ? momentAt(loads, hole.at) : 0 };
  const sheets = plates.reduce((sum, { thickness }) => sum + thickness, 0);
  const membrane = plates.reduce((sum, { thickness, youngsModulus }) => sum + thickness * youngsModulus, 0);
  // Shear counts in the plane only, where the tongue is short against its width.
  const slip = (place: number, thickness: number): number =>
    inPlane
      ? loads.reduce((sum, { at, force }) => sum + force * Math.min(at, place), 0) /
        (rectangleShearCoefficient(DEFAULT_POISSON_RATIO) * given.shearModulus * width * thickness)
      : 0;
  const rigid = inPlane ? (membrane * width ** 3) / 12 : section.separate;
  const alone = inPlane ? (given.bottom.youngsModulus * given.bottom.thickness * width ** 3) / 12 : section.bottom;
  // What pulling one plate and pushing the other takes of the moment: even along the tongue where tied at its end.
  const even = !inPlane && link === 'tied' ? (section.share * bendTongue(loads, length).slope) / length : 0;
  const bonded = !inPlane && link === 'bonded' ? section.share : 0;
  const couple = (moment: number): number => even + bonded * moment;
  const movementAt = (place: number): number =>
    (bendTongue(loads, place, soft).movement * (1 - bonded) - (even * place ** 2) / 2) / rigid + slip(place, sheets);
  return {
    rootMoment: moments.root,
    holeMoment: moments.hole,
    netWidth: width - cut,
    deflection: movementAt(length),
    movements: loads.map(({ at }) => movementAt(at)),
    deflectionAlone: bendTongue(loads, length, soft).movement / alone + slip(length, given.bottom.thickness),
    plates: plates.map((plate, index) => {
      const share = inPlane
        ? (plate.thickness * plate.youngsModulus) / membrane
        : (plate.youngsModulus * width * plate.thickness ** 3) / 12 / section.separate;
      const pull = (moment: number): number =>
        section.distance > 0 ? ((index === 0 ? 1 : -1) * couple(moment)) / section.distance : 0;
      const own = (moment: number): number => share * (moment - couple(moment));
      const { thickness } = plate;
      const stress = (moment: number, d: number): number =>
        Math.abs(pull(moment)) / ((width - d) * thickness) +
        (inPlane
          ? (Math.abs(own(moment)) * 6 * width) / (thickness * (width ** 3 - d ** 3))
          : (6 * Math.abs(own(moment))) / ((width - d) * thickness ** 2));
      return {
        rootMoment: own(moments.root),
        holeMoment: hole ? own(moments.hole) : 0,
        axial: pull(moments.root),
        rootStress: stress(moments.root, 0),
        holeStress: hole ? stress(moments.hole, cut) : 0,
        endStress: stress(0, 0),
      };
    }),
  };
}
