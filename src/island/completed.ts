import type { AnyCalculator, ContourMap, Input, Output, Plot, Table } from './declaration.ts';
import type { ValueSet } from './values.ts';

/**
 * A calculator as its page's script has it, completed with the words that stand on the page since the server rendered it:
 * labels, help, places in the frame, meanings, captions. The script comes without those (see `src/open-from-disk/standing-words.ts`).
 */
export function completed(calculator: AnyCalculator): AnyCalculator {
  const element = (id: string) => document.getElementById(`${calculator.id}-${id}`);
  /** The label itself; unit, symbol and mark of the frame follow it. */
  const label = (key: string) => document.querySelector(`[for="${calculator.id}-${key}"]`)?.firstChild;
  const at = (id: string, declared: string) => declared || (element(id)?.textContent ?? '');
  const captioned = <T extends { id: string; caption: string }>(figure: T): T => ({
    ...figure,
    caption: at(`${figure.id}-caption`, figure.caption),
  });
  const inputs = Object.entries(calculator.inputs as Record<string, Input>).map(([key, input]) => [
    key,
    {
      ...input,
      label: input.label || (label(key)?.textContent ?? ''),
      help: at(`${key}-about`, input.help),
      frameField: input.frameField || element(key)?.dataset['frame'],
    },
  ]);
  return {
    ...calculator,
    inputs: Object.fromEntries(inputs) as Record<string, Input>,
    outputs: (calculator.outputs as readonly Output<ValueSet, unknown>[]).map((output) => ({
      ...output,
      meaning: at(`${output.key}-meaning`, output.meaning),
    })),
    plots: (calculator.plots as readonly Plot<ValueSet, unknown>[]).map(captioned),
    tables: (calculator.tables as readonly Table<ValueSet, unknown>[] | undefined)?.map(captioned),
    maps: (calculator.maps as readonly ContourMap<ValueSet, unknown>[] | undefined)?.map(captioned),
    figureCaption: at('figure-caption', calculator.figureCaption),
  };
}
