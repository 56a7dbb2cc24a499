import { COARSE_THREADS, PROPERTY_CLASSES, screwStrength } from '../../joint/index.ts';
import {
  bodyLimits,
  foldingForce,
  movementAt,
  touchSpeed,
  type LimitName,
  type PlateOnColumns,
} from '../../standoff/index.ts';
import { boardSide, currentArrangement, electronicsGap } from '../arrangement.ts';
import type { FrameBalance } from '../balance.ts';
import { exactly, HIT_SCATTER, hitCheck, scaled, type Check, type ModeName } from '../check.ts';
import type { FrameRecord } from '../record.ts';
import { noseOf } from './nose.ts';

type NoseHitResult = ReturnType<typeof noseOf>['hit'];

const MODE_OF: Readonly<Record<LimitName, ModeName>> = {
  standoff: 'standoff-wall',
  screw: 'standoff-screw',
  buckling: 'standoff-buckling',
  'bottom plate': 'main-plate-foot',
  'top plate': 'top-plate-foot',
};

/** Largest movement of the top plate over the corners of the boards. */
function movementOver(plate: PlateOnColumns, side: number): number {
  const half = side / 2;
  const corners = [-half, half].flatMap((x) => [-half, half].map((y) => movementAt(plate, { x, y, z: 0 })));
  return Math.max(...corners.map(({ x, y, z }) => Math.hypot(x, y, z)));
}

/** Speed at which the top plate or a standoff reaches the electronics. */
function touching(record: FrameRecord, hit: NoseHitResult, yieldStrength: number, gap: number): number {
  const count = currentArrangement(record).standoffs.length;
  return touchSpeed(
    {
      mass: hit.effectiveMass,
      stiffness: hit.stiffness,
      compliance: movementOver(hit.plate, boardSide(record)) / hit.peakForce,
      foldingForce: foldingForce({ ...record.body.standoff, yieldStrength, count, hinges: 2 }),
    },
    gap,
  );
}

/** Checks of a nose-first hit on the top plate. */
export function noseChecks(record: FrameRecord, balance: Pick<FrameBalance, 'properties' | 'plan'>): Check[] {
  const { hit, metal, yieldStrength, bottomPlate, topPlate } = noseOf(record, balance);
  const { standoff } = record.body;
  const { bendingStrength } = record.materials.plate;
  const speed = record.cases.nose.speed;
  const screw = screwStrength(COARSE_THREADS[standoff.screw], PROPERTY_CLASSES[standoff.screwClass]);
  const limits = bodyLimits(
    { columns: hit.plate.columns, speed },
    {
      ...standoff,
      bottomPlate,
      topPlate,
      youngsModulus: metal.youngsModulus.typical,
      yieldStrength,
      screwLoad: screw.proof,
      plateStrength: bendingStrength.typical,
    },
  );
  const metalSpread = scaled(metal.yieldStrength, yieldStrength / metal.yieldStrength.typical);
  const checks = limits.map(({ name, applied, allowable }) => {
    const inPlate = name === 'bottom plate' || name === 'top plate';
    const spread = inPlate ? bendingStrength : name === 'standoff' ? metalSpread : exactly(allowable);
    const quantity = name === 'screw' ? 'force' : 'stress';
    return hitCheck({ case: 'nose', speed }, { mode: MODE_OF[name], quantity, applied, allowable: spread });
  });
  return [...checks, electronicsCheck(record, hit, yieldStrength)];
}

/** A gap below this counts as no gap: something touches before the hit. */
const NO_GAP = 1e-5;

function electronicsCheck(record: FrameRecord, hit: NoseHitResult, yieldStrength: number): Check {
  const { speed } = record.cases.nose;
  const gap = electronicsGap(record);
  const moves = movementOver(hit.plate, boardSide(record));
  const touches = gap > NO_GAP ? touching(record, hit, yieldStrength, gap) : 0;
  const typical = touches / speed;
  const margin = { low: typical / HIT_SCATTER, typical, high: typical };
  return {
    case: 'nose',
    mode: 'electronics',
    quantity: 'length',
    applied: moves,
    allowable: Math.max(gap, 0),
    margin,
    speed: scaled(margin, speed),
  };
}
