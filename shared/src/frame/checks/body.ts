import { COARSE_THREADS, PROPERTY_CLASSES, screwStrength } from '../../joint/index.ts';
import {
  bodyLimits,
  foldingForce,
  movementAt,
  noseHit,
  plateFootStiffness,
  roundStandoff,
  touchSpeed,
  type LimitName,
  type PlateFoot,
  type PlateOnColumns,
} from '../../standoff/index.ts';
import { boardSide, currentArrangement, electronicsGap } from '../arrangement.ts';
import type { FrameBalance } from '../balance.ts';
import { exactly, HIT_SCATTER, hitCheck, scaled, type Check, type ModeName } from '../check.ts';
import { STANDOFF_METALS } from '../../material/index.ts';
import type { FrameRecord } from '../record.ts';

type NoseHitResult = ReturnType<typeof noseHit>;

/** The nose stands this far ahead of the foremost standoffs. */
const NOSE = 0.012;

const MODE_OF: Readonly<Record<LimitName, ModeName>> = {
  standoff: 'standoff-wall',
  screw: 'standoff-screw',
  buckling: 'standoff-buckling',
  'bottom plate': 'main-plate-foot',
  'top plate': 'top-plate-foot',
};

function plateFoot({ body, materials }: FrameRecord, thickness: number): PlateFoot {
  return {
    thickness,
    youngsModulus: materials.plate.youngsModulus.typical,
    bossRadius: body.standoff.outerDiameter / 2,
    plateRadius: body.standoff.plateRadius,
    edge: 'supported',
  };
}

/** Where the nose-first hit lands: x and y from the middle of the motors, z above the top plate. */
export const nosePoint = (record: FrameRecord): { x: number; y: number; z: number } => ({
  x: Math.max(...currentArrangement(record).standoffs.map(({ x }) => x)) + NOSE,
  y: record.cases.nose.aside,
  z: record.cases.nose.height,
});

/** The nose-first hit of a record, and what the parts of its body are made of. */
export function noseOf(record: FrameRecord, balance: Pick<FrameBalance, 'properties' | 'plan'>) {
  const { body, cases } = record;
  const { metal, yieldStrength } = STANDOFF_METALS[body.standoff.material];
  const bottomPlate = plateFoot(record, body.mainPlate.thickness);
  const topPlate = plateFoot(record, body.topPlate.thickness);
  const beam = roundStandoff({
    ...body.standoff,
    youngsModulus: metal.youngsModulus.typical,
    shearModulus: metal.shearModulus.typical,
    foot: plateFootStiffness(bottomPlate),
    head: plateFootStiffness(topPlate),
  });
  const { standoffs } = currentArrangement(record);
  const { mass, centre, inertia } = balance.properties;
  const hit = noseHit({
    columns: standoffs.map(({ x, y }) => ({ ...beam, x, y })),
    mass,
    pitchRadius: Math.sqrt(inertia.yy / mass),
    yawRadius: Math.sqrt(inertia.zz / mass),
    centreOfMass: { ...centre, z: centre.z - balance.plan.topPlate },
    at: nosePoint(record),
    contactStiffness: cases.nose.contactStiffness,
    speed: cases.nose.speed,
  });
  return { hit, metal, yieldStrength, bottomPlate, topPlate };
}

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
