import { requireBelow, requireBetween, requireNotNegative, requirePositive } from '../require.ts';

export interface Loop {
  /** Of the pin or rounded edge [m]. */
  innerRadius: number;
  /** [m] */
  outerRadius: number;
}

function requireLoop({ innerRadius, outerRadius }: Loop): void {
  requirePositive(innerRadius, { parameter: 'edgeRadius', quantity: 'inner radius of the loop', kind: 'length' });
  requireBetween(innerRadius, 1e-6, 10, {
    parameter: 'edgeRadius',
    quantity: 'inner radius of the loop',
    kind: 'length',
  });
  requireBetween(outerRadius, innerRadius, 100, {
    parameter: 'outerRadius',
    quantity: 'outer radius of the loop',
    kind: 'length',
  });
}

/**
 * A strap of fibres laid round a pin: pressure on the pin and mean stress in a leg.
 * $$p = \frac{F}{2 r_i b},\quad \sigma = \frac{F}{2\,b\,(r_a-r_i)}$$
 * @param strap - pull on the pin [N], inner and outer radius, width along the pin [m]
 * @returns pressure and leg stress [Pa]
 * @validity mean values; for the rise at the inside see loopStressFactor
 * @throws InputError when a size is out of range or the strap has no thickness
 * @source willberg-2023-lectures, exercise 1 on load introduction
 */
export function strapStress(strap: Loop & { force: number; width: number }): { pressure: number; leg: number } {
  requireLoop(strap);
  const { force, innerRadius, outerRadius, width } = strap;
  requireNotNegative(force, { parameter: 'force', quantity: 'pull on the strap', kind: 'force' });
  requireBetween(width, 1e-6, 10, { parameter: 'width', quantity: 'width of the strap', kind: 'length' });
  requireBelow(innerRadius, outerRadius * (1 - 1e-9), 'must be smaller than the outer radius', {
    parameter: 'edgeRadius',
    quantity: 'inner radius of the loop',
    kind: 'length',
  });
  return { pressure: force / (2 * innerRadius * width), leg: force / (2 * width * (outerRadius - innerRadius)) };
}

/**
 * How much more the innermost fibres of a thick loop carry than its mean.
 * $$\alpha = n\,\frac{1+c^{2n}}{1-c^{2n}}\Bigl(\frac{r_a}{r_i}-1\Bigr),\quad n=\sqrt{E_\parallel/E_\perp},\ c=\frac{r_i}{r_a}$$
 * @param loop - inner and outer radius [m], stiffness along over stiffness through the thickness [-]
 * @returns highest over mean stress [-]; 1 for a thin loop
 * @validity loop wound of one stiffness, even pressure of the pin; a chart in the lectures reads up to 15 % higher
 * @throws InputError when a radius or the ratio is out of range
 * @source lekhnitskii-1968-plates, ring of a cylindrically orthotropic material under inner pressure
 */
export function loopStressFactor(loop: Loop & { stiffnessRatio: number }): number {
  requireLoop(loop);
  requireBetween(loop.stiffnessRatio, 1e-3, 1e4, {
    parameter: 'stiffnessRatio',
    quantity: 'stiffness along over through',
    kind: 'ratio',
  });
  const n = Math.sqrt(loop.stiffnessRatio);
  const thickness = loop.outerRadius / loop.innerRadius - 1;
  if (thickness < 1e-9) return 1;
  // (1 + c²ⁿ)/(1 − c²ⁿ) is the hyperbolic cotangent of n ln(ra/ri).
  return (n * thickness) / Math.tanh(n * Math.log1p(thickness));
}

/**
 * Share of a fibre's strength that is left when it lies bent round an edge.
 * $$k = 1-\frac{E_f\,d_f}{2\,r\,\sigma_f}$$
 * @param fibre - modulus, strength [Pa], filament diameter [m]; `edgeRadius` of the edge [m]
 * @returns share left [-]; 0 where bending alone breaks it
 * @validity filaments lie side by side and bend one by one; sharp nicks are another matter
 * @throws InputError when a number is out of range
 * @derivation bending a filament of diameter d to radius r strains its outside by d/(2r); modulus times that is stress
 * which the pull can no longer use
 */
export function bentFibreShare(fibre: {
  youngsModulus: number;
  tensileStrength: number;
  filamentDiameter: number;
  edgeRadius: number;
}): number {
  requireBetween(fibre.edgeRadius, 1e-6, 10, { parameter: 'edgeRadius', quantity: 'edge radius', kind: 'length' });
  requireBetween(fibre.filamentDiameter, 1e-7, 1e-3, {
    parameter: 'filamentDiameter',
    quantity: 'filament diameter',
    kind: 'length',
  });
  requireBetween(fibre.youngsModulus, 1e6, 1e13, {
    parameter: 'youngsModulus',
    quantity: 'fibre modulus',
    kind: 'modulus',
  });
  requireBetween(fibre.tensileStrength, 1e5, 1e12, {
    parameter: 'tensileStrength',
    quantity: 'fibre strength',
    kind: 'stress',
  });
  const bending = (fibre.youngsModulus * fibre.filamentDiameter) / (2 * fibre.edgeRadius);
  return Math.max(0, 1 - bending / fibre.tensileStrength);
}

/**
 * Pull that friction holds against, over the pull on the tail.
 * $$\frac{F}{F_0} = e^{\mu\theta}$$
 * @param grip - friction coefficient [-], angle of contact [rad]
 * @returns ratio of the two pulls [-]
 * @validity flexible tow about to slip on a round part; wet resin is slippery, cured resin is a bond and no friction
 * @throws InputError when friction or angle is out of range
 * @source capstan-encyclopaedia, Euler-Eytelwein formula
 */
export function capstanRatio({ friction, angle }: { friction: number; angle: number }): number {
  requireBetween(friction, 0, 2, { parameter: 'friction', quantity: 'friction coefficient', kind: 'ratio' });
  requireBetween(angle, 0, 150, { parameter: 'angle', quantity: 'angle of contact', kind: 'angle' });
  return Math.exp(friction * angle);
}
