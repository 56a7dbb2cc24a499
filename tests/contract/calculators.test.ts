import { InputError } from '@frameworthy/shared';
import { readdirSync, readFileSync, existsSync } from 'node:fs';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { sources } from '../../content/sources/index.ts';
import { calculators } from '../../src/calculators/index.ts';
import { fieldOf, heights } from '../../src/island/contour-lines.ts';
import type { AnyCalculator, Input, QuantityInput } from '../../src/island/declaration.ts';
import { showIn } from '../../src/island/show.ts';
import { renderSteps } from '../../src/island/steps-server.ts';
import { startValues, type ValueSet } from '../../src/island/values.ts';

const show = showIn({ system: 'metric' });
const all = Object.entries(calculators);
const articles = readdirSync('content/articles', { recursive: true })
  .map(String)
  .filter((file) => file.endsWith('.mdx'))
  .map((file) => readFileSync(`content/articles/${file}`, 'utf8'))
  .join('\n');

const options = (input: Input): (number | string)[] =>
  'choices' in input ? Object.keys(input.choices) : [input.min, input.max];

/** Range corners: every one where they are few, else a spread of them that has each pair of extremes. */
function corners(calculator: AnyCalculator): ValueSet[] {
  const inputs = Object.entries(calculator.inputs as Record<string, Input>);
  const total = inputs.reduce((product, [, input]) => product * options(input).length, 1);
  const wanted = Math.min(total, 500);
  return Array.from({ length: wanted }, (_, i) => {
    // A multiplier prime to any count of corners spreads the sample over all of them.
    let rest = total <= 500 ? i : Math.floor((i * 2654435761) % total);
    return Object.fromEntries(
      inputs.map(([key, input]) => {
        const choices = options(input);
        const value = choices[rest % choices.length] as number | string;
        rest = Math.floor(rest / choices.length);
        return [key, value];
      }),
    );
  });
}

/** One input at a time at each of its extremes, the others as by default. */
const edges = (calculator: AnyCalculator): ValueSet[] =>
  Object.entries(calculator.inputs as Record<string, Input>).flatMap(([key, input]) =>
    options(input).map((value) => ({ ...startValues(calculator), [key]: value })),
  );

