import {
  changedCases,
  changedFields,
  changedLists,
  evaluateFrame,
  frameOutline,
  type FrameEvaluation,
} from '@frameworthy/shared/frame';
import type { FrameOutline } from '@frameworthy/shared/outline';
import { useMemo, useState } from 'preact/hooks';
import { Overlay } from '~/drawings/index.ts';
import { explainRecord } from '~/frame/explain.ts';
import { LIST_ROWS, releaseNotes, valueText } from '~/frame/summary.ts';
import { CopyText } from '~/frame/ui/CopyText.tsx';
import { CASE_WORDS, MODE_WORDS } from '~/frame/words.ts';
import type { Show } from '~/island/declaration.ts';
import { showIn } from '~/island/show.ts';
import { useUnits } from '~/island/unit-choice.ts';
import { useKnown, type Known } from './known.ts';

interface Worked extends Known {
  evaluation: FrameEvaluation;
  outline: FrameOutline;
}

type Attempt = Worked | { key: string; title: string; problem: string };

const isWorked = (attempt: Attempt): attempt is Worked => 'evaluation' in attempt;

function work(known: Known, show: Show): Attempt {
  try {
    return { ...known, evaluation: evaluateFrame(known.record), outline: frameOutline(known.record) };
  } catch (error) {
    return { key: known.key, title: known.title, problem: explainRecord(error, show).text };
  }
}

const NONE = '';

function Picker({
  label,
  id,
  value,
  known,
  onPick,
  none,
}: {
  label: string;
  id: string;
  value: string;
  known: readonly Known[];
  onPick: (key: string) => void;
  none?: boolean;
}) {
  return (
    <span class="pair">
      <label for={id}>{label}</label>
      <select id={id} autocomplete="off" onChange={(event) => onPick(event.currentTarget.value)}>
        {none && (
          <option value={NONE} selected={value === NONE}>
            none
          </option>
        )}
        {known.map(({ key, title }) => (
          <option key={key} value={key} selected={key === value}>
            {title}
          </option>
        ))}
      </select>
    </span>
  );
}

