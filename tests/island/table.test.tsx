import { render } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { asText } from '~/island/as-text.ts';
import Calculator from '~/island/Calculator.tsx';
import { DataTable } from '~/island/DataTable.tsx';
import type { AnyCalculator } from '~/island/declaration.ts';
import { showIn } from '~/island/show.ts';
import { startValues } from '~/island/values.ts';
import { example } from './example.tsx';

const base: AnyCalculator = example;
const lever: AnyCalculator = {
  ...base,
  tables: [
    {
      id: 'arms',
      title: 'Arms sold',
      caption: 'Twice the arm, twice the moment.',
      columns: [{ label: 'Arm', quantity: 'length' }, { label: 'Moment', quantity: 'moment' }, { label: 'Pivot' }],
      rows: (values, _, compute) =>
        [0.05, 0.1, 0.2].map((arm) => ({
          own: arm === values['arm'],
          cells: [arm, (compute({ ...values, arm }) as { moment: number }).moment, arm > 0.1 ? 'strained' : 'easy'],
        })),
    },
  ],
};
const plain = (html: string) => html.replace(/\u202f/g, ' ');

test('a table has its caption, a head for each column and row, and the reader’s own row named in words', () => {
  const html = plain(render(<Calculator calculator={lever} />));
  expect(html).toContain('<h3 id="lever-arms">Arms sold</h3>');
  expect(html).toMatch(/role="region" aria-labelledby="lever-arms"/);
  expect(html).toMatch(/tabindex="0"/i);
  expect(html).toContain('<th scope="col">Moment, N·m</th>');
  expect(html).toContain('<th scope="row">50.0</th><td>0.500</td><td class="words">easy</td>');
  expect(html).toContain('<th scope="row">100, yours</th>');
  expect(html).toContain('Twice the arm, twice the moment.');
});

test('it is written in the units that the reader chose', () => {
  const values = startValues(lever);
  const html = render(
    <DataTable
      calculator={lever}
      table={lever.tables![0]!}
      good={{ values, result: lever.compute(values) }}
      units={{ system: 'inch' }}
    />,
  );
  expect(html).toContain('<th scope="col">Arm, in</th>');
  expect(html).toContain('<th scope="row">1.97</th>');
  expect(html).toContain('<td>4.43</td>');
});

test('it goes along when a calculation is copied as text', () => {
  const values = startValues(lever);
  const text = plain(asText(lever, values, lever.compute(values), showIn({ system: 'metric' }), 'link'));
  expect(text).toContain('Arms sold');
  expect(text).toContain('  100 mm; 1 N·m; easy (yours)');
});
