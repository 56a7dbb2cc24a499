import {
  armEndGap,
  evaluateFrame,
  firstToGive,
  frameFit,
  frameOutline,
  propellerRoom,
  thinWebs,
  type ArrangementFit,
  type FrameRecord,
} from '@frameworthy/shared/frame';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { PlanView, SideView } from '~/drawings/index.ts';
import { arrivingFrame } from '~/frame/arrival.ts';
import { browserStore } from '~/frame/browser-store.ts';
import { carryFrame } from '~/frame/carry.ts';
import { packRecord } from '~/frame/compress.ts';
import { explainRecord } from '~/frame/explain.ts';
import { FIRST_SAMPLE, titleOf } from '~/frame/samples.ts';
import { currentFrame, withArrival } from '~/frame/shelf.ts';
import { Room } from '~/frame/ui/Fit.tsx';
import { Mass } from '~/frame/ui/Mass.tsx';
import { CASE_WORDS, explainedAt, fitWords, MODE_WORDS, sentence } from '~/frame/words.ts';
import { UnitsChoice } from '~/frame/ui/UnitsChoice.tsx';
import type { Show } from '~/island/declaration.ts';
import { Verdict } from '~/island/Verdict.tsx';
import { showIn } from '~/island/show.ts';
import { useUnits } from '~/island/unit-choice.ts';

interface Shown {
  record: FrameRecord;
  /** Where it came from. */
  from: 'link' | 'kept' | 'sample';
}

