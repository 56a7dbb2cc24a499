import type { FrameBalance, PartGroup } from '@frameworthy/shared/frame';
import type { Show } from '~/island/declaration.ts';
import { GROUP_WORDS } from '../words.ts';

interface Props {
  balance: FrameBalance;
  show: Show;
}

const AXES = ['roll', 'pitch', 'yaw'] as const;
const GROUPS = Object.keys(GROUP_WORDS) as PartGroup[];

/** Mass part by part, where its centre lies and how the frame turns. */
export function Mass({ balance, show }: Props) {
  const { parts, allUp, frameMass, cost, agility, forwardOffset, heightOffset, hover, plan } = balance;
  const lines = GROUPS.map((group) => ({ group, of: parts.filter((part) => part.group === group) })).filter(
    ({ of }) => of.length > 0,
  );
  return (
    <>
      <dl class="figures">
        <div>
          <dt>All-up mass</dt>
          <dd>{show(allUp, 'mass')}</dd>
        </div>
        <div>
          <dt>Frame alone, with hardware</dt>
          <dd>{show(frameMass, 'mass')}</dd>
        </div>
        <div>
          <dt>Centre of mass ahead of the motors’ middle</dt>
          <dd>{show(forwardOffset, 'length', 2)}</dd>
        </div>
        <div>
          <dt>{heightOffset < 0 ? 'Centre of mass below the propellers' : 'Centre of mass above the propellers'}</dt>
          <dd>{show(Math.abs(heightOffset), 'length', 2)}</dd>
        </div>
        {AXES.map((axis) => (
          <div key={axis}>
            <dt>{`${axis.charAt(0).toUpperCase()}${axis.slice(1)} at full command`}</dt>
            <dd>{show(agility[axis], 'angularAcceleration')}</dd>
          </div>
        ))}
        <div>
          <dt>Share of full thrust in hover, front and rear</dt>
          <dd>{[hover.shares[0], hover.shares[2]].map((share) => show(share as number, 'percent', 2)).join(', ')}</dd>
        </div>
        <div>
          <dt>Wheelbase</dt>
          <dd>{show(plan.layout.wheelbase, 'length')}</dd>
        </div>
        <div>
          <dt>Parts that have a price</dt>
          <dd>{cost.toFixed(2)}</dd>
        </div>
      </dl>
      <details class="budget">
        <summary>Mass budget, part by part</summary>
        <div class="scroll" tabIndex={0} role="group" aria-label="Mass budget, part by part">
          <table>
            <thead>
              <tr>
                <th scope="col">Part</th>
                <th scope="col">Count</th>
                <th scope="col">Each</th>
                <th scope="col">Together</th>
              </tr>
            </thead>
            {lines.map(({ group, of }) => (
              <tbody key={group}>
                <tr class="group">
                  <th scope="rowgroup" colSpan={3}>
                    {GROUP_WORDS[group]}
                  </th>
                  <td>
                    {show(
                      of.reduce((sum, { count, mass }) => sum + count * mass, 0),
                      'mass',
                    )}
                  </td>
                </tr>
                {of.map(({ name, count, mass }) => (
                  <tr key={name}>
                    <th scope="row">{name}</th>
                    <td>{count}</td>
                    <td>{show(mass, 'mass')}</td>
                    <td>{show(count * mass, 'mass')}</td>
                  </tr>
                ))}
              </tbody>
            ))}
          </table>
        </div>
      </details>
    </>
  );
}
