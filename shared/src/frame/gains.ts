import { InputError } from '../error.ts';
import type { Check } from './check.ts';
import { evaluateFrame, type FrameEvaluation } from './evaluate.ts';
import type { FrameRecord } from './record.ts';
import { designSteps, type DesignStep } from './steps.ts';

/** What one step of one dimension buys and costs. */
export interface Gain {
  step: DesignStep;
  /** Of the hit that governs the frame as it is: survivable speed after, less before [m/s]. */
  speed: number;
  /** What gives first in that hit afterwards. */
  then: Check;
  /** [kg] */
  mass: number;
  /** Slower one of roll and pitch, after over before, less one [-]. */
  agility: number;
  cost: number;
  /** [m/s per kg]; infinite where speed rises and mass does not; 0 where it rises and the mass is not known. */
  perMass: number;
}

/** A step that cannot be taken, and why. */
export interface Impossible {
  step: DesignStep;
  problem: InputError;
}

type Hit = Check & { speed: NonNullable<Check['speed']> };
const isHit = (check: Check): check is Hit => check.speed !== undefined;

/**
 * The first thing to give in each case.
 * @param evaluation - of a frame
 * @returns one check for each case that loads the frame, the least margin first
 * @validity as evaluateFrame
 * @derivation least typical margin
 */
export function firstToGive({ checks }: Pick<FrameEvaluation, 'checks'>): Check[] {
  const first = new Map<Check['case'], Check>();
  for (const check of checks) {
    const held = first.get(check.case);
    if (!held || check.margin.typical < held.margin.typical) first.set(check.case, check);
  }
  return [...first.values()].sort((a, b) => a.margin.typical - b.margin.typical);
}

/**
 * The hit that the frame is nearest to failing in, and what gives there.
 * @param evaluation - of a frame
 * @returns the check with the least margin among those of hits
 * @validity as evaluateFrame
 * @derivation least typical margin
 */
export function governingHit(evaluation: Pick<FrameEvaluation, 'checks'>): Hit {
  return firstToGive(evaluation).find(isHit) as Hit;
}

const slower = ({ balance: { agility } }: FrameEvaluation) => Math.min(agility.roll, agility.pitch);

/** The check of a case that gives first. */
const firstOf = (evaluation: FrameEvaluation, name: Check['case']): Hit =>
  firstToGive(evaluation).find((check) => check.case === name) as Hit;

/**
 * What each sensible step does to the survivable speed of the governing hit, to mass, agility and cost.
 * $$g = \frac{\Delta v_s}{\Delta m}$$
 * @param record - a valid record
 * @param before - its evaluation, where it is at hand
 * @param hit - the hit to look at; the governing one where not given
 * @returns gains, most speed per gram first; steps that cannot be taken apart
 * @validity as evaluateFrame; one step at a time: two that mend the same part do not add up
 * @throws InputError when the record itself cannot be evaluated
 * @derivation evaluateFrame before and after each step of designSteps
 */
export function gainPerGram(
  record: FrameRecord,
  before: FrameEvaluation = evaluateFrame(record),
  hit: Check['case'] = governingHit(before).case,
): { gains: Gain[]; impossible: Impossible[] } {
  const governing = firstOf(before, hit);
  const gains: Gain[] = [];
  const impossible: Impossible[] = [];
  for (const step of designSteps(record)) {
    try {
      gains.push(gainOf(step, before, evaluateFrame(step.record), governing));
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      impossible.push({ step, problem });
    }
  }
  return { gains: gains.sort((a, b) => b.perMass - a.perMass || b.speed - a.speed), impossible };
}

/** Below this a change of speed or mass is rounding. */
const NOTHING = 1e-9;

function gainOf(step: DesignStep, before: FrameEvaluation, after: FrameEvaluation, governing: Hit): Gain {
  const then = firstOf(after, governing.case);
  const speed = then.speed.typical - governing.speed.typical;
  const mass = after.balance.allUp - before.balance.allUp;
  const risen = Math.abs(speed) > NOTHING ? speed : 0;
  return {
    step,
    then,
    speed: risen,
    mass,
    agility: slower(after) / slower(before) - 1,
    cost: after.balance.cost - before.balance.cost,
    perMass:
      risen > 0
        ? step.unweighed
          ? 0
          : mass > NOTHING
            ? risen / mass
            : Infinity
        : mass > NOTHING
          ? Math.min(risen, 0) / mass
          : risen < 0
            ? -Infinity
            : 0,
  };
}
