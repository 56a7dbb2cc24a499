import type { FrameBalance, PartGroup } from '@frameworthy/shared/frame';
import type { Show } from '~/island/declaration.ts';
import { GROUP_WORDS } from '../words.ts';

interface Props {
  balance: FrameBalance;
  show: Show;
  /** Address of an article and its calculator, with this frame's values. */
  address: (page: string, calculator?: string) => string;
  /** The budget stands open: on a card it is what buyers look for. */
  open?: boolean;
}

const AXES = ['roll', 'pitch', 'yaw'] as const;
const GROUPS = Object.keys(GROUP_WORDS) as PartGroup[];

const BATTERY = ['balance/battery-placement', 'battery-placement'] as const;
const LAYOUT = ['layout/motor-layout', 'motor-layout'] as const;
const HOVER = ['layout/motor-layout', 'hover-power'] as const;

/** Where the parts of a group are sized. */
const SIZED: Readonly<Record<PartGroup, readonly [page: string, calculator?: string]>> = {
  arms: ['arms/tube-or-plate', 'tube-or-plate'],
  motors: HOVER,
  plates: ['body/tongues-and-webs', 'plate-tongue'],
  standoffs: ['body/standoff-lengths', 'standoff-sway'],
  electronics: ['body/electronics-fit', 'electronics-fit'],
  battery: BATTERY,
  hardware: ['body/screws', 'screw-torque'],
};

type Figure = readonly [label: string, value: string, explained: readonly [page: string, calculator: string]];

function figuresOf({ balance, show }: Pick<Props, 'balance' | 'show'>): readonly Figure[] {
  const { allUp, frameMass, cost, agility, forwardOffset, heightOffset, hover, plan } = balance;
  const shares = [hover.shares[0], hover.shares[2]].map((share) => show(share as number, 'percent', 2)).join(', ');
  const upright = heightOffset < 0 ? 'below' : 'above';
  return [
    ['All-up mass', show(allUp, 'mass'), HOVER],
    ['Frame alone, with hardware', show(frameMass, 'mass'), BATTERY],
    ['Centre of mass ahead of the motors’ middle', show(forwardOffset, 'length', 2), BATTERY],
    [`Centre of mass ${upright} the propellers`, show(Math.abs(heightOffset), 'length', 2), BATTERY],
    ...AXES.map((axis): Figure => [
      `${axis.charAt(0).toUpperCase()}${axis.slice(1)} at full command`,
      show(agility[axis], 'angularAcceleration'),
      BATTERY,
    ]),
    ['Share of full thrust in hover, front and rear', shares, BATTERY],
    ['Wheelbase', show(plan.layout.wheelbase, 'length'), LAYOUT],
    ['Parts that have a price', cost.toFixed(2), BATTERY],
  ];
}

/** Mass part by part, where its centre lies and how the frame turns; each number with the way to what explains it. */
export function Mass({ balance, show, address, open }: Props) {
  const lines = GROUPS.map((group) => ({ group, of: balance.parts.filter((part) => part.group === group) })).filter(
    ({ of }) => of.length > 0,
  );
  return (
    <>
      <dl class="figures">
        {figuresOf({ balance, show }).map(([label, value, explained]) => (
          <div key={label}>
            <dt>
              <a href={address(...explained)}>{label}</a>
            </dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <details class="budget" open={open}>
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
                    <a href={address(...SIZED[group])}>{GROUP_WORDS[group]}</a>
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
