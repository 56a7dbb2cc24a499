import type { ArrangementFit, ThinWeb, UnderPropeller } from '@frameworthy/shared/frame';
import type { Show } from '~/island/declaration.ts';
import { Verdict } from '~/island/Verdict.tsx';
import { armEndWords, fitWords, propellerWords, tipWords, webWords } from '../words.ts';

/** Whether a frame fits together: its parts, its propellers, its arms. */
export interface FrameRoom {
  fit: readonly ArrangementFit[];
  propellers: readonly UnderPropeller[];
  /** Between the inner ends of neighbouring arms [m]. */
  armEnds: number;
  /** Between the tips of neighbouring propellers [m]. */
  tips: number;
  webs: readonly ThinWeb[];
}

/** Propellers and arms against the body. */
export function Room({ propellers, armEnds, tips, webs, show }: Omit<FrameRoom, 'fit'> & { show: Show }) {
  const words = [...tipWords(tips, show), ...propellerWords(propellers, show)];
  const meet = armEndWords(armEnds, show);
  return (
    <>
      <li>
        {'Propellers: '}
        {words.length === 0 ? (
          <Verdict level="good" text="their circles clear body, standoffs and battery" />
        ) : (
          words.map(({ level, text }) => <Verdict key={text} level={level} text={text} />)
        )}
      </li>
      {webs.length > 0 && (
        <li>
          {'Holes: '}
          {webWords(webs, show).map((text) => (
            <Verdict key={text} level="bad" text={text} />
          ))}
        </li>
      )}
      {meet && (
        <li>
          {'Arms: '}
          <Verdict level="bad" text={meet} />
        </li>
      )}
    </>
  );
}

/** Each arrangement of the electronics: whether it fits, and if not, by how much it does not; then propellers and arms. */
export function Fit({ fit, show, ...room }: FrameRoom & { show: Show }) {
  return (
    <ul class="fit">
      {fit.map((one) => {
        const words = fitWords(one, show);
        return (
          <li key={one.name}>
            {`${one.name}: `}
            {words.length === 0 ? (
              <Verdict level="good" text="fits, nothing collides" />
            ) : (
              words.map((text) => <Verdict key={text} level="bad" text={text} />)
            )}
          </li>
        );
      })}
      <Room {...room} show={show} />
    </ul>
  );
}
