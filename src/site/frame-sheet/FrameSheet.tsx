import {
  armEndGap,
  evaluateFrame,
  frameFit,
  frameOutline,
  governingHit,
  propellerRoom,
  standoffForces,
  thinWebs,
  type FrameEvaluation,
  type FrameRecord,
  type StandoffForces,
} from '@frameworthy/shared/frame';
import type { FrameOutline } from '@frameworthy/shared/outline';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { PlanView, SideView } from '~/drawings/index.ts';
import { arrivingFrame } from '~/frame/arrival.ts';
import { browserStore, useShelf } from '~/frame/browser-store.ts';
import { carryFrame } from '~/frame/carry.ts';
import { explainRecord, type Explained } from '~/frame/explain.ts';
import { fileName, fileText } from '~/frame/read.ts';
import { FIRST_SAMPLE, isSame, titleOf } from '~/frame/samples.ts';
import { currentFrame, withArrival, withCurrent } from '~/frame/shelf.ts';
import { Bar } from '~/frame/ui/Bar.tsx';
import { Fit, type FrameRoom } from '~/frame/ui/Fit.tsx';
import { FirstToGive, levelOf } from '~/frame/ui/FirstToGive.tsx';
import { Gains } from '~/frame/ui/Gains.tsx';
import { Mass } from '~/frame/ui/Mass.tsx';
import { StandoffTable } from '~/frame/ui/StandoffTable.tsx';
import { UnitsChoice } from '~/frame/ui/UnitsChoice.tsx';
import { giveUpUnread, useUnread } from '~/frame/ui/unread.ts';
import { SaveDrawing } from '~/island/SaveDrawing.tsx';
import { Announcement } from '~/island/announce.tsx';
import { CASE_WORDS, sentence } from '~/frame/words.ts';
import { showIn } from '~/island/show.ts';
import { useUnits } from '~/island/unit-choice.ts';
import type { Show } from '~/island/declaration.ts';
import { Electronics, Hardware, Head } from './Lists.tsx';
import { Sections } from './Sections.tsx';

interface Worked {
  evaluation: FrameEvaluation;
  outline: FrameOutline;
  room: FrameRoom;
  forces: readonly StandoffForces[];
  record: FrameRecord;
}

/** What can be worked out of a record; the last that could, where it can't. */
function useWorked(record: FrameRecord, show: Show): { worked: Worked | undefined; problem: Explained | undefined } {
  const last = useRef<Worked>();
  return useMemo(() => {
    try {
      const evaluation = evaluateFrame(record);
      const outline = frameOutline(record);
      last.current = {
        record,
        evaluation,
        forces: standoffForces(record, evaluation.balance),
        outline,
        room: {
          fit: frameFit(record),
          propellers: propellerRoom(record, outline),
          armEnds: armEndGap(record),
          tips: record.layout.tipGap,
          webs: thinWebs(outline),
        },
      };
      return { worked: last.current, problem: undefined };
    } catch (error) {
      return { worked: last.current, problem: explainRecord(error, show) };
    }
  }, [record, show]);
}

const UNREAD = 'The marked field is not understood. Greyed: the last values that worked.';

/** Once a frame is kept, opening the page anew must not bring back what the address carried. */
function forgetArrival(): void {
  try {
    history.replaceState(null, '', location.pathname);
  } catch {
    // Some browsers allow this for no page on disk; then the frame comes once more, beside the changed one.
  }
}

/** In a field of numbers undo is the sheet's; in one of words it is the browser's. */
function undoByKey(event: KeyboardEvent): void {
  if (event.key.toLowerCase() !== 'z' || event.shiftKey || event.altKey || !(event.ctrlKey || event.metaKey)) return;
  if (event.target instanceof Element && event.target.closest('.row.text, textarea')) return;
  event.preventDefault();
  if (!giveUpUnread()) browserStore().undo();
}

/** The answer in one line, for those who hear it. */
function summaryOf(evaluation: FrameEvaluation, show: Show): string {
  const first = governingHit(evaluation);
  return `All-up mass ${show(evaluation.balance.allUp, 'mass')}. ${sentence(first, show)}`;
}

