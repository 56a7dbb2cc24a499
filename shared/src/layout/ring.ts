import { requireBetween } from '../require.ts';

/**
 * Gap between neighbours of motors spread evenly round a circle, over the propeller diameter.
 * $$\frac{g}{D} = \frac{D_c}{D}\sin\frac{\pi}{N} - 1$$
 * @param ring - diameter of the motor circle over that of the propeller [-], number of motors N [-]
 * @returns gap over diameter [-]; negative where discs overlap
 * @validity equal propellers
 * @throws InputError when a number is out of range
 * @derivation chord of a circle
 */
export function ringGap({ circleRatio, motors }: { circleRatio: number; motors: number }): number {
  requireBetween(circleRatio, 0, 100, {
    parameter: 'circleRatio',
    quantity: 'motor circle over propeller diameter',
    kind: 'ratio',
  });
  requireBetween(motors, 2, 64, { parameter: 'motors', quantity: 'number of motors', kind: 'count' });
  return circleRatio * Math.sin(Math.PI / motors) - 1;
}

/**
 * Gap over diameter from a spacing that is quoted in propeller radii, as papers do.
 * $$\frac{g}{D} = \frac{1}{2}\,\frac{s}{R} - 1$$
 * @param spacingPerRadius - spacing of the axes over propeller radius [-]
 * @returns gap over diameter [-]
 * @validity equal propellers
 * @throws InputError when the spacing is out of range
 * @derivation s = D + g and D = 2R
 */
export function gapFromSpacing(spacingPerRadius: number): number {
  requireBetween(spacingPerRadius, 0, 100, {
    parameter: 'spacingPerRadius',
    quantity: 'spacing over radius',
    kind: 'ratio',
  });
  return spacingPerRadius / 2 - 1;
}
