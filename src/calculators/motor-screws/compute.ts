import type { Warning } from '@frameworthy/shared';
import {
  clearanceHole,
  engagementFor,
  SEAT_DIAMETERS,
  strippingForce,
  THREAD_LIMITS,
} from '@frameworthy/shared/fastener';
import { InputError } from '@frameworthy/shared';
import { PROPERTY_CLASSES, screwStrength, screwUse } from '@frameworthy/shared/joint';
import {
  MOTOR_PATTERNS,
  MOUNT_CASES,
  motorScrewFit,
  motorScrewPlaces,
  motorScrewShare,
  screwMass,
  STEEL_SCREW_DENSITY,
  type MotorScrewFit,
  type MountCase,
} from '@frameworthy/shared/mount';
import { drilledTubeSection, roundTubeSection } from '@frameworthy/shared/section';
import { loadsAt, worstOf } from '../mount-inputs.ts';
import type { ScrewValues } from './inputs.ts';

export interface Group {
  places: readonly { x: number; y: number }[];
  /** Largest over the cases, in one screw [N]. */
  shear: number;
  tension: number;
  /** Of the worst screw in the worst case [-]. */
  use: number;
  worst: MountCase;
}

export interface ScrewResult {
  along: number;
  across: number;
  two: Group;
  four: Group;
  mine: Group;
  loads: ReturnType<typeof loadsAt>;
  diameter: number;
  headDiameter: number;
  headHeight: number;
  holeDiameter: number;
  grip: { beside: number; through: number };
  fit: { beside?: MotorScrewFit; through?: MotorScrewFit };
  /** Least room and least engagement of the screws in use. */
  room: number;
  engagement: number;
  engagementNeeded: number;
  threadUse: number;
  /** What two more screws cost: grams at the tip, and share of the tube's second moment that is left. */
  extraMass: number;
  kept: { vertical: number; sideways: number };
  /** Stress of the drilled tube at the inner hole over that at the root. */
  stressShare: number;
  warnings: readonly Warning[];
}

/** Height of a head over the screw's diameter. */
const HEAD_HEIGHT = { button: 0.55, cap: 1 } as const;

function spacing(values: ScrewValues): { along: number; across: number } {
  if (values.pattern === 'own') return { along: values.ownAlong, across: values.ownAcross };
  const { first, second } = MOTOR_PATTERNS[values.pattern];
  return values.longPair === 'along' ? { along: second, across: first } : { along: first, across: second };
}

function group(values: ScrewValues, loads: ScrewResult['loads'], pairs: { along?: number; across?: number }): Group {
  const places = motorScrewPlaces(pairs);
  const strength = screwStrength(THREAD_LIMITS[values.thread].thread, PROPERTY_CLASSES[values.grade]);
  const shares = MOUNT_CASES.map((name) => {
    const share = motorScrewShare({ screws: places, baseDiameter: values.baseDiameter, load: loads[name] });
    return { name, share, use: screwUse({ ...share, shearPlanes: 1 }, strength) };
  });
  const uses = Object.fromEntries(shares.map(({ name, use }) => [name, use])) as Record<MountCase, number>;
  const worst = worstOf(uses);
  return {
    places,
    worst,
    use: uses[worst],
    shear: Math.max(...shares.map(({ share }) => share.shear)),
    tension: Math.max(...shares.map(({ share }) => share.tension)),
  };
}

