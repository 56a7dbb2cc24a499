/** Sizes that are sold, and how one step goes from one to the next. */
export const MM = 1e-3;
/** Outside diameters and walls that tube is sold in, 8 to 20 mm; common practice, no source. */
export const STOCK_TUBES: readonly number[] = [8, 10, 12, 14, 16, 18, 20].map((d) => d * MM);
export const STOCK_WALLS: readonly number[] = [0.5, 0.75, 1, 1.25, 1.5, 2].map((t) => t * MM);
export const STANDOFF_SIZES: readonly number[] = [4, 4.5, 5, 5.5, 6, 7].map((d) => d * MM);

const ROUNDING = 1e-9;
export const next = (values: readonly number[], value: number) => values.find((one) => one > value + ROUNDING);
export const before = (values: readonly number[], value: number) =>
  values.filter((one) => one < value - ROUNDING).at(-1);
/** As it is said and ordered. */
export const mm = (value: number) => `${Math.round(value * 1e5) / 100} mm`;
/** Decimal sums without a tail of rounding. */
export const plus = (value: number, by: number) => Math.round((value + by) * 1e7) / 1e7;

export type Change = { id: string; says: string; path: string; value: unknown };
