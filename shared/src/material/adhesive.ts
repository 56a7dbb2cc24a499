import type { Adhesive, Resin } from './material.ts';
import { GPA, materialValue, MPA, spread } from './value.ts';

/** Two-part structural paste, cured at room temperature. */
export const EPOXY_PASTE: Adhesive = {
  name: 'Two-part epoxy paste',
  density: materialValue(spread(1, 1100, 1200, 1400), 'common practice', 'common-practice'),
  shearModulus: materialValue(spread(GPA, 0.4, 0.8, 1.2), 'common practice', 'common-practice'),
  lapShearStrength: materialValue(
    spread(MPA, 8.6, 15, 22),
    'typical published',
    'petrie-2000-adhesives',
    'Room temperature: 8.6 plain, 17.9 toughened. Hot or badly prepared bonds fall to half and less.',
  ),
  acrossStrength: materialValue(
    spread(MPA, 5, 8, 10),
    'common practice',
    'common-practice',
    'No published figure for carbon tube was found.',
  ),
};

/** What tow and cloth are wetted with. */
export const LAMINATING_EPOXY: Resin = {
  name: 'Laminating epoxy, cured',
  density: materialValue(spread(1, 1100, 1200, 1250), 'typical published', 'willberg-2023-lectures'),
};
