import type { FigureProps } from '~/island/declaration.ts';
import { DimensionLine, Drawing, ForceArrow, HiddenLine, Label, Outline } from '~/island/drawing/index.ts';
import { sleeveRadius } from '../arm-of-fields.ts';
import { BELL_RADIUS } from '../plan-of-craft.tsx';
import type { DropResult } from './compute.ts';
import type { DropValues } from './inputs.ts';

const BODY = { width: 0.045, height: 0.033 };
const GROUND = 0.006;
const FOOT = 0.012;

/** Which of the two arms in view touch, and how many stand behind each. */
const TOUCHES: Readonly<Record<DropValues['sharing'], readonly number[]>> = {
  four: [-1, 1],
  across: [-1, 1],
  end: [1],
  one: [1],
};

/** The craft from behind at the moment of touching, and what presses on it. */
export function FlatDropFigure({ values, result, show }: FigureProps<DropValues, DropResult>) {
  const { armLength: L, lands, sharing, feet, shape, outerDiameter, height } = values;
  const { each, supports, arm } = result;
  const inner = sleeveRadius(arm);
  const thick = shape === 'tube' ? outerDiameter : height;
  const tips = lands === 'tips';
  const reach = BODY.width / 2 + L;
  const floor = tips ? 0 : -FOOT;
  const places = tips ? TOUCHES[sharing].map((side) => side * reach) : feet > 1 ? [-0.016, 0.016] : [0];
  const arrow = Math.min(60, 16 + 1.6 * Math.sqrt(each));
  return (
    <Drawing
      title="The craft at the moment of touching"
      description={`Falls ${show(values.dropHeight, 'altitude')} and presses with ${show(each, 'force')} on each of ${show(supports.count, 'count')}.`}
      bounds={{ left: -reach - BELL_RADIUS, right: reach + BELL_RADIUS, bottom: floor - GROUND, top: thick + 0.024 }}
      height={230}
      margin={{ left: 24, right: 24, top: 20, bottom: 100 }}
      show={show}
    >
      {[-1, 1].map((side) => (
        <g key={side}>
          <Outline
            rect={{ x: side > 0 ? BODY.width / 2 : -reach - BELL_RADIUS, y: 0, width: L + BELL_RADIUS, height: thick }}
            fill="shade"
          />
          {arm.doubled > 0 && (
            <HiddenLine
              rect={{
                x: side > 0 ? BODY.width / 2 : -BODY.width / 2 - arm.doubled,
                y: thick / 2 - inner,
                width: arm.doubled,
                height: 2 * inner,
              }}
            />
          )}
          <Outline
            rect={{ x: side * reach - BELL_RADIUS, y: thick, width: 2 * BELL_RADIUS, height: 0.018 }}
            fill="paper"
          />
        </g>
      ))}
      <Outline
        rect={{ x: -BODY.width / 2, y: tips ? -0.001 : 0, width: BODY.width, height: BODY.height }}
        fill="paper"
      />
      {places.map((x) => (
        <g key={x}>
          {!tips && <Outline rect={{ x: x - 0.004, y: -FOOT, width: 0.008, height: FOOT }} fill="shade" />}
          <Outline rect={{ x: x - 0.012, y: floor - GROUND, width: 0.024, height: GROUND }} fill="hatch" />
          <ForceArrow
            at={{ x, y: floor - GROUND }}
            direction={{ x: 0, y: 1 }}
            length={arrow}
            label={show(each, 'force')}
            pushes
          />
        </g>
      ))}
      <Label at={{ x: 0, y: BODY.height }} dy={10} text={`falls ${show(values.dropHeight, 'altitude')}`} tone="quiet" />
      <DimensionLine
        from={{ x: BODY.width / 2, y: floor - GROUND }}
        to={{ x: reach, y: floor - GROUND }}
        offset={-16}
        label={show(L, 'length')}
      />
    </Drawing>
  );
}
