import { hasSleeve } from './arm.ts';
import type { FrameRecord } from './record.ts';
import { MM, mm, next, plus, STOCK_TUBES, STOCK_WALLS, type Change } from './stock.ts';

const GRADES = ['A2-70', '8.8', '10.9', '12.9'] as const;

export function armChanges(record: FrameRecord): Change[] {
  const { arm, mount } = record;
  const { tube, strip, sleeve, root } = arm;
  const by = (id: string, path: string, value: number, words: string): Change => ({
    id,
    path,
    value,
    says: `${words} ${mm(value)}`,
  });
  const shared = [
    by('screw-spacing', 'arm.root.screwSpacing', plus(root.screwSpacing, 2 * MM), 'arm screws apart by'),
    by('end-distance', 'arm.root.endDistance', plus(root.endDistance, 2 * MM), 'end of the arm behind the inner screw'),
    by('shorter-arm', 'arm.length', plus(arm.length, -2 * MM), 'outer screw out, arm down to'),
  ];
  const grade = GRADES[GRADES.indexOf(root.grade) + 1];
  if (grade) {
    shared.push({ id: 'arm-grade', path: 'arm.root.grade', value: grade, says: `arm screws of class ${grade}` });
  }
  if (arm.kind === 'strip') {
    return [
      ...shared,
      by('strip-width', 'arm.strip.width', plus(strip.width, 1 * MM), 'plate arms wide'),
      by('strip-thickness', 'arm.strip.thickness', plus(strip.thickness, 1 * MM), 'arm plate thick'),
    ];
  }
  const diameter = next(STOCK_TUBES, tube.outerDiameter);
  const wall = next(STOCK_WALLS, tube.wall);
  const torque = Math.round((root.torque - 0.1) * 100) / 100;
  return [
    ...shared,
    ...(diameter ? [by('tube', 'arm.tube.outerDiameter', diameter, 'next stock tube,')] : []),
    ...(wall ? [by('tube-wall', 'arm.tube.wall', wall, 'tube with a wall of')] : []),
    ...(hasSleeve(record)
      ? [
          by('sleeve-length', 'arm.sleeve.length', plus(sleeve.length, 5 * MM), 'sleeve long'),
          by(
            'sleeve-wall',
            'arm.sleeve.wall',
            next(STOCK_WALLS, sleeve.wall) ?? plus(sleeve.wall, 0.5 * MM),
            'sleeve wall',
          ),
          by('sleeve-taper', 'arm.sleeve.taper', plus(sleeve.taper, 2 * MM), 'sleeve tapered over'),
        ]
      : [by('sleeve', 'arm.sleeve.wall', 1 * MM, 'a sleeve in the root, wall')]),
    ...(torque > 0
      ? [{ id: 'less-torque', path: 'arm.root.torque', value: torque, says: `arm screws at ${torque} N·m` }]
      : []),
    {
      id: 'wrap',
      path: 'mount.wrapTurns',
      value: mount.wrapTurns + 2,
      says: `${mount.wrapTurns + 2} turns of tow in each band`,
    },
    by('mount-length', 'mount.plateLength', plus(mount.plateLength, 4 * MM), 'motor plate along the tube'),
    by('mount-fillet', 'mount.fillet', plus(mount.fillet, 0.5 * MM), 'fillet beside the tube'),
  ];
}
