import type { QuantityInput, Values } from '~/island/declaration.ts';
import { plateMaterial } from '../plate-material-inputs.ts';
import { armLength, screwSpacing } from '../root-inputs.ts';

const MM = 1e-3;
type Given = Readonly<Record<string, number | string>>;
const ownPlates = (values: Given) => values['material'] === 'own';
const second = (values: Given) => values['link'] !== 'none';
const cut = (values: Given) => Number(values['cutoutWidth']) > 0;
const length = (
  group: string,
  [value, min, max, step]: readonly [number, number, number, number],
  rest: Pick<QuantityInput, 'label' | 'help'> & Partial<QuantityInput>,
): QuantityInput => ({
  quantity: 'length',
  default: value * MM,
  min: min * MM,
  max: max * MM,
  step: step * MM,
  group,
  ...rest,
});

export const inputs = {
  plane: {
    label: 'The blow goes',
    choices: { vertical: 'up or down', horizontal: 'sideways' },
    default: 'vertical',
    group: 'Blow at the motor',
    help: 'Landings and tumbles bend the plates out of their plane; a clipped gate bends them in it.',
  },
  force: {
    label: 'Force at the motor',
    symbol: 'F',
    quantity: 'force',
    default: 500,
    min: 1,
    max: 2000,
    step: 5,
    group: 'Blow at the motor',
    parameters: ['tipForce'],
    frameField: 'loads.strike.vertical',
    help: 'Full thrust is 13 to 18 N on a 5-inch frame; a 5 m/s hit on something hard some 500 N.',
  },
  armLength: { ...armLength, group: 'Blow at the motor' },
  screwSpacing: { ...screwSpacing, group: 'Blow at the motor' },
  tongueLength: length('Tongue', [12, 4, 80, 1], {
    label: 'Body to the outer screw',
    symbol: 'l',
    frameField: 'body.tongueLength',
    parameters: ['loadAt'],
    help: 'From where the body holds the plate stiffly, its edge or a row of standoffs, out to the outer screw.',
  }),
  tongueWidth: length('Tongue', [16, 8, 80, 0.5], {
    label: 'Width of the tongue',
    symbol: 'w',
    frameField: 'body.tongueWidth',
    parameters: ['width'],
    help: 'Across the arm, between the edges or the slots on both sides.',
  }),
  bottomPlate: length('Tongue', [3, 1, 8, 0.1], {
    label: 'Main plate',
    symbol: 't_b',
    frameField: 'body.mainPlate.thickness',
    parameters: ['thickness'],
    help: 'Thickness of the plate that has the standoffs on it. 2 to 3 mm is usual. Drawn under the arm; over it is alike.',
  }),
  holeDiameter: length('Tongue', [0, 0, 20, 0.1], {
    label: 'Hole in the tongue',
    symbol: 'd',
    help: 'On its middle line: the inner screw or a lightening hole. 0 for none.',
  }),
  holeAt: length('Tongue', [2, 0, 80, 0.5], {
    label: 'That hole from the body',
    symbol: 'x_h',
    shownWhen: (values) => Number(values['holeDiameter']) > 0,
    help: 'From the same edge to the middle of the hole.',
  }),
  material: {
    label: 'Plates',
    choices: { quasi: 'quasi-isotropic carbon', woven: 'woven carbon, 0/90 along the tongue', own: 'own values' },
    default: 'quasi',
    group: 'Tongue',
    parameters: ['youngsModulus', 'shearModulus'],
    frameField: 'body.plateMaterial',
    help: 'Woven plate is stiffer along its fibres and soft in shear; on a diagonal arm its fibres run askew.',
  },
  plateModulus: { ...plateMaterial.plateModulus, group: 'Tongue', shownWhen: ownPlates },
  plateShear: { ...plateMaterial.plateShear, group: 'Tongue', shownWhen: ownPlates },
  plateStrength: { ...plateMaterial.plateStrength, group: 'Tongue', shownWhen: ownPlates },
  link: {
    label: 'Cross plate, on the other side of the arm',
    choices: {
      none: 'none',
      sliding: 'there, free to slide',
      tied: 'held parallel by the arm at its outer screw',
      bonded: 'joined against sliding all along',
    },
    default: 'sliding',
    group: 'Second plate',
    frameField: 'body.tongueLink',
    help: 'A tightly clamped arm holds the plates parallel; once a screw is loose they slide. No frame has them joined.',
  },
  topPlate: length('Second plate', [2, 1, 8, 0.1], {
    label: 'Thickness of it',
    symbol: 't_t',
    frameField: 'body.crossPlate.thickness',
    shownWhen: second,
    help: 'Of the cross plate, usually 2 mm.',
  }),
  gap: length('Second plate', [14, 0, 40, 0.5], {
    label: 'Between the plates',
    symbol: 'g',
    frameField: 'arm.height',
    shownWhen: second,
    help: 'The arm: outside diameter of a tube, thickness of a plate arm.',
  }),
  plateWidth: length('Cutout in the body', [56, 10, 200, 1], {
    label: 'Width of the plate there',
    symbol: 'W',
    help: 'Across the arm’s line, where the cutout is.',
  }),
  cutoutWidth: length('Cutout in the body', [16, 0, 150, 0.5], {
    label: 'Width of the cutout',
    symbol: 'c',
    help: 'In the same direction. 0 where the plate is whole.',
  }),
  cutoutLength: length('Cutout in the body', [20, 1, 150, 0.5], {
    label: 'Length of the cutout',
    symbol: 'L_c',
    shownWhen: cut,
    help: 'Along the arm’s line. Of a round one, half of its diameter.',
  }),
  cutoutOffset: length('Cutout in the body', [0, -60, 60, 0.5], {
    label: 'Off the middle',
    symbol: 'o',
    shownWhen: cut,
    help: 'Middle of the cutout to the left of the middle of the plate, seen outwards; negative is to the right.',
  }),
  cutoutAt: length('Cutout in the body', [28, 0, 200, 1], {
    label: 'Body’s edge to its middle',
    symbol: 'a',
    shownWhen: cut,
    help: 'Inwards from where the tongue begins.',
  }),
  holeBeside: length('Cutout in the body', [0, 0, 6, 0.1], {
    label: 'Screw hole at its web',
    symbol: 'd_s',
    shownWhen: cut,
    help: 'Of a screw hole between which and the cutout the web lies. 0 for none.',
  }),
} as const;

export type TongueValues = Values<typeof inputs>;
