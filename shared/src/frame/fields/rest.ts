import {
  altitude,
  density,
  length,
  modulus,
  ratio,
  share,
  speed,
  spread,
  stiffness,
  strength,
  type Field,
  type PathsOf,
} from './field.ts';

const LAMINATES = 'materials/laminates';
const MOUNT = 'arms/motor-mounts';
const BONDS = 'arms/doublers';
const HITS = 'arms/what-reaches-an-arm';
const FALL = 'arms/falling-flat';
const NOSE = 'body/standoff-lengths';
const MASS = 'balance/battery-placement';

export const MATERIAL_FIELDS: Readonly<Record<PathsOf<'materials'>, Field>> = {
  'materials.tube.density': density('Tube, density', [1000, 2500, 10], LAMINATES),
  'materials.tube.youngsModulus': modulus('Tube, modulus along', [5, 300, 1], LAMINATES),
  'materials.tube.shearModulus': modulus('Tube, shear modulus', [0.5, 60, 0.5], LAMINATES),
  'materials.tube.bendingStrength': strength('Tube, bending strength', [50, 2500, 10], LAMINATES),
  'materials.tube.shearStrength': strength('Tube, shear strength', [5, 400, 5], LAMINATES),
  'materials.tube.bearingStrength': strength('Tube, bearing strength', [50, 1500, 10], LAMINATES),
  'materials.tube.hoopBendingStrength': strength('Tube, bending strength round the wall', [10, 1000, 5], LAMINATES),
  'materials.plate.density': density('Plate, density', [1000, 2500, 10], LAMINATES),
  'materials.plate.youngsModulus': modulus('Plate, modulus', [5, 200, 1], LAMINATES),
  'materials.plate.shearModulus': modulus('Plate, shear modulus', [0.5, 60, 0.5], LAMINATES),
  'materials.plate.bendingStrength': strength('Plate, bending strength', [50, 1500, 10], LAMINATES),
  'materials.plate.shearStrength': strength('Plate, shear strength', [5, 400, 5], LAMINATES),
  'materials.plate.bearingStrength': strength('Plate, bearing strength', [50, 1500, 10], LAMINATES),
  'materials.adhesive.density': density('Adhesive, density', [800, 2500, 10], BONDS),
  'materials.adhesive.shearModulus': modulus('Adhesive, shear modulus', [0.05, 5, 0.05], BONDS),
  'materials.adhesive.lapShearStrength': strength('Adhesive, shear strength', [1, 60, 0.5], BONDS),
  'materials.adhesive.tensionStrength': strength('Adhesive, strength across the bond', [1, 60, 0.5], MOUNT),
  'materials.tow.handLay': spread(share('Fibre strength that hands reach', [0.05, 1, 0.01], MOUNT)),
};

export const CASE_FIELDS: Readonly<Record<PathsOf<'cases' | 'costs'>, Field>> = {
  'cases.strike.speed': speed('Blow at a motor, speed', [0.5, 40, 0.5], HITS),
  'cases.strike.contactStiffness': stiffness('Blow at a motor, stiffness of what it meets', [1, 5000, 5], HITS),
  'cases.strike.height': length('Blow at a motor, above the arm axis', [-20, 40, 1], HITS),
  'cases.nose.speed': speed('Nose-first hit, speed', [0.5, 40, 0.5], NOSE),
  'cases.nose.contactStiffness': stiffness('Nose-first hit, stiffness of what it meets', [1, 5000, 5], NOSE),
  'cases.nose.height': length('Nose-first hit, above the top plate', [-30, 40, 1], NOSE),
  'cases.nose.aside': length('Nose-first hit, to one side', [0, 60, 1], NOSE),
  'cases.drop.height': altitude('Flat drop, height', [0.05, 20, 0.1], FALL),
  'cases.drop.contactStiffness': stiffness('Flat drop, stiffness of the ground', [1, 5000, 5], FALL),
  'costs.tubePerMetre': ratio(
    'Price of a metre of tube',
    [0, 10000, 0.5],
    MASS,
    'In your own currency. Sleeves cost by mass.',
  ),
  'costs.platePerSquareMetre': ratio(
    'Price of a square metre of 2 mm plate',
    [0, 100000, 1],
    MASS,
    'Other thicknesses in proportion.',
  ),
  'costs.standoff': ratio('Price of one standoff', [0, 1000, 0.1], MASS),
  'costs.adhesivePerKilogram': ratio('Price of a kilogram of adhesive', [0, 10000, 1], MASS),
};
