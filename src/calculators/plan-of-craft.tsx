import { Outline } from '~/island/drawing/index.ts';

/** Drawn size of a motor; the model's own is as small against the rest. */
export const BELL_RADIUS = 0.014;
const ARM_HALF_WIDTH = 0.006;

interface Props {
  values: Readonly<Record<'bodyLength' | 'bodyWidth' | 'armLength' | 'wheelbase', number>>;
  /** Front left motor [m]. */
  motor: { x: number; y: number };
}

/** Body, arms and motors from above, nose to the right. */
export function PlanOfCraft({ values: { bodyLength, bodyWidth, armLength, wheelbase }, motor }: Props) {
  const radius = wheelbase / 2;
  const unit = { x: motor.x / radius, y: motor.y / radius };
  const start = radius - armLength;
  const quarters = [
    [1, 1],
    [1, -1],
    [-1, -1],
    [-1, 1],
  ] as const;
  return (
    <g>
      {quarters.map(([sx, sy]) => {
        const on = (along: number, side: number) => ({
          x: sx * (unit.x * along - unit.y * side),
          y: sy * (unit.y * along + unit.x * side),
        });
        return (
          <g key={`${sx}${sy}`}>
            <Outline
              points={[
                on(start, ARM_HALF_WIDTH),
                on(radius, ARM_HALF_WIDTH),
                on(radius, -ARM_HALF_WIDTH),
                on(start, -ARM_HALF_WIDTH),
              ]}
              fill="paper"
            />
            <Outline circle={{ x: sx * motor.x, y: sy * motor.y, radius: BELL_RADIUS }} fill="paper" />
          </g>
        );
      })}
      <Outline rect={{ x: -bodyLength / 2, y: -bodyWidth / 2, width: bodyLength, height: bodyWidth }} fill="shade" />
    </g>
  );
}