describe.each(all)('%s', (id, calculator) => {
  const inputs = Object.entries(calculator.inputs as Record<string, Input>);

  test('stands in the folder of its name and asks a question', () => {
    expect(existsSync(`src/calculators/${id}/index.ts`)).toBe(true);
    expect(calculator.question).toMatch(/\?$/);
    expect(calculator.title.length).toBeGreaterThan(3);
  });

  test('every input has help, and a default within its range', () => {
    for (const [key, input] of inputs) {
      expect(input.help.length, key).toBeGreaterThan(15);
      if ('choices' in input) expect(Object.keys(input.choices), key).toContain(input.default);
      else {
        const { default: value, min, max, step } = input as QuantityInput;
        expect(min < max && min <= value && value <= max && step > 0 && step <= max - min, key).toBe(true);
      }
    }
  });

  test('names sources, assumptions and formulas that exist, and an article uses it', () => {
    expect(calculator.sources.filter((source) => !(source in sources))).toEqual([]);
    expect(calculator.sources.length).toBeGreaterThan(0);
    expect(calculator.assumptions.length).toBeGreaterThan(0);
    expect(calculator.formulas.filter((file) => !existsSync(`shared/src/${file}`))).toEqual([]);
    expect(calculator.formulas.length).toBeGreaterThan(0);
    expect(articles).toContain(`<Calculator id="${id}"`);
  });

  test('every output says what it means; keys are unique', () => {
    const keys = calculator.outputs.map((output) => output.key);
    expect(new Set([...keys, ...Object.keys(calculator.inputs)]).size).toBe(keys.length + inputs.length);
    for (const output of calculator.outputs) expect(output.meaning, output.key).toMatch(/\w{3}.*\.$/s);
  });

  // Hundreds of evaluations of a beam model on a busy machine: the limit only ends a hang.
  test(
    'at every range corner: finite outputs, drawing and steps, or an error with a field to go to',
    { timeout: 120_000 },
    () => {
      let computed = 0;
      for (const values of [startValues(calculator), ...edges(calculator), ...corners(calculator)]) {
        let result: unknown;
        try {
          result = calculator.compute(values);
        } catch (error) {
          expect(error, JSON.stringify(values)).toBeInstanceOf(InputError);
          const { parameter } = error as InputError;
          const known = inputs.some(([key, input]) => key === parameter || input.parameters?.includes(parameter));
          expect(
            known,
            `no field for "${parameter}": ${(error as InputError).message} at ${JSON.stringify(values)}`,
          ).toBe(true);
          continue;
        }
        computed++;
        for (const output of calculator.outputs) {
          const impossible = output.impossible?.(result, values);
          if (impossible !== undefined) {
            expect(impossible, output.key).toMatch(/\w{3}/);
            continue;
          }
          expect(Number.isFinite(output.value(result, values)), `${output.key} at ${JSON.stringify(values)}`).toBe(
            true,
          );
          output.verdict?.(result, values);
        }
        expect(calculator.says(result, values, show)).not.toMatch(/NaN|Infinity|undefined|—/);
        calculator.warnings?.(result, values, show);
        for (const step of calculator.steps) {
          for (const [name, slot] of Object.entries(step.slots(values, result))) {
            expect(Number.isFinite(slot.value), `${step.id}.${name} at ${JSON.stringify(values)}`).toBe(true);
          }
        }
        for (const table of computed <= 40 ? (calculator.tables ?? []) : []) {
          for (const { cells } of table.rows(values, result, calculator.compute)) {
            expect(cells.length, table.id).toBe(table.columns.length);
            for (const [i, cell] of cells.entries()) {
              const { label, quantity } = table.columns[i]!;
              const fits = typeof cell === 'string' ? !/NaN|undefined/.test(cell) : quantity && Number.isFinite(cell);
              expect(fits, `${table.id}, ${label}: ${cell} at ${JSON.stringify(values)}`).toBe(true);
            }
          }
        }
        if (computed <= 40) {
          const drawing = renderToString(h(calculator.Figure, { values, result, show }));
          expect(drawing, JSON.stringify(values)).toContain('<svg');
          expect(drawing, JSON.stringify(values)).not.toMatch(/NaN|Infinity|undefined/);
          for (const map of calculator.maps ?? []) {
            const field = fieldOf(map, values);
            expect(
              field.samples.some((sample) => sample !== undefined),
              `${map.id} is empty at ${JSON.stringify(values)}`,
            ).toBe(true);
            for (const family of map.families) {
              const numbers = heights(field, family.of).filter((_, i) => field.samples[i] !== undefined);
              expect(
                numbers.filter((value) => !Number.isFinite(value)),
                `${map.id}, ${family.label}`,
              ).toEqual([]);
              if (family.match) expect(Number.isFinite(family.match.at(result, values)), map.id).toBe(true);
            }
          }
          for (const plot of calculator.plots) {
            const data = plot.data(values, result, calculator.compute);
            for (const series of data.series) expect(series.y.length, plot.id).toBe(data.x.length);
            expect(
              data.series.some((series) => series.y.some(Number.isFinite)),
              `${plot.id} is empty at ${JSON.stringify(values)}`,
            ).toBe(true);
          }
        }
      }
      expect(computed).toBeGreaterThan(inputs.length);
    },
  );

  test('the worked steps fill every slot', () => {
    const values = startValues(calculator);
    const steps = renderSteps(calculator, values, calculator.compute(values), show);
    expect(steps.length).toBeGreaterThan(0);
    for (const step of steps) {
      expect(step.numbersHtml, step.id).not.toMatch(/HH\d+HH|\\slot|NaN/);
      expect(step.numbersHtml.match(/<mtext data-slot/g)?.length, step.id).toBe(
        step.numbersHtml.match(/<span data-slot/g)?.length,
      );
    }
  });
});

test('there are calculators', () => {
  expect(all.length).toBeGreaterThan(4);
});
