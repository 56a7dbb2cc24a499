import type { Slot } from '~/island/declaration.ts';

/** Makes slots of one quantity, for the numbers of a worked step. */
export const slotOf =
  (quantity: Slot['quantity'], digits?: number) =>
  (value: number): Slot => ({ value, quantity, ...(digits === undefined ? {} : { digits }) });
