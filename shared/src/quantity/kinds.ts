/**
 * Every kind of quantity that is entered or shown, with the units that it may be typed in.
 * `factor` turns a number in that unit into SI. The first unit of each system is the one shown by default.
 *
 * Exact definitions (inch, pound, pound-force, standard gravity) from NIST SP 811 (2008), Appendix B.
 */
export interface Unit {
  /** As shown: `N·m`. */
  symbol: string;
  /** Multiplies a number in this unit to give SI. */
  factor: number;
  /** Other spellings that are understood when typed, lower case. Those that differ in dots, spaces, hyphens or raised digits alone need none: `plainUnit`. */
  aliases?: readonly string[];
  /** Which of the reader's two presets shows this unit first. */
  system: 'metric' | 'inch' | 'both';
}

export const INCH = 0.0254;
export const POUND = 0.45359237;
export const STANDARD_GRAVITY = 9.80665;
export const POUND_FORCE = POUND * STANDARD_GRAVITY;
export const PSI = POUND_FORCE / INCH ** 2;

const unit = (symbol: string, factor: number, system: Unit['system'], ...aliases: string[]): Unit => ({
  symbol,
  factor,
  system,
  aliases,
});

export const QUANTITY_KINDS = {
  length: [
    unit('mm', 1e-3, 'metric', 'millimetre', 'millimeter'),
    unit('in', INCH, 'inch', '"', 'inch', 'inches'),
    unit('m', 1, 'metric'),
    unit('cm', 1e-2, 'metric'),
    unit('µm', 1e-6, 'metric'),
  ],
  area: [unit('mm²', 1e-6, 'metric'), unit('in²', INCH ** 2, 'inch')],
  secondMomentOfArea: [unit('mm⁴', 1e-12, 'metric'), unit('in⁴', INCH ** 4, 'inch')],
  volume: [unit('ml', 1e-6, 'metric', 'cm3', 'cc'), unit('mm³', 1e-9, 'metric'), unit('in³', INCH ** 3, 'inch')],
  mass: [
    unit('g', 1e-3, 'metric', 'gram'),
    unit('oz', POUND / 16, 'inch', 'ounce'),
    unit('kg', 1, 'metric'),
    unit('lb', POUND, 'inch', 'lbs'),
  ],
  force: [
    unit('N', 1, 'metric', 'newton'),
    unit('lbf', POUND_FORCE, 'inch'),
    unit('gf', 1e-3 * STANDARD_GRAVITY, 'metric'),
    unit('kgf', STANDARD_GRAVITY, 'metric'),
    unit('kN', 1e3, 'metric'),
  ],
  moment: [
    unit('N·m', 1, 'metric'),
    unit('in·lbf', INCH * POUND_FORCE, 'inch', 'lbf·in'),
    unit('N·mm', 1e-3, 'metric'),
  ],
  stress: [
    unit('MPa', 1e6, 'metric', 'n/mm2'),
    unit('ksi', PSI * 1e3, 'inch'),
    unit('psi', PSI, 'inch'),
    unit('GPa', 1e9, 'metric'),
  ],
  modulus: [
    unit('GPa', 1e9, 'metric'),
    unit('Msi', PSI * 1e6, 'inch'),
    unit('MPa', 1e6, 'metric'),
    unit('ksi', PSI * 1e3, 'inch'),
  ],
  speed: [
    unit('m/s', 1, 'metric'),
    unit('mph', 1609.344 / 3600, 'inch', 'mi/h'),
    unit('km/h', 1 / 3.6, 'metric', 'kmh', 'kph'),
    unit('ft/s', 0.3048, 'inch'),
  ],
  acceleration: [unit('m/s²', 1, 'metric'), unit('g', STANDARD_GRAVITY, 'both', 'gn')],
  angle: [unit('°', Math.PI / 180, 'both', 'degree', 'degrees'), unit('rad', 1, 'both')],
  angularAcceleration: [unit('rad/s²', 1, 'both'), unit('°/s²', Math.PI / 180, 'both')],
  momentOfInertia: [
    unit('g·m²', 1e-3, 'metric'),
    unit('kg·m²', 1, 'metric'),
    unit('lb·in²', POUND * INCH ** 2, 'inch'),
  ],
  stiffness: [
    unit('N/mm', 1e3, 'metric'),
    unit('lbf/in', POUND_FORCE / INCH, 'inch', 'lb/in'),
    unit('N/m', 1, 'metric'),
  ],
  rotationalStiffness: [unit('N·m/rad', 1, 'metric'), unit('in·lbf/rad', INCH * POUND_FORCE, 'inch')],
  forcePerLength: [unit('N/mm', 1e3, 'metric'), unit('lbf/in', POUND_FORCE / INCH, 'inch', 'lb/in')],
  density: [
    unit('g/cm³', 1e3, 'metric', 'g/cc'),
    unit('kg/m³', 1, 'metric'),
    unit('lb/in³', POUND / INCH ** 3, 'inch'),
  ],
  linearDensity: [unit('g/m', 1e-3, 'metric'), unit('tex', 1e-6, 'metric'), unit('oz/ft', POUND / 16 / 0.3048, 'inch')],
  energy: [unit('J', 1, 'metric', 'n·m'), unit('ft·lbf', 0.3048 * POUND_FORCE, 'inch')],
  power: [
    unit('W', 1, 'both', 'watt', 'watts'),
    unit('kW', 1e3, 'both'),
    unit('hp', 550 * 0.3048 * POUND_FORCE, 'inch'),
  ],
  powerLoading: [unit('g/W', 1e-3, 'metric'), unit('oz/W', POUND / 16, 'inch')],
  discLoading: [unit('N/m²', 1, 'metric', 'pa'), unit('lbf/ft²', POUND_FORCE / 0.3048 ** 2, 'inch', 'psf')],
  airDensity: [unit('kg/m³', 1, 'metric'), unit('lb/ft³', POUND / 0.3048 ** 3, 'inch')],
  altitude: [unit('m', 1, 'metric'), unit('ft', 0.3048, 'inch', 'feet'), unit('km', 1e3, 'metric')],
  frequency: [unit('Hz', 1, 'both')],
  rotationalSpeed: [unit('rev/min', Math.PI / 30, 'both', 'rpm'), unit('rad/s', 1, 'both')],
  workingTime: [unit('min', 60, 'both'), unit('h', 3600, 'both', 'hour', 'hours')],
  cureTime: [
    unit('h', 3600, 'both', 'hour', 'hours'),
    unit('d', 86400, 'both', 'day', 'days'),
    unit('min', 60, 'both'),
  ],
  temperatureDifference: [unit('°C', 1, 'metric', 'k', 'c'), unit('°F', 5 / 9, 'inch', 'f')],
  time: [unit('s', 1, 'both'), unit('ms', 1e-3, 'both'), unit('min', 60, 'both')],
  percent: [unit('%', 1e-2, 'both')],
  ratio: [unit('', 1, 'both')],
  count: [unit('', 1, 'both')],
} as const satisfies Record<string, readonly Unit[]>;

export type QuantityKind = keyof typeof QUANTITY_KINDS;
