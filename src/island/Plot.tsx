import { unitFor, type UnitChoice } from '@frameworthy/shared/quantity';
import { useMemo, useRef, useState } from 'preact/hooks';
import type { AnyCalculator, Plot as PlotDeclaration, PlotData, Show } from './declaration.ts';
import { PlotAxes } from './PlotAxes.tsx';
import { looks, PlotCurves } from './PlotCurves.tsx';
import { axes, nearest, PAPER } from './plot-frame.ts';
import type { ValueSet } from './values.ts';

interface Props {
  calculator: AnyCalculator;
  plot: PlotDeclaration<ValueSet, unknown>;
  good: { values: ValueSet; result: unknown };
  units: UnitChoice;
  show: Show;
}

const KEYS: Readonly<Record<string, number>> = {
  ArrowLeft: -1,
  ArrowDown: -1,
  ArrowRight: 1,
  ArrowUp: 1,
  PageDown: -10,
  PageUp: 10,
  Home: -1e9,
  End: 1e9,
};

const titled = (label: string, unit: string) => (unit ? `${label}, ${unit}` : label);

/** Curves over one input, with a reading that starts at the reader's own value and follows pointer or arrow keys. */
export function Plot({ calculator, plot, good, units, show }: Props) {
  const svg = useRef<SVGSVGElement>(null);
  const [reading, setReading] = useState<number>();
  const data: PlotData = useMemo(() => plot.data(good.values, good.result, calculator.compute), [plot, good]);
  const unit = { x: unitFor(plot.x.quantity, units), y: unitFor(plot.y.quantity, units) };
  const factors = { x: unit.x.factor, y: unit.y.factor };
  const { x, y } = axes(data, factors);
  const last = data.x.length - 1;
  const index = nearest(data.x, reading ?? data.marker ?? (data.x[0] as number));
  const at = data.x[index] as number;
  const own = reading === undefined && data.marker !== undefined;
  /** Right of the middle, a station's name stands before its line, so that it stays on the paper. */
  const late = (station: number) => station > (x.from + x.to) / 2;
  const styles = looks(data.series);
  const values = data.series.map((series) => ({
    label: series.label,
    text: show(series.y[index] as number, plot.y.quantity),
  }));
  const place = `${plot.x.label} ${show(at, plot.x.quantity)}`;

  const read = (event: PointerEvent) => {
    if (!svg.current) return;
    const box = svg.current.getBoundingClientRect();
    const paper = ((event.clientX - box.left) / box.width) * PAPER.width;
    const share = (paper - PAPER.left) / (PAPER.width - PAPER.left - PAPER.right);
    setReading(data.x[nearest(data.x, x.from + share * (x.to - x.from))]);
  };
  const press = (event: KeyboardEvent) => {
    if (event.key === 'Escape') return setReading(undefined);
    const move = KEYS[event.key];
    if (move === undefined) return;
    event.preventDefault();
    setReading(data.x[Math.min(Math.max(index + move, 0), last)]);
  };

  return (
    <figure class="plot">
      <h3>{plot.title}</h3>
      <svg
        ref={svg}
        viewBox={`0 -14 ${PAPER.width} ${PAPER.height + 14}`}
        tabIndex={0}
        role="slider"
        aria-label={`${plot.title}: reading along ${plot.x.label}`}
        aria-valuemin={data.x[0] as number}
        aria-valuemax={data.x[last] as number}
        aria-valuenow={at}
        aria-valuetext={`${place}: ${values.map(({ label, text }) => `${label} ${text}`).join('; ')}`}
        onPointerMove={read}
        onPointerDown={read}
        onPointerLeave={(event) => event.pointerType === 'mouse' && setReading(undefined)}
        onKeyDown={press}
      >
        <PlotAxes
          x={x}
          y={y}
          xTitle={titled(plot.x.label, unit.x.symbol)}
          yTitle={titled(plot.y.label, unit.y.symbol)}
          factors={factors}
        />
        {data.stations?.map((station, i) => (
          <g key={station.label} class="station">
            <path d={`M${x.place(station.x)} ${PAPER.top}V${PAPER.height - PAPER.bottom}`} />
            <text
              class="label"
              x={x.place(station.x) + (late(station.x) ? -3 : 3)}
              y={PAPER.top + 10 + (i % 3) * 14}
              text-anchor={late(station.x) ? 'end' : 'start'}
            >
              {station.label}
            </text>
          </g>
        ))}
        <PlotCurves data={data} x={x} y={y} />
        {data.marker !== undefined && (
          <path class="marker" d={`M${x.place(data.marker)} ${PAPER.top}V${PAPER.height - PAPER.bottom}`} />
        )}
        <g class={own ? 'reading own' : 'reading'}>
          <path d={`M${x.place(at)} ${PAPER.top}V${PAPER.height - PAPER.bottom}`} />
          {data.series.map(({ label, y: curve }) => {
            const height = curve[index] as number;
            return Number.isFinite(height) && <circle key={label} cx={x.place(at)} cy={y.place(height)} r="3.5" />;
          })}
        </g>
      </svg>
      <p class="readout">
        <span class="where">
          {own ? 'Yours: ' : 'At '}
          {place}
        </span>
        {values.map(({ label, text }, i) => (
          <span key={label} class="entry">
            <svg viewBox="0 0 28 8" aria-hidden="true">
              <path class={styles[i]?.class} stroke-dasharray={styles[i]?.dash || undefined} d="M0 4H28" />
            </svg>
            {`${label} `}
            <b>{text}</b>
          </span>
        ))}
      </p>
      <figcaption id={`${calculator.id}-${plot.id}-caption`}>{plot.caption}</figcaption>
    </figure>
  );
}
