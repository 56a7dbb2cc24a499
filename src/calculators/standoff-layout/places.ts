import { InputError } from '@frameworthy/shared';
import { patternPositions, requirePlan, type Place } from '@frameworthy/shared/standoff';
import type { LayoutValues } from './inputs.ts';

const pair = (x: number, y: number, named?: Place['named']): Place[] => [
  { x, y, named },
  { x, y: -y, named },
];

const NUMBERS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10] as const;

function typed(values: LayoutValues): Place[] {
  const { count, layout } = values;
  if (!Number.isInteger(count))
    throw new InputError({
      parameter: 'count',
      quantity: 'number of standoffs',
      value: count,
      rule: 'must be a whole number',
      kind: 'count',
    });
  if (layout === 'each')
    return NUMBERS.slice(0, count).map((i) => ({
      x: values[`x${i}`],
      y: values[`y${i}`],
      named: { x: `x${i}`, y: `y${i}` },
    }));
  return ([1, 2, 3, 4, 5] as const).flatMap((i) => {
    const named = { x: `along${i}`, y: `across${i}` };
    if (count >= 2 * i) return pair(values[`along${i}`], values[`across${i}`], named);
    return count === 2 * i - 1 ? [{ x: values[`along${i}`], y: 0, named: { x: named.x, y: named.x } }] : [];
  });
}

function usual(values: LayoutValues): Place[] {
  const { layout, foreAft, across } = values;
  const named = { x: 'foreAft', y: 'across' };
  const [front, aside] = [foreAft / 2, across / 2];
  if (layout === 'three') return [...pair(front, aside, named), { x: -front, y: 0, named }];
  if (layout === 'five') return [...pair(front, aside, named), ...pair(-front, aside, named), { x: 0, y: 0, named }];
  if (layout === 'own' || layout === 'each') return typed(values);
  return patternPositions({ pattern: layout, foreAft, across }).map((place) => ({ ...place, named }));
}

/** Where the standoffs stand. @throws InputError at the field to change, where no body can stand so. */
export function placesOf(values: LayoutValues): readonly Place[] {
  const places = usual(values);
  requirePlan(places, { length: values.plateLength, width: values.plateWidth }, values.outerDiameter);
  return places;
}

/** So many standoffs in pairs between the foremost and the rearmost place, one over on the centre line. */
export function evenPlaces(count: number, like: readonly Place[]): readonly Place[] {
  const xs = like.map(({ x }) => x);
  const [rear, front] = [Math.min(...xs), Math.max(...xs)];
  const aside = Math.max(...like.map(({ y }) => Math.abs(y)));
  const whole = Math.floor(count / 2);
  const at = (i: number) => (whole === 1 ? front : front + ((rear - front) * i) / (whole - 1));
  const pairs = Array.from({ length: whole }, (_, i) => pair(at(i), aside)).flat();
  return count % 2 === 0 ? pairs : [...pairs, { x: whole === 1 ? rear : (front + rear) / 2, y: 0 }];
}

export const extraPair = (x: number, y: number): readonly Place[] => pair(x, y);
