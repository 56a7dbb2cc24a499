import { requireBetween } from '../require.ts';

export interface Air {
  /** [K] */
  temperature: number;
  /** [Pa] */
  pressure: number;
  /** [kg/m³] */
  density: number;
}

/** Sea level and lapse of the standard atmosphere; radius of the earth as the standard has it. SI. */
export const STANDARD_AIR = {
  temperature: 288.15,
  pressure: 101_325,
  lapse: 0.0065,
  gasConstant: 287.05287,
  exponent: 5.255_879,
  earthRadius: 6_356_766,
} as const;

/**
 * Air of the standard atmosphere up to the tropopause.
 * $$H = \frac{R_E Z}{R_E+Z},\quad T = T_0 - LH,\quad p = p_0\Bigl(\frac{T}{T_0}\Bigr)^{5.2559},\quad \rho = \frac{p}{R T}$$
 * @param altitude - geometric height above sea level Z [m]
 * @returns temperature [K], pressure [Pa] and density [kg/m³]
 * @validity dry air of a standard day, -500 m to 11 km; a hot day thins the air further
 * @throws InputError when the altitude is outside that range
 * @source us-1976-atmosphere, defining equations of the lowest layer
 */
export function standardAtmosphere(altitude: number): Air {
  requireBetween(altitude, -500, 11_000, { parameter: 'altitude', quantity: 'altitude', kind: 'altitude' });
  const { earthRadius, lapse, gasConstant, exponent } = STANDARD_AIR;
  const geopotential = (earthRadius * altitude) / (earthRadius + altitude);
  const temperature = STANDARD_AIR.temperature - lapse * geopotential;
  const pressure = STANDARD_AIR.pressure * (temperature / STANDARD_AIR.temperature) ** exponent;
  return { temperature, pressure, density: pressure / (gasConstant * temperature) };
}
