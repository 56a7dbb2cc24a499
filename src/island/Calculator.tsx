import { useEffect, useMemo } from 'preact/hooks';
import { Announcement } from './announce.tsx';
import { asText } from './as-text.ts';
import { ContourMap } from './ContourMap.tsx';
import { DataTable } from './DataTable.tsx';
import type { AnyCalculator, Show } from './declaration.ts';
import { Fields } from './Fields.tsx';
import { FrameLine, isFrames } from './FrameLine.tsx';
import { Glance } from './Glance.tsx';
import { GoOn } from './GoOn.tsx';
import { writeLink } from './link.ts';
import { Plot } from './Plot.tsx';
import { Results } from './Results.tsx';
import { showIn, showPaddedIn } from './show.ts';
import { useCalculator } from './state.ts';
import { Toolbar } from './Toolbar.tsx';
import { useUnits } from './unit-choice.ts';
import { UnitsPanel } from './UnitsPanel.tsx';
import { useFrame } from './use-frame.ts';
import { useLink } from './use-link.ts';
import type { ValueSet } from './values.ts';

export interface CalculatorProps {
  calculator: AnyCalculator;
  /** SI values that the page sets in place of the calculator's defaults. */
  overrides?: ValueSet;
  /** All calculators of the page, given to the first one: it speaks up for links that name none of them. */
  others?: readonly string[];
  /** Called with what is shown, after each change: the worked steps stand outside. */
  onShown?: (shown: { values: ValueSet; result: unknown; show: Show; stale: boolean }) => void;
}

const STALE = 'Greyed: the last values that worked. Correct the marked field to go on.';

/** Shows any calculator: fields, results, figure, plots, and what can be done with them. */
export default function Calculator({ calculator, overrides, others, onShown }: CalculatorProps) {
  const { choice: units, refused } = useUnits();
  const show = useMemo(() => showIn(units), [units]);
  const showPadded = useMemo(() => showPaddedIn(units), [units]);
  const state = useCalculator(calculator, overrides, units, show);
  const notices = useLink(calculator, state, others);
  const frame = useFrame(calculator, state);
  const framed =
    frame &&
    new Set(Object.keys(frame.view.values).filter((key) => isFrames(state.values[key], frame.view.values[key])));
  const { good, stale, values } = state;
  const maps = calculator.maps ?? [];
  useEffect(() => {
    if (good) onShown?.({ ...good, show, stale });
  }, [good, show, stale]);

  const link = () => location.href.replace(/#.*$/, '') + writeLink(calculator, values, state.start, units);
  const text = () => (good ? asText(calculator, good.values, good.result, show, link()) : link());
  const undoByKey = (event: KeyboardEvent) => {
    const typing =
      event.target instanceof HTMLTextAreaElement ||
      (event.target instanceof HTMLInputElement && event.target.type === 'text');
    if (typing || event.key.toLowerCase() !== 'z' || event.shiftKey || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    state.undo();
  };
  const summary = stale
    ? (state.problem ?? Object.values(state.problems)[0] ?? '')
    : good
      ? calculator.says(good.result, good.values, show)
      : '';

  return (
    <div class={stale ? 'calc stale' : 'calc'} onKeyDown={undoByKey}>
      <div class="notices">
        <div role="status">
          {notices.map((notice) => (
            <p key={notice}>{notice}</p>
          ))}
        </div>
        {frame && <FrameLine {...{ calculator, state, show }} {...frame} />}
      </div>
      <Fields id={calculator.id} title={calculator.title} state={state} units={units} show={show} framed={framed} />
      {good && <Glance calculator={calculator} {...good} show={showPadded} />}
      <div class="answer">
        {stale && (
          <p class="stale-note">{state.problem ? `${state.problem} Greyed: the last values that worked.` : STALE}</p>
        )}
        {good && <Results calculator={calculator} {...good} show={show} showPadded={showPadded} text={text} />}
        {good && <GoOn calculator={calculator} {...good} />}
      </div>
      {good && calculator.tables && (
        <div class="tables">
          {calculator.tables.map((table) => (
            <DataTable key={table.id} {...{ calculator, table, good, units }} />
          ))}
        </div>
      )}
      {good && calculator.plots.length + maps.length > 0 && (
        <div class="plots">
          {calculator.plots.map((plot) => (
            <Plot key={plot.id} {...{ calculator, plot, good, units, show }} />
          ))}
          {maps.map((map) => (
            <ContourMap key={map.id} {...{ calculator, map, good, units, show }} onPick={state.setAll} />
          ))}
        </div>
      )}
      <div class="actions">
        <Toolbar canUndo={state.canUndo} onUndo={state.undo} onReset={state.reset} link={link} text={text} />
        <UnitsPanel calculator={calculator} units={units} refused={refused} />
      </div>
      <Announcement text={summary} />
    </div>
  );
}
