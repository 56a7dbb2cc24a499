import type { Point } from '~/island/drawing/index.ts';

/** Outlines of a tube cut across, where a hole or slot of parallel sides takes the top wall or both. Axis of the cut upright. */
export function cutRing(ring: { outer: number; inner: number; half: number; walls: 'one' | 'both' }): Point[][] {
  const { outer, inner, half, walls } = ring;
  const steps = 48;
  const arc = (radius: number, from: number, to: number): Point[] =>
    Array.from({ length: steps + 1 }, (_, i) => {
      const angle = from + ((to - from) * i) / steps;
      return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
    });
  const [out, into] = [Math.acos(half / outer), Math.acos(half / inner)];
  if (walls === 'one') return [[...arc(outer, out, -Math.PI - out), ...arc(inner, -Math.PI - into, into)]];
  const right = [...arc(outer, -out, out), ...arc(inner, into, -into)];
  return [right, right.map(({ x, y }) => ({ x: -x, y }))];
}