/** The answer at the foot of the screen while the fields are on it. */
function Glance({ evaluation, show }: { evaluation: FrameEvaluation; show: Show }) {
  const first = governingHit(evaluation);
  return (
    <p class="glance">
      <a href="#mass">
        All-up <b>{show(evaluation.balance.allUp, 'mass')}</b>
      </a>
      <a href="#first" class={levelOf(first)}>
        {`${CASE_WORDS[first.case].title} `}
        <b>{show(first.speed.typical, 'speed', 2)}</b>
      </a>
    </p>
  );
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
  const unread = useUnread();

  useEffect(() => {
    const store = browserStore();
    const arrive = () =>
      void arrivingFrame(location).then((reading) => {
        if (!reading) return;
        if (!reading.ok) return setNotices(['The frame in the link was not taken.', ...reading.problems]);
        const before = store.state().shelf;
        // The sample, on its way through the guides, comes back to where it is shown anyway.
        if (!currentFrame(before) && isSame(reading.record, FIRST_SAMPLE)) return forgetArrival();
        store.change((shelf) => withArrival(shelf, reading.record));
        const came = store.state().shelf !== before;
        setNotices([...(came ? [`${titleOf(reading.record)} came with the link.`] : []), ...reading.notices]);
        if (store.state().problems.length === 0) forgetArrival();
      });
    arrive();
    carryFrame(
      () => currentFrame(store.state().shelf)?.record ?? FIRST_SAMPLE,
      // The sample is kept nowhere.
      () => location.protocol === 'file:' || store.state().problems.length > 0 || !currentFrame(store.state().shelf),
    );
    addEventListener('hashchange', arrive);
    addEventListener('keydown', undoByKey);
    return () => {
      removeEventListener('hashchange', arrive);
      removeEventListener('keydown', undoByKey);
    };
  }, []);
  /** The sample becomes the reader's own with the first change; the fields go on as they are. */
  const adopting = useRef(false);
  useEffect(() => {
    // Another frame takes the place of the one that half-typed text was meant for.
    if (!adopting.current) giveUpUnread();
    adopting.current = false;
  }, [kept?.id]);

  const change = (next: FrameRecord, what: string) => {
    adopting.current = !kept;
    browserStore().change((shelf) => withCurrent(shelf, next), what);
  };
  const edit = { record, units, onRecord: change, problem };
  const stale = problem ? `${problem.text} Greyed: the last values that worked.` : unread ? UNREAD : undefined;

  return (
    <div class={stale ? 'desk stale' : 'desk'}>
      <Bar state={state} record={record} notices={notices} unread={unread} />
      <form class="record" aria-label="The frame, part by part" onSubmit={(event) => event.preventDefault()}>
        <Head {...edit} />
        <Sections {...edit} />
        <Electronics {...edit} />
        <Hardware {...edit} />
        <UnitsChoice units={units} />
        {worked && <Glance evaluation={worked.evaluation} show={show} />}
      </form>
      <div class="outcome">
        {stale && <p class="stale-note">{stale}</p>}
        {worked && (
          <>
            <section aria-labelledby="drawn">
              <h2 id="drawn">Drawn to scale</h2>
              <figure class="figure">
                <PlanView outline={worked.outline} show={show} />
              </figure>
              <figure class="figure">
                <SideView outline={worked.outline} show={show} />
                <SaveDrawing
                  title={worked.outline.name}
                  name={fileName(worked.record).replace(/\..*/, '')}
                  text={() => fileText(worked.record)}
                  draw={() => (
                    <>
                      <PlanView outline={worked.outline} show={show} />
                      <SideView outline={worked.outline} show={show} keyed={false} />
                    </>
                  )}
                />
              </figure>
            </section>
            <section aria-labelledby="fit">
              <h2 id="fit">What fits</h2>
              <Fit {...worked.room} show={show} />
            </section>
            <section aria-labelledby="mass">
              <h2 id="mass">Mass and balance</h2>
              <Mass balance={worked.evaluation.balance} show={show} address={addressOf} />
            </section>
            <section aria-labelledby="first">
              <h2 id="first">What breaks first</h2>
              <FirstToGive
                checks={worked.evaluation.checks}
                show={show}
                kind={worked.record.arm.kind}
                address={addressOf}
              />
              <StandoffTable
                forces={worked.forces}
                show={show}
                href={addressOf('body/plates-and-standoffs', 'standoff-layout')}
              />
            </section>
            <section aria-labelledby="gain">
              <h2 id="gain">What a gram buys</h2>
              <Gains
                record={worked.record}
                evaluation={worked.evaluation}
                show={show}
                onTake={(next, says) => change(next, `step ${says}`)}
                onUndo={() => browserStore().undo()}
              />
            </section>
            <p class="estimate-note">
              Estimates for comparing designs, good for orders of magnitude. No promise that a frame survives a hit.
            </p>
          </>
        )}
      </div>
      <Announcement text={stale ?? (worked ? summaryOf(worked.evaluation, show) : '')} />
    </div>
  );
}
