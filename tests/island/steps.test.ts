// Slots are filled in both copies that KaTeX writes: the one that is seen (HTML) and the one that is read out (MathML).
import { describe, expect, test } from 'vitest';
import type { AnyCalculator } from '~/island/declaration.ts';
import { showIn } from '~/island/show.ts';
import { slotTexts } from '~/island/slots.ts';
import { renderSteps } from '~/island/steps-server.ts';
import { startValues } from '~/island/values.ts';
import { example } from './example.tsx';

const lever: AnyCalculator = example;
const values = startValues(lever);
const show = showIn({ system: 'metric' });
const result = lever.compute(values);
const [step] = renderSteps(lever, values, result, show);
const html = step?.numbersHtml ?? '';

function slotsIn(tag: string): Record<string, string> {
  return Object.fromEntries(
    [...html.matchAll(new RegExp(`<${tag} data-slot="([^"]+)">([^<]*)</${tag}>`, 'g'))].map(([, name, text]) => [
      name,
      text,
    ]),
  );
}

describe('worked steps', () => {
  test('every slot stands once in the seen and once in the spoken copy, with its value', () => {
    const texts = slotTexts(lever, values, result, show);
    expect(texts).toEqual({ 'moment.F': '10\u202fN', 'moment.L': '100\u202fmm', 'moment.M': '1\u202fN·m' });
    expect(slotsIn('span')).toEqual(texts);
    expect(slotsIn('mtext')).toEqual(texts);
    expect(html.match(/data-slot/g)).toHaveLength(6);
  });

  test('nothing of the marks or of the TeX source is left', () => {
    expect(html).not.toMatch(/HH\d|slot\{|annotation/);
    expect(step?.formulaHtml).not.toMatch(/annotation/);
  });

  test('a slot without a value stops the build', () => {
    const broken: AnyCalculator = {
      ...lever,
      steps: lever.steps.map((line) => ({ ...line, numbers: '\\slot{nothing}' })),
    };
    expect(() => renderSteps(broken, values, result, show)).toThrow('Step "moment" gives no slot "nothing"');
  });

  test('a slot that stands twice is filled twice', () => {
    const twice: AnyCalculator = {
      ...lever,
      steps: lever.steps.map((line) => ({ ...line, numbers: '\\slot{F}^2 + \\sqrt{\\slot{F}}' })),
    };
    expect(renderSteps(twice, values, result, show)[0]?.numbersHtml.match(/data-slot="moment.F"/g)).toHaveLength(4);
  });
});
