import { InputError, type Warning } from '@frameworthy/shared';
import {
  checkArrangement,
  placeItem,
  type Arrangement,
  type ArrangementCheck,
  type Collision,
  type FitBody,
  type HeightCase,
  type PlacedItem,
  type Role,
} from '@frameworthy/shared/fit';
import { MEASURED_OVER_LINEAR } from '@frameworthy/shared/impact';
import { CATALOGUE_LENGTHS, plateFootStiffness } from '@frameworthy/shared/standoff';
import { ALUMINIUM_6061_T6 as METAL, QUASI_ISOTROPIC_PLATE } from '@frameworthy/shared/material';
import { arrange } from './arrange.ts';
import { valuesOf, type FitValues } from './inputs.ts';

const MM = 1e-3;
/** What the calculator asks for nowhere: a 5-inch frame of the usual build. */
const BORE = 3 * MM;
const PLATES = { bottom: 3 * MM, top: 2 * MM, radius: 8 * MM };
const PITCH_RADIUS = 48 * MM;
const CENTRE_HEIGHT = 22 * MM;
const HIT_ASIDE = 8 * MM;
const HIT_HEIGHT = 2 * MM;

export interface Filled extends ArrangementCheck {
  letter: 'A' | 'B';
  arrangement: Arrangement;
  items: readonly PlacedItem[];
  /** Items and standoffs that collide. */
  touched: ReadonlySet<string>;
}

export interface FitResult {
  a: Filled;
  b: Filled;
  body: FitBody & HeightCase;
  warnings: readonly Warning[];
}

/** The body that both arrangements stand in. */
export function bodyOf(values: FitValues): FitBody & HeightCase {
  const { bodyLength, bodyWidth, endWidth, endLength, outerDiameter } = values;
  const foot = (thickness: number) =>
    plateFootStiffness({
      thickness,
      youngsModulus: QUASI_ISOTROPIC_PLATE.youngsModulus.typical,
      bossRadius: outerDiameter / 2,
      plateRadius: PLATES.radius,
      edge: 'supported',
    });
  const end = { width: endWidth, length: endLength };
  return {
    plate: { length: bodyLength, width: bodyWidth, nose: end, tail: end },
    standoffDiameter: outerDiameter,
    clearance: {
      columns: values.columnsAir,
      items: values.itemsAir,
      edge: values.edgeAir,
      height: values.heightAir,
    },
    hanging: values.hanging,
    rise: values.rise,
    hit: {
      standoff: {
        outerDiameter,
        bore: Math.min(BORE, outerDiameter * 0.6),
        youngsModulus: METAL.youngsModulus.typical,
        shearModulus: METAL.shearModulus.typical,
        yieldStrength: METAL.yieldStrength.typical,
        foot: foot(PLATES.bottom),
        head: foot(PLATES.top),
      },
      mass: values.mass,
      pitchRadius: PITCH_RADIUS,
      // A flat frame: yaw inertia is about the sum of roll and pitch.
      yawRadius: Math.SQRT2 * PITCH_RADIUS,
      centreHeight: CENTRE_HEIGHT,
      speed: values.speed,
      peakFactor: MEASURED_OVER_LINEAR,
      at: { x: bodyLength / 2, y: HIT_ASIDE },
      height: HIT_HEIGHT,
      contactStiffness: values.contactStiffness,
    },
  };
}

/** Field of an arrangement that an error of the package belongs to. */
const FIELDS: Readonly<Record<string, string>> = {
  hole: 'Screw',
  across: 'Screw',
  boardSide: 'BoardSide',
  height: 'Boards',
  tilt: 'Tilt',
  standoffs: 'FrontAcross',
  columns: 'FrontAcross',
};

/** Runs one arrangement; its errors go to its own fields and name it. */
function within<T>(letter: 'A' | 'B', run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const field = FIELDS[error.parameter];
    throw new InputError({
      ...error,
      parameter: field ? `${letter.toLowerCase()}${field}` : error.parameter,
      quantity: `${letter}: ${error.quantity}`,
    });
  }
}

