import { requireLength } from '../require-physical.ts';

/** Overlap in thicknesses of the adherend. */
const TIMES_THICKNESS = { 'double lap': 30, 'single lap': 80 } as const;

/**
 * Overlap by rule of thumb, for a bond that outlasts the parts it joins.
 * $L = 30\,t$ (double lap), $L = 80\,t$ (single lap)
 * @param given - `thickness` of the adherend [m]; `joint`
 * @returns overlap [m]
 * @validity thin carbon adherends loaded to their strength; far more than a lightly loaded sleeve needs
 * @throws InputError when the thickness is not a physical length
 * @source mil-2002-hdbk17, vol. 3 ch. 12, rules D-11 and D-13
 */
export function overlapByRule({
  thickness,
  joint,
}: {
  thickness: number;
  joint: keyof typeof TIMES_THICKNESS;
}): number {
  requireLength(thickness, { parameter: 'thickness', quantity: 'adherend thickness' });
  return TIMES_THICKNESS[joint] * thickness;
}

/**
 * Length of a scarf by rule of thumb.
 * $$L = 50\,t$$
 * @param thickness - of the parts [m]
 * @returns length of the slope along the part [m]
 * @validity as `overlapByRule`
 * @throws InputError when the thickness is not a physical length
 * @source mil-2002-hdbk17, vol. 3 ch. 12, rule D-13
 */
export function scarfLengthByRule(thickness: number): number {
  requireLength(thickness, { parameter: 'thickness', quantity: 'part thickness' });
  return 50 * thickness;
}
