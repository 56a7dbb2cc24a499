import { InputError, type Warning } from '../error.ts';
import { tubeHoleBendingFactor } from '../joint/index.ts';
import { requireLength } from '../require-physical.ts';
import {
  drilledTubeSection,
  requireTube,
  roundTubeSection,
  slottedTubeSection,
  type RoundTube,
} from '../section/index.ts';
import { holeInBending, tensionRatios } from './bending-field.ts';
import { withShares, type DrilledArm, type DrilledHole } from './drilled-arm.ts';
import { biaxialHoleStress } from './hole-field.ts';

export interface DrilledTubeArm extends DrilledHole {
  tube: RoundTube;
  walls: 'both' | 'one';
}

/** Ends of the chart behind the factor of a cross hole. */
const CHART = { hole: 0.4, bore: 0.9 } as const;

const BEYOND: Warning = {
  code: 'tube-hole-beyond-chart',
  message:
    'The hole is too wide, or the wall too thin, for the chart of the elastic factor: the end of the chart is used.',
};

/**
 * What a cross hole leaves of a tube's bending strength, elastically and as a notched laminate.
 * $$s_{el} = \frac{3}{K\,K_t},\quad s_n = \min\Bigl(\frac{Z_{net}}{Z},\; \frac{\sigma_N}{\sigma_0}\,\frac{3}{K_t}\Bigr)$$
 * @param drilled - tube, hole, its axis, the plane of bending, material
 * @returns factors and shares. K_t is the chart's factor for a cross hole, K that of the laminate: a hole whose axis lies
 * in the plane of bending stands at the extreme fibre, one across it at the neutral axis
 * @validity hole through the axis of the tube and away from others. The product of chart and laminate is an
 * approximation, as is the wall taken flat at the neutral axis. One wall: the chart's net factor on the section that is
 * left. A chart factor below 3 is not credited to the laminate
 * @throws InputError when the sizes do not make a tube or the hole is as wide as the bore
 * @source pilkey-2008-peterson, chart 4.107; lekhnitskii-1968-plates; whitney-1974-stress
 */
export function drilledTubeArm(drilled: DrilledTubeArm): DrilledArm {
  const { tube, walls, holeDiameter, holeAxis, bending, material } = drilled;
  requireTube(tube);
  const hole = { parameter: 'holeDiameter', quantity: 'hole diameter', kind: 'length' } as const;
  requireLength(holeDiameter, hole);
  requireLength(tube.outerDiameter, { parameter: 'outerDiameter', quantity: 'outside diameter' });
  const bore = tube.outerDiameter - 2 * tube.wall;
  if (holeDiameter >= bore)
    throw new InputError({ ...hole, value: holeDiameter, rule: 'must be smaller than the bore', limit: bore });
  const whole = roundTubeSection(tube);
  const both = drilledTubeSection({ ...tube, holeDiameter, holeAxis });
  const left = walls === 'both' ? both : slottedTubeSection({ ...tube, slotWidth: holeDiameter, slotFaces: holeAxis });
  const sections = {
    gross: { area: whole.area, ...whole[bending] },
    net: { area: left.area, ...left[bending] },
  };
  const tension = tensionRatios(holeDiameter, material);
  if (holeAxis !== bending) {
    const radius = holeDiameter / 2;
    const reach = {
      offset: 0,
      radius,
      edge: tube.outerDiameter / 2,
      extremeFibre: tube.outerDiameter / 2,
      widthFactor: 1,
      sectionFactor: whole[bending].secondMomentOfArea / left[bending].secondMomentOfArea,
    };
    const q = radius / (radius + material.pointLength);
    return withShares({
      place: 'neutral axis',
      ...sections,
      ...holeInBending(reach, material),
      shearShare: 1 / biaxialHoleStress(q, -1),
      warnings: [],
    });
  }
  const ratio = holeDiameter / tube.outerDiameter;
  const boreRatio = bore / tube.outerDiameter;
  const share = (s: typeof both): number => s[bending].secondMomentOfArea / s[bending].extremeFibre;
  const charted = Math.min(ratio, CHART.hole);
  const chart = tubeHoleBendingFactor({ holeRatio: charted, boreRatio: Math.min(boreRatio, CHART.bore) });
  // Past the chart, and for a hole through one wall, the factor on the net section is kept.
  const atChart =
    charted < ratio ? drilledTubeSection({ ...tube, holeDiameter: charted * tube.outerDiameter, holeAxis }) : both;
  const isotropicFactor = (chart * share(atChart)) / share(left);
  const finite = 3 / Math.max(3, isotropicFactor);
  return withShares({
    place: 'extreme fibre',
    ...sections,
    isotropicFactor,
    laminateFactor: (isotropicFactor * material.holeFactor) / 3,
    pointShare: tension.point * finite,
    meanShare: tension.mean * finite,
    shearShare: 1,
    warnings: ratio > CHART.hole || boreRatio > CHART.bore ? [BEYOND] : [],
  });
}
