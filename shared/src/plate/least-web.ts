import { LEAST_DISTANCES } from '../joint/index.ts';
import { requireNotNegative } from '../require.ts';
import { requireThickness } from './rigidity.ts';

/** Webs narrower than twice the plate's thickness, or than 4 mm, break in handling and in the cutter: common practice. */
const IN_THICKNESSES = 2;
const IN_ANY_PLATE = 0.004;

export interface LeastWeb {
  /** What a web needs whatever it carries [m]. */
  width: number;
  /** Which of the rules asks for it. */
  rule: 'any plate' | 'thickness' | 'screw hole';
}

/**
 * Least width of a web beside a cutout, whatever the loads: rules of the trade for the cutter and for handling, and the
 * side distance of a laminate where a screw hole is near.
 * $$b \ge \max(4\,\text{mm},\ 2t,\ (2.5-\tfrac12)d)$$
 * @param thickness - of the plate [m]
 * @param holeDiameter - of a screw hole between which and the cutout the web lies; 0 for none [m]
 * @returns width and the rule behind it
 * @validity carbon plate of some millimetres; says nothing of strength
 * @throws InputError when a number is out of range
 * @source common-practice, webs of frame plates: 4 mm and twice the thickness
 * @source willberg-2023-lectures, after figures 22.2-22.4: side distance 2.5 d from the centre of the hole
 */
export function leastWeb(thickness: number, holeDiameter = 0): LeastWeb {
  requireThickness(thickness);
  requireNotNegative(holeDiameter, { parameter: 'holeDiameter', quantity: 'hole diameter', kind: 'length' });
  const rules: LeastWeb[] = [
    { rule: 'any plate', width: IN_ANY_PLATE },
    { rule: 'thickness', width: IN_THICKNESSES * thickness },
    { rule: 'screw hole', width: (LEAST_DISTANCES.side - 0.5) * holeDiameter },
  ];
  return rules.reduce((most, rule) => (rule.width > most.width ? rule : most));
}
