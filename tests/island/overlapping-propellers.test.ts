import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import frameDrawing from '~/calculators/frame-drawing/index.ts';
import motorLayout from '~/calculators/motor-layout/index.ts';
import type { AnyCalculator } from '~/island/declaration.ts';
import { evaluate, explain } from '~/island/evaluate.ts';
import { showIn } from '~/island/show.ts';
import { startValues } from '~/island/values.ts';

const show = showIn({ system: 'metric' });
const plain = (text: string) => text.replace(/\u202f/g, ' ');
const both = [motorLayout, frameDrawing].map((tool): [string, AnyCalculator] => [tool.id, tool]);

test.each(both)('%s computes, draws and warns where propeller circles overlap', (_, tool) => {
  const values = { ...startValues(tool), tipGap: -0.02, armLength: 0.04 };
  const evaluation = evaluate(tool, values);
  expect(evaluation.ok).toBe(true);
  const result: unknown = evaluation.ok && evaluation.result;
  expect(tool.warnings?.(result, values, show).map(({ code }) => code)).toContain('propellers-overlap');
  for (const output of tool.outputs) expect(Number.isFinite(output.value(result, values)), output.key).toBe(true);
  const html = plain(render(h(tool.Figure, { values, result, show })));
  expect(html).toContain('−20 mm');
  expect(html).not.toMatch(/NaN|undefined/);
});

test.each(both)('%s refuses opposite propellers that meet, at the gap and in words', (_, tool) => {
  // Diagonal of a square of 89 mm: 125.9 mm, less than the 129 mm of the propeller.
  const refused = evaluate(tool, { ...startValues(tool), tipGap: -0.04, armLength: 0.04 });
  expect(refused.ok).toBe(false);
  const told = refused.ok ? { text: '' } : explain(tool, refused.error, show);
  expect({ ...told, text: plain(told.text) }).toEqual({
    field: 'tipGap',
    text: 'Tip gap −40 mm lets opposite propellers meet: it must be at least −37.78 mm.',
  });
});

test('a frame whose arms meet in the middle is drawn and warned of', () => {
  const values = { ...startValues(frameDrawing as AnyCalculator), armLength: 0.09 } as Parameters<
    typeof frameDrawing.compute
  >[0];
  const result = frameDrawing.compute(values);
  expect(result.warnings.map(({ code }) => code)).toEqual(['arms-meet']);
  expect(plain(frameDrawing.says(result, values, show))).toContain('The arms overlap by');
});
