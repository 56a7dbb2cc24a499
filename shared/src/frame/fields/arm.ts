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
  'arm.kind': choice('Arm', { tube: 'round tube', strip: 'strip of plate' }, SHAPE),
  'arm.length': length('Outer screw to motor axis', [20, 300, 1], 'layout/motor-layout'),
  'arm.tube.outerDiameter': length('Tube, outside', [4, 40, 0.5], SHAPE),
  'arm.tube.wall': length('Wall', [0.3, 5, 0.05], SHAPE),
  'arm.strip.width': length('Width of the strip', [4, 40, 0.5], SHAPE),
  'arm.strip.thickness': length('Thickness of the plate', [1, 12, 0.5], SHAPE),
  'arm.sleeve.wall': length('Wall of the sleeve', [0, 5, 0.05], DOUBLERS, '0 for an arm without one.'),
  'arm.sleeve.length': length('Length of the sleeve', [5, 200, 1], DOUBLERS),
  'arm.sleeve.taper': length('Taper of its outer end', [0, 30, 0.5], DOUBLERS),
  'arm.sleeve.bondLine': length('Bond line', [0.02, 0.5, 0.01], DOUBLERS),
  'arm.root.screwSpacing': length('Screw spacing', [6, 60, 0.5], JOINTS),
  'arm.root.endDistance': length('Inner screw to the end of the arm', [2, 30, 0.5], JOINTS),
  'arm.root.holeDiameter': length('Holes', [1.5, 8, 0.1], JOINTS),
  'arm.root.thread': choice('Screws', THREADS, JOINTS),
  'arm.root.grade': choice('Screw strength', CLASSES, JOINTS),
  'arm.root.torque': moment('Tightening torque', [0.05, 3, 0.05], JOINTS),
  'arm.root.clampLength': length('Tube that one screw presses on', [5, 60, 0.5], JOINTS),
  'arm.root.stiffnessVertical': turnStiffness('Stiffness of the root, up and down', [20, 50000, 50], VIBRATION),
  'arm.root.stiffnessHorizontal': turnStiffness('Stiffness of the root, sideways', [20, 50000, 50], VIBRATION),
  'arm.root.stiffnessTwist': turnStiffness('Stiffness of the root, in twist', [20, 50000, 50], VIBRATION),
  'arm.wireMass': mass('Motor wires of one arm', [0, 50, 0.5], 'balance/battery-placement'),
  'mount.plateThickness': length('Motor plate, thickness', [0.5, 6, 0.5], MOUNT),
  'mount.plateWidth': length('Across the tube', [8, 60, 1], MOUNT),
  'mount.plateLength': length('Along the tube', [8, 60, 1], MOUNT),
  'mount.bondLine': length('Glue line', [0.02, 0.5, 0.01], MOUNT),
  'mount.fillet': length('Fillet beside the tube', [0, 6, 0.1], MOUNT),
  'mount.wrapTurns': count('Turns of tow in each band', [0, 40, 1], MOUNT, '0 for a mount without a wrap.'),
  'mount.bandWidth': length('Width of a band', [1, 30, 0.5], MOUNT),
  'mount.tow': linearDensity('Tow', [30, 5000, 1], MOUNT, '3K is 198 tex, 12K 800 tex.'),
  'mount.edgeRadius': length('Rounding of the plate’s edge', [0.1, 5, 0.1], MOUNT),
  'mount.motorScrews': count('Motor screws', [2, 4, 2], MOUNT),
  'mount.screwCircle': length('Circle of the motor screws', [6, 40, 0.5], MOUNT),
};
