import { requireBetween, requirePositive } from '../require.ts';
import { requireLength, requireLoad } from '../require-physical.ts';
import { circularPlate } from './circular-plate.ts';
import { loadSpot } from './load-spot.ts';
import { rectangularPlate, type PlateEdge } from './rectangular-plate.ts';
import { DEFAULT_POISSON_RATIO, plateRigidity, type PlateMaterial } from './rigidity.ts';

export interface LoadedPlate extends PlateMaterial {
  /** Sides of a rectangle, or the radius of a round plate [m]. */
  shape: { width: number; length: number } | { radius: number };
  edge: PlateEdge;
  /** On the whole plate, or in its middle [N]. */
  force: number;
  /** Of the spot in the middle that takes the force; not given: the force is spread over the whole plate [m]. */
  spotRadius?: number;
}

export interface LoadedPlateResult {
  /** In the middle [m]. */
  deflection: number;
  /** Bending stress in the middle [Pa]. */
  middleStress: number;
  /** Bending stress at the edge; nothing on supports [Pa]. */
  edgeStress: number;
  /** Force over deflection [N/m]. */
  stiffness: number;
  /** D [N·m]. */
  rigidity: number;
}

/**
 * Deflection and bending stress of a plate held along its edges, under a pressure or a force in the middle.
 * $$w = \alpha\frac{P a^2}{D},\qquad \sigma = \frac{6M}{t^2}$$
 * @param plate - shape, edges, thickness, modulus, force and its spot
 * @returns deflection, stresses, stiffness
 * @validity as rectangularPlate and circularPlate; the screw hole in the middle is not counted
 * @throws InputError when a number is out of range, or the spot does not fit in the plate
 * @source timoshenko-1959-plates, §§ 16, 19, 30, 34 and 44; young-2002-roark, § 11.1 for the spot
 */
export function loadedPlate(plate: LoadedPlate): LoadedPlateResult {
  const { shape, edge, force, spotRadius, thickness, poissonRatio: nu = DEFAULT_POISSON_RATIO } = plate;
  const rigidity = plateRigidity(plate);
  requireLoad(force, { parameter: 'force', quantity: 'force on the plate', kind: 'force' });
  const round = 'radius' in shape;
  for (const [parameter, value] of Object.entries(shape))
    requireLength(value, { parameter, quantity: `${parameter} of the plate` });
  const [short, long] = round ? [shape.radius, shape.radius] : [shape.width, shape.length].sort((a, b) => a - b);
  const a = short!;
  const unit = spotRadius === undefined ? spread() : spotted(spotRadius);

  /** All three over the force, under an even pressure: q a² is P a/b on a rectangle and P/π on a round plate. */
  function spread() {
    const c = round ? circularPlate(edge, 'uniform', nu) : rectangularPlate(long! / a, edge, 'uniform', nu);
    const share = round ? 1 / Math.PI : a / long!;
    return { deflection: c.deflection * share, middle: Math.max(c.across, c.along) * share, edge: c.edge * share };
  }

  /** The same under a force on a spot in the middle. */
  function spotted(radius: number) {
    const c = round ? circularPlate(edge, 'centre', nu) : rectangularPlate(long! / a, edge, 'centre', nu);
    const room = round ? a : a / 2;
    const subject = { parameter: 'spotRadius', quantity: 'radius of the load', kind: 'length' } as const;
    requirePositive(radius, subject);
    requireBetween(radius, 0, 0.7 * room, subject);
    const reach = round ? a : (2 * a) / Math.PI;
    const spot = Math.min(loadSpot(radius, thickness), 0.9 * room);
    const middle = ((1 + nu) * Math.log(reach / spot) + c.across) / (4 * Math.PI);
    return { deflection: c.deflection, middle, edge: c.edge };
  }

  const flexibility = (unit.deflection * a ** 2) / rigidity;
  const stress = (moment: number): number => (6 * Math.abs(moment)) / thickness ** 2;
  return {
    deflection: flexibility * force,
    middleStress: stress(unit.middle * force),
    edgeStress: stress(unit.edge * force),
    stiffness: 1 / flexibility,
    rigidity,
  };
}
