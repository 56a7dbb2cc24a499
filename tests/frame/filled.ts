import { frameValue, type FrameRecord } from '@frameworthy/shared/frame';
import type { AnyCalculator, Input } from '~/island/declaration.ts';
import { isQuantity, startValues } from '~/island/values.ts';

const fits = (input: Input, value: number | string): boolean =>
  isQuantity(input)
    ? typeof value === 'number' && value >= input.min - 1e-12 && value <= input.max + 1e-12
    : Object.hasOwn(input.choices, value);

/** A calculator's values as a page has them once the frame has filled it: see `viewOf` in `src/island/use-frame.ts`. */
export function filledFrom(calculator: AnyCalculator, record: FrameRecord): Record<string, number | string> {
  const filled = Object.entries(calculator.inputs as Record<string, Input>).flatMap(([key, input]) => {
    const value = input.frameField === undefined ? undefined : frameValue(record, input.frameField);
    return value !== undefined && fits(input, value) ? [[key, value] as const] : [];
  });
  return { ...startValues(calculator), ...Object.fromEntries(filled) };
}
