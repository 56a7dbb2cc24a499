import { formatNumber } from '@frameworthy/shared/quantity';
import { type Axis, PAPER } from './plot-frame.ts';

interface Props {
  x: Axis;
  y: Axis;
  xTitle: string;
  yTitle: string;
  factors: { x: number; y: number };
}

const BASE = PAPER.height - PAPER.bottom;

/** Ruled lines with numbers; the upright axis is named above it, so that its name is read without turning the head. */
export function PlotAxes({ x, y, xTitle, yTitle, factors }: Props) {
  return (
    <g class="axes">
      {y.ticks.map((tick) => {
        const at = y.place(tick * factors.y);
        return (
          <g key={tick}>
            <path class="grid" d={`M${PAPER.left} ${at}H${PAPER.width - PAPER.right}`} />
            <text class="label" text-anchor="end" dominant-baseline="central" x={PAPER.left - 6} y={at}>
              {formatNumber(tick, 6)}
            </text>
          </g>
        );
      })}
      {x.ticks.map((tick) => {
        const at = x.place(tick * factors.x);
        return (
          <g key={tick}>
            <path class="grid tick" d={`M${at} ${BASE}v5`} />
            <text class="label" text-anchor="middle" x={at} y={BASE + 17}>
              {formatNumber(tick, 6)}
            </text>
          </g>
        );
      })}
      <path class="base" d={`M${PAPER.left} ${BASE}H${PAPER.width - PAPER.right}`} />
      <text class="label title" text-anchor="end" x={PAPER.width - PAPER.right} y={PAPER.height - 3}>
        {xTitle}
      </text>
      <text class="label title" x={2} y={2}>
        {yTitle}
      </text>
    </g>
  );
}
