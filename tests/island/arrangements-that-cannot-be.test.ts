import { expect, test } from 'vitest';
import tool from '~/calculators/electronics-fit/index.ts';
import { evaluate, explain } from '~/island/evaluate.ts';
import { showIn } from '~/island/show.ts';
import { startValues, type ValueSet } from '~/island/values.ts';

const show = showIn({ system: 'metric' });
const plain = (text: string) => text.replace(/\u202f/g, ' ');
const values = (change: ValueSet) => ({ ...startValues(tool), ...change }) as Parameters<typeof tool.compute>[0];

function refused(change: ValueSet): { field: string | undefined; text: string } {
  const found = evaluate(tool, values(change));
  if (found.ok) throw new Error('it was taken');
  const { field, text } = explain(tool, found.error, show);
  return { field, text: plain(text) };
}

test('a part that can be moved onto the plate collides, with the move that clears it', () => {
  const given = values({ aReceiverAside: 0.03 });
  const result = tool.compute(given);
  const told = tool.warnings?.(result, given, show).map(({ message }) => plain(message)) ?? [];
  // 30 mm + half of 11 mm + 1 mm of air, against half of 45 mm.
  expect(told).toContain('A: the receiver stands past the left edge (move it 14 mm right).');
  expect(plain(tool.says(result, given, show))).toContain('the receiver stands past the left edge');
});

test('a part wider than the plate, or a pair that stands off it, is refused by how much', () => {
  expect(refused({ digitalWidth: 0.05, bodyWidth: 0.045 })).toEqual({
    field: 'bodyWidth',
    text: 'A: width at the waist 45 mm is too little for the transmitter, which needs at least 52 mm.',
  });
  expect(refused({ bFrontAcross: 0.06 })).toEqual({
    field: 'bFrontAcross',
    text: 'B: across the front pair 60 mm is more than the plate has room for: at most 38 mm.',
  });
});

test.each([
  ['bTransmitterAbove', { bTransmitterAbove: 0.04 }],
  ['digitalHeight', { digitalHeight: 0.03 }],
  ['aBoards', { aBoards: 0.03 }],
  ['aReceiverAbove', { aReceiverAbove: 0.05 }],
  ['bCapacitorAbove', { bCapacitorAbove: 0.05 }],
  ['aExitAbove', { aExitAbove: 0.05 }],
] as const)('a part too tall for any standoff is refused at %s', (field, change) => {
  const told = refused(change);
  expect(told.field).toBe(field);
  expect(told.text).toMatch(/is more than the longest standoff sold has; take off at least [\d.]+ mm/);
});

test('a body that is too short says by how much, what has to move farthest first', () => {
  const given = values({ bodyLength: 0.08 });
  const says = plain(tool.says(tool.compute(given), given, show));
  expect(says).toMatch(/moved together it takes a plate of 10\d mm, 2\d mm more than yours/);
  const moves = [...says.matchAll(/move it ([\d.]+) mm/g)].map(([, move]) => Number(move));
  expect(moves[0]).toBeGreaterThanOrEqual(moves[1]!);
});
