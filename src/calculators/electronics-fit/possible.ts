import { InputError } from '@frameworthy/shared';
import type { PlacedItem } from '@frameworthy/shared/fit';
import { CATALOGUE_LENGTHS } from '@frameworthy/shared/standoff';
import type { Filled } from './compute.ts';
import { valuesOf, type FitValues } from './inputs.ts';

/** Across a part, wires left out. */
function acrossOf({ parts }: PlacedItem): number {
  const boxes = parts.filter(({ role }) => role !== 'wires').map(({ box }) => box);
  return Math.max(...boxes.map(({ y1 }) => y1)) - Math.min(...boxes.map(({ y0 }) => y0));
}

/** A pair that stands off the plate, or a part wider than it: no move clears those. */
function requireWidth({ letter, collisions, items }: Filled, values: FitValues): void {
  const { bodyWidth, outerDiameter, edgeAir } = values;
  const key = letter === 'A' ? 'a' : 'b';
  for (const { mover, against } of collisions) {
    if (against !== 'left edge' && against !== 'right edge') continue;
    const part = items.find(({ item }) => item.name === mover);
    const station = mover.split(' ')[0] as 'front' | 'middle' | 'rear';
    if (!part)
      throw new InputError({
        parameter: `${key}${station.charAt(0).toUpperCase()}${station.slice(1)}Across`,
        quantity: `${letter}: across the ${station} pair`,
        value: valuesOf(values, key)[`${station}Across`],
        rule: 'is more than the plate has room for: at most',
        limit: bodyWidth - outerDiameter - 2 * edgeAir,
        kind: 'length',
      });
    const needed = acrossOf(part) + 2 * edgeAir;
    if (needed > bodyWidth + 1e-9)
      throw new InputError({
        parameter: 'bodyWidth',
        quantity: `${letter}: width at the waist`,
        value: bodyWidth,
        rule: `is too little for the ${mover}, which needs at least`,
        limit: needed,
        kind: 'length',
      });
  }
}

/** The field that makes a part reach so high: its own height, or what it stands on. */
function heightField(letter: 'A' | 'B', name: string, values: FitValues): string {
  const key = letter === 'A' ? 'a' : 'b';
  const own = valuesOf(values, key);
  const size = own.transmitter === 'analogue' ? 'analogueHeight' : 'digitalHeight';
  const onStack = own.place === 'on';
  /** What each part stands on, with its field, and its own height, with that. */
  const told: Readonly<Record<string, readonly [number, string, number, string]>> = {
    camera: [values.cameraAbove, 'cameraAbove', values.cameraLength + values.lensReach, `${key}Tilt`],
    capacitor: [own.capacitorAbove, `${key}CapacitorAbove`, values.capacitorDiameter, 'capacitorDiameter'],
    receiver: [own.receiverAbove, `${key}ReceiverAbove`, values.receiverHeight, 'receiverHeight'],
    'antenna exit': [own.exitAbove, `${key}ExitAbove`, values.exitHeight, 'exitHeight'],
    transmitter: onStack
      ? [own.boards, `${key}Boards`, values[size], size]
      : [own.transmitterAbove, `${key}TransmitterAbove`, values[size], size],
  };
  const [under, field, height, other] = told[name] ?? [values.mounts, 'mounts', own.boards, `${key}Boards`];
  return under > height ? field : other;
}

/** Refuses what no length of body and no move of a part makes possible, and says by how much. */
export function requirePossible(filled: Filled, values: FitValues): void {
  requireWidth(filled, values);
  const { letter, shortestStandoff: standoff } = filled;
  const { sold, needed } = standoff.byStack;
  if (sold !== undefined) return;
  const { name } = standoff.tallest;
  throw new InputError({
    parameter: heightField(letter, name, values),
    quantity: `${letter}: height needed over the ${name}`,
    value: needed,
    rule: 'is more than the longest standoff sold has; take off at least',
    limit: needed - CATALOGUE_LENGTHS.at(-1)!,
    kind: 'length',
  });
}
