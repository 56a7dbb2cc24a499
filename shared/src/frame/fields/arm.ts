import {
  choice,
  count,
  length,
  linearDensity,
  mass,
  moment,
  turnStiffness,
  type Field,
  type PathsOf,
} from './field.ts';

const JOINTS = 'arms/arm-joints';
const DOUBLERS = 'arms/doublers';
const SHAPE = 'arms/tube-or-plate';
const MOUNT = 'arms/motor-mounts';
const VIBRATION = 'arms/vibration';

/** Coarse threads and property classes, in the words of the standards. */
export const THREADS = { M2: 'M2', 'M2.5': 'M2.5', M3: 'M3', M4: 'M4' } as const;
export const CLASSES = {
  '8.8': 'steel 8.8',
  '10.9': 'steel 10.9',
  '12.9': 'steel 12.9',
  'A2-70': 'stainless A2-70',
} as const;

export const ARM_FIELDS: Readonly<Record<PathsOf<'arm' | 'mount'>, Field>> = {
  'arm.kind': choice('Kind of arm', { tube: 'round tube', strip: 'strip of plate' }, SHAPE),
  'arm.length': length('Arm, outer screw to motor axis', [20, 300, 1], 'layout/motor-layout'),
  'arm.tube.outerDiameter': length('Tube, outer diameter', [4, 40, 0.5], SHAPE),
  'arm.tube.wall': length('Tube, wall', [0.3, 5, 0.05], SHAPE),
  'arm.strip.width': length('Plate arm, width', [4, 40, 0.5], SHAPE),
  'arm.strip.thickness': length('Plate arm, thickness', [1, 12, 0.5], SHAPE),
  'arm.sleeve.wall': length('Sleeve, wall', [0, 5, 0.05], DOUBLERS, '0 for an arm without one.'),
  'arm.sleeve.length': length('Sleeve, length', [5, 200, 1], DOUBLERS),
  'arm.sleeve.taper': length('Sleeve, taper of its outer end', [0, 30, 0.5], DOUBLERS),
  'arm.sleeve.bondLine': length('Sleeve, bond line', [0.02, 0.5, 0.01], DOUBLERS),
  'arm.root.screwSpacing': length('Arm screws, spacing', [6, 60, 0.5], JOINTS),
  'arm.root.endDistance': length('Inner arm screw to the arm’s end', [2, 30, 0.5], JOINTS),
  'arm.root.holeDiameter': length('Arm screws, holes', [1.5, 8, 0.1], JOINTS),
  'arm.root.thread': choice('Arm screws, thread', THREADS, JOINTS),
  'arm.root.grade': choice('Arm screws, property class', CLASSES, JOINTS),
  'arm.root.torque': moment('Arm screws, torque', [0.05, 3, 0.05], JOINTS),
  'arm.root.clampLength': length('Tube that one arm screw presses on', [5, 60, 0.5], JOINTS),
  'arm.root.stiffnessVertical': turnStiffness('Arm root, stiffness up and down', [20, 50000, 50], VIBRATION),
  'arm.root.stiffnessHorizontal': turnStiffness('Arm root, stiffness sideways', [20, 50000, 50], VIBRATION),
  'arm.root.stiffnessTwist': turnStiffness('Arm root, stiffness in twist', [20, 50000, 50], VIBRATION),
  'arm.wireMass': mass('Motor wires of one arm', [0, 50, 0.5], 'balance/battery-placement'),
  'mount.plateThickness': length('Motor plate, thickness', [0.5, 6, 0.5], MOUNT),
  'mount.plateWidth': length('Motor plate, across the tube', [8, 60, 1], MOUNT),
  'mount.plateLength': length('Motor plate, along the tube', [8, 60, 1], MOUNT),
  'mount.bondLine': length('Motor plate, glue line', [0.02, 0.5, 0.01], MOUNT),
  'mount.fillet': length('Motor plate, fillet beside the tube', [0, 6, 0.1], MOUNT),
  'mount.wrapTurns': count('Wrap, turns in each band', [0, 40, 1], MOUNT, '0 for a mount without a wrap.'),
  'mount.bandWidth': length('Wrap, width of a band', [1, 30, 0.5], MOUNT),
  'mount.tow': linearDensity('Wrap, tow', [30, 5000, 1], MOUNT, '3K is 198 tex, 12K 800 tex.'),
  'mount.edgeRadius': length('Motor plate, rounding of its edge', [0.1, 5, 0.1], MOUNT),
  'mount.motorScrews': count('Motor screws, count', [2, 4, 2], 'arms/motor-screws'),
  'mount.screwCircle': length('Motor screws, circle', [6, 40, 0.5], 'arms/motor-screws'),
};
