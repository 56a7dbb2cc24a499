import type { Warning } from '../error.ts';
import { rigidity, type ArmSegment } from '../beam/index.ts';
import { requirePositive } from '../require.ts';
import { requireTube, type Plane, type RoundTube } from '../section/index.ts';

/** Length over depth below which the ends, not the beam, decide: common practice. */
const LEAST_SLENDERNESS = 5;
/** Share of the cut-off frequency beyond which shear outruns the model. */
const CUT_OFF_SHARE = 0.5;
/** Share of the ring frequency up to which a wall stays round enough. */
const RING_SHARE = 0.5;

/**
 * Reasons to doubt the beam model at a frequency.
 * $$f_c=\frac{1}{2\pi}\sqrt{\frac{\kappa A G}{\rho I}}$$
 * @param input - segments, plane, highest frequency looked at [Hz]
 * @returns warnings: `arm-too-stubby` (length below five depths, common practice), `beyond-beam-model` (above half of
 * the cut-off frequency, where Timoshenko's second family of waves begins)
 * @validity segments already checked
 * @throws InputError through armModes
 * @source timoshenko-1970-elasticity for the shear beam; cowper-1966-shear; the half is our margin
 */
export function beamModelWarnings(input: {
  segments: readonly ArmSegment[];
  plane: Plane;
  highestFrequency: number;
}): Warning[] {
  const { segments, plane, highestFrequency } = input;
  const warnings: Warning[] = [];
  const length = segments.reduce((sum, segment) => sum + segment.length, 0);
  const depth = Math.max(
    ...segments.flatMap(({ layers }) => layers.map(({ section }) => 2 * section[plane].extremeFibre)),
  );
  if (length < LEAST_SLENDERNESS * depth) {
    warnings.push({
      code: 'arm-too-stubby',
      message:
        'The arm is shorter than five times its depth, the limit of common practice: its ends decide, and beam theory is a guess.',
    });
  }
  const cutOff = Math.min(
    ...segments.map((segment) => {
      const rotary = segment.layers.reduce(
        (sum, { density = 0, section }) => sum + density * section[plane].secondMomentOfArea,
        0,
      );
      return Math.sqrt(rigidity(segment, plane).shear / rotary) / (2 * Math.PI);
    }),
  );
  if (highestFrequency > CUT_OFF_SHARE * cutOff) {
    warnings.push({
      code: 'beyond-beam-model',
      message:
        'The highest frequency lies above half of the cut-off of a shear beam, √(κGA/ρI)/2π with κ by Cowper (1966); the half is our margin. Do not rely on it.',
    });
  }
  return warnings;
}

export interface ThinTube extends RoundTube {
  /** Round the tube [Pa]. */
  hoopModulus: number;
  /** [kg/m³] */
  density: number;
}

/**
 * Frequency at which a ring cut from a tube goes oval.
 * $$f_2=\frac{1}{2\pi}\sqrt{\frac{36}{5}\cdot\frac{E_h t^2}{12\,\rho R^4}}$$
 * @param tube - sizes, modulus round it, density
 * @returns frequency [Hz]
 * @validity thin ring, free ends
 * @throws InputError when a size is out of range
 * @source blevins-1979-frequency, table 9-1, in-plane flexure of a ring with n = 2
 */
export function ringFrequency({ hoopModulus, density, ...tube }: ThinTube): number {
  requireTube(tube);
  requirePositive(hoopModulus, { parameter: 'hoopModulus', quantity: 'modulus round the tube', kind: 'modulus' });
  requirePositive(density, { parameter: 'density', quantity: 'density', kind: 'density' });
  const radius = (tube.outerDiameter - tube.wall) / 2;
  return (Math.sqrt((0.6 * hoopModulus) / density) * tube.wall) / (2 * Math.PI * radius ** 2);
}

/**
 * Names a tube whose wall goes oval near the frequency looked at.
 * @param tube - sizes, modulus round it, density
 * @param highestFrequency - looked at [Hz]
 * @returns `wall-too-thin` above half of ringFrequency
 * @validity a screen: the half is our margin
 * @throws InputError when a size is out of range
 * @source blevins-1979-frequency, table 9-1
 */
export function thinTubeWarnings(tube: ThinTube, highestFrequency: number): Warning[] {
  if (highestFrequency <= RING_SHARE * ringFrequency(tube)) return [];
  return [
    {
      code: 'wall-too-thin',
      message:
        'The wall is so thin that the tube goes oval near this frequency: it is no beam any more. The limit is half of the ring’s own frequency by Blevins (1979), table 9-1; the half is our margin.',
    },
  ];
}
