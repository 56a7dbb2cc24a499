import { largestTipForce } from '@frameworthy/shared/arm';
import { drilledTubeSection } from '@frameworthy/shared/section';
import { contourMap } from '~/island/declaration.ts';
import type { ArmResult } from './compute.ts';
import { inputs, type ArmValues } from './inputs.ts';
import { tubeMaterial } from './materials.ts';
import { stiffnessOf, tubeMass, tubeSegments } from './parts.ts';

interface TubePoint {
  mass: number;
  stiffness: number;
  strength: number;
}

/** A tube alone: no solve, one segment. */
function tubeAt(values: ArmValues): TubePoint {
  const { outerDiameter, wall, holeDiameter, armLength } = values;
  const { vertical } = drilledTubeSection({ outerDiameter, wall, holeDiameter, holeAxis: 'vertical' });
  return {
    mass: tubeMass(values),
    stiffness: stiffnessOf(tubeSegments(values), 'vertical'),
    strength: largestTipForce({ plane: vertical, lever: armLength, strength: tubeMaterial(values).strength }),
  };
}

export const tubeMap = contourMap<ArmValues, ArmResult, TubePoint>({
  id: 'tube-map',
  title: 'Tubes as heavy, as stiff and as strong as the strip',
  caption:
    'Below the heavy line for mass a tube is lighter than the strip, right of the one for stiffness it is stiffer.',
  x: { input: 'outerDiameter', label: 'outside diameter', quantity: 'length', from: 0.006, to: 0.022 },
  y: { input: 'wall', label: 'wall', quantity: 'length', from: inputs.wall.min, to: inputs.wall.max },
  impossible: 'no bore left',
  at: tubeAt,
  families: [
    {
      label: 'mass',
      quantity: 'mass',
      of: ({ mass }) => mass,
      levels: 4,
      match: { label: 'as heavy as the strip', at: ({ strip }) => strip.mass },
    },
    {
      label: 'stiffness up and down',
      quantity: 'stiffness',
      of: ({ stiffness }) => stiffness,
      levels: 4,
      match: { label: 'as stiff', at: ({ strip }) => strip.stiffness.vertical },
    },
    {
      label: 'largest force up or down',
      quantity: 'force',
      of: ({ strength }) => strength,
      levels: 4,
      match: { label: 'as strong', at: ({ strip }) => strip.root.vertical },
    },
  ],
});
