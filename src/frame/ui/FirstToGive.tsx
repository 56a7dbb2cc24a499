import { CASES, firstToGive, type CaseName, type Check } from '@frameworthy/shared/frame';
import type { Show, VerdictLevel } from '~/island/declaration.ts';
import { Verdict } from '~/island/Verdict.tsx';
import { CASE_WORDS, explainedAt, MODE_WORDS, sentence } from '../words.ts';

interface Props {
  checks: readonly Check[];
  show: Show;
  /** Of the arms: some modes are explained elsewhere for a plate. */
  kind: 'tube' | 'strip';
  /** Address of an article and its calculator, with this frame's values. */
  address: (page: string, calculator?: string) => string;
}

/** Below one it gives; below two of typical strength, or below one with all scatter against it, it may. */
export function levelOf({ margin }: Check): VerdictLevel {
  if (margin.typical < 1) return 'bad';
  return margin.low < 1 ? 'marginal' : 'good';
}

const LEVEL_TEXT: Readonly<Record<VerdictLevel, string>> = {
  bad: 'gives',
  marginal: 'may give, with all scatter against it',
  good: 'holds',
};

const times = (margin: number) => (margin >= 100 ? 'over 100' : margin.toPrecision(2));

/** Speed for hits, share of strength for the rest. */
function Row({ check, show, kind, address }: Omit<Props, 'checks'> & { check: Check }) {
  const { page, calculator } = explainedAt(check.mode, kind);
  const { margin, speed } = check;
  return (
    <tr>
      <th scope="row">
        <a href={address(page, calculator)}>{MODE_WORDS[check.mode].title}</a>
      </th>
      <td>{show(check.applied, check.quantity)}</td>
      <td>{show(check.allowable, check.quantity)}</td>
      <td>{`${times(margin.typical)} (${times(margin.low)} to ${times(margin.high)})`}</td>
      <td>
        {speed
          ? `${show(speed.typical, 'speed', 2)} (${show(speed.low, 'speed', 2)} to ${show(speed.high, 'speed', 2)})`
          : 'no hit'}
      </td>
      <td>
        <Verdict level={levelOf(check)} text={LEVEL_TEXT[levelOf(check)]} />
      </td>
    </tr>
  );
}

function Case({ name, checks, show, kind, address }: Props & { name: CaseName }) {
  const sorted = [...checks].sort((a, b) => a.margin.typical - b.margin.typical);
  const first = sorted[0];
  if (!first) return null;
  const { page, calculator } = explainedAt(first.mode, kind);
  return (
    <section class="case">
      <h3>{CASE_WORDS[name].title}</h3>
      <p>
        <Verdict level={levelOf(first)} text={sentence(first, show)} />
      </p>
      <p class="reason">
        {MODE_WORDS[first.mode].why}{' '}
        <a href={address(page, calculator)}>{calculator ? 'With this frame’s values' : 'Why, in its guide'}</a>
      </p>
      {sorted.length > 1 && (
        <details>
          <summary>{`All ${sorted.length} ways to fail`}</summary>
          <div class="scroll" tabIndex={0} role="group" aria-label={`${CASE_WORDS[name].title}: all ways to fail`}>
            <table>
              <thead>
                <tr>
                  <th scope="col">What</th>
                  <th scope="col">Applied</th>
                  <th scope="col">Bears</th>
                  <th scope="col">Times over (with scatter)</th>
                  <th scope="col">Survivable speed</th>
                  <th scope="col">Verdict</th>
                </tr>
              </thead>
              <tbody>
                {sorted.map((check) => (
                  <Row key={check.mode} {...{ check, show, kind, address }} />
                ))}
              </tbody>
            </table>
          </div>
        </details>
      )}
    </section>
  );
}

/** What breaks first in each case, why, and what comes after it. */
export function FirstToGive(props: Props) {
  const worst = firstToGive(props).filter(({ speed }) => speed)[0];
  return (
    <>
      {worst && (
        <p class="says">
          {sentence(worst, props.show)} Of the hits on this sheet, that is the one with the least in hand.
        </p>
      )}
      <div class="cases">
        {CASES.map((name) => (
          <Case key={name} name={name} {...props} checks={props.checks.filter((check) => check.case === name)} />
        ))}
      </div>
    </>
  );
}
