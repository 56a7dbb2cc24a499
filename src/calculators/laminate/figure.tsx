import { CentreLine, DimensionLine, Drawing, Label, Line, Outline, type Fill } from '~/island/drawing/index.ts';
import type { FigureProps } from '~/island/declaration.ts';
import type { LaminateResult } from './compute.ts';
import type { LaminateValues } from './inputs.ts';

interface Run {
  name: string;
  count: number;
  from: number;
  to: number;
}

const FILLS: Readonly<Record<string, Fill>> = { '0°': 'hatch', '90°': 'paper' };

/** Neighbouring plies of one kind; +45° and −45° side by side are one run. */
function runs({ plies, faces }: LaminateResult): Run[] {
  const found: Run[] = [];
  plies.forEach((ply, k) => {
    const degrees = Math.round((ply.angle * 180) / Math.PI);
    const own = degrees === 45 ? '+45°' : degrees === -45 ? '−45°' : `${degrees}°`;
    const last = found.at(-1);
    const skew = own.endsWith('45°');
    if (last && (last.name === own || (skew && last.name.endsWith('45°')))) {
      if (last.name !== own) last.name = '±45°';
      last.count++;
      last.to = faces[k + 1]!;
    } else found.push({ name: own, count: 1, from: faces[k]!, to: faces[k + 1]! });
  });
  return found;
}

/** The stack cut across, to scale: every ply a band, its kind beside it. */
export function Figure({ result, show }: FigureProps<LaminateValues, LaminateResult>) {
  const { thickness: h } = result.stiffness;
  const width = 1.5 * h;
  const all = runs(result);
  const text = ({ name, count }: Run) => `${count} × ${name}`;
  const labelAt = (i: number) => (all.length === 1 ? 0 : h / 2 - (h * (all.length - 1 - i)) / (all.length - 1));
  return (
    <Drawing
      title="Stack of plies, cut across"
      description={`${result.plies.length} plies, ${show(h, 'length')} thick; from the lower face: ${all.map(text).join(', ')}.`}
      bounds={{ left: 0, right: width, bottom: -h / 2, top: h / 2 }}
      height={260}
      margin={{ left: 70, right: 120, top: 28, bottom: 34 }}
      show={show}
    >
      {all.map((run) => (
        <Outline
          key={run.from}
          rect={{ x: 0, y: run.from, width, height: run.to - run.from }}
          fill={FILLS[run.name] ?? 'shade'}
          line="thin"
        />
      ))}
      {result.faces.slice(1, -1).map((z) => (
        <Line key={z} from={{ x: 0, y: z }} to={{ x: width, y: z }} tone="quiet" />
      ))}
      <Outline rect={{ x: 0, y: -h / 2, width, height: h }} />
      <CentreLine from={{ x: 0, y: 0 }} to={{ x: width, y: 0 }} />
      {all.map((run, i) => (
        <g key={run.from}>
          <Line from={{ x: width, y: (run.from + run.to) / 2 }} to={{ x: 1.12 * width, y: labelAt(i) }} tone="quiet" />
          <Label at={{ x: 1.12 * width, y: labelAt(i) }} dx={6} align="start" text={text(run)} />
        </g>
      ))}
      <DimensionLine from={{ x: 0, y: -h / 2 }} to={{ x: 0, y: h / 2 }} offset={30} label={show(h, 'length')} />
    </Drawing>
  );
}
