import { peakForceBand } from '@frameworthy/shared/impact';
import { COARSE_THREADS, preloadFromTorque, PROPERTY_CLASSES, screwStrength } from '@frameworthy/shared/joint';
import {
  ALUMINIUM_6061_T6,
  ALUMINIUM_7075_T6,
  QUASI_ISOTROPIC_PLATE,
  TITANIUM_6AL_4V,
} from '@frameworthy/shared/material';
import type { Warning } from '@frameworthy/shared';
import {
  bodyLimits,
  closingPreload,
  columnHeadStiffness,
  foldingForce,
  foldingMovement,
  movementAt,
  noseHit,
  patternPositions,
  plateFootStiffness,
  roundStandoff,
  standoffSection,
  touchSpeed,
  type PlateFoot,
  type PlateOnColumns,
} from '@frameworthy/shared/standoff';
import type { SwayValues } from './inputs.ts';
import { LIMIT_WORDS } from './words.ts';

const TORQUE_COEFFICIENT = 0.2;
/** For drawing only: the nose stands this far ahead of the front pair [m]. */
export const NOSE = 0.012;

const METALS = {
  'aluminium-6061': { metal: ALUMINIUM_6061_T6, yieldStrength: ALUMINIUM_6061_T6.yieldStrength.typical },
  'aluminium-7075': { metal: ALUMINIUM_7075_T6, yieldStrength: ALUMINIUM_7075_T6.yieldStrength.typical },
  titanium: { metal: TITANIUM_6AL_4V, yieldStrength: TITANIUM_6AL_4V.yieldStrength.typical },
  'aluminium-unnamed': { metal: ALUMINIUM_6061_T6, yieldStrength: ALUMINIUM_6061_T6.yieldStrength.low },
} as const;

/** The body as the package wants it: columns, and the plates where their bending counts. */
function body(values: SwayValues) {
  const { metal, yieldStrength } = METALS[values.material];
  const plate = (thickness: number): PlateFoot => ({
    thickness,
    youngsModulus: QUASI_ISOTROPIC_PLATE.youngsModulus.typical,
    bossRadius: values.outerDiameter / 2,
    plateRadius: values.plateRadius,
    edge: 'supported',
  });
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

/** The corner of the boards above which the top plate moves most. */
function movementAtBoards(plate: PlateOnColumns, { boardSide }: SwayValues): number {
  const half = boardSide / 2;
  const corners = [-half, half].flatMap((x) => [-half, half].map((y) => movementAt(plate, { x, y, z: 0 })));
  return Math.max(...corners.map(({ x, y, z }) => Math.hypot(x, y, z)));
}

const hitPoint = ({ foreAft, hitAside, hitHeight }: SwayValues) => ({
  x: foreAft / 2 + NOSE,
  y: hitAside,
  z: hitHeight,
});

/** The hit, what it does to each standoff, and the order in which limits are reached. */
export function compute(values: SwayValues) {
  const { metal, yieldStrength, plates, beam, columns } = body(values);
  const { outerDiameter, bore, length, speed } = values;
  const hit = noseHit({
    columns,
    mass: values.mass,
    speed,
    pitchRadius: values.pitchRadius,
    // A flat frame: yaw inertia is about the sum of roll and pitch.
    yawRadius: Math.SQRT2 * values.pitchRadius,
    centreOfMass: { x: 0, y: 0, z: values.centreHeight - length },
    at: hitPoint(values),
    contactStiffness: values.contactStiffness,
  });
  const elastic = movementAtBoards(hit.plate, values);
  const screw = screwStrength(COARSE_THREADS[values.screw], PROPERTY_CLASSES[values.screwClass]);
  const limits = bodyLimits(
    { columns: hit.plate.columns, speed },
    {
      ...plates,
      outerDiameter,
      bore,
      length,
      youngsModulus: metal.youngsModulus.typical,
      yieldStrength,
      screwLoad: screw.proof,
      plateStrength: QUASI_ISOTROPIC_PLATE.bendingStrength.typical,
    },
  );
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
  const closing = Math.max(
    0,
    ...forces.flatMap(({ footMoment, headMoment, axial }) =>
      [footMoment, headMoment].map((moment) => closingPreload({ outerDiameter, bore, moment, axial })),
    ),
  );
  const preload = preloadFromTorque({
    torque: values.torque,
    torqueCoefficient: TORQUE_COEFFICIENT,
    diameter: COARSE_THREADS[values.screw].diameter,
  });
  const touches = touchSpeed(folding, values.gap);
  const weakest = { speed: limits[0]!.speed!, what: LIMIT_WORDS[limits[0]!.name] };
  const warnings: Warning[] = [];
  if (movement > length / 4)
    warnings.push({
      code: 'folds-over',
      message:
        'The top plate moves by more than a quarter of the standoff: the body folds over, and the figures say no more than that.',
    });
  if (closing > preload.low)
    warnings.push({
      code: 'face-lifts',
      message:
        'At this speed the faces of the standoffs lift off their plates. From then on the body is softer than worked out here, and the screws work in bending too.',
    });
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
