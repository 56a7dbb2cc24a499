import { InputError, type Warning } from '../error.ts';
import { finiteWidthFactor } from '../joint/index.ts';
import { requireFinite } from '../require.ts';
import { requireLength } from '../require-physical.ts';
import { holeInBending, tensionRatios } from './bending-field.ts';
import { withShares, type DrilledArm, type DrilledHole } from './drilled-arm.ts';
import { biaxialHoleStress } from './hole-field.ts';

export interface DrilledStripArm extends DrilledHole {
  strip: { width: number; height: number };
  /** Of the hole's centre from the middle of the strip, across the hole's axis [m]. */
  offset?: number;
}

const EDGE_DRILLED: Warning = {
  code: 'edge-drilled',
  message:
    'Drilled into the edge of the plate, between its plies: it splits, and the laminate’s constants do not hold.',
};

/** Rule of thumb for a laminate, as in LEAST_DISTANCES of joint; kept apart so that a page need not load its messages. */
const LEAST_WIDTH = 5 * (1 - 1e-9);
const NARROW: Warning = {
  code: 'width-short',
  message: 'The strip is narrower than five hole diameters: little is left beside the hole.',
};

/** Least wall beside the hole, as a share of the way from its centre to the edge. */
const LEAST_WALL = 0.1;

/**
 * What a hole leaves of the bending strength of a plate strip, elastically and as a notched laminate.
 * $$s_{el} = \frac{1}{K}\,\frac{3(1-x)}{2+(1-x)^3}\;\text{(extreme fibre)},\quad
 * s_{el} = \frac{2}{K+1}\,\frac{1-x^3}{x}\;\text{(neutral axis)},\quad x = \frac dw$$
 * @param drilled - strip, hole, its axis and offset, the plane of bending, material
 * @returns factors and shares. A hole whose axis lies in the plane of bending cuts both faces and stands at the extreme
 * fibre; one across it stands at the neutral axis, or between where it is off centre
 * @validity strip long against the hole. At the faces the factor of plain tension is used, which is above the one of
 * plate bending. Off centre the finite width is that of a strip twice the distance to the near edge, on the safe side
 * @throws InputError when a size is not positive or the hole leaves less than a tenth of its way to the edge
 * @source heywood-1952-photoelasticity, short form; lekhnitskii-1968-plates; whitney-1974-stress; howland-1933-perforated
 */
export function drilledStripArm(drilled: DrilledStripArm): DrilledArm {
  const { strip, holeDiameter, holeAxis, bending, material, offset = 0 } = drilled;
  requireLength(strip.width, { parameter: 'width', quantity: 'width of the strip' });
  requireLength(strip.height, { parameter: 'height', quantity: 'thickness of the strip' });
  const hole = { parameter: 'holeDiameter', quantity: 'hole diameter', kind: 'length' } as const;
  requireLength(holeDiameter, hole);
  requireFinite(offset, { parameter: 'offset', quantity: 'distance of the hole from the middle', kind: 'length' });
  // Across the hole's axis the hole competes with this width; along it the hole takes all of the other.
  const across = holeAxis === 'vertical' ? strip.width : strip.height;
  const through = holeAxis === 'vertical' ? strip.height : strip.width;
  const away = Math.abs(offset);
  const edge = across / 2 - away;
  if (holeDiameter >= across)
    throw new InputError({ ...hole, value: holeDiameter, rule: 'must be smaller than the strip', limit: across });
  if (holeDiameter / 2 > (1 - LEAST_WALL) * edge) {
    const about = away > 0 ? { ...hole, parameter: 'offset', quantity: 'distance of the hole from the middle' } : hole;
    throw new InputError({
      ...about,
      value: away > 0 ? offset : holeDiameter,
      rule: 'leaves no sound wall between hole and edge',
    });
  }
  const tension = tensionRatios(holeDiameter, material);
  const widthFactor = finiteWidthFactor(Math.min(1 - LEAST_WALL, holeDiameter / (2 * edge)));
  const area = { gross: across * through, net: (across - holeDiameter) * through };
  const warnings = [
    ...(2 * edge < LEAST_WIDTH * holeDiameter ? [NARROW] : []),
    ...(holeAxis === 'horizontal' ? [EDGE_DRILLED] : []),
  ];
  if (holeAxis === bending) {
    const inertia = (breadth: number): number => (breadth * through ** 3) / 12;
    return withShares({
      place: 'extreme fibre',
      gross: { area: area.gross, secondMomentOfArea: inertia(across), extremeFibre: through / 2 },
      net: { area: area.net, secondMomentOfArea: inertia(across - holeDiameter), extremeFibre: through / 2 },
      isotropicFactor: 3 * widthFactor,
      laminateFactor: material.holeFactor * widthFactor,
      pointShare: tension.point / widthFactor,
      meanShare: tension.mean / widthFactor,
      shearShare: 1,
      warnings,
    });
  }
  const gross = (through * across ** 3) / 12;
  const cut = holeDiameter * through;
  const shift = (cut * away) / area.net;
  const net = gross - (through * holeDiameter ** 3) / 12 - cut * away ** 2 - area.net * shift ** 2;
  const radius = holeDiameter / 2;
  const reach = {
    offset: away,
    radius,
    edge,
    extremeFibre: across / 2,
    widthFactor,
    sectionFactor: gross / net,
  };
  const q = radius / (radius + material.pointLength);
  return withShares({
    place: away > 0 ? 'between' : 'neutral axis',
    gross: { area: area.gross, secondMomentOfArea: gross, extremeFibre: across / 2 },
    net: { area: area.net, secondMomentOfArea: net, extremeFibre: across / 2 + shift },
    ...holeInBending(reach, material),
    shearShare: Math.min(area.net / area.gross, 1 / biaxialHoleStress(q, -1)),
    warnings,
  });
}
