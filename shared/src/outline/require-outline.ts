import { InputError } from '../error.ts';
import { requireBetween, requirePositive } from '../require.ts';
import { armAxis } from './arm-shape.ts';
import type { FrameOutline } from './frame-outline.ts';

/** Nothing on a small frame is farther out than this [m]. */
const FARTHEST = 10;

/** What must be more than nothing; other numbers are places, tilts and chamfers. */
const SIZE = /diameter|height|length|width|thickness|wall|size/i;
const WORD = /^(name|kind)$/;

/** Looks at each number of a part, those within its sizes as sizes. */
function requireNumbers(part: unknown, parameter: string, name: string, key = ''): void {
  const size = SIZE.test(key);
  if (part !== null && typeof part === 'object') {
    for (const [inner, value] of Object.entries(part)) {
      if (value !== undefined && !WORD.test(inner)) requireNumbers(value, parameter, name, size ? key : inner);
    }
    return;
  }
  const subject = { parameter, quantity: `${size ? 'size' : 'place'} of ${name}`, kind: 'length' } as const;
  if (size) requirePositive(part as number, subject);
  requireBetween(part as number, -FARTHEST, FARTHEST, subject);
}

function requireCount(parameter: string, quantity: string, value: number, limit: number): void {
  if (value < limit) throw new InputError({ parameter, quantity, value, rule: 'must be at least', limit });
}

/**
 * Refuses an outline that can't be drawn: a size that is not positive, a place that is no number or far out, a plate of
 * fewer than three corners, an arm without length, a frame without motors.
 * @throws InputError whose parameter is the list in which the fault stands: `motors`, `arms`, `plates`
 */
export function requireOutline(outline: FrameOutline): void {
  requireCount('motors', 'number of motors', outline.motors.length, 1);
  for (const [list, parts] of Object.entries(outline)) {
    if (list === 'name' || parts === undefined) continue;
    for (const part of [parts].flat() as readonly { name?: string }[]) {
      requireNumbers(part, list, part.name ?? 'a standoff');
    }
  }
  for (const arm of outline.arms) {
    const { name, section } = arm;
    const subject = { parameter: 'arms', kind: 'length' } as const;
    requirePositive(armAxis(arm).length, { ...subject, quantity: `length of ${name}` });
    if (section.kind === 'tube')
      requireBetween(section.wall, 0, section.outerDiameter / 2, { ...subject, quantity: `wall of ${name}` });
  }
  for (const { name, shape } of outline.plates) {
    if (shape.kind === 'polygon') requireCount('plates', `number of corners of ${name}`, shape.corners.length, 3);
    else
      requireBetween(shape.chamfer, 0, Math.min(shape.length, shape.width) / 2, {
        parameter: 'plates',
        quantity: `chamfer of ${name}`,
        kind: 'length',
      });
  }
}
