import type { CarbonTube } from './material.ts';
import { GPA, materialValue, MPA, spread } from './value.ts';

const HOOP_NOTE = 'No published crush figure of a small carbon tube was found; pinch a cut-off of your own tube.';

/** Tube rolled from woven and unidirectional prepreg: some fibre round the tube. */
export const ROLL_WRAPPED_TUBE: CarbonTube = {
  name: 'Roll-wrapped carbon tube',
  density: materialValue(spread(1, 1500, 1550, 1600), 'common practice', 'common-practice'),
  youngsModulus: materialValue(
    spread(GPA, 60, 90, 120),
    'estimate',
    'common-practice',
    'Depends on the share of fibre along the tube.',
  ),
  shearModulus: materialValue(spread(GPA, 5, 10, 20), 'estimate', 'common-practice', 'Rises with ±45° plies.'),
  bendingStrength: materialValue(
    spread(MPA, 400, 600, 900),
    'estimate',
    'woven-plate-data-sheet',
    'Compression side; sheet values are 570 woven, 1200 unidirectional.',
  ),
  shearStrength: materialValue(
    spread(MPA, 50, 80, 110),
    'estimate',
    'woven-plate-data-sheet',
    'Sheet values are 90 woven, 70 unidirectional.',
  ),
  bearingStrength: materialValue(
    spread(MPA, 250, 400, 600),
    'estimate',
    'willberg-2023-lectures',
    'A clamped laminate reaches 600 in the lectures; a thin loose wall does not.',
  ),
  hoopBendingStrength: materialValue(
    spread(MPA, 80, 200, 400),
    'estimate',
    'woven-plate-data-sheet',
    `A third of the fibre round the tube of a woven sheet’s 570. ${HOOP_NOTE}`,
  ),
  hoopModulus: materialValue(
    spread(GPA, 10, 25, 45),
    'estimate',
    'common-practice',
    'Depends on the share of fibre round the tube.',
  ),
};

/** Pultruded tube: nearly all fibre along it, so stiff in bending and weak round the wall. */
export const PULTRUDED_TUBE: CarbonTube = {
  name: 'Pultruded carbon tube',
  density: materialValue(spread(1, 1450, 1500, 1600), 'data sheet', 'pultruded-tube-data-sheet'),
  youngsModulus: materialValue(
    spread(GPA, 115, 127, 134),
    'data sheet',
    'pultruded-tube-data-sheet',
    'Flexural 127, tensile 134.',
  ),
  shearModulus: materialValue(
    spread(GPA, 3, 4.5, 6),
    'estimate',
    'woven-plate-data-sheet',
    'Sheet value of a unidirectional ply is 5.',
  ),
  bendingStrength: materialValue(
    spread(MPA, 800, 1200, 1370),
    'data sheet',
    'pultruded-tube-data-sheet',
    'Flexural 1370 stated by the maker.',
  ),
  shearStrength: materialValue(spread(MPA, 30, 41.3, 50), 'data sheet', 'pultruded-tube-data-sheet'),
  bearingStrength: materialValue(
    spread(MPA, 100, 200, 300),
    'estimate',
    'common-practice',
    'Splits along the fibre before it crushes.',
  ),
  hoopBendingStrength: materialValue(
    spread(MPA, 25, 40, 70),
    'estimate',
    'woven-plate-data-sheet',
    `Transverse strength of a unidirectional ply is 50. ${HOOP_NOTE}`,
  ),
  hoopModulus: materialValue(
    spread(GPA, 7, 9, 10),
    'estimate',
    'woven-plate-data-sheet',
    'Transverse modulus of a unidirectional ply is 10.',
  ),
};
