import type { QuantityInput } from '~/island/declaration.ts';

const MM = 1e-3;
const DEGREE = Math.PI / 180;

type Range = readonly [value: number, min: number, max: number, step: number];
type Rest = Partial<Omit<QuantityInput, 'quantity' | 'default' | 'min' | 'max' | 'step'>>;

export const quantity =
  (kind: QuantityInput['quantity'], unit: number) =>
  (group: string, label: string, [value, min, max, step]: Range, help: string, rest: Rest = {}): QuantityInput => ({
    quantity: kind,
    group,
    label,
    help,
    default: value * unit,
    min: min * unit,
    max: max * unit,
    step: step * unit,
    ...rest,
  });
export const length = quantity('length', MM);
export const angle = quantity('angle', DEGREE);
