import type { Point } from '~/island/drawing/index.ts';

/** A rectangle by its middle. */
export const around = ({ x, y }: Point, width: number, height: number) => ({
  x: x - width / 2,
  y: y - height / 2,
  width,
  height,
});
