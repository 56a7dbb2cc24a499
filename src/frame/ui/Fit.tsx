import type { ArrangementFit } from '@frameworthy/shared/frame';
import type { Show } from '~/island/declaration.ts';
import { Verdict } from '~/island/Verdict.tsx';
import { fitWords } from '../words.ts';

/** Each arrangement of the electronics: whether it fits, and if not, by how much it does not. */
export function Fit({ fit, show }: { fit: readonly ArrangementFit[]; show: Show }) {
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
    </ul>
  );
}
