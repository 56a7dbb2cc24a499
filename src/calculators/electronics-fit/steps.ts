import { patternScrew, nutAcrossCorners, tiltedBox, USUAL_BOARD_HOLES } from '@frameworthy/shared/fit';
import type { Step } from '~/island/declaration.ts';
import { slotOf } from '../slot-of.ts';
import { LENS_SHARE } from './arrange.ts';
import type { FitResult } from './compute.ts';
import type { FitValues } from './inputs.ts';

const length = slotOf('length');
const angle = slotOf('angle');

const lensOf = ({ cameraSide, lensReach }: FitValues) => ({ reach: lensReach, diameter: LENS_SHARE * cameraSide });
const camera = (values: FitValues) =>
  tiltedBox({ length: values.cameraLength, height: values.cameraSide, tilt: values.aTilt, lens: lensOf(values) });
const holeOf = ({ aPattern }: FitValues) => Math.max(...USUAL_BOARD_HOLES[aPattern]);

export const steps: readonly Step<FitValues, FitResult>[] = [
  {
    id: 'hole',
    says: 'Arrangement A, and likewise B. The hole in the board against the clearance hole of the screw.',
    formula: 'd_h \\ge d_{273}',
    numbers: '\\slot{hole} \\ge \\slot{needed}',
    slots: (v) => {
      const hole = holeOf(v);
      const { needed } = patternScrew({
        pattern: v.aPattern,
        thread: v.aScrew,
        hole,
        boardSide: v.aBoardSide,
        across: nutAcrossCorners(v.aScrew),
        height: v.nuts,
      });
      return { hole: length(hole), needed: length(needed) };
    },
  },
  {
    id: 'lens',
    says: 'Top of the lens of the tilted camera, over half the height of its turned body.',
    formula: "h_l = \\tfrac12 h_c' + \\left(\\tfrac12 l_c + r_l\\right)\\sin\\theta + \\tfrac12 d_l\\cos\\theta",
    numbers:
      'h_l = \\tfrac12\\cdot\\slot{h} + \\left(\\tfrac12\\cdot\\slot{l} + \\slot{r}\\right)\\cdot\\sin\\slot{t} + \\tfrac12\\cdot\\slot{d}\\cdot\\cos\\slot{t2} = \\slot{result}',
    slots: (v) => ({
      h: length(camera(v).height),
      l: length(v.cameraLength),
      r: length(v.lensReach),
      d: length(lensOf(v).diameter),
      t: angle(v.aTilt),
      t2: angle(v.aTilt),
      result: length(camera(v).lens!.top),
    }),
  },
  {
    id: 'needed',
    says: 'Top of the tallest part, what hangs over it, air, rise on the mounts.',
    formula: 'L_1 = h + h_t + c_h + r',
    numbers: 'L_1 = \\slot{h} + \\slot{t} + \\slot{c} + \\slot{r} = \\slot{result}',
    slots: (v, { a }) => ({
      h: length(a.shortestStandoff.tallest.top),
      t: length(v.hanging),
      c: length(v.heightAir),
      r: length(v.rise),
      result: length(a.shortestStandoff.byStack.needed),
    }),
  },
  {
    id: 'dip',
    says: 'The dip of the top plate in the hit, over the part that then decides: the sway lowers it, and it rocks.',
    formula: 'L_2 = L_1 + w,\\quad w = w_r + \\max\\left(\\frac{3\\delta^2}{5L},\\ L-\\sqrt{L^2-\\delta^2}\\right)',
    numbers: 'w(\\slot{sway}, \\slot{L}) = \\slot{dip},\\quad L_2 = \\slot{result}',
    slots: (_, { a: { shortestStandoff } }) => ({
      sway: length(shortestStandoff.inHit?.sway ?? 0),
      L: length(shortestStandoff.inHit?.length ?? 0),
      dip: length(shortestStandoff.inHit?.dip ?? 0),
      result: length(shortestStandoff.bySway.needed),
    }),
  },
];
