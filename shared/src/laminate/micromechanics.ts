import { requireBetween, requirePositive } from '../require.ts';

export interface FibreAndResin {
  /** Volume fraction of fibre [-]. */
  fibreFraction: number;
  /** Along the fibre [Pa]. */
  fibreModulus: number;
  /** [Pa] */
  fibreShearModulus: number;
  /** [-] */
  fibrePoissonRatio: number;
  /** [Pa] */
  resinModulus: number;
  /** [Pa] */
  resinShearModulus: number;
  /** [-] */
  resinPoissonRatio: number;
}

/**
 * Elastic constants of a unidirectional ply from fibre and resin, rule of mixtures.
 * $$E_1=V_fE_f+V_mE_m,\quad \nu_{12}=V_f\nu_f+V_m\nu_m,\quad \frac1{E_2}=\frac{V_f}{E_f}+\frac{V_m}{E_m},\quad \frac1{G_{12}}=\frac{V_f}{G_f}+\frac{V_m}{G_m}$$
 * @param parts - constants of fibre and resin, share of fibre
 * @returns E1, E2, G12 [Pa] and ν12 [-]
 * @validity good along the fibre; the inverse rule across it is low, because carbon fibre is itself softer across
 * @throws InputError when a number is out of range
 * @source mallick-2007-fiber, § 3.1
 */
export function plyFromFibre(parts: FibreAndResin): {
  modulusAlong: number;
  modulusAcross: number;
  shearModulus: number;
  poissonRatio: number;
} {
  requireBetween(parts.fibreFraction, 0, 0.91, {
    parameter: 'fibreFraction',
    quantity: 'fibre volume fraction',
    kind: 'ratio',
  });
  for (const parameter of ['fibreModulus', 'fibreShearModulus', 'resinModulus', 'resinShearModulus'] as const) {
    requirePositive(parts[parameter], { parameter, quantity: 'modulus of fibre or resin', kind: 'modulus' });
  }
  for (const parameter of ['fibrePoissonRatio', 'resinPoissonRatio'] as const) {
    requireBetween(parts[parameter], 0, 0.5, { parameter, quantity: 'Poisson’s ratio', kind: 'ratio' });
  }
  const along = (fibre: number, resin: number): number =>
    parts.fibreFraction * fibre + (1 - parts.fibreFraction) * resin;
  const across = (fibre: number, resin: number): number => 1 / along(1 / fibre, 1 / resin);
  return {
    modulusAlong: along(parts.fibreModulus, parts.resinModulus),
    modulusAcross: across(parts.fibreModulus, parts.resinModulus),
    shearModulus: across(parts.fibreShearModulus, parts.resinShearModulus),
    poissonRatio: along(parts.fibrePoissonRatio, parts.resinPoissonRatio),
  };
}
