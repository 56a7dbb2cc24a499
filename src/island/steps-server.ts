/** Runs at build only: KaTeX never goes to the browser. */
import katex from 'katex';
import type { AnyCalculator, Show } from './declaration.ts';
import { slotTexts } from './slots.ts';
import type { ValueSet } from './values.ts';

export interface RenderedStep {
  id: string;
  says: string;
  formulaHtml: string;
  numbersHtml: string;
}

const options = { displayMode: true, throwOnError: true, strict: 'error', output: 'htmlAndMathml' } as const;

/** Stands for a slot while KaTeX works: capitals and digits, so that it is as high as the number that takes its place. */
const token = (index: number) => `HH${index}HH`;

const escaped = (text: string) => text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');

/** The TeX source that KaTeX adds would go out of date with the first change of a value. */
const withoutSource = (html: string) => html.replace(/<annotation\b.*?<\/annotation>/gs, '');

function typesetNumbers(stepId: string, tex: string, texts: Readonly<Record<string, string>>): string {
  const names: string[] = [];
  const marked = tex.replace(/\\slot\{([^{}]+)\}/g, (_, name: string) => {
    if (texts[`${stepId}.${name}`] === undefined) throw new Error(`Step "${stepId}" gives no slot "${name}".`);
    return `\\text{${token(names.push(name) - 1)}}`;
  });
  const html = withoutSource(katex.renderToString(marked, options));
  return names.reduce((text, name, index) => {
    const slot = `data-slot="${stepId}.${name}"`;
    const value = escaped(texts[`${stepId}.${name}`] ?? '');
    return text
      .replace(`<mtext>${token(index)}</mtext>`, `<mtext ${slot}>${value}</mtext>`)
      .replace(`>${token(index)}<`, `><span ${slot}>${value}</span><`);
  }, html);
}

/** The worked steps, typeset with these values. */
export function renderSteps(calculator: AnyCalculator, values: ValueSet, result: unknown, show: Show): RenderedStep[] {
  const texts = slotTexts(calculator, values, result, show);
  return calculator.steps.map(({ id, says, formula, numbers }) => ({
    id,
    says,
    formulaHtml: withoutSource(katex.renderToString(formula, options)),
    numbersHtml: typesetNumbers(id, numbers, texts),
  }));
}
