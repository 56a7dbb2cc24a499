import type { Metal } from './material.ts';
import { GPA, materialValue, MPA, spread } from './value.ts';

export const ALUMINIUM_7075_T6: Metal = {
  name: 'Aluminium 7075-T6',
  density: materialValue(spread(1, 2800, 2810, 2820), 'typical published', 'aluminum-association-7075'),
  youngsModulus: materialValue(spread(GPA, 71, 72, 72), 'typical published', 'aluminum-association-7075'),
  shearModulus: materialValue(spread(GPA, 26.5, 26.9, 27), 'typical published', 'aluminum-association-7075'),
  yieldStrength: materialValue(
    spread(MPA, 455, 503, 503),
    'typical published',
    'aluminum-association-7075',
    'Design minima of sheet lie near 483.',
  ),
  tensileStrength: materialValue(
    spread(MPA, 525, 572, 572),
    'typical published',
    'aluminum-association-7075',
    'Design minima of sheet lie near 538.',
  ),
  shearStrength: materialValue(spread(MPA, 300, 331, 331), 'typical published', 'aluminum-association-7075'),
};

/** Standoffs of unknown alloy: the low end is what an unnamed one may be. */
export const ALUMINIUM_6061_T6: Metal = {
  name: 'Aluminium 6061-T6',
  density: materialValue(spread(1, 2690, 2700, 2710), 'common practice', 'common-practice'),
  youngsModulus: materialValue(spread(GPA, 68, 69, 70), 'common practice', 'common-practice'),
  shearModulus: materialValue(spread(GPA, 25.5, 26, 26.5), 'common practice', 'common-practice'),
  yieldStrength: materialValue(spread(MPA, 215, 276, 290), 'common practice', 'common-practice'),
  tensileStrength: materialValue(spread(MPA, 260, 310, 325), 'common practice', 'common-practice'),
  shearStrength: materialValue(spread(MPA, 160, 200, 210), 'common practice', 'common-practice'),
};

/** Screws of property class 10.9; other classes stand in the joint topic. */
export const STEEL: Metal = {
  name: 'Alloy steel, class 10.9',
  density: materialValue(spread(1, 7800, 7850, 7870), 'common practice', 'common-practice'),
  youngsModulus: materialValue(spread(GPA, 200, 205, 210), 'common practice', 'common-practice'),
  shearModulus: materialValue(spread(GPA, 77, 79, 81), 'common practice', 'common-practice'),
  yieldStrength: materialValue(spread(MPA, 940, 940, 940), 'standard minimum', 'iso-2013-898'),
  tensileStrength: materialValue(spread(MPA, 1040, 1040, 1040), 'standard minimum', 'iso-2013-898'),
  shearStrength: materialValue(
    spread(MPA, 520, 620, 650),
    'estimate',
    'en-2005-1993-1-8',
    'Half of the tensile strength is what the code counts on for class 10.9; 0.6 of it is usual for steel.',
  ),
};

export const TITANIUM_6AL_4V: Metal = {
  name: 'Titanium Ti-6Al-4V, annealed',
  density: materialValue(spread(1, 4420, 4430, 4430), 'typical published', 'titanium-data-sheet'),
  youngsModulus: materialValue(spread(GPA, 110, 114, 114), 'typical published', 'titanium-data-sheet'),
  shearModulus: materialValue(spread(GPA, 42, 44, 44), 'typical published', 'titanium-data-sheet'),
  yieldStrength: materialValue(spread(MPA, 827, 830, 880), 'typical published', 'titanium-data-sheet'),
  tensileStrength: materialValue(spread(MPA, 896, 900, 950), 'typical published', 'titanium-data-sheet'),
  shearStrength: materialValue(
    spread(MPA, 500, 550, 570),
    'typical published',
    'titanium-data-sheet',
    'The low end is our estimate.',
  ),
};