/** What makes an arrangement impossible at any length of body, by how much. */
function requirePossible(
  { letter, collisions, shortestStandoff: standoff }: Filled,
  { bodyWidth, aPlace, bPlace }: FitValues,
): void {
  const key = letter.toLowerCase();
  const past = collisions.filter(({ against }) => against === 'left edge' || against === 'right edge');
  if (past.length > 0) {
    const worst = past.reduce((most, one) => (one.move > most.move ? one : most));
    throw new InputError({
      parameter: 'bodyWidth',
      quantity: `${letter}: width at the waist`,
      value: bodyWidth,
      rule: `is too little for the ${worst.mover}, which needs at least`,
      limit: bodyWidth + 2 * worst.move,
      kind: 'length',
    });
  }
  const { sold, needed } = standoff.byStack;
  if (sold === undefined) {
    const { name } = standoff.tallest;
    const onStack = (letter === 'A' ? aPlace : bPlace) === 'on';
    const field = name === 'camera' ? 'Tilt' : name === 'transmitter' && onStack ? 'Place' : 'Boards';
    throw new InputError({
      parameter: `${key}${field}`,
      quantity: `${letter}: height needed over the ${name}`,
      value: needed,
      rule: 'is more than the longest standoff sold has; take off at least',
      limit: needed - CATALOGUE_LENGTHS.at(-1)!,
      kind: 'length',
    });
  }
}

function fill(letter: 'A' | 'B', values: FitValues, body: FitBody & HeightCase): Filled {
  const key = letter === 'A' ? 'a' : 'b';
  const own = valuesOf(values, key);
  const order = own.count === 'six' ? (['front', 'middle', 'rear'] as const) : (['front', 'rear'] as const);
  order.slice(1).forEach((name, i) => {
    const ahead = order[i]!;
    const apart = own[ahead] - own[name];
    if (apart < values.outerDiameter)
      throw new InputError({
        parameter: `${key}${name.charAt(0).toUpperCase()}${name.slice(1)}`,
        quantity: `${letter}: ${ahead} pair ahead of the ${name} pair by`,
        value: apart,
        rule: 'must be at least',
        limit: values.outerDiameter,
        kind: 'length',
      });
  });
  return within(letter, () => {
    const arrangement = arrange(letter, own, values);
    const check = checkArrangement(body, arrangement);
    const touched = new Set(check.collisions.flatMap(({ mover, against }) => [mover, against]));
    return { letter, arrangement, items: arrangement.items.map(placeItem), touched, ...check };
  });
}

const PARTS: Record<Role, string> = { body: '', lens: 'lens of the ', screw: 'nuts of the ', wires: 'wires of the ' };

/** What meets what, in words without numbers: `the wires of the board stack run into the front standoffs`. */
export function clash({ kind, gap, mover, against, moverPart, againstPart }: Collision): string {
  const many = moverPart === 'screw' || moverPart === 'wires';
  const verb =
    gap >= 0
      ? many
        ? 'are too near'
        : 'is too near'
      : many
        ? 'run into'
        : kind === 'edge'
          ? 'stands past'
          : 'runs into';
  return `the ${PARTS[moverPart]}${mover} ${verb} the ${PARTS[againstPart]}${against}`;
}

function warningsOf({ letter, collisions, shortestStandoff: { inHit, longest, bySway } }: Filled): Warning[] {
  const found: Warning[] = collisions.map((one) => ({
    code: `collision-${letter.toLowerCase()}-${`${one.mover}-${one.against}`.replaceAll(' ', '-')}`,
    message: `${letter}: ${clash(one)}; it clears by moving ${one.direction}.`,
  }));
  if (inHit && inHit.side && inHit.side.gap <= 0 && !collisions.some(({ kind }) => kind === 'standoff'))
    found.push({
      code: `side-${letter.toLowerCase()}`,
      message: `${letter}: in the hit the ${inHit.side.to} reaches the ${inHit.side.of}${longest === undefined ? ', with any length sold' : ''}.`,
    });
  if (bySway.sold === undefined)
    found.push({
      code: `none-${letter.toLowerCase()}`,
      message: `${letter}: in this hit the body folds onto the electronics with any length sold. More standoffs, a stronger alloy or a softer nose helps, a longer standoff does not.`,
    });
  else if (inHit && inHit.sway > bySway.sold / 4)
    found.push({
      code: `folds-${letter.toLowerCase()}`,
      message: `${letter}: the top plate moves by more than a quarter of the standoff. The body folds over, and the figures say no more than that.`,
    });
  return found;
}

/** Both arrangements in the same body. */
export function compute(values: FitValues): FitResult {
  const body = bodyOf(values);
  const [a, b] = [fill('A', values, body), fill('B', values, body)];
  for (const one of [a, b]) requirePossible(one, values);
  return { a, b, body, warnings: [a, b].flatMap(warningsOf) };
}
