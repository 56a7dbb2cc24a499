import type { FigureProps } from '~/island/declaration.ts';
import { boundsOf, CentreLine, DimensionLine, Drawing, Label, Outline } from '~/island/drawing/index.ts';
import { CentreOfMass } from '../centre-of-mass.tsx';
import { BELL_RADIUS, PlanOfCraft } from '../plan-of-craft.tsx';
import { around } from './around.ts';
import type { PlacementResult, PlacementValues } from './compute.ts';

/** From above: arms, motors, body, the pack and the centre of mass. */
export function Plan({ values, result, show }: FigureProps<PlacementValues, PlacementResult>) {
  const { forward, lie, batteryLength, batteryWidth } = values;
  const { chosen, motor } = result;
  const [along, across] = lie === 'lengthwise' ? [batteryLength, batteryWidth] : [batteryWidth, batteryLength];
  const c = { x: chosen.forwardOffset, y: 0 };
  const corners = [1, -1].flatMap((s) => [
    { x: s * (motor.x + BELL_RADIUS), y: s * (motor.y + BELL_RADIUS) },
    { x: (s * values.bodyLength) / 2, y: (s * values.bodyWidth) / 2 },
    { x: forward + (s * along) / 2, y: (s * across) / 2 },
  ]);
  return (
    <Drawing
      title="The craft from above, nose to the right"
      description={`The pack lies ${lie}, its middle ${show(forward, 'length')} ahead of the motors’ middle; the centre of mass is ${show(c.x, 'length')} ahead of it.`}
      bounds={boundsOf(corners)}
      height={330}
      margin={{ left: 44, right: 44, top: 34, bottom: 48 }}
      show={show}
    >
      <PlanOfCraft values={values} motor={motor} />
      <CentreLine from={{ x: -motor.x, y: 0 }} to={{ x: motor.x, y: 0 }} />
      <CentreLine from={{ x: 0, y: -motor.y }} to={{ x: 0, y: motor.y }} />
      <Outline rect={around({ x: forward, y: 0 }, along, across)} tone="accent" />
      <DimensionLine
        from={{ x: forward - along / 2, y: across / 2 }}
        to={{ x: forward + along / 2, y: across / 2 }}
        offset={16}
        label={show(along, 'length')}
        tone="accent"
      />
      <DimensionLine
        from={{ x: -motor.x, y: motor.y }}
        to={{ x: motor.x, y: motor.y }}
        offset={30}
        label={show(2 * motor.x, 'length')}
      />
      <DimensionLine
        from={{ x: -motor.x, y: -motor.y }}
        to={{ x: -motor.x, y: motor.y }}
        offset={34}
        label={show(2 * motor.y, 'length')}
      />
      {forward !== 0 && (
        <DimensionLine
          from={{ x: Math.min(0, forward), y: -across / 2 }}
          to={{ x: Math.max(0, forward), y: -across / 2 }}
          offset={-20}
          label={show(Math.abs(forward), 'length')}
          tone="accent"
        />
      )}
      <CentreOfMass at={c} />
      <Label at={{ x: motor.x, y: 0 }} dx={20} dy={10} text="nose" tone="quiet" />
    </Drawing>
  );
}
