import {
  gainPerGram,
  governingHit,
  type CaseName,
  type FrameEvaluation,
  type FrameRecord,
  type Gain,
} from '@frameworthy/shared/frame';
import { useMemo, useState } from 'preact/hooks';
import type { Show } from '~/island/declaration.ts';
import { CASE_WORDS, MODE_WORDS } from '../words.ts';

interface Props {
  record: FrameRecord;
  evaluation: FrameEvaluation;
  show: Show;
  onTake: (record: FrameRecord, says: string) => void;
}

const HITS: readonly CaseName[] = ['strike-vertical', 'strike-sideways', 'strike-along', 'drop', 'nose'];

const signed = (text: string, value: number) => (value > 0 ? `+${text}` : text.replace(/^-/, '−'));
const NOTHING = 5e-4;

function perGram({ perMass, speed }: Gain): string {
  if (Math.abs(speed) < NOTHING) return '0';
  return Number.isFinite(perMass)
    ? signed((perMass / 1000).toPrecision(2), perMass)
    : perMass > 0
      ? 'for nothing'
      : 'a loss';
}

/** For each dimension one step: what it buys in the chosen hit, and what it costs. */
export function Gains({ record, evaluation, show, onTake }: Props) {
  const [chosen, choose] = useState<CaseName>();
  const hit = chosen ?? governingHit(evaluation).case;
  const { gains, impossible } = useMemo(() => gainPerGram(record, evaluation, hit), [record, evaluation, hit]);
  const amount = (value: number, quantity: Parameters<Show>[1], digits = 2) =>
    signed(show(value, quantity, digits), value);
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
      <div class="scroll" tabIndex={0} role="group" aria-label="What each step buys">
        <table class="gains">
          <thead>
            <tr>
              <th scope="col">One step</th>
              <th scope="col">m/s per gram</th>
              <th scope="col">Survivable speed</th>
              <th scope="col">Mass</th>
              <th scope="col">Agility</th>
              <th scope="col">Cost</th>
              <th scope="col">Then gives first</th>
              <th scope="col">
                <span class="visually-hidden">Take the step</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {gains.map((gain) => (
              <tr key={gain.step.id} class={gain.speed > NOTHING ? undefined : 'idle'}>
                <th scope="row">{gain.step.says}</th>
                <td>{perGram(gain)}</td>
                <td>{amount(gain.speed, 'speed')}</td>
                <td>{amount(gain.mass, 'mass')}</td>
                <td>{amount(gain.agility, 'percent')}</td>
                <td>{signed(gain.cost.toFixed(2), gain.cost)}</td>
                <td>{MODE_WORDS[gain.then.mode].title}</td>
                <td>
                  <button type="button" onClick={() => onTake(gain.step.record, gain.step.says)}>
                    Take<span class="visually-hidden">{`: ${gain.step.says}`}</span>
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {impossible.length > 0 && (
        <p class="reason">{`Not possible here: ${impossible.map(({ step }) => step.says).join('; ')}.`}</p>
      )}
    </>
  );
}
