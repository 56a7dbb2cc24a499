import { peakForceBand } from '@frameworthy/shared/impact';
import type { Warning } from '@frameworthy/shared';
import {
  columnHeadStiffness,
  foldingForce,
  foldingMovement,
  noseHit,
  patternPositions,
  plateFootStiffness,
  roundStandoff,
  standoffSection,
  touchSpeed,
} from '@frameworthy/shared/standoff';
import { folds, lifts, limitsOf, metalOf, movementAtBoards, plateFootOf, preloads } from '../body-parts.ts';
import { LIMIT_WORDS } from '../limit-words.ts';
import type { SwayValues } from './inputs.ts';

/** For drawing only: the nose stands this far ahead of the front pair [m]. */
export const NOSE = 0.012;

/** The body as the package wants it: columns, and the plates where their bending counts. */
function body(values: SwayValues) {
  const { metal, yieldStrength } = metalOf(values.material);
  const plate = (thickness: number) => plateFootOf(values, thickness);
  const plates =
    values.ends === 'plates' ? { bottomPlate: plate(values.bottomPlate), topPlate: plate(values.topPlate) } : {};
  const beam = roundStandoff({
    ...values,
    youngsModulus: metal.youngsModulus.typical,
    shearModulus: metal.shearModulus.typical,
    foot: plates.bottomPlate ? plateFootStiffness(plates.bottomPlate) : 'fixed',
    head: plates.topPlate ? plateFootStiffness(plates.topPlate) : values.ends === 'fixed' ? 'fixed' : 'pinned',
  });
  const columns = patternPositions(values).map((place) => ({ ...beam, ...place }));
  return { metal, yieldStrength, plates, beam, columns };
}

const hitPoint = ({ foreAft, hitAside, hitHeight }: SwayValues) => ({
  x: foreAft / 2 + NOSE,
  y: hitAside,
  z: hitHeight,
});

/** The hit, what it does to each standoff, and the order in which limits are reached. */
export function compute(values: SwayValues) {
  const { metal, yieldStrength, plates, beam, columns } = body(values);
  const { length, speed } = values;
  const hit = noseHit({
    columns,
    mass: values.mass,
    speed,
    pitchRadius: values.pitchRadius,
    yawRadius: values.yawRadius,
    centreOfMass: { x: 0, y: 0, z: values.centreHeight - length },
    at: hitPoint(values),
    contactStiffness: values.contactStiffness,
  });
  const elastic = movementAtBoards(hit.plate, values.boardSide);
  const limits = limitsOf(values, plates, hit.plate.columns, speed);
  const folding = {
    mass: hit.effectiveMass,
    stiffness: hit.stiffness,
    compliance: elastic / hit.peakForce,
    foldingForce: foldingForce({
      ...values,
      yieldStrength,
      count: columns.length,
      hinges: values.ends === 'pinned-heads' ? 1 : 2,
    }),
  };
  const movement = foldingMovement(folding, speed);
  const forces = hit.plate.columns;
  const limit = (name: (typeof limits)[number]['name']) => limits.find((one) => one.name === name);
  const worst = limit('standoff')!.column;
  const { closing, preload } = preloads(values, forces);
  const touches = touchSpeed(folding, values.gap);
  const weakest = { speed: limits[0]!.speed!, what: LIMIT_WORDS[limits[0]!.name] };
  const warnings: Warning[] = [];
  if (movement > length / 4) warnings.push(folds);
  if (closing > preload.low) warnings.push(lifts);
  return {
    ...hit,
    band: peakForceBand(hit.peakForce),
    elastic,
    foldingForce: folding.foldingForce,
    touches,
    forces,
    columns,
    movement,
    limits,
    limit,
    first: touches < weakest.speed ? { speed: touches, what: 'the top plate reaches the electronics' } : weakest,
    worst,
    worstForces: forces[worst]!,
    worstMoment: Math.max(forces[worst]!.footMoment, forces[worst]!.headMoment),
    footMoment: Math.max(...forces.map((c) => c.footMoment)),
    tension: Math.max(...forces.map((c) => c.axial)),
    closing,
    preload,
    yieldStrength,
    youngsModulus: metal.youngsModulus.typical,
    section: standoffSection(values),
    postStiffness: columnHeadStiffness(beam).sway,
    endFactor: (columnHeadStiffness(beam).sway * length ** 3) / beam.flexuralRigidity,
    mass: columns.length * metal.density.typical * standoffSection(values).area * length,
    warnings,
  };
}

export type SwayResult = ReturnType<typeof compute>;
