import { requireBetween } from '../require.ts';
import { requireLength, requireLoad } from '../require-physical.ts';
import { requireAdherend, requireLayer, type Adherend, type AdhesiveLayer } from './single-lap.ts';

export interface BalancedLapGiven {
  /** Load per width of joint [N/m]. */
  loadPerWidth: number;
  /** Whole overlap, twice the half length of the paper [m]. */
  overlap: number;
  /** Either of the two equal adherends. */
  adherend: Adherend;
  /** Poisson's ratio of the adherends. */
  poisson: number;
}

export interface EdgeMoment {
  /** Argument `u` of the factor: half overlap over the bending length. */
  argument: number;
  /** Edge-moment factor `k`, between 0.261 and 1. */
  factor: number;
  /** Moment per width in the adherend at the edge of the overlap [N]. */
  moment: number;
  /** Bending stress on the surface of the adherend there, on top of the direct stress [Pa]. */
  bendingStress: number;
}

/**
 * Moment at the edge of a single lap that is free to bend under its own offset.
 * $$k = \frac{1}{1+2\sqrt2\tanh u},\quad u = \frac{c}{t}\sqrt{\frac{3(1-\nu^2)}{2}}\sqrt{\frac{P}{Et}},\quad M_0 = \frac{kPt}{2}$$
 * @param given - load per width, overlap and the two equal adherends
 * @returns factor, edge moment per width [N] and surface bending stress [Pa]
 * @validity equal adherends, thin bond line, long free arms
 * @throws InputError for values that are not physical
 * @source goland-1944-cemented, the edge-moment factor of the single lap
 */
export function edgeMoment({ loadPerWidth, overlap, adherend, poisson }: BalancedLapGiven): EdgeMoment {
  requireLoad(loadPerWidth, { parameter: 'loadPerWidth', quantity: 'load per width', kind: 'forcePerLength' });
  requireLength(overlap, { parameter: 'overlap', quantity: 'overlap' });
  requireAdherend(adherend, 'adherend');
  requireBetween(poisson, 0, 0.5, { parameter: 'poisson', quantity: "Poisson's ratio", kind: 'ratio' });
  const { modulus, thickness } = adherend;
  const slenderness = overlap / 2 / thickness;
  const argument = slenderness * Math.sqrt((1.5 * (1 - poisson ** 2) * loadPerWidth) / (modulus * thickness));
  const factor = 1 / (1 + 2 * Math.SQRT2 * Math.tanh(argument));
  const moment = (factor * loadPerWidth * thickness) / 2;
  return { argument, factor, moment, bendingStress: (6 * moment) / thickness ** 2 };
}

/**
 * Highest bond shear of a single lap that is free to bend.
 * $$\frac{\tau_{max}}{\tau_{mean}} = \frac14\left[\frac{\beta c}{t}(1+3k)\coth\frac{\beta c}{t} + 3(1-k)\right],\quad \beta^2 = \frac{8Gt}{Eh}$$
 * @param given - as for `edgeMoment`, and the adhesive layer
 * @returns peak shear stress of the bond [Pa]
 * @validity as `edgeMoment`; the peel that comes with it is not given
 * @throws InputError for values that are not physical
 * @source goland-1944-cemented, shear stress for a flexible bond line
 */
export function bendingLapPeakShear(given: BalancedLapGiven & { layer: AdhesiveLayer }): number {
  const { factor } = edgeMoment(given);
  requireLayer(given.layer);
  const { loadPerWidth, overlap, adherend, layer } = given;
  const beta = Math.sqrt((8 * layer.shearModulus * adherend.thickness) / (adherend.modulus * layer.thickness));
  const reach = (beta * overlap) / 2 / adherend.thickness;
  const ratio = ((reach * (1 + 3 * factor)) / Math.tanh(reach) + 3 * (1 - factor)) / 4;
  return (ratio * loadPerWidth) / overlap;
}
