import { formatNumber } from '@frameworthy/shared/quantity';
import { type Axis, type Frame, PAPER } from './plot-frame.ts';

interface Props {
  x: Axis;
  y: Axis;
  xTitle: string;
  yTitle: string;
  factors: { x: number; y: number };
  paper?: Frame;
}

/** Ruled lines with numbers; the upright axis is named above it, so that its name is read without turning the head. */
export function PlotAxes({ x, y, xTitle, yTitle, factors, paper = PAPER }: Props) {
  const base = paper.height - paper.bottom;
  return (
    <g class="axes">
      {y.ticks.map((tick) => {
        const at = y.place(tick * factors.y);
        return (
          <g key={tick}>
            <path class="grid" d={`M${paper.left} ${at}H${paper.width - paper.right}`} />
            <text class="label" text-anchor="end" dominant-baseline="central" x={paper.left - 6} y={at}>
              {formatNumber(tick, 6)}
            </text>
          </g>
        );
      })}
      {x.ticks.map((tick) => {
        const at = x.place(tick * factors.x);
        return (
          <g key={tick}>
            <path class="grid tick" d={`M${at} ${base}v5`} />
            <text class="label" text-anchor="middle" x={at} y={base + 17}>
              {formatNumber(tick, 6)}
            </text>
          </g>
        );
      })}
      <path class="base" d={`M${paper.left} ${base}H${paper.width - paper.right}`} />
      <text class="label title" text-anchor="end" x={paper.width - paper.right} y={paper.height - 3}>
        {xTitle}
      </text>
      <text class="label title" x={2} y={2}>
        {yTitle}
      </text>
    </g>
  );
}
