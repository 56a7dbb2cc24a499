import {
  firstToGive,
  gainPerGram,
  governingHit,
  type CaseName,
  type FrameEvaluation,
  type FrameRecord,
  type Gain,
  type ModeName,
} from '@frameworthy/shared/frame';
import { useMemo, useState } from 'preact/hooks';
import type { Show } from '~/island/declaration.ts';
import { CASE_WORDS, MODE_WORDS } from '../words.ts';

interface Props {
  record: FrameRecord;
  evaluation: FrameEvaluation;
  show: Show;
  onTake: (record: FrameRecord, says: string) => void;
  onUndo: () => void;
}

const HITS: readonly CaseName[] = ['strike-vertical', 'strike-sideways', 'strike-along', 'drop', 'nose'];

const signed = (text: string, value: number) => (value > 0 ? `+${text}` : text.replace(/^-/, '−'));
const NOTHING = 5e-4;

function perGram({ perMass, speed, step }: Gain): string {
  if (Math.abs(speed) < NOTHING) return '0';
  if (step.unweighed && speed > 0) return 'not weighed';
  return Number.isFinite(perMass)
    ? signed((perMass / 1000).toPrecision(2), perMass)
    : perMass > 0
      ? 'for nothing'
      : 'a loss';
}

const isUseful = ({ speed }: Gain) => speed > NOTHING;

interface StepsProps {
  gains: readonly Gain[];
  /** What gives first as it is. */
  before: ModeName | undefined;
  label: string;
  show: Show;
  onTake: (gain: Gain) => void;
}

function Steps({ gains, before, label, show, onTake }: StepsProps) {
  const amount = (value: number, quantity: Parameters<Show>[1], digits = 2) =>
    signed(show(value, quantity, digits), value);
  return (
    <div class="scroll" tabIndex={0} role="group" aria-label={label}>
      <table class="gains">
        <thead>
          <tr>
            <th scope="col">One step</th>
            <th scope="col">
              <span class="visually-hidden">Take the step</span>
            </th>
            <th scope="col">m/s per gram</th>
            <th scope="col">Survivable speed</th>
            <th scope="col">Mass</th>
            <th scope="col">Agility</th>
            <th scope="col">Cost</th>
            <th scope="col">Gives first then</th>
          </tr>
        </thead>
        <tbody>
          {gains.map((gain) => (
            <tr key={gain.step.path}>
              <th scope="row">{gain.step.says}</th>
              <td>
                <button type="button" onClick={() => onTake(gain)}>
                  Take<span class="visually-hidden">{`: ${gain.step.says}`}</span>
                </button>
              </td>
              <td>{perGram(gain)}</td>
              <td>{amount(gain.speed, 'speed')}</td>
              <td>{gain.step.unweighed ? 'not weighed' : amount(gain.mass, 'mass')}</td>
              <td>{amount(gain.agility, 'percent')}</td>
              <td>{gain.step.unpriced ? 'not priced' : signed(gain.cost.toFixed(2), gain.cost)}</td>
              <td>{gain.then.mode === before ? 'the same' : MODE_WORDS[gain.then.mode].title}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** For each dimension one step: what it buys in the chosen hit, and what it costs. */
export function Gains({ record, evaluation, show, onTake, onUndo }: Props) {
  const [chosen, choose] = useState<CaseName>();
  const hit = chosen ?? governingHit(evaluation).case;
  const { gains, impossible } = useMemo(() => gainPerGram(record, evaluation, hit), [record, evaluation, hit]);
  const [last, setLast] = useState<Gain['step']>();
  // Gone with the next change, whatever makes it: the button would take back that one.
  const taken = last?.record === record ? last : undefined;
  const before = firstToGive(evaluation).find((check) => check.case === hit);
  const take = ({ step }: Gain) => {
    onTake(step.record, step.says);
    setLast(step);
  };
  const table = { before: before?.mode, show, onTake: take };
  const useful = gains.filter(isUseful);
  const rest = gains.filter((gain) => !isUseful(gain));
  return (
    <>
      <p class="choosing">
        <label for="gain-hit">Hit to get better at</label>
        <select id="gain-hit" autocomplete="off" onChange={(event) => choose(event.currentTarget.value as CaseName)}>
          {HITS.map((name) => (
            <option key={name} value={name} selected={name === hit}>
              {CASE_WORDS[name].title}
            </option>
          ))}
        </select>
      </p>
      <p class="buttons taken">
        <span role="status">{taken && `Taken: ${taken.says}.`}</span>
        {taken && (
          <button type="button" onClick={onUndo}>
            Take it back
          </button>
        )}
      </p>
      {useful.length > 0 ? (
        <Steps {...table} gains={useful} label="Steps that buy speed" />
      ) : (
        <p>No single step raises the speed of this hit.</p>
      )}
      {rest.length > 0 && (
        <details>
          <summary>{`${rest.length} steps that buy nothing in this hit`}</summary>
          <Steps {...table} gains={rest} label="Steps that buy nothing in this hit" />
        </details>
      )}
      <p class="reason">
        {record.arm.kind === 'tube' &&
          'A step to another tube takes its price per metre along, in proportion to mass. '}
        Not priced: your record has one price for all sizes, alloys and classes. Not weighed: larger screws, and plates
        that reach farther along the arms.
      </p>
      {impossible.length > 0 && (
        <p class="reason">{`Not possible here: ${impossible.map(({ step }) => step.says).join('; ')}.`}</p>
      )}
    </>
  );
}
