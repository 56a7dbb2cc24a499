import { type Point, usePaper } from '~/island/drawing/index.ts';

const RADIUS = 7;

/** The mark of a centre of mass: a circle in quarters, two of them filled. */
export function CentreOfMass({ at }: { at: Point }) {
  const { x, y } = usePaper().point(at);
  const quarter = (sx: number, sy: number) =>
    `M${x} ${y}H${x + sx * RADIUS}A${RADIUS} ${RADIUS} 0 0 ${sx * sy > 0 ? 1 : 0} ${x} ${y + sy * RADIUS}Z`;
  return (
    <g>
      <circle class="thin tone-ink fill-paper" cx={x} cy={y} r={RADIUS} />
      <path class="dot tone-ink" d={quarter(1, 1) + quarter(-1, -1)} />
    </g>
  );
}
