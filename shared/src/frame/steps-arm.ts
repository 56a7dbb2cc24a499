import { COARSE_THREADS } from '../joint/index.ts';
import { TOWS } from '../mount/index.ts';
import { hasSleeve } from './arm.ts';
import { THREADS } from './fields/arm.ts';
import type { FrameRecord } from './record.ts';
import { gradeChange, grower, mm, next, plus, STOCK_TUBES, STOCK_WALLS, UNKNOWN, type Change } from './stock.ts';

const NAMES = Object.keys(THREADS) as (keyof typeof THREADS)[];

/** The next thread, in holes that leave it the same play. */
function threadChange({ arm: { root } }: FrameRecord): Change[] {
  const at = NAMES.findIndex((name) => name === root.thread);
  const thread = NAMES[at + 1];
  if (at < 0 || !thread) return [];
  const hole = plus(root.holeDiameter, COARSE_THREADS[thread].diameter - COARSE_THREADS[root.thread].diameter);
  return [
    {
      path: 'arm.root.thread',
      value: thread,
      also: ['arm.root.holeDiameter', hole],
      says: `arm screws ${thread} in holes of ${mm(hole)}`,
      ...UNKNOWN,
    },
  ];
}

/** Another tube, and its price in proportion to its mass per metre. */
function tubeChange(
  { arm: { tube }, costs }: FrameRecord,
  key: keyof typeof tube,
  sizes: readonly number[],
  words: string,
): Change[] {
  const value = next(sizes, tube[key]);
  if (!value) return [];
  // Section of a tube over pi.
  const section = ({ outerDiameter, wall }: typeof tube) => (outerDiameter - wall) * wall;
  const price = (costs.tubePerMetre * section({ ...tube, [key]: value })) / section(tube);
  return [
    {
      path: `arm.tube.${key}`,
      value,
      also: ['costs.tubePerMetre', Number(price.toPrecision(6))],
      says: `${words} ${mm(value)}`,
    },
  ];
}

/** The next heavier tow that is sold. */
function towChange(tow: number): Change[] {
  const found = Object.entries(TOWS).find(([, one]) => one > tow * 1.001);
  return found ? [{ path: 'mount.tow', value: found[1], says: `tow of ${found[0]}` }] : [];
}

export function armChanges(record: FrameRecord): Change[] {
  const { arm, mount } = record;
  const { root, sleeve } = arm;
  const grow = grower(record);
  const shared = [
    grow('arm.root.screwSpacing', 2, 'arm screws apart by'),
    grow('arm.root.endDistance', 2, 'end of the arm behind the inner screw'),
    grow('arm.length', -2, 'outer screw out, arm down to'),
    ...threadChange(record),
    ...gradeChange('arm.root.grade', root.grade, 'arm screws'),
  ];
  if (arm.kind === 'strip') {
    return [
      ...shared,
      grow('arm.strip.width', 1, 'plate arms wide'),
      grow('arm.strip.thickness', 1, 'arm plate thick'),
    ];
  }
  const torque = Math.round((root.torque - 0.1) * 100) / 100;
  const wall = next(STOCK_WALLS, sleeve.wall);
  const turns = mount.wrapTurns + 2;
  return [
    ...shared,
    ...tubeChange(record, 'outerDiameter', STOCK_TUBES, 'next stock tube,'),
    ...tubeChange(record, 'wall', STOCK_WALLS, 'tube with a wall of'),
    ...(hasSleeve(record)
      ? [
          grow('arm.sleeve.length', 5, 'sleeve long'),
          grow('arm.sleeve.wall', wall ? (wall - sleeve.wall) * 1e3 : 0.5, 'sleeve wall'),
          grow('arm.sleeve.taper', 2, 'sleeve tapered over'),
        ]
      : [grow('arm.sleeve.wall', 1, 'a sleeve in the root, wall')]),
    ...(torque > 0 ? [{ path: 'arm.root.torque', value: torque, says: `arm screws at ${torque} N·m` }] : []),
    ...(mount.wrapTurns > 0 ? [grow('mount.bandWidth', 2, 'bands of tow, each wide'), ...towChange(mount.tow)] : []),
    { path: 'mount.wrapTurns', value: turns, says: `${turns} turns of tow in each band` },
    grow('mount.plateLength', 4, 'motor plate along the tube'),
    grow('mount.plateWidth', 2, 'motor plate across the tube'),
    grow('mount.plateThickness', 0.5, 'motor plate thick'),
    grow('mount.bondLine', 0.1, 'glue line under the motor plate'),
    grow('mount.fillet', 0.5, 'fillet beside the tube'),
  ];
}
