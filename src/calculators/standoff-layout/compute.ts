import { InputError, type Warning } from '@frameworthy/shared';
import { peakForceBand } from '@frameworthy/shared/impact';
import {
  bodyHit,
  foldingForce,
  foldingMovement,
  movementAt,
  plateFootStiffness,
  roundStandoff,
  spreadAcross,
  standoffSection,
  touchSpeed,
  wallStress,
  type Limit,
  type Place,
} from '@frameworthy/shared/standoff';
import { folds, lifts, limitsOf, metalOf, movementAtBoards, plateFootOf, preloads } from '../body-parts.ts';
import { LIMIT_WORDS } from '../limit-words.ts';
import type { LayoutValues } from './inputs.ts';
import { placesOf } from './places.ts';

/** A hit that pushes mostly along the standoffs folds them at many times the side force. */
const LEAST_SIDE_SHARE = 0.02;
/** Standoffs nearer to one line than this hold the plate badly against rocking about it. */
const NARROW = 0.005;
export const TOUCHES = 'the top plate reaches the electronics';

/** Out of which the load comes, as the direction of its push. */
export const pushOf = ({ heading, downwards }: Pick<LayoutValues, 'heading' | 'downwards'>) => ({
  x: -Math.cos(heading) * Math.cos(downwards),
  y: -Math.sin(heading) * Math.cos(downwards),
  z: -Math.sin(downwards),
});

/** A plate at one end, or what it is taken for; how stiffly it holds. */
const endOf = (held: LayoutValues['foot'], values: LayoutValues, thickness: number) => {
  if (held !== 'plate') return { fixity: held, plate: undefined };
  const plate = plateFootOf(values, thickness);
  return { fixity: plateFootStiffness(plate), plate };
};

function bodyOf(values: LayoutValues) {
  if (values.foot === 'pinned' && values.head === 'pinned')
    throw new InputError({
      parameter: 'head',
      quantity: 'loose heads on loose feet',
      value: 'given',
      rule: 'let the body fall over: hold one of the two ends',
    });
  const { metal, yieldStrength } = metalOf(values.material);
  const moduli = { youngsModulus: metal.youngsModulus.typical, shearModulus: metal.shearModulus.typical };
  const foot = endOf(values.foot, values, values.bottomPlate);
  const head = endOf(values.head, values, values.topPlate);
  const beam = roundStandoff({ ...values, ...moduli, foot: foot.fixity, head: head.fixity });
  return { metal, yieldStrength, foot, head, beam, section: standoffSection(values) };
}

/** Plots put the same body on many layouts. */
const known = new WeakMap<LayoutValues, ReturnType<typeof bodyOf>>();
function knownBody(values: LayoutValues) {
  const body = known.get(values) ?? bodyOf(values);
  known.set(values, body);
  return body;
}

/** The body on standoffs at these places under the load. */
export function solve(values: LayoutValues, places: readonly Place[]) {
  const { length, outerDiameter, bore, gap } = values;
  const body = knownBody(values);
  const { metal, yieldStrength, beam, section } = body;
  const at = { x: values.hitForward, y: values.hitAside, z: values.hitHeight };
  const push = pushOf(values);
  const hitAt = (speed: number) =>
    bodyHit({
      columns: places.map(({ x, y }) => ({ ...beam, x, y })),
      mass: values.mass,
      rollRadius: values.pitchRadius,
      pitchRadius: values.pitchRadius,
      yawRadius: values.yawRadius,
      centreOfMass: { x: 0, y: 0, z: values.centreHeight - length },
      at,
      direction: push,
      contactStiffness: values.contactStiffness,
      speed,
    });
  const byForce = values.loadBy === 'force';
  const speed = byForce ? values.force / hitAt(1).forcePerSpeed : values.speed;
  const hit = hitAt(speed);
  const forces = hit.plate.columns;
  const { foot, head } = body;
  const limits = limitsOf(
    values,
    { ...(foot.plate && { bottomPlate: foot.plate }), ...(head.plate && { topPlate: head.plate }) },
    forces,
    speed,
  );
  const elastic = movementAtBoards(hit.plate, values.boardSide);
  const sideShare = Math.max(LEAST_SIDE_SHARE, Math.hypot(push.x, push.y));
  const hinges = values.head === 'pinned' || values.foot === 'pinned' ? 1 : 2;
  const fold = {
    mass: hit.effectiveMass,
    stiffness: hit.stiffness,
    compliance: elastic / hit.peakForce,
    foldingForce: foldingForce({ ...values, yieldStrength, count: places.length, hinges }) / sideShare,
  };
  const touches = touchSpeed(fold, gap);
  const named = limits[0]!;
  const weakest = { speed: named.speed!, what: LIMIT_WORDS[named.name], standoff: named.column + 1 };
  const first = touches < weakest.speed ? { speed: touches, what: TOUCHES, standoff: 0 } : weakest;
  const wall = forces.map(({ footMoment, headMoment, axial }) =>
    wallStress({ outerDiameter, bore, axial, moment: Math.max(footMoment, headMoment) }),
  );
  const centre = {
    x: places.reduce((sum, { x }) => sum + x, 0) / places.length,
    y: places.reduce((sum, { y }) => sum + y, 0) / places.length,
  };
  const { rotation } = hit.plate;
  const moved = movementAt(hit.plate, at);
  return {
    ...hit,
    places,
    push,
    at,
    speed,
    centre,
    /** From the middle of the standoffs to the line of the push, seen from above. */
    lever: Math.abs((at.x - centre.x) * push.y - (at.y - centre.y) * push.x) / sideShare,
    forces,
    limits,
    limit: (name: Limit['name']) => limits.find((one) => one.name === name),
    first,
    firstForce: first.speed * hit.forcePerSpeed,
    elastic,
    /** A force holds on: past the folding force nothing stops it, so that only the elastic part has a number. */
    movement: byForce ? elastic : foldingMovement(fold, speed),
    pointMovement: Math.hypot(moved.x, moved.y, moved.z),
    turn: Math.abs(rotation.z),
    tilt: Math.hypot(rotation.x, rotation.y),
    touches,
    foldingForce: fold.foldingForce,
    wall,
    worst: wall.indexOf(Math.max(...wall)),
    ...preloads(values, forces),
    band: peakForceBand(hit.peakForce),
    yieldStrength,
    section,
    mass: places.length * metal.density.typical * section.area * length,
  };
}

export type LayoutResult = ReturnType<typeof compute>;

export function compute(values: LayoutValues) {
  const places = placesOf(values);
  const found = solve(values, places);
  const warnings: Warning[] = [];
  if (values.loadBy === 'force' && found.peakForce > found.foldingForce)
    warnings.push({
      code: 'force-folds',
      message:
        'The force is more than the standoffs hold when all of them have bent through: the body folds flat under it.',
    });
  if (found.movement > values.length / 4) warnings.push(folds);
  if (found.closing > found.preload.low) warnings.push(lifts);
  if (spreadAcross(places) < NARROW)
    warnings.push({
      code: 'nearly-one-line',
      message:
        'The standoffs stand nearly on one line. What keeps the plate from rocking about it is only the grip of their ends.',
    });
  return { ...found, warnings };
}
