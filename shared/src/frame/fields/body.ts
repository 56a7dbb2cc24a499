import { CLASSES } from './arm.ts';
import { choice, length, moment, ratio, type Field, type PathsOf } from './field.ts';

const STANDOFFS = 'body/standoff-lengths';
const PLATES = 'body/plates-and-standoffs';
const TONGUES = 'body/tongues-and-webs';
const LAYOUT = 'layout/motor-layout';

export const BODY_FIELDS: Readonly<Record<PathsOf<'body'>, Field>> = {
  'body.length': length('Body, length', [30, 400, 1], LAYOUT),
  'body.width': length('Body, width at the waist', [15, 200, 1], LAYOUT),
  'body.end': length('Body, width at the ends', [10, 200, 1], LAYOUT),
  'body.crossPlate.thickness': length('Cross plate, thickness', [0.5, 6, 0.5], PLATES, 'Under the arms.'),
  'body.mainPlate.thickness': length('Main plate, thickness', [0.5, 6, 0.5], PLATES, 'Over the arms.'),
  'body.topPlate.thickness': length('Top plate, thickness', [0.5, 6, 0.5], PLATES),
  'body.topPlate.length': length('Top plate, length', [20, 400, 1], PLATES),
  'body.solidShare': ratio('Plates, share left after cutouts', [0.2, 1, 0.01], PLATES),
  'body.tongueWidth': length('Tongue, width', [4, 60, 0.5], TONGUES, 'Of the plates, at the outer arm screw.'),
  'body.tongueLength': length('Tongue, free length', [1, 60, 0.5], TONGUES),
  'body.standoff.length': length('Standoffs, length', [8, 60, 1], STANDOFFS),
  'body.standoff.outerDiameter': length('Standoffs, outer diameter', [2.5, 10, 0.1], STANDOFFS),
  'body.standoff.bore': length('Standoffs, major diameter of the thread', [1, 6, 0.1], STANDOFFS),
  'body.standoff.material': choice(
    'Standoffs, metal',
    {
      'aluminium-6061': 'aluminium 6061-T6',
      'aluminium-7075': 'aluminium 7075-T6',
      titanium: 'titanium 6Al-4V',
      'aluminium-unnamed': 'aluminium, alloy unknown',
    },
    STANDOFFS,
  ),
  'body.standoff.screw': choice('Standoff screws, thread', { M2: 'M2', 'M2.5': 'M2.5', M3: 'M3' }, 'body/screws'),
  'body.standoff.screwClass': choice('Standoff screws, property class', CLASSES, 'body/screws'),
  'body.standoff.torque': moment('Standoff screws, torque', [0.05, 2, 0.05], 'body/screws'),
  'body.standoff.plateRadius': length('Free plate round a standoff', [3, 40, 0.5], STANDOFFS),
};
