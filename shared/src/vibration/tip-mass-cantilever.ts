import { InputError } from '../error.ts';
import { requireBetween, requireNotNegative, requirePositive } from '../require.ts';
import { bisect, nthRoot } from '../bisect.ts';

export interface TipRatios {
  /** 1 for the lowest. */
  mode: number;
  /** μ: tip mass over mass of the beam [-]. */
  massRatio?: number;
  /** ι: moment of inertia at the tip over beam mass times length squared [-]. */
  inertiaRatio?: number;
}

const HIGHEST_MODE = 8;
const LARGEST_RATIO = 1e9;

/**
 * Eigenvalue β of a uniform slender cantilever with a mass and a moment of inertia at its end.
 * $$1+\cos\beta\cosh\beta+\mu\beta(\cos\beta\sinh\beta-\sin\beta\cosh\beta)-\iota\beta^3(\cos\beta\sinh\beta+\sin\beta\cosh\beta)+\mu\iota\beta^4(1-\cos\beta\cosh\beta)=0$$
 * @param ratios - mode, mass and inertia at the tip against the beam's
 * @returns β [-]
 * @validity no shear, no rotary inertia of the beam itself
 * @throws InputError when the mode or a ratio is out of range
 * @source gurgoze-1996-eigenfrequencies; rao-2011-vibrations, § 8.5
 */
export function cantileverEigenvalue({ mode, massRatio = 0, inertiaRatio = 0 }: TipRatios): number {
  const which = { parameter: 'mode', quantity: 'number of the mode', kind: 'count' } as const;
  requireBetween(mode, 1, HIGHEST_MODE, which);
  if (!Number.isInteger(mode)) throw new InputError({ ...which, value: mode, rule: 'must be a whole number' });
  requireBetween(massRatio, 0, LARGEST_RATIO, {
    parameter: 'massRatio',
    quantity: 'tip mass over beam mass',
    kind: 'ratio',
  });
  requireBetween(inertiaRatio, 0, LARGEST_RATIO, {
    parameter: 'inertiaRatio',
    quantity: 'inertia at the tip over that of the beam',
    kind: 'ratio',
  });
  // Divided by cosh β, which outgrows everything, and by the ratios, which may be huge.
  const scale = (1 + massRatio) * (1 + inertiaRatio);
  const equation = (b: number): number => {
    const [c, s, t, r] = [Math.cos(b), Math.sin(b), Math.tanh(b), 1 / Math.cosh(b)];
    const tip =
      massRatio * b * (c * t - s) - inertiaRatio * b ** 3 * (c * t + s) + massRatio * inertiaRatio * b ** 4 * (r - c);
    return (r + c + tip) / scale;
  };
  // The lowest root falls as the fourth root of the ratios grows: the walk starts below it.
  return nthRoot(equation, mode, { from: 1e-3, step: 0.02 });
}

export interface UniformCantilever extends TipRatios {
  /** EI [N·m²]. */
  flexuralRigidity: number;
  /** [kg/m] */
  massPerLength: number;
  /** [m] */
  length: number;
}

/**
 * Natural frequency of a uniform slender cantilever with something at its end.
 * $$f = \frac{\beta^2}{2\pi}\sqrt{\frac{EI}{m'L^4}}$$
 * @param beam - rigidity, mass per length, length, and the ratios of cantileverEigenvalue
 * @returns frequency [Hz]
 * @validity as cantileverEigenvalue
 * @throws InputError when a number is out of range
 * @source blevins-1979-frequency, table 8-1, 8-8
 */
export function uniformCantileverFrequency({
  flexuralRigidity,
  massPerLength,
  length,
  ...ratios
}: UniformCantilever): number {
  requirePositive(flexuralRigidity, { parameter: 'flexuralRigidity', quantity: 'flexural rigidity' });
  requirePositive(massPerLength, { parameter: 'massPerLength', quantity: 'mass per length', kind: 'linearDensity' });
  requirePositive(length, { parameter: 'length', quantity: 'length', kind: 'length' });
  return (
    (cantileverEigenvalue(ratios) ** 2 * Math.sqrt(flexuralRigidity / massPerLength)) / (2 * Math.PI * length ** 2)
  );
}

export interface UniformShaft {
  /** GJ [N·m²]. */
  torsionalRigidity: number;
  /** Polar moment of inertia per length, ρ times polar second moment of area [kg·m]. */
  inertiaPerLength: number;
  /** [m] */
  length: number;
  /** About the shaft, at its end [kg·m²]. */
  tipInertia: number;
}

/**
 * First natural frequency of a uniform shaft in torsion, held at one end, with an inertia at the other.
 * $$\beta\tan\beta=\frac{\rho I_p L}{I_t},\quad f=\frac{\beta}{2\pi L}\sqrt{\frac{GJ}{\rho I_p}}$$
 * @param shaft - rigidity, inertia per length, length, inertia at the end
 * @returns frequency [Hz]
 * @validity free warping
 * @throws InputError when a number is out of range
 * @source rao-2011-vibrations, § 8.4, torsional system with a disc
 */
export function uniformShaftFrequency({
  torsionalRigidity,
  inertiaPerLength,
  length,
  tipInertia,
}: UniformShaft): number {
  requirePositive(torsionalRigidity, { parameter: 'torsionalRigidity', quantity: 'torsional rigidity' });
  requirePositive(inertiaPerLength, { parameter: 'inertiaPerLength', quantity: 'moment of inertia per length' });
  requirePositive(length, { parameter: 'length', quantity: 'length', kind: 'length' });
  requireNotNegative(tipInertia, {
    parameter: 'tipInertia',
    quantity: 'moment of inertia at the tip',
    kind: 'momentOfInertia',
  });
  const ratio = tipInertia / (inertiaPerLength * length);
  requireBetween(ratio, 0, LARGEST_RATIO, {
    parameter: 'tipInertia',
    quantity: 'inertia at the tip over that of the shaft',
    kind: 'ratio',
  });
  const beta = bisectShaft(ratio);
  return (beta * Math.sqrt(torsionalRigidity / inertiaPerLength)) / (2 * Math.PI * length);
}

/** First root of cos β = ratio · β sin β, which lies between 0 and π/2. */
const bisectShaft = (ratio: number): number =>
  ratio === 0 ? Math.PI / 2 : bisect((b) => Math.cos(b) - ratio * b * Math.sin(b), 0, Math.PI / 2);
