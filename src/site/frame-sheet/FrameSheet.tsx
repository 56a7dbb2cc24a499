import {
  evaluateFrame,
  frameFit,
  frameOutline,
  type ArrangementFit,
  type FrameEvaluation,
  type FrameRecord,
} from '@frameworthy/shared/frame';
import type { FrameOutline } from '@frameworthy/shared/outline';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { PlanView, SideView } from '~/drawings/index.ts';
import { arrivingFrame } from '~/frame/arrival.ts';
import { browserStore, useShelf } from '~/frame/browser-store.ts';
import { explainRecord, type Explained } from '~/frame/explain.ts';
import { FIRST_SAMPLE, titleOf } from '~/frame/samples.ts';
import { currentFrame, withArrival, withCurrent } from '~/frame/shelf.ts';
import { Bar } from '~/frame/ui/Bar.tsx';
import { Fit } from '~/frame/ui/Fit.tsx';
import { FirstToGive } from '~/frame/ui/FirstToGive.tsx';
import { Gains } from '~/frame/ui/Gains.tsx';
import { Mass } from '~/frame/ui/Mass.tsx';
import { UnitsChoice } from '~/frame/ui/UnitsChoice.tsx';
import { showIn } from '~/island/show.ts';
import { useUnits } from '~/island/unit-choice.ts';
import type { Show } from '~/island/declaration.ts';
import { Electronics, Hardware, Head } from './Lists.tsx';
import { Sections } from './Sections.tsx';

interface Worked {
  evaluation: FrameEvaluation;
  outline: FrameOutline;
  fit: readonly ArrangementFit[];
  record: FrameRecord;
}

/** What can be worked out of a record; the last that could, where it can't. */
function useWorked(record: FrameRecord, show: Show): { worked: Worked | undefined; problem: Explained | undefined } {
  const last = useRef<Worked>();
  return useMemo(() => {
    try {
      last.current = {
        record,
        evaluation: evaluateFrame(record),
        outline: frameOutline(record),
        fit: frameFit(record),
      };
      return { worked: last.current, problem: undefined };
    } catch (error) {
      return { worked: last.current, problem: explainRecord(error, show) };
    }
  }, [record, show]);
}

export const addressOf = (page: string, calculator?: string): string =>
  `${page}.html${calculator ? `#${calculator}` : ''}`;

/** The whole frame on one page: edited on one side, drawn, weighed and broken on the other. */
export function FrameSheet() {
  const state = useShelf();
  const { choice: units } = useUnits();
  const show = useMemo(() => showIn(units), [units]);
  const [notices, setNotices] = useState<readonly string[]>([]);
  const kept = state && currentFrame(state.shelf);
  const record = kept?.record ?? FIRST_SAMPLE;
  const { worked, problem } = useWorked(record, show);

  useEffect(() => {
    const arrive = () =>
      void arrivingFrame(location).then((reading) => {
        if (!reading) return;
        if (!reading.ok) return setNotices(['The frame in the link was not taken.', ...reading.problems]);
        browserStore().change((shelf) => withArrival(shelf, reading.record));
        setNotices([`${titleOf(reading.record)} came with the link.`, ...reading.notices]);
      });
    arrive();
    addEventListener('hashchange', arrive);
    return () => removeEventListener('hashchange', arrive);
  }, []);

  const change = (next: FrameRecord, what: string) => browserStore().change((shelf) => withCurrent(shelf, next), what);
  const undoByKey = (event: KeyboardEvent) => {
    const typing = event.target instanceof HTMLTextAreaElement || event.target instanceof HTMLInputElement;
    if (typing || event.key.toLowerCase() !== 'z' || event.shiftKey || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    browserStore().undo();
  };
  const edit = { record, units, onRecord: change, problem };

  return (
    <div class={problem ? 'desk stale' : 'desk'} onKeyDown={undoByKey}>
      <Bar state={state} record={record} notices={notices} />
      <form
        key={kept?.id ?? 'sample'}
        class="record"
        aria-label="The frame, part by part"
        onSubmit={(event) => event.preventDefault()}
      >
        <Head {...edit} />
        <Sections {...edit} />
        <Electronics {...edit} />
        <Hardware {...edit} />
        <UnitsChoice units={units} />
      </form>
      <div class="outcome">
        {problem && (
          <p class="stale-note" role="alert">
            {`${problem.text} Greyed: the last values that worked.`}
          </p>
        )}
        {worked && (
          <>
            <section aria-labelledby="drawn">
              <h2 id="drawn">Drawn to scale</h2>
              <figure class="figure">
                <PlanView outline={worked.outline} show={show} />
              </figure>
              <figure class="figure">
                <SideView outline={worked.outline} show={show} />
              </figure>
            </section>
            <section aria-labelledby="fit">
              <h2 id="fit">What fits</h2>
              <Fit fit={worked.fit} show={show} />
            </section>
            <section aria-labelledby="mass">
              <h2 id="mass">Mass and balance</h2>
              <Mass balance={worked.evaluation.balance} show={show} />
            </section>
            <section aria-labelledby="first">
              <h2 id="first">What breaks first</h2>
              <FirstToGive checks={worked.evaluation.checks} show={show} address={addressOf} />
            </section>
            <section aria-labelledby="gain">
              <h2 id="gain">What a gram buys</h2>
              <Gains
                record={worked.record}
                evaluation={worked.evaluation}
                show={show}
                onTake={(next, says) => change(next, `step ${says}`)}
              />
            </section>
            <p class="estimate-note">
              Estimates for comparing designs, good for orders of magnitude. No promise that a frame survives a hit.
            </p>
          </>
        )}
      </div>
    </div>
  );
}
