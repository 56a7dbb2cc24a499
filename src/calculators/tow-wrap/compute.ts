import {
  capstanRatio,
  cureWarnings,
  MOUNT_CASES,
  RATE_PER_TEN,
  RESIN_DENSITY,
  resinMass,
  STANDARD_CARBON_FIBRE,
  timeAtTemperature,
  wrapPath,
  wrapPull,
  wrapStrength,
  type MountCase,
  type WrapPath,
  type WrapStrength,
} from '@frameworthy/shared/mount';
import type { Warning } from '@frameworthy/shared';
import { loadsAt, worstOf } from '../mount-inputs.ts';
import type { WrapValues } from './inputs.ts';

/** Bands on a plate: one on each end. */
export const BANDS = 2;
/** Dry tow on carbon; wet resin lowers it. common-practice. */
const TOW_FRICTION = 0.2;

export interface WrapResult {
  path: WrapPath;
  strength: WrapStrength;
  loads: ReturnType<typeof loadsAt>;
  pull: Readonly<Record<MountCase, ReturnType<typeof wrapPull>>>;
  use: Readonly<Record<MountCase, number>>;
  worst: MountCase;
  /** Deceleration at which the wraps are used up, in g. */
  holds: number;
  legs: number;
  /** Of one mount [m, kg]. */
  towLength: number;
  towMass: number;
  wrapMass: number;
  /** For the batch, waste counted [kg]. */
  resinToMix: number;
  /** Pull on the tail that keeps the most loaded turns from slipping, unbonded [N]. */
  tailPull: number;
  potLife: number;
  cure: { usual: number; longest: number };
  warnings: readonly Warning[];
}

export function compute(values: WrapValues): WrapResult {
  const path = wrapPath({ ...values, tubeDiameter: values.outerDiameter });
  const strength = wrapStrength(values);
  const loads = loadsAt(values, values.plateThickness);
  const each = MOUNT_CASES.map((name) => [name, wrapPull(path, values.bandSpacing, loads[name])] as const);
  const pull = Object.fromEntries(each) as WrapResult['pull'];
  const use = Object.fromEntries(
    each.map(([name, { pull: force }]) => [name, force / strength.side]),
  ) as WrapResult['use'];
  const worst = worstOf(use);
  // The middle of the band's thickness goes round on a longer way than the bare parts.
  const towLength = BANDS * (values.turns * (path.length + Math.PI * strength.thickness) + values.tail);
  const towMass = towLength * values.linearDensity;
  const resin = resinMass(towMass, {
    fibreFraction: values.fibreFraction,
    fibreDensity: STANDARD_CARBON_FIBRE.density,
    resinDensity: RESIN_DENSITY,
  });
  const resinToMix = values.mounts * resin * (1 + values.waste);
  const { warmerBy } = values;
  const slow = warmerBy < 0 ? RATE_PER_TEN.fastest : RATE_PER_TEN.slowest;
  return {
    path,
    strength,
    loads,
    pull,
    use,
    worst,
    holds: values.deceleration / Math.max(use.stop, use.pull),
    legs: 2 * BANDS * values.turns,
    towLength,
    towMass,
    wrapMass: towMass + resin,
    resinToMix,
    tailPull:
      pull[worst].pull / capstanRatio({ friction: TOW_FRICTION, angle: 2 * Math.PI * Math.min(values.turns, 20) }),
    potLife: timeAtTemperature({ time: values.statedPotLife, warmerBy }),
    cure: {
      usual: timeAtTemperature({ time: values.statedCure, warmerBy }),
      longest: timeAtTemperature({ time: values.statedCure, warmerBy }, slow),
    },
    warnings: cureWarnings(warmerBy, resinToMix),
  };
}
