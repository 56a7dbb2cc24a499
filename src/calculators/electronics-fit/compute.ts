import { InputError } from '@frameworthy/shared';
import {
  checkArrangement,
  placeItem,
  type Arrangement,
  type ArrangementCheck,
  type FitBody,
  type HeightCase,
  type PlacedItem,
} from '@frameworthy/shared/fit';
import { MEASURED_OVER_LINEAR } from '@frameworthy/shared/impact';
import { plateFootStiffness } from '@frameworthy/shared/standoff';
import { ALUMINIUM_6061_T6 as METAL, QUASI_ISOTROPIC_PLATE } from '@frameworthy/shared/material';
import { arrange } from './arrange.ts';
import { valuesOf, type FitValues } from './inputs.ts';
import { requirePossible } from './possible.ts';

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

/** Both arrangements in the same body. */
export function compute(values: FitValues): FitResult {
  const body = bodyOf(values);
  const [a, b] = [fill('A', values, body), fill('B', values, body)];
  for (const one of [a, b]) requirePossible(one, values);
  return { a, b, body };
}
