import {
  COARSE_THREADS,
  preloadFromTorque,
  PROPERTY_CLASSES,
  screwStrength,
  USUAL_TORQUE_COEFFICIENT,
} from '@frameworthy/shared/joint';
import { STANDOFF_METALS, type StandoffMetal } from '@frameworthy/shared/material';
import {
  bodyLimits,
  closingPreload,
  movementAt,
  requireThread,
  type ColumnForces,
  type Limit,
  type PlateFoot,
  type PlateMovement,
} from '@frameworthy/shared/standoff';
import type { Values } from '~/island/declaration.ts';
import type { plateEndInputs, standoffInputs, standoffScrewInputs } from './body-inputs.ts';

type BodyValues = Values<typeof standoffInputs & typeof standoffScrewInputs & typeof plateEndInputs>;

export const metalOf = (material: StandoffMetal) => STANDOFF_METALS[material];

/** What one of the plates is to the end of a standoff. */
export const plateFootOf = (
  values: Pick<BodyValues, 'outerDiameter' | 'plateRadius' | 'plateModulus'>,
  thickness: number,
): PlateFoot => ({
  thickness,
  youngsModulus: values.plateModulus,
  bossRadius: values.outerDiameter / 2,
  plateRadius: values.plateRadius,
  edge: 'supported',
});

/** Movement of the top plate at the corner of the boards that moves most; the boards stand in the middle. */
export function movementAtBoards(plate: PlateMovement, boardSide: number): number {
  const half = boardSide / 2;
  const corners = [-half, half].flatMap((x) => [-half, half].map((y) => movementAt(plate, { x, y, z: 0 })));
  return Math.max(...corners.map(({ x, y, z }) => Math.hypot(x, y, z)));
}

/** Limits of strength under the forces of a hit, in the order in which they are reached. */
export function limitsOf(
  values: Omit<BodyValues, 'bottomPlate' | 'topPlate' | 'plateRadius' | 'plateModulus'>,
  plates: { bottomPlate?: PlateFoot; topPlate?: PlateFoot },
  forces: readonly ColumnForces[],
  speed: number,
): readonly Limit[] {
  const { outerDiameter, bore, length } = values;
  requireThread(bore, COARSE_THREADS[values.screw].diameter);
  const { metal, yieldStrength } = metalOf(values.material);
  return bodyLimits(
    { columns: forces, speed },
    {
      ...plates,
      outerDiameter,
      bore,
      length,
      youngsModulus: metal.youngsModulus.typical,
      yieldStrength,
      screwLoad: screwStrength(COARSE_THREADS[values.screw], PROPERTY_CLASSES[values.screwClass]).proof,
      plateStrength: values.plateStrength,
    },
  );
}

/** Preload that keeps every face closed, and what the torque gives. */
export function preloads(
  { outerDiameter, bore, torque, screw }: Pick<BodyValues, 'outerDiameter' | 'bore' | 'torque' | 'screw'>,
  forces: readonly ColumnForces[],
) {
  const closings = forces.map(({ footMoment, headMoment, axial }) =>
    Math.max(...[footMoment, headMoment].map((moment) => closingPreload({ outerDiameter, bore, moment, axial }))),
  );
  const preload = preloadFromTorque({
    torque,
    torqueCoefficient: USUAL_TORQUE_COEFFICIENT,
    diameter: COARSE_THREADS[screw].diameter,
  });
  return { closing: Math.max(0, ...closings), closings, preload };
}

/** Warnings that any body in a hit may raise. */
export const folds = {
  code: 'folds-over',
  message:
    'The top plate moves by more than a quarter of the standoff: the body folds over, and the figures say no more than that.',
};
export const lifts = {
  code: 'face-lifts',
  message:
    'At this speed the faces of the standoffs lift off their plates. From then on the body is softer than worked out here, and the screws work in bending too.',
};
