import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { asText } from '~/island/as-text.ts';
import Calculator from '~/island/Calculator.tsx';
import { placeTexts } from '~/island/contour-labels.ts';
import { fieldOf, heights, linesAt, roundLevels } from '~/island/contour-lines.ts';
import type { AnyCalculator } from '~/island/declaration.ts';
import { showIn } from '~/island/show.ts';
import { startValues } from '~/island/values.ts';
import { INCH } from '@frameworthy/shared/quantity';
import { example } from './example.tsx';

const lever: AnyCalculator = example;
const map = lever.maps![0]!;
const field = fieldOf(map, startValues(lever));
const plain = (text: string) => text.replace(/\u202f/g, ' ');
/** Heights of a plain function on the map's own samples. */
const ground = (f: (x: number, y: number) => number) => {
  const side = Math.sqrt(field.samples.length);
  return Array.from({ length: side ** 2 }, (_, k) => f((k % side) / (side - 1), Math.floor(k / side) / (side - 1)));
};

describe('lines on a map', () => {
  test('lie where the values are, and run from border to border', () => {
    const lines = linesAt(
      ground((x, y) => 2 * x + y),
      1.3,
    );
    expect(lines.length).toBe(1);
    for (const [x, y] of lines[0]!) expect(2 * x + y).toBeCloseTo(1.3, 9);
    const ends = [lines[0]!.at(0)!, lines[0]!.at(-1)!];
    for (const end of ends) expect(end.some((part) => part < 1e-9 || part > 1 - 1e-9)).toBe(true);
  });

  test('close round a hill', () => {
    const lines = linesAt(
      ground((x, y) => -Math.hypot(x - 0.5, y - 0.5)),
      -0.3,
    );
    expect(lines.length).toBe(1);
    expect(lines[0]!.at(0)).toEqual(lines[0]!.at(-1));
    for (const [x, y] of lines[0]!) expect(Math.hypot(x - 0.5, y - 0.5)).toBeCloseTo(0.3, 2);
  });

  test('keep off what is impossible, and there are none where no value reaches', () => {
    const holed = ground((x, y) => (y > x ? Number.NaN : x));
    const lines = linesAt(holed, 0.6);
    expect(lines.length).toBe(1);
    for (const [x, y] of lines[0]!) {
      expect(x).toBeCloseTo(0.6, 9);
      expect(y).toBeLessThanOrEqual(x);
    }
    expect(linesAt(holed, 7)).toEqual([]);
  });

  test('stand at round numbers of the reader’s unit', () => {
    expect(roundLevels([0.011, 0.029], 4, 1e-3).map((level) => level * 1e3)).toEqual([15, 20, 25]);
    const inches = roundLevels([INCH * 0.21, INCH * 0.59], 4, INCH).map((level) => level / INCH);
    expect(inches.map((level) => Math.round(level * 1e9) / 1e9)).toEqual([0.3, 0.4, 0.5]);
    // Over several decades even steps would all lie at one end.
    expect(roundLevels([0.9, 150], 7, 1)).toEqual([1, 2, 5, 10, 20, 50, 100]);
    expect(roundLevels([0.9, 150], 4, 1).length).toBeLessThanOrEqual(4);
    expect(roundLevels([3, 3], 4, 1)).toEqual([]);
  });
});

test('what is impossible is grey, to a quarter of a square', () => {
  const area = field.grey.reduce((sum, { side }) => sum + side ** 2, 0);
  // The wall is longer than the arm in the corner above the line y = x: 10 to 50 mm of 240 by 49.
  expect(area).toBeCloseTo((0.04 * 0.04) / 2 / (0.24 * 0.049), 2);
  const moments = heights(field, (point) => (point as { moment: number }).moment);
  expect(moments.filter(Number.isNaN).length).toBe(field.samples.filter((sample) => sample === undefined).length);
});

describe('texts on lines', () => {
  const level = (y: number) => [
    [
      { x: 0, y },
      { x: 400, y },
    ],
  ];
  const paper = { left: 0, right: 400, top: 0, bottom: 300 };
  test('move apart along their lines', () => {
    const placed = placeTexts(
      [
        { key: 'a', text: 'as heavy as the strip', lines: level(100), first: 0.5 },
        { key: 'b', text: '12 g', lines: level(104), first: 0.5 },
      ],
      paper,
      [],
    );
    expect(placed.length).toBe(2);
    expect(Math.abs(placed[0]!.at.x - placed[1]!.at.x)).toBeGreaterThan(60);
  });
  test('are left out where there is no room', () => {
    const short = [
      [
        { x: 0, y: 100 },
        { x: 10, y: 100 },
      ],
    ];
    expect(placeTexts([{ key: 'a', text: '12 g', lines: short, first: 0.5 }], paper, [])).toEqual([]);
    expect(placeTexts([{ key: 'a', text: '12 g', lines: [], first: 0.5 }], paper, [])).toEqual([]);
  });
});

describe('a calculator with a map', () => {
  test('is rendered without scripts: lines, numbers, own values, and all of it in words', () => {
    const html = plain(render(<Calculator calculator={lever} />));
    const figure = html.slice(html.indexOf('<figure class="plot map"'));
    expect(figure).toMatch(
      /aria-label="Moment over arm and wall\. Across: Arm 10 mm to 250 mm\. Upwards: Wall 1 mm to 50 mm\./,
    );
    expect(figure).toMatch(/Lines of equal moment: 0\.2 N·m, 0\.5 N·m, 1 N·m, 2 N·m; heavy, as now: 1 N·m\./);
    expect(figure).toContain('Grey: wall thicker than the arm is long');
    expect(figure).toContain('Yours: Arm 100 mm, Wall 1 mm');
    expect(figure.match(/class="contour match"/g)?.length).toBe(1);
    // Two families, told apart without colour.
    expect(figure).toMatch(/class="contour"[^>]*stroke-dasharray/);
    expect(figure).toMatch(/class="contour" d=/);
    expect(figure).not.toMatch(/NaN|undefined|Infinity/);
  });

  test('says so where the reader’s own values lie off the map', () => {
    const html = render(<Calculator calculator={lever} overrides={{ arm: 0.4 }} />);
    expect(html).toContain('Yours lies off this map');
  });
});

test('an output that does not exist says why, in its place', () => {
  const overrides = { end: 'held' };
  const html = render(<Calculator calculator={lever} overrides={overrides} />);
  expect(html).toMatch(/Counterweight on the same arm<\/dt><dd class="amount">none<\/dd>.*a held tip needs none/);
  const values = startValues(lever, overrides);
  const text = asText(lever, values, lever.compute(values), showIn({ system: 'metric' }), '#');
  expect(text).toContain('Counterweight on the same arm: none (a held tip needs none)');
});
