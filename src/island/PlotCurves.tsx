import { line } from 'd3-shape';
import type { PlotData, Series } from './declaration.ts';
import { type Axis, PAPER, spread } from './plot-frame.ts';

const DASHES = ['', '8 4', '2 3', '10 3 2 3'];

/** Class and dash of each series: the dash tells them apart without colour. */
export function looks(series: readonly Series[]): { class: string; dash: string }[] {
  let drawn = 0;
  return series.map(({ role = 'main' }) => ({
    class: `curve ${role}`,
    dash: role === 'limit' ? '5 3' : (DASHES[drawn++ % DASHES.length] as string),
  }));
}

interface Props {
  data: PlotData;
  x: Axis;
  y: Axis;
}

/** The series, each named at its right end. */
export function PlotCurves({ data, x, y }: Props) {
  const path = line<number>()
    .digits(1)
    .defined((value) => Number.isFinite(value))
    .x((_, i) => x.place(data.x[i] as number))
    .y((value) => y.place(value));
  const styles = looks(data.series);
  const ends = data.series.flatMap((series, key) => {
    const at = series.y.findLastIndex(Number.isFinite);
    return at < 0 ? [] : [{ key, at, y: Math.max(y.place(series.y[at] as number) - 8, PAPER.top + 4) }];
  });
  const places = spread(ends, 14);
  return (
    <g>
      {data.series.map((series, i) => (
        <path key={series.label} class={styles[i]?.class} stroke-dasharray={styles[i]?.dash || undefined} d={path([...series.y]) ?? ''} />
      ))}
      {ends.map(({ key, at }) => (
        <text key={key} class="label" text-anchor="end" x={x.place(data.x[at] as number) - 3} y={places.get(key)}>
          {data.series[key]?.label}
        </text>
      ))}
    </g>
  );
}
