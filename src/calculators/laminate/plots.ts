import {
  flexuralConstants,
  flexuralStrength,
  inPlaneConstants,
  inPlaneStrength,
  joinedPlies,
  turned,
  type Ply,
} from '@frameworthy/shared/laminate';
import type { Plot, PlotData, Series } from '~/island/declaration.ts';
import { edgesOf, type LaminateResult } from './compute.ts';
import type { LaminateValues } from './inputs.ts';

const POINTS = 25;
const angles = Array.from({ length: POINTS }, (_, i) => -Math.PI / 2 + (Math.PI * i) / (POINTS - 1));

const around = (
  result: LaminateResult,
  values: LaminateValues,
  series: readonly (Pick<Series, 'label' | 'role'> & { of: (plies: readonly Ply[]) => number })[],
): PlotData => ({
  x: angles,
  marker: values.direction,
  series: series.map(({ of, ...look }) => ({
    ...look,
    y: angles.map((angle) => of(turned(joinedPlies(result.plies), angle))),
  })),
});

export const plots: readonly Plot<LaminateValues, LaminateResult>[] = [
  {
    id: 'modulus-by-direction',
    title: 'Modulus against direction',
    caption: 'Where the two curves part, the order of the plies matters; where they dip, an arm cut that way is soft.',
    x: { label: 'direction', quantity: 'angle' },
    y: { label: 'modulus', quantity: 'modulus' },
    data: (values, result) =>
      around(result, values, [
        { label: 'in the plane', role: 'main', of: (plies) => inPlaneConstants(plies, edgesOf(values)).modulusX },
        { label: 'flexural', role: 'second', of: (plies) => flexuralConstants(plies).modulusX },
        { label: 'shear', role: 'comparison', of: (plies) => inPlaneConstants(plies, edgesOf(values)).shearModulus },
      ]),
  },
  {
    id: 'strength-by-direction',
    title: 'First ply failure against direction',
    caption: 'Strength falls off faster than stiffness: a few degrees off the fibre, the resin decides.',
    x: { label: 'direction', quantity: 'angle' },
    y: { label: 'stress at the first ply failure', quantity: 'stress' },
    data: (values, result) =>
      around(result, values, [
        { label: 'tension', role: 'main', of: (plies) => inPlaneStrength(plies, 'tension', edgesOf(values)).stress },
        {
          label: 'compression',
          role: 'second',
          of: (plies) => inPlaneStrength(plies, 'compression', edgesOf(values)).stress,
        },
        { label: 'bending', role: 'comparison', of: (plies) => flexuralStrength(plies).stress },
      ]),
  },
];