/** All paths in which any of the later frames differs from the first. */
function Changes({ frames, show }: { frames: readonly Worked[]; show: Show }) {
  const [first, ...later] = frames as [Worked, ...Worked[]];
  const changes = later.map(
    (one) => new Map(changedFields(first.record, one.record).map((change) => [change.path, change])),
  );
  const paths = [...new Set(changes.flatMap((one) => [...one.keys()]))];
  const lists = later.map((one) => changedLists(first.record, one.record));
  const rows = LIST_ROWS.filter(([, of]) => lists.some((one) => of(one) !== ''));
  return (
    <>
      {paths.length + rows.length === 0 && <p>Nothing differs but name and words.</p>}
      {paths.length + rows.length > 0 && (
        <div class="scroll" tabIndex={0} role="group" aria-label="What changed">
          <table class="compared">
            <thead>
              <tr>
                <th scope="col">Value</th>
                {frames.map(({ key, title }) => (
                  <th key={key} scope="col">
                    {title}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {paths.map((path) => {
                const any = changes.map((one) => one.get(path)).find((one) => one !== undefined)!;
                return (
                  <tr key={path}>
                    <th scope="row">
                      <a href={`${any.field.page}.html`}>{any.field.label}</a>
                    </th>
                    <td>{valueText(any, any.before, show)}</td>
                    {changes.map((one, i) => {
                      const change = one.get(path);
                      return <td key={i}>{change ? <b>{valueText(change, change.after, show)}</b> : 'as before'}</td>;
                    })}
                  </tr>
                );
              })}
              {rows.map(([label, of]) => (
                <tr key={label}>
                  <th scope="row">{label}</th>
                  <td />
                  {lists.map((one, i) => (
                    <td key={i}>
                      <b>{of(one)}</b>
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </>
  );
}

function Figures({ frames, show }: { frames: readonly Worked[]; show: Show }) {
  const rows: readonly [string, (one: Worked) => string][] = [
    ['All-up mass', ({ evaluation: { balance } }) => show(balance.allUp, 'mass')],
    ['Frame alone', ({ evaluation: { balance } }) => show(balance.frameMass, 'mass')],
    ['Priced parts', ({ evaluation: { balance } }) => balance.cost.toFixed(2)],
    ['Centre of mass, forward', ({ evaluation: { balance } }) => show(balance.forwardOffset, 'length', 2)],
    ['Roll at full command', ({ evaluation: { balance } }) => show(balance.agility.roll, 'angularAcceleration')],
    ['Pitch at full command', ({ evaluation: { balance } }) => show(balance.agility.pitch, 'angularAcceleration')],
    ['Yaw at full command', ({ evaluation: { balance } }) => show(balance.agility.yaw, 'angularAcceleration')],
    ['Wheelbase', ({ evaluation: { balance } }) => show(balance.plan.layout.wheelbase, 'length')],
  ];
  const [first, ...later] = frames as [Worked, ...Worked[]];
  const cases = changedCases(first.evaluation, (later[0] ?? first).evaluation).map((one) => one.case);
  const firstIn = (one: Worked, name: (typeof cases)[number]) =>
    changedCases(one.evaluation, one.evaluation).find((check) => check.case === name)?.after;
  return (
    <div class="scroll" tabIndex={0} role="group" aria-label="Mass, balance and what gives first">
      <table class="compared">
        <thead>
          <tr>
            <th scope="col">What came of it</th>
            {frames.map(({ key, title }) => (
              <th key={key} scope="col">
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([label, of]) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              {frames.map((one) => (
                <td key={one.key}>{of(one)}</td>
              ))}
            </tr>
          ))}
          {cases.map((name) => (
            <tr key={name}>
              <th scope="row">{CASE_WORDS[name].title}</th>
              {frames.map((one) => {
                const check = firstIn(one, name);
                const amount =
                  check &&
                  (check.speed
                    ? show(check.speed.typical, 'speed', 2)
                    : `${check.margin.typical.toPrecision(2)} times the load`);
                return (
                  <td key={one.key}>
                    {check && (
                      <>
                        {amount}
                        <br />
                        <span class="reason">{MODE_WORDS[check.mode].title}</span>
                      </>
                    )}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** Each frame with the next: drawn over it, and told in words. One pair at a time where there are three. */
function Pairs({ frames, show }: { frames: readonly Worked[]; show: Show }) {
  const [picked, pick] = useState(0);
  const pairs = frames.slice(1).map((after, i) => ({ before: frames[i]!, after }));
  const at = Math.min(picked, pairs.length - 1);
  const { before, after } = pairs[at]!;
  return (
    <>
      <section aria-labelledby="over">
        <h2 id="over">One drawn over the other</h2>
        {pairs.length > 1 && (
          <p class="choosing">
            <label for="pair">Pair to draw and to tell</label>
            <select id="pair" autocomplete="off" onChange={(event) => pick(event.currentTarget.selectedIndex)}>
              {pairs.map((pair, i) => (
                <option key={i} selected={i === at}>
                  {`${pair.before.title}, then ${pair.after.title}`}
                </option>
              ))}
            </select>
          </p>
        )}
        <p class="which">{`Before: ${before.title}. After: ${after.title}.`}</p>
        <div class="two">
          {(['plan', 'side'] as const).map((view) => (
            <figure key={view} class="figure">
              <Overlay before={before.outline} after={after.outline} view={view} show={show} />
            </figure>
          ))}
        </div>
      </section>
      <section aria-labelledby="notes">
        <h2 id="notes">In plain words, for release notes</h2>
        <p class="which">{`From ${before.title} to ${after.title}.`}</p>
        <CopyText key={at} text={releaseNotes(before, after, show)} label="Release notes" />
      </section>
    </>
  );
}

/** Two or three frames side by side. */
export function Revisions() {
  const { known, problems } = useKnown();
  const { choice: units } = useUnits();
  const show = useMemo(() => showIn(units), [units]);
  const [picked, pick] = useState<readonly (string | undefined)[]>([undefined, undefined, NONE]);
  const kept = known.filter(({ key }) => !key.startsWith('sample'));
  // The two latest of the reader's own, or C and D of the samples.
  const usual = kept.length > 1 ? kept.slice(-2).map(({ key }) => key) : ['sample1', kept[0]?.key ?? 'sample0'];
  const keys = picked.map((key, i) => key ?? usual[i] ?? NONE);
  const chosen = keys.flatMap((key) => known.filter((one) => one.key === key));
  const attempts = useMemo(() => chosen.map((one) => work(one, show)), [keys.join(), known, show]);
  const frames = attempts.filter(isWorked);
  const put = (at: number) => (key: string) => pick(picked.map((one, i) => (i === at ? key : one)));
  return (
    <div class="desk wide">
      <div class="bar">
        <div class="choosing">
          <Picker id="first-frame" label="Before" value={keys[0]!} known={known} onPick={put(0)} />
          <Picker id="second-frame" label="After" value={keys[1]!} known={known} onPick={put(1)} />
          <Picker id="third-frame" label="And beside them" value={keys[2]!} known={known} onPick={put(2)} none />
        </div>
      </div>
      {problems.length > 0 && (
        <p class="stale-note" role="alert">
          {problems.join(' ')}
        </p>
      )}
      {attempts.map((attempt) =>
        isWorked(attempt) ? null : (
          <p key={attempt.key} class="stale-note">{`${attempt.title} cannot be worked out: ${attempt.problem}`}</p>
        ),
      )}
      {frames.length > 1 && (
        <>
          <section aria-labelledby="changed">
            <h2 id="changed">What changed</h2>
            <Changes frames={frames} show={show} />
          </section>
          <section aria-labelledby="bought">
            <h2 id="bought">What it cost and what it bought</h2>
            <Figures frames={frames} show={show} />
          </section>
          <Pairs frames={frames} show={show} />
          <p class="estimate-note">Estimates for comparing the two. Survivable speeds are no promise.</p>
        </>
      )}
    </div>
  );
}
