import { COARSE_THREADS } from '../../joint/index.ts';
import { STANDOFF_METALS } from '../../material/index.ts';
import {
  noseHit,
  plateFootStiffness,
  requireOffLine,
  requireThread,
  roundStandoff,
  type PlateFoot,
} from '../../standoff/index.ts';
import { currentArrangement } from '../arrangement.ts';
import type { FrameBalance } from '../balance.ts';
import type { FrameRecord } from '../record.ts';

/** The nose stands this far ahead of the foremost standoffs. */
const NOSE = 0.012;

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
  requireOffLine(standoffs.map(({ x, y }) => ({ x, y, named: { x: 'columns', y: 'columns' } })));
  requireThread(record.body.standoff.bore, COARSE_THREADS[record.body.standoff.screw].diameter);
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
