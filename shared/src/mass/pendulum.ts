import { requireBetween } from '../require.ts';
import { requireLength } from '../require-physical.ts';
import { STANDARD_GRAVITY } from '../quantity/kinds.ts';
import { requireMass } from './limits.ts';

interface Swing {
  /** Of what hangs [kg]. */
  mass: number;
  /** One full swing, there and back: time many and divide [s]. */
  period: number;
  /** Local gravity [m/s²]. */
  gravity?: number;
}

interface Hung extends Swing {
  /** From the vertical axis of turning to each wire [m]. */
  radius: number;
  /** Of the wires, all alike and vertical at rest [m]. */
  wireLength: number;
}

function requireSwing({ mass, period, gravity = STANDARD_GRAVITY }: Swing): void {
  requireMass(mass);
  requireBetween(period, 1e-4, 1e4, { parameter: 'period', quantity: 'period of swing', kind: 'time' });
  requireBetween(gravity, 0.1, 100, { parameter: 'gravity', quantity: 'gravity', kind: 'acceleration' });
}

/**
 * Inertia about the vertical axis of a craft hung on two or three parallel wires and let twist.
 * $$I = \frac{m g r^2 T^2}{4\pi^2 L}$$
 * @param hung - mass [kg], period [s], radius of the wires about the axis [m], wire length [m], gravity [m/s²]
 * @returns moment of inertia about the vertical axis through the centre of mass [kg·m²]
 * @validity swings of a few degrees; equal wires at equal radius; centre of mass midway between them
 * @throws InputError when a value is out of range
 * @source khurmi-2005-machines, section 4.9, Ex. 4.9 and 4.10
 */
export function inertiaFromTwist({ mass, period, radius, wireLength, gravity = STANDARD_GRAVITY }: Hung): number {
  requireSwing({ mass, period, gravity });
  requireLength(radius, { parameter: 'radius', quantity: 'distance of the wires from the axis' });
  requireLength(wireLength, { parameter: 'wireLength', quantity: 'wire length' });
  return (mass * gravity * radius ** 2 * period ** 2) / (4 * Math.PI ** 2 * wireLength);
}

/**
 * The same for a craft that lies on a hung platform, the platform alone timed first.
 * $$I = \frac{g r^2}{4\pi^2 L}\left[(m_p+m)T^2 - m_pT_p^2\right]$$
 * @param hung - craft's mass [kg], period with craft [s], platform's mass [kg] and own period [s], radius and wires [m]
 * @returns moment of inertia of the craft alone [kg·m²]
 * @validity as without a platform; the craft's centre of mass over the platform's
 * @throws InputError when a value is out of range
 * @source bannwarth-2016-pendulum, trifilar formula
 */
export function inertiaOnPlatform(hung: Hung & { platformMass: number; platformPeriod: number }): number {
  const { mass, platformMass, platformPeriod, ...rest } = hung;
  requireMass(mass);
  const both = inertiaFromTwist({ ...rest, mass: mass + platformMass });
  return both - inertiaFromTwist({ ...rest, mass: platformMass, period: platformPeriod });
}

/**
 * Inertia about the centre of mass of a body that swings on a pivot.
 * $$I_C = \frac{m g h T^2}{4\pi^2} - m h^2$$
 * @param swing - mass [kg], period [s], distance from pivot to centre of mass [m], gravity [m/s²]
 * @returns moment about the axis through the centre of mass, parallel to the pivot [kg·m²]; below zero where the readings contradict each other
 * @validity swings of a few degrees
 * @throws InputError when a value is out of range
 * @source bannwarth-2016-pendulum, compound pendulum formula
 */
export function inertiaFromPivot({
  mass,
  period,
  distance,
  gravity = STANDARD_GRAVITY,
}: Swing & { distance: number }): number {
  requireSwing({ mass, period, gravity });
  requireLength(distance, { parameter: 'distance', quantity: 'distance from pivot to centre of mass' });
  return (mass * gravity * distance * period ** 2) / (4 * Math.PI ** 2) - mass * distance ** 2;
}

/**
 * The period of such a swing, from the radius of gyration.
 * $$T = 2\pi\sqrt{\frac{k^2+h^2}{g h}},\quad T_{min} = 2\pi\sqrt{2k/g}\ \text{at}\ h = k$$
 * @param swing - radius of gyration [m], distance from pivot to centre of mass [m], gravity [m/s²]
 * @returns period of a small swing [s]
 * @validity swings of a few degrees
 * @throws InputError when a value is out of range
 * @source khurmi-2005-machines, section 4.7, Ex. 4.7
 */
export function pivotPeriod(swing: { radiusOfGyration: number; distance: number; gravity?: number }): number {
  const { radiusOfGyration, distance, gravity = STANDARD_GRAVITY } = swing;
  requireLength(radiusOfGyration, { parameter: 'radiusOfGyration', quantity: 'radius of gyration' });
  requireLength(distance, { parameter: 'distance', quantity: 'distance from pivot to centre of mass' });
  requireBetween(gravity, 0.1, 100, { parameter: 'gravity', quantity: 'gravity', kind: 'acceleration' });
  return 2 * Math.PI * Math.sqrt((radiusOfGyration ** 2 + distance ** 2) / (gravity * distance));
}

/**
 * Radius at which all mass would have to sit to give the same inertia.
 * $$k = \sqrt{I/m}$$
 * @param inertia - about an axis [kg·m²]
 * @param mass - of the body [kg]
 * @returns radius of gyration about that axis [m]
 * @throws InputError when the inertia is negative or the mass out of range
 * @source meriam-2012-dynamics, Appendix B, radius of gyration
 */
export function radiusOfGyration(inertia: number, mass: number): number {
  requireBetween(inertia, 0, 1e12, { parameter: 'inertia', quantity: 'moment of inertia', kind: 'momentOfInertia' });
  requireMass(mass);
  return Math.sqrt(inertia / mass);
}
