import type { FigureProps } from '~/island/declaration.ts';
import { boundsOf, CentreLine, DimensionLine, Drawing, Leader, Outline } from '~/island/drawing/index.ts';
import { BELL_RADIUS, PlanOfCraft } from '../plan-of-craft.tsx';
import type { GramResult, GramValues } from './compute.ts';

/** The craft from above with the added grams on its arms. */
export function GramAtTipFigure({ values, result, show }: FigureProps<GramValues, GramResult>) {
  const { motor, here } = result;
  const { reach, added } = values;
  const at = { x: motor.x * reach, y: motor.y * reach };
  const out = Math.max(1, reach);
  const corners = [1, -1].flatMap((s) => [
    { x: s * (motor.x * out + BELL_RADIUS), y: s * (motor.y * out + BELL_RADIUS) },
    { x: (s * values.bodyLength) / 2, y: (s * values.bodyWidth) / 2 },
  ]);
  return (
    <Drawing
      title="Added grams from above, nose to the right"
      description={`${show(added, 'mass')} on each arm, ${show(at.y, 'length')} from the roll axis, cost ${show(here.roll, 'percent')} of the roll acceleration.`}
      bounds={boundsOf(corners)}
      height={310}
      margin={{ left: 50, right: 74, top: 34, bottom: 40 }}
      show={show}
    >
      <PlanOfCraft values={values} motor={motor} />
      <CentreLine from={{ x: -motor.x, y: 0 }} to={{ x: motor.x, y: 0 }} />
      {[
        [1, 1],
        [1, -1],
        [-1, -1],
        [-1, 1],
      ].map(([sx = 1, sy = 1]) => (
        <Outline key={`${sx}${sy}`} circle={{ x: sx * at.x, y: sy * at.y, radius: 0.004 }} tone="accent" fill="hatch" />
      ))}
      <Leader at={at} dx={34} dy={6} text={show(added, 'mass')} tone="accent" />
      {at.y > 0.002 && (
        <DimensionLine from={{ x: -at.x, y: 0 }} to={{ x: -at.x, y: at.y }} offset={44} label={show(at.y, 'length')} />
      )}
    </Drawing>
  );
}