/** The frame of the link; without one the reader's current frame; without that the sample. */
function useShown(): { shown: Shown; problems: readonly string[] } {
  const [shown, setShown] = useState<Shown>({ record: FIRST_SAMPLE, from: 'sample' });
  const [problems, setProblems] = useState<readonly string[]>([]);
  useEffect(() => {
    let held: Shown = { record: FIRST_SAMPLE, from: 'sample' };
    const read = async () => {
      const reading = await arrivingFrame(location);
      const kept = currentFrame(browserStore().state().shelf);
      setProblems(reading && !reading.ok ? ['The frame in the link cannot be shown.', ...reading.problems] : []);
      held = reading?.ok
        ? { record: reading.record, from: 'link' }
        : kept
          ? { record: kept.record, from: 'kept' }
          : { record: FIRST_SAMPLE, from: 'sample' };
      setShown(held);
    };
    void read();
    // The reader of a card may keep no frame: its values go along in the links to the guides.
    carryFrame(
      () => held.record,
      () => held.from !== 'kept' || location.protocol === 'file:',
    );
    const follow = () => void read();
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  return { shown, problems };
}

function useWord(record: FrameRecord): string | undefined {
  const [word, setWord] = useState<string>();
  useEffect(() => void packRecord(record).then(setWord), [record]);
  return word;
}

function Electronics({ record, show }: { record: FrameRecord; show: Show }) {
  const fit = frameFit(record);
  return (
    <>
      {record.electronics.arrangements.map(({ name, suits, items, standoffs }) => (
        <section key={name} class="fits">
          <h3>{name === record.electronics.current ? `${name} (as weighed)` : name}</h3>
          {suits && <p>{suits}</p>}
          <p>
            {`${standoffs.length} standoffs. `}
            <FitVerdict fit={fit.find((one) => one.name === name)} show={show} />
          </p>
          <ul>
            {items.map((item) => (
              <li key={item.name}>
                {`${item.name}: ${[item.length, item.width, item.height].map((side) => show(side, 'length')).join(' × ')}`}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}

function FitVerdict({ fit, show }: { fit: ArrangementFit | undefined; show: Show }) {
  const words = fit ? fitWords(fit, show) : [];
  return <Verdict level={words.length === 0 ? 'good' : 'bad'} text={words.join(' ') || 'Nothing collides.'} />;
}

/** A frame for its buyers: read, not edited. */
export function FrameCard() {
  const { shown, problems } = useShown();
  const { record, from } = shown;
  const { choice: units } = useUnits();
  const show = useMemo(() => showIn(units), [units]);
  const [said, setSaid] = useState('');
  const word = useWord(record);
  const worked = useMemo(() => {
    try {
      const outline = frameOutline(record);
      const room = {
        propellers: propellerRoom(record, outline),
        armEnds: armEndGap(record),
        tips: record.layout.tipGap,
        webs: thinWebs(outline),
      };
      return { evaluation: evaluateFrame(record), outline, room };
    } catch (error) {
      return { problem: explainRecord(error, show).text };
    }
  }, [record, show]);
  const address = (page: string, calculator?: string) =>
    `${page}.html${calculator ? `#${calculator}${word ? `?frame=${word}` : ''}` : ''}`;
  const keep = () => {
    browserStore().change((shelf) => withArrival(shelf, record));
    setSaid(`${titleOf(record)} is on your frame sheet now.`);
  };
  return (
    <div class="desk wide card">
      <header>
        <h1>{titleOf(record)}</h1>
        {problems.map((text) => (
          <p key={text} class="stale-note" role="alert">
            {text}
          </p>
        ))}
        {from === 'sample' && <p class="reason">A sample, invented: no such frame is sold.</p>}
        {record.suits && <p class="says">{record.suits}</p>}
      </header>
      {'problem' in worked ? (
        <p class="stale-note">{worked.problem}</p>
      ) : (
        <>
          <div class="two">
            <div>
              <figure class="figure">
                <PlanView outline={worked.outline} show={show} />
              </figure>
              <figure class="figure">
                <SideView outline={worked.outline} show={show} />
              </figure>
              <ul class="fit">
                <Room {...worked.room} show={show} />
              </ul>
            </div>
            <div>
              <section aria-labelledby="card-mass">
                <h2 id="card-mass">
                  <a href={address('balance/battery-placement', 'battery-placement')}>
                    Mass, as built, and how it turns
                  </a>
                </h2>
                <Mass balance={worked.evaluation.balance} show={show} address={address} open />
              </section>
            </div>
          </div>
          <section aria-labelledby="card-first">
            <h2 id="card-first">What breaks first</h2>
            <div class="scroll" tabIndex={0} role="group" aria-label="What breaks first">
              <table>
                <thead>
                  <tr>
                    <th scope="col">What happens</th>
                    <th scope="col">Speed</th>
                    <th scope="col">With scatter</th>
                    <th scope="col" class="left">
                      What gives, and why
                    </th>
                  </tr>
                </thead>
                <tbody>
                  {firstToGive(worked.evaluation)
                    .filter(({ speed }) => speed)
                    .map((check) => {
                      const { page, calculator } = explainedAt(check.mode, record.arm.kind);
                      const { title } = MODE_WORDS[check.mode];
                      const speed = check.speed!;
                      return (
                        <tr key={check.case}>
                          <th scope="row">{CASE_WORDS[check.case].title}</th>
                          <td>
                            <a href={address(page, calculator)} aria-label={sentence(check, show)}>
                              {show(speed.typical, 'speed', 2)}
                            </a>
                          </td>
                          <td>
                            <a href={address('using-results')}>
                              {`${show(speed.low, 'speed', 2)} to ${show(speed.high, 'speed', 2)}`}
                            </a>
                          </td>
                          <td class="left">
                            <a href={address(page, calculator)}>{title}</a>
                          </td>
                        </tr>
                      );
                    })}
                </tbody>
              </table>
            </div>
            <p class="estimate-note">
              Estimates by formula with typical materials, not test results. They compare frames; they promise nothing.
            </p>
          </section>
          <section aria-labelledby="card-fits">
            <h2 id="card-fits">
              <a href={address('body/electronics-fit', 'electronics-fit')}>Which electronics fit</a>
            </h2>
            <div class="two">
              <Electronics record={record} show={show} />
            </div>
          </section>
          {record.notes && (
            <section aria-labelledby="card-notes">
              <h2 id="card-notes">{`Revision ${record.revision}`}</h2>
              <p>{record.notes}</p>
            </section>
          )}
          <p class="caution-line">
            Propellers off at the bench. Never puncture a lithium pack or charge it unattended. Carbon dust and epoxy
            harm lungs and skin: mask, gloves, air. Fly by your local rules, and away from people.
          </p>
          <p class="buttons">
            {from !== 'kept' && (
              <button type="button" onClick={keep}>
                Put it on my frame sheet
              </button>
            )}
            <button type="button" onClick={() => print()}>
              Print
            </button>
            <span role="status">{said}</span>
          </p>
          <UnitsChoice units={units} />
        </>
      )}
    </div>
  );
}
