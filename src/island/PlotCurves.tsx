import type { PlotData, Series } from './declaration.ts';
import { type Axis, PAPER, spread } from './plot-frame.ts';

/** Height of a line of text. */
const ROOM = 14;
/** Tell lines apart without colour. */
export const DASHES = ['', '8 4', '2 3', '10 3 2 3'];

/** Class and dash of each series: the dash tells them apart without colour. */
export function looks(series: readonly Series[]): { class: string; dash: string }[] {
  let drawn = 0;
  return series.map(({ role = 'main' }) => ({
    class: `curve ${role}`,
    dash: role === 'limit' ? '5 3' : (DASHES[drawn++ % DASHES.length] as string),
  }));
}

/** Straight pieces between the points; one that is not a number breaks the line. A library for it would be a tenth of the script. */
function curve(values: readonly number[], data: PlotData, x: Axis, y: Axis): string {
  const moves = (i: number) => !Number.isFinite(values[i - 1]);
  return values
    .map((value, i) =>
      Number.isFinite(value) ? `${moves(i) ? 'M' : 'L'}${x.place(data.x[i] as number)} ${y.place(value)}` : '',
    )
    .join('');
}

interface Props {
  data: PlotData;
  x: Axis;
  y: Axis;
}

/** The series, each named at its right end. */
export function PlotCurves({ data, x, y }: Props) {
  const styles = looks(data.series);
  const ends = data.series.flatMap((series, key) => {
    const at = series.y.findLastIndex(Number.isFinite);
    if (at < 0) return [];
    const end = y.place(series.y[at] as number);
    return [{ key, at, y: end < PAPER.top + ROOM ? end + ROOM : end - 7 }];
  });
  const places = spread(ends, ROOM);
  return (
    <g>
      {data.series.map((series, i) => (
        <path
          key={series.label}
          class={styles[i]?.class}
          stroke-dasharray={styles[i]?.dash || undefined}
          d={curve(series.y, data, x, y)}
        />
      ))}
      {ends.map(({ key, at }) => (
        <text key={key} class="label" text-anchor="end" x={x.place(data.x[at] as number) - 3} y={places.get(key)}>
          {data.series[key]?.label}
        </text>
      ))}
    </g>
  );
}
