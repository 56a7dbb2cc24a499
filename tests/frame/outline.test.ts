import { currentArrangement, frameOutline } from '@frameworthy/shared/frame';
import { expect, test } from 'vitest';
import { SAMPLES } from '~/frame/samples.ts';

test('the main plate has the holes of its boards, 30.5 mm apart round each board’s middle', () => {
  for (const record of SAMPLES) {
    const boards = currentArrangement(record).items.filter(({ kind }) => kind === 'board');
    for (const { name, x, y } of boards) {
      const holes = frameOutline(record).holes.filter((hole) => hole.name === `screw of ${name}`);
      const from = holes.map(({ at }) => [at.y - x, at.x + y].map((side) => (side * 1e3).toFixed(3)).join(' ')).sort();
      expect(from).toEqual(['-15.250 -15.250', '-15.250 15.250', '15.250 -15.250', '15.250 15.250']);
      // ISO 273:1979, fine series: 3.2 mm for M3.
      expect(holes.map(({ diameter }) => diameter * 1e3)).toEqual([3.2, 3.2, 3.2, 3.2]);
    }
    expect(boards.length).toBeGreaterThan(0);
  }
});