export function compute(values: ScrewValues): ScrewResult {
  const { along, across } = spacing(values);
  const loads = loadsAt(values, 0);
  const limits = THREAD_LIMITS[values.thread];
  const { diameter } = limits.thread;
  const two = group(values, loads, values.keep === 'along' ? { along } : { across });
  const four = group(values, loads, { along, across });
  const isFour = values.screws === '4';
  const mine = isFour ? four : two;
  const headDiameter = SEAT_DIAMETERS[values.thread][`${values.head}-head`];
  const headHeight = HEAD_HEIGHT[values.head] * diameter;
  const holeDiameter = clearanceHole(values.thread, 'fine');

  const tube = { outerDiameter: values.outerDiameter, wall: values.wall };
  const grip = {
    beside: values.plateThickness + values.washer,
    through:
      values.plateThickness + values.washer + (values.throughSeat === 'below' ? values.outerDiameter : values.wall),
  };
  const depths = { threadDepth: values.threadDepth, windingDepth: values.windingDepth };
  const useBeside = isFour || values.keep === 'across';
  const useThrough = isFour || values.keep === 'along';
  const fit: ScrewResult['fit'] = {
    ...(useBeside ? { beside: motorScrewFit({ ...depths, screwLength: values.screwLength, grip: grip.beside }) } : {}),
    ...(useThrough ? { through: throughFit(values.throughLength, grip.through, depths) } : {}),
  };
  const fits = [fit.beside, fit.through].filter((one) => one !== undefined);
  const engagement = Math.min(...fits.map((one) => one.engagement));
  const hole = { limits, shearStrength: values.tappedShearStrength };
  const strips = strippingForce({ ...hole, engagement });

  const whole = roundTubeSection(tube);
  const drilled = drilledTubeSection({ ...tube, holeDiameter, holeAxis: 'vertical' });
  const left = (plane: 'vertical' | 'horizontal'): number =>
    drilled[plane].secondMomentOfArea / whole[plane].secondMomentOfArea;
  const costsHoles = values.keep === 'across';
  const steel = { thread: limits.thread, head: values.head, headDiameter, density: STEEL_SCREW_DENSITY };
  const extraLength = costsHoles ? values.throughLength : values.screwLength;
  const fibre = drilled.vertical.extremeFibre / whole.vertical.extremeFibre;
  return {
    along,
    across,
    two,
    four,
    mine,
    loads,
    diameter,
    headDiameter,
    headHeight,
    holeDiameter,
    grip,
    fit,
    room: Math.min(...fits.map((one) => one.room)),
    engagement,
    engagementNeeded: engagementFor(hole, mine.tension),
    threadUse: strips > 0 ? mine.tension / strips : NO_THREAD,
    extraMass: 2 * screwMass({ ...steel, length: extraLength }),
    kept: costsHoles ? { vertical: left('vertical'), sideways: left('horizontal') } : { vertical: 1, sideways: 1 },
    stressShare: ((along / 2 / values.armLength) * fibre) / left('vertical'),
    warnings: warningsOf(values, { across, diameter, headDiameter, headHeight, useBeside, useThrough }),
  };
}

/** Stands for a thread that does not hold at all. */
const NO_THREAD = 99;

/** As for the plate alone, with errors at the field of the longer screw. */
function throughFit(
  screwLength: number,
  grip: number,
  depths: { threadDepth: number; windingDepth: number },
): MotorScrewFit {
  try {
    return motorScrewFit({ ...depths, screwLength, grip });
  } catch (error) {
    if (error instanceof InputError && error.parameter === 'screwLength')
      throw new InputError({ ...error, parameter: 'throughLength' });
    throw error;
  }
}

function warningsOf(
  values: ScrewValues,
  sizes: {
    across: number;
    diameter: number;
    headDiameter: number;
    headHeight: number;
    useBeside: boolean;
    useThrough: boolean;
  },
): Warning[] {
  const radius = values.outerDiameter / 2;
  const depth = Math.min(sizes.headHeight + values.washer, radius);
  const tubeThere = Math.sqrt(radius ** 2 - (radius - depth) ** 2);
  const touches = sizes.useBeside && sizes.across / 2 - sizes.headDiameter / 2 < tubeThere;
  const key = sizes.useBeside && !touches && sizes.across / 2 < radius + 0.35 * sizes.diameter;
  const usual = values.pattern === 'own' ? values.thread : MOTOR_PATTERNS[values.pattern].thread;
  return [
    ...(touches
      ? [
          {
            code: 'head-touches-tube',
            message:
              'The heads beside the tube touch it: a wider pattern, smaller heads, or the motor turned by a quarter.',
          },
        ]
      : []),
    ...(key
      ? [
          {
            code: 'key-meets-tube',
            message:
              'A straight key for the screws beside the tube grazes it: use a ball end, or file a flat on the key.',
          },
        ]
      : []),
    ...(sizes.useThrough && values.throughSeat === 'below'
      ? [
          {
            code: 'tube-clamped',
            message: 'Screws with their heads under the tube pinch it. See Clamp torque for what a bare tube takes.',
          },
        ]
      : []),
    ...(usual !== values.thread
      ? [
          {
            code: 'thread-unusual',
            message: 'Motors of this pattern are usually tapped otherwise: check yours before you force a screw.',
          },
        ]
      : []),
  ];
}
