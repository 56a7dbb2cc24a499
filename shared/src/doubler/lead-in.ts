import { requireBetween } from '../require.ts';

export interface LeadIn {
  /** Rate of load transfer of the bond [1/m]. */
  lambda: number;
  /** Length over which the end of the doubler is thinned to nothing; 0 for a square end [m]. */
  taper: number;
}

function requireLeadIn({ lambda, taper }: LeadIn): void {
  requireBetween(lambda, 1e-9, 1e14, { parameter: 'lambda', quantity: 'rate of load transfer' });
  requireBetween(taper, 0, 100, { parameter: 'taper', quantity: 'taper length', kind: 'length' });
}

/**
 * What a tapered end leaves of the transfer peak of a square one.
 * $$f = \frac{1-e^{-\lambda a}}{\lambda a}$$
 * @param given - rate of load transfer [1/m] and taper length `a` [m]
 * @returns share of the peak, 1 for a square end
 * @validity taper straight; the bond's rate of transfer taken as that of the full wall
 * @throws InputError for values that are not physical
 * @derivation A square end hands over $N\lambda e^{-\lambda x}$. A taper is many small square ends spread evenly over
 * a; the transfer at x is $\frac Na\int_0^{x}\lambda e^{-\lambda(x-\xi)}d\xi = \frac Na(1-e^{-\lambda x})$, highest at x = a.
 */
export function taperFactor({ lambda, taper }: LeadIn): number {
  requireLeadIn({ lambda, taper });
  const reach = lambda * taper;
  return reach < 1e-12 ? 1 : -Math.expm1(-reach) / reach;
}

/**
 * Part of its final share that a doubler carries at a distance inside its end.
 * $$s(x) = 1-e^{-\lambda x}$$
 * @param given - rate of load transfer [1/m], taper [m], and `distance` inside the end [m]
 * @returns 0 at the end and outside it, towards 1 far inside
 * @validity shear lag only: no credit for a sleeve that presses on the bore
 * @throws InputError for values that are not physical
 * @derivation One end of a long bond, `loadTransfer` with the far end infinitely away; for a taper the same integral
 * as in `taperFactor`, summed up from the end to x.
 */
export function shareReached({ lambda, taper, distance }: LeadIn & { distance: number }): number {
  requireLeadIn({ lambda, taper });
  requireBetween(distance, -1e3, 1e3, { parameter: 'distance', quantity: 'distance inside the end', kind: 'length' });
  if (distance <= 0) return 0;
  const reach = lambda * taper;
  const along = lambda * distance;
  if (reach < 1e-9) return -Math.expm1(-along);
  if (along < reach) return Math.max((along + Math.expm1(-along)) / reach, 0);
  return 1 - (Math.exp(reach - along) - Math.exp(-along)) / reach;
}

/**
 * Distance inside its end at which a doubler carries 95 % of its share.
 * $$x_{95} = 3/\lambda$$
 * @param given - rate of load transfer [1/m] and taper [m]
 * @returns lead-in length [m]
 * @validity as `shareReached`; a taper makes it longer
 * @throws InputError for values that are not physical
 * @derivation $1-e^{-3}=0.9502$. With a taper, $e^{-\lambda x}(e^{\lambda a}-1)/(\lambda a) = e^{-3}$, so the logarithm of
 * the quotient is added; a taper so long that this falls inside it counts whole.
 */
export function leadInLength({ lambda, taper }: LeadIn): number {
  requireLeadIn({ lambda, taper });
  const reach = lambda * taper;
  if (reach < 1e-9) return 3 / lambda;
  return Math.max((3 + reach + Math.log(taperFactor({ lambda, taper }))) / lambda, taper);
}
