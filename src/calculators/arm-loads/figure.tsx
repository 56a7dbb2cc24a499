import type { FigureProps } from '~/island/declaration.ts';
import {
  boundsOf,
  CentreLine,
  DimensionLine,
  Drawing,
  ForceArrow,
  HiddenLine,
  Label,
  Outline,
  type Point,
} from '~/island/drawing/index.ts';
import { CentreOfMass } from '../centre-of-mass.tsx';
import { BELL_RADIUS, PlanOfCraft } from '../plan-of-craft.tsx';
import { sleeveRadius } from '../arm-of-fields.ts';
import type { LoadResult } from './compute.ts';
import type { LoadValues } from './inputs.ts';

/** Paper length of an arrow: the root keeps a branch visible beside concrete. */
const arrow = (force: number): number => Math.min(84, 18 + 1.6 * Math.sqrt(force));

/** From above: where the two blows in the plane of the propellers land. */
function Plan({ values, result, show }: FigureProps<LoadValues, LoadResult>) {
  const { motor, strikes, craft } = result;
  const reach = Math.hypot(motor.x, motor.y);
  const out = { x: motor.x / reach, y: motor.y / reach };
  const across = { x: out.y, y: -out.x };
  const at = (along: number, side: number): Point => ({
    x: motor.x + along * out.x + side * across.x,
    y: motor.y + along * out.y + side * across.y,
  });
  const corners = [1, -1].flatMap((s) => [
    { x: s * (motor.x + BELL_RADIUS), y: s * (motor.y + BELL_RADIUS) },
    { x: (s * values.bodyLength) / 2, y: (s * values.bodyWidth) / 2 },
  ]);
  return (
    <Drawing
      title="The craft from above, nose to the right"
      description={`Sideways ${show(strikes.sideways.peakForce, 'force')}, along the arm ${show(strikes.along.peakForce, 'force')}.`}
      bounds={boundsOf(corners)}
      height={340}
      margin={{ left: 70, right: 96, top: 96, bottom: 44 }}
      show={show}
    >
      <PlanOfCraft values={values} motor={motor} />
      <CentreLine from={{ x: -motor.x, y: -motor.y }} to={motor} tone="quiet" />
      <CentreOfMass at={craft.centre} />
      <ForceArrow
        at={at(BELL_RADIUS, 0)}
        direction={{ x: -out.x, y: -out.y }}
        length={arrow(strikes.along.peakForce)}
        label={show(strikes.along.peakForce, 'force')}
        pushes
      />
      <ForceArrow
        at={at(0, -BELL_RADIUS)}
        direction={across}
        length={arrow(strikes.sideways.peakForce)}
        label={show(strikes.sideways.peakForce, 'force')}
        pushes
      />
      <DimensionLine
        from={{ x: 0, y: 0 }}
        to={{ x: motor.x, y: -motor.y }}
        offset={-30}
        label={show(reach, 'length')}
      />
      <Label at={{ x: motor.x, y: 0 }} dx={22} dy={10} text="nose" tone="quiet" />
    </Drawing>
  );
}

/** The struck arm from the side: the blow up or down, and the height of the other two. */
function Side({ values, result, show }: FigureProps<LoadValues, LoadResult>) {
  const { armLength: L, hitHeight, propellerHeight } = values;
  const { strikes, arm } = result;
  const half = arm.section.vertical.extremeFibre;
  const inner = sleeveRadius(arm);
  const bell = Math.max(0.8 * propellerHeight, half);
  const bounds = {
    left: -0.02,
    right: L + BELL_RADIUS,
    bottom: Math.min(-half, hitHeight),
    top: Math.max(bell, hitHeight),
  };
  return (
    <Drawing
      title="The struck arm from the side"
      description={`Up or down ${show(strikes.vertical.peakForce, 'force')}; the others ${show(hitHeight, 'length')} above the axis.`}
      bounds={bounds}
      height={230}
      margin={{ left: 20, right: 96, top: 92, bottom: 44 }}
      show={show}
    >
      <Outline rect={{ x: -0.02, y: -half, width: 0.02, height: 2 * half }} fill="hatch" />
      <Outline rect={{ x: 0, y: -half, width: L + BELL_RADIUS, height: 2 * half }} fill="shade" />
      {arm.doubled > 0 && <HiddenLine rect={{ x: -0.02, y: -inner, width: 0.02 + arm.doubled, height: 2 * inner }} />}
      <Outline
        rect={{ x: L - BELL_RADIUS, y: half, width: 2 * BELL_RADIUS, height: Math.max(bell - half, 0) }}
        fill="paper"
      />
      <CentreLine from={{ x: -0.02, y: 0 }} to={{ x: L + BELL_RADIUS, y: 0 }} />
      <CentreLine from={{ x: L, y: -half }} to={{ x: L, y: bell }} />
      <ForceArrow
        at={{ x: L, y: Math.max(bell, half) }}
        direction={{ x: 0, y: -1 }}
        length={Math.min(64, arrow(strikes.vertical.peakForce))}
        label={show(strikes.vertical.peakForce, 'force')}
        pushes
      />
      <ForceArrow
        at={{ x: L + BELL_RADIUS, y: hitHeight }}
        direction={{ x: -1, y: 0 }}
        length={30}
        label={show(strikes.along.peakForce, 'force')}
        pushes
      />
      <DimensionLine from={{ x: 0, y: -half }} to={{ x: L, y: -half }} offset={-20} label={show(L, 'length')} />
      {hitHeight !== 0 && (
        <DimensionLine
          from={{ x: L - BELL_RADIUS, y: Math.min(0, hitHeight) }}
          to={{ x: L - BELL_RADIUS, y: Math.max(0, hitHeight) }}
          offset={14}
          label={show(Math.abs(hitHeight), 'length')}
        />
      )}
    </Drawing>
  );
}

export function ArmLoadsFigure(props: FigureProps<LoadValues, LoadResult>) {
  return (
    <>
      <Plan {...props} />
      <Side {...props} />
    </>
  );
}
