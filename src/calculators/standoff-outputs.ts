import type { Output } from '~/island/declaration.ts';
import { verdictOfGap, verdictOfPreload, verdictOfSpeed } from './limit-words.ts';

/** Results that every calculator of a hit on standoffs shows; each says itself what they mean there. */
type Shown<V, R> = Omit<Output<V, R>, 'meaning'>;

interface Given {
  gap: number;
}

/** The first limit, against the speed of the hit [m/s]. */
export const firstSpeed = <V, R extends { first: { speed: number; what: string } }>(
  speed: (result: R, values: V) => number,
): Shown<V, R> => ({
  key: 'firstSpeed',
  label: 'First thing to give, at',
  symbol: 'v_1',
  quantity: 'speed',
  digits: 2,
  headline: true,
  value: (r) => r.first.speed,
  verdict: (r, values) => verdictOfSpeed(r.first.speed, speed(r, values), r.first.what),
});

export const movement: Shown<Given, { movement: number }> = {
  key: 'movement',
  label: 'Movement at the electronics',
  symbol: '\\delta',
  quantity: 'length',
  digits: 2,
  headline: true,
  value: (r) => r.movement,
  verdict: (r, { gap }) => verdictOfGap(r.movement, gap),
};

/** Stress in the worst standoff [Pa]. */
export const wallStress = <R extends { yieldStrength: number }>(stress: (result: R) => number): Shown<unknown, R> => ({
  key: 'wallStress',
  label: 'Largest stress in a standoff',
  symbol: '\\sigma',
  quantity: 'stress',
  value: stress,
  verdict: (r) =>
    stress(r) > r.yieldStrength
      ? { level: 'bad', text: 'past yield: it stays bent' }
      : { level: 'good', text: 'below yield' },
  group: 'Standoffs',
});

export const foldingForce: Shown<unknown, { peakForce: number; foldingForce: number }> = {
  key: 'foldingForce',
  label: 'Force at which all of them fold',
  symbol: 'F_p',
  quantity: 'force',
  value: (r) => r.foldingForce,
  verdict: (r) =>
    r.peakForce > r.foldingForce ? { level: 'bad', text: 'reached' } : { level: 'good', text: 'not reached' },
  group: 'Standoffs',
};

export const standoffMass: Output<unknown, { mass: number }> = {
  key: 'standoffMass',
  label: 'Mass of the standoffs',
  quantity: 'mass',
  meaning: 'All of them, without screws.',
  value: (r) => r.mass,
  group: 'Standoffs',
};

interface Clamped {
  closing: number;
  preload: { low: number; nominal: number; high: number };
}

/** What keeps the faces closed, and what the torque gives. */
export const closing: Shown<unknown, Clamped> = {
  key: 'closing',
  label: 'Preload that keeps every face closed',
  quantity: 'force',
  value: (r) => r.closing,
  verdict: (r) => verdictOfPreload(r.closing, r.preload),
};

export const preload: Output<unknown, Clamped> = {
  key: 'preload',
  label: 'Preload from your torque',
  symbol: 'F_0',
  quantity: 'force',
  meaning: 'Nominal; by hand it scatters by a quarter either way.',
  value: (r) => r.preload.nominal,
};
