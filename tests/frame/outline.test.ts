import { currentArrangement, frameOutline, LEAST_WEB, thinWebs } from '@frameworthy/shared/frame';
import { expect, test } from 'vitest';
import { SAMPLES } from '~/frame/samples.ts';

test('the main plate has the holes of its boards, 20 mm apart round each board’s middle', () => {
  for (const record of SAMPLES) {
    const boards = currentArrangement(record).items.filter(({ pattern }) => pattern);
    for (const { name, x, y } of boards) {
      const holes = frameOutline(record).holes.filter((hole) => hole.name === `screw of ${name}`);
      const from = holes.map(({ at }) => [at.y - x, at.x + y].map((side) => (side * 1e3).toFixed(3)).join(' ')).sort();
      expect(from).toEqual(['-10.000 -10.000', '-10.000 10.000', '10.000 -10.000', '10.000 10.000']);
      // ISO 273:1979, fine series: 2.2 mm for M2.
      expect(holes.map(({ diameter }) => diameter * 1e3)).toEqual([2.2, 2.2, 2.2, 2.2]);
    }
    expect(boards.length, record.revision).toBe(record.arm.kind === 'tube' ? 1 : 0);
  }
});

test('no sample has holes too near to each other; a board on 30.5 mm has them in Dunnock D', () => {
  for (const record of SAMPLES) expect(thinWebs(frameOutline(record))).toEqual([]);
  const d = SAMPLES.find(({ revision }) => revision === 'D')!;
  const wide = {
    ...d,
    electronics: {
      ...d.electronics,
      arrangements: d.electronics.arrangements.map((one) => ({
        ...one,
        items: one.items.map((item) =>
          item.kind === 'board'
            ? { ...item, pattern: '30.5x30.5', screw: { ...item.screw!, thread: 'M3', hole: 0.0032 } }
            : item,
        ) as typeof one.items,
      })),
    },
  };
  const [web, ...rest] = thinWebs(frameOutline(wide));
  expect(rest).toEqual([]);
  // Both on the diagonal: the screw of the arm where wheelbase, arm and spacing put it, that of the board at 15.25 √2 mm.
  const inner = ((0.129 + 0.03) / 2) * Math.SQRT2 - 0.07 - 0.024;
  expect(web!.web).toBeCloseTo(0.01525 * Math.SQRT2 - inner - 0.0032, 12);
  expect(web!.web).toBeLessThan(LEAST_WEB);
  expect([...web!.between].sort()).toEqual(['inner arm screw', 'screw of Board stack']);
});
