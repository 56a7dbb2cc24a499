import { defineCalculator, type Show } from '~/island/declaration.ts';
import { compute, type ArmResult } from './compute.ts';
import { Figure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { tubeMap } from './map.ts';
import { outputs } from './outputs.ts';
import { plots } from './plots.ts';
import { steps } from './steps.ts';
import { sideBySide } from './table.ts';

/** Within this share the two are called equal. */
const ALIKE = 0.05;

/** Which of the two is ahead, and how far. */
function ahead(tubeOverStrip: number, show: Show, way: string): string {
  if (Math.abs(tubeOverStrip - 1) < ALIKE) return `${way} they are alike`;
  const [first, factor] = tubeOverStrip > 1 ? ['tube', tubeOverStrip] : ['strip', 1 / tubeOverStrip];
  return `${way} the ${first} is ${show(factor, 'ratio', 2)} times as stiff`;
}

function says(result: ArmResult, _: unknown, show: Show): string {
  const { tube, strip } = result;
  const up = ahead(tube.stiffness.vertical / strip.stiffness.vertical, show, 'up and down');
  const side = ahead(tube.stiffness.horizontal / strip.stiffness.horizontal, show, 'sideways');
  return `The tube weighs ${show(tube.mass, 'mass')}, the strip ${show(strip.mass, 'mass')}; ${up}, ${side}.`;
}

export default defineCalculator({
  id: 'tube-or-plate',
  title: 'Tube or plate',
  question: 'Which is stiffer and stronger for its grams: the round tube or the strip of plate?',
  inputs,
  compute,
  outputs,
  warnings: ({ warnings }) => warnings,
  says,
  steps,
  plots,
  maps: [tubeMap],
  tables: [sideBySide],
  Figure,
  figureCaption: 'Sections at the outer screw, and both arms from above, each to scale.',
  assumptions: [
    'Both arms are held rigidly at the outer screw. The joint’s own give is left out, and is rarely the same for both.',
    'The strip tapers evenly; the round end under the motor counts for mass only. Holes and the tip’s slot are not taken off the mass.',
    'Strength is bending of the net section at the screw, without the peak at the hole’s edge, and of the whole section at mid-span. Splitting, crushing and bearing are left out.',
    'Material values are typical ones. Laminates differ by a fifth and more.',
    'The tube’s wall keeps its shape; a note stands where it does not.',
    'Wires are round, hard and lie straight.',
  ],
  sources: [
    'gere-2004-mechanics',
    'cowper-1966-shear',
    'timoshenko-1970-elasticity',
    'young-2002-roark',
    'nasa-1968-sp8007',
    'blevins-1979-frequency',
    'kravitz-1967-packing',
    'woven-plate-data-sheet',
    'pultruded-tube-data-sheet',
    'common-practice',
  ],
  formulas: [
    'arm/tapered-strip.ts',
    'arm/matching-size.ts',
    'arm/largest-tip-force.ts',
    'arm/wire-bundle.ts',
    'beam/arm-bending.ts',
    'beam/tube-buckling.ts',
    'section/drilled-tube.ts',
  ],
});
