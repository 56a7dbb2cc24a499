import type { Warning } from '../error.ts';
import { requireBetween, requirePositive } from '../require.ts';

export interface ThinTube {
  /** Mean radius r [m]. */
  radius: number;
  /** [m] */
  wall: number;
  /** [Pa] */
  youngsModulus: number;
  /** [-] */
  poissonRatio?: number;
}

export interface TubeBuckling {
  /** Share of the ideal buckling stress that real tubes reach [-]. */
  knockDown: { axial: number; bending: number };
  /** Stress along the tube at which its wall buckles under axial load [Pa]. */
  axialStress: number;
  /** Bending moment at which the wall buckles [N·m]. */
  bucklingMoment: number;
  /** Bending moment at which the section flattens and gives way [N·m]. */
  ovalisationMoment: number;
  warnings: readonly Warning[];
}

/**
 * Local buckling of a thin tube. For carbon a screening ratio only: where it stands far above the strength, the wall
 * breaks before it buckles.
 * $$\sigma = \frac{\gamma E t/r}{\sqrt{3(1-\nu^2)}},\quad \gamma = 1-c\,(1-e^{-\sqrt{r/t}/16}),\quad M_{oval} = \frac{2\sqrt2\,\pi}{9}\frac{E r t^2}{\sqrt{1-\nu^2}}$$
 * @param tube - radius, wall, modulus, Poisson's ratio
 * @returns knock-downs (c = 0.901 axial, 0.731 bending), stress and moments
 * @validity isotropic wall, r/t below 1500; a warning stands above
 * @throws InputError when a number is out of range
 * @source nasa-1968-sp8007, eq. 5, 9 and 10
 */
export function tubeBuckling({ radius, wall, youngsModulus, poissonRatio = 0.3 }: ThinTube): TubeBuckling {
  requirePositive(radius, { parameter: 'radius', quantity: 'mean radius', kind: 'length' });
  requirePositive(wall, { parameter: 'wall', quantity: 'wall thickness', kind: 'length' });
  requireBetween(wall, 0, 2 * radius, { parameter: 'wall', quantity: 'wall thickness', kind: 'length' });
  requirePositive(youngsModulus, { parameter: 'youngsModulus', quantity: 'Young’s modulus', kind: 'modulus' });
  requireBetween(poissonRatio, 0, 0.9, { parameter: 'poissonRatio', quantity: 'Poisson’s ratio', kind: 'ratio' });
  const loss = 1 - Math.exp(-Math.sqrt(radius / wall) / 16);
  const knockDown = { axial: 1 - 0.901 * loss, bending: 1 - 0.731 * loss };
  const ideal = (youngsModulus * wall) / radius / Math.sqrt(3 * (1 - poissonRatio ** 2));
  const brazier = (2 * Math.SQRT2 * Math.PI) / 9;
  return {
    knockDown,
    axialStress: knockDown.axial * ideal,
    bucklingMoment: knockDown.bending * ideal * Math.PI * radius ** 2 * wall,
    ovalisationMoment: (brazier * youngsModulus * radius * wall ** 2) / Math.sqrt(1 - poissonRatio ** 2),
    warnings:
      radius / wall > 1500
        ? [{ code: 'wall-too-thin', message: 'The wall is thinner than the knock-down factors were measured for.' }]
        : [],
  };
}
