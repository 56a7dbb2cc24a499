import type { StandoffForces } from '@frameworthy/shared/frame';
import type { Show } from '~/island/declaration.ts';

interface Props {
  forces: readonly StandoffForces[];
  show: Show;
  href: string;
}

/** What each standoff carries in the nose-first hit. */
export function StandoffTable({ forces, show, href }: Props) {
  return (
    <details>
      <summary>Each standoff in the nose-first hit</summary>
      <div class="scroll" tabIndex={0} role="group" aria-label="Each standoff in the nose-first hit">
        <table>
          <thead>
            <tr>
              <th scope="col">Standoff, forward and left</th>
              <th scope="col">Shear</th>
              <th scope="col">Pull</th>
              <th scope="col">Moment at the foot</th>
              <th scope="col">Moment at the head</th>
            </tr>
          </thead>
          <tbody>
            {forces.map(({ x, y, shear, axial, footMoment, headMoment }, i) => (
              <tr key={i}>
                <th scope="row">{`${i + 1}: ${show(x, 'length')}, ${show(y, 'length')}`}</th>
                <td>{show(shear, 'force')}</td>
                <td>{show(axial, 'force')}</td>
                <td>{show(footMoment, 'moment')}</td>
                <td>{show(headMoment, 'moment')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class="reason">
        A negative pull presses. <a href={href}>How a plate shares its load among standoffs</a>
      </p>
    </details>
  );
}
