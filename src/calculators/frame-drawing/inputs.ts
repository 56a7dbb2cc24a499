import type { Inputs, Values } from '~/island/declaration.ts';
import { shapeInputs } from '../arm-inputs.ts';
import { batteryInputs, placeInputs } from '../craft-inputs.ts';
import { bodyInputs, layoutInputs } from '../layout-inputs.ts';
import { armLength, screwSpacing } from '../root-inputs.ts';

const MM = 1e-3;
type Shown = (values: Readonly<Record<string, number | string>>) => boolean;
const tube: Shown = (values) => values.armKind === 'tube';
const strip: Shown = (values) => values.armKind === 'strip';

const length = (
  group: string,
  label: string,
  help: string,
  [value, min, max, step]: readonly [number, number, number, number],
  frameField?: string,
) => ({
  quantity: 'length' as const,
  group,
  label,
  help,
  default: value * MM,
  min: min * MM,
  max: max * MM,
  step: step * MM,
  ...(frameField ? { frameField } : {}),
});

const { batteryLength, batteryWidth, batteryHeight } = batteryInputs;
const { shape: armKind, outerDiameter, wall, width, height } = shapeInputs;
const inBattery = { group: 'Battery' };

/** Defaults: the Dunnock, revision D. */
export const inputs = {
  discs: {
    label: 'Propeller circles',
    choices: { drawn: 'drawn', 'left-out': 'left out' },
    default: 'drawn',
    group: 'Sheet',
    help: 'Left out, the drawing takes less paper: a 5-inch frame fits A3.',
  },
  ...layoutInputs,
  motorDiameter: length('Motors', 'Diameter of the bell', '28 mm on a 2306.', [28, 8, 80, 0.5], 'motor.diameter'),
  motorHeight: length('Motors', 'Seat to propeller', 'Height of the motor.', [20, 6, 80, 0.5], 'motor.height'),
  propellerHeight: length(
    'Motors',
    'Propeller above the arm axis',
    'From the middle of the arm up to the middle of the propeller.',
    [27, 0, 100, 0.5],
    'motor.propellerHeight',
  ),
  armKind,
  outerDiameter: { ...outerDiameter, shownWhen: tube },
  wall: { ...wall, shownWhen: tube, parameters: ['arms'] },
  width: { ...width, shownWhen: strip },
  height: { ...height, shownWhen: strip },
  armLength: { ...armLength, help: 'Along the arm; what is left of it is root.' },
  beyondMotor: length(
    'Arm',
    'Arm beyond the motor axis',
    'Past the motor screws, or a skid past the bell.',
    [12, 0, 60, 1],
    'arm.pastMotor',
  ),
  screwSpacing: { ...screwSpacing, group: 'Root' },
  endDistance: length(
    'Root',
    'Inner screw to the inner end',
    'Below three hole diameters the end shears out.',
    [10, 2, 30, 0.5],
    'arm.root.endDistance',
  ),
  holeDiameter: length(
    'Root',
    'Holes of the root',
    'As drilled: 3 to 3.2 mm for M3.',
    [3.2, 1.5, 8, 0.1],
    'arm.root.holeDiameter',
  ),
  ...bodyInputs,
  tongueWidth: length(
    'Body',
    'Tongues along the arms, width',
    'Of cross and main plate, to half of it beyond the outer screw. 0: none.',
    [16, 0, 60, 1],
    'body.tongueWidth',
  ),
  topLength: length(
    'Body',
    'Length of the top plate',
    'Same taper as the body.',
    [130, 20, 500, 1],
    'body.topPlate.length',
  ),
  crossPlate: length(
    'Body',
    'Cross plate, thickness',
    'Under the arms, usually 2 mm.',
    [2, 0.5, 8, 0.1],
    'body.crossPlate.thickness',
  ),
  mainPlate: length(
    'Body',
    'Main plate, thickness',
    'Over the arms, usually 2 to 3 mm.',
    [3, 0.5, 8, 0.1],
    'body.mainPlate.thickness',
  ),
  topPlate: length(
    'Body',
    'Top plate, thickness',
    'On the standoffs, 1.5 to 2 mm.',
    [2, 0.5, 8, 0.1],
    'body.topPlate.thickness',
  ),
  standoffLength: length('Standoffs', 'Length', 'Main plate to top plate.', [22, 8, 60, 0.5], 'body.standoff.length'),
  standoffDiameter: length(
    'Standoffs',
    'Outside diameter',
    'Mostly 5 mm for M3.',
    [5, 2.5, 10, 0.1],
    'body.standoff.outerDiameter',
  ),
  foreAft: length(
    'Standoffs',
    'Front pair to rear pair',
    'Four in a rectangle about the middle; the frame sheet draws others.',
    [72, 20, 250, 1],
    'body.standoff.rectangle.foreAft',
  ),
  across: length(
    'Standoffs',
    'Across a pair',
    'Middle to middle of the posts.',
    [33, 6, 120, 1],
    'body.standoff.rectangle.across',
  ),
  standoffHole: length('Standoffs', 'Hole for their screws', 'For M3: 3.2 mm fine, 3.4 medium.', [3.2, 1.6, 6, 0.1]),
  batteryLength,
  batteryWidth,
  batteryHeight,
  lie: { ...placeInputs.lie, ...inBattery },
  side: { ...placeInputs.side, ...inBattery },
  forward: { ...placeInputs.forward, ...inBattery },
  gap: { ...placeInputs.gap, ...inBattery },
} as const satisfies Inputs;

export type DrawingValues = Values<typeof inputs>;
