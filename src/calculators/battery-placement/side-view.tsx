import type { FigureProps } from '~/island/declaration.ts';
import {
  boundsOf,
  CentreLine,
  DimensionLine,
  Drawing,
  ForceArrow,
  Label,
  Line,
  Outline,
} from '~/island/drawing/index.ts';
import { CentreOfMass } from '../centre-of-mass.tsx';
import { BELL_RADIUS } from '../plan-of-craft.tsx';
import { around } from './around.ts';
import type { PlacementResult, PlacementValues } from './compute.ts';

/** Paper length of a hover arrow: an even split is drawn 34 long, so that the difference shows. */
const arrow = (share: number, even: number) => Math.min(72, Math.max(0, (34 * share) / even));

/** From the right: heights, and what each motor gives in hover. */
export function Side({ values, result, show }: FigureProps<PlacementValues, PlacementResult>) {
  const {
    forward,
    lie,
    batteryLength,
    batteryWidth,
    batteryHeight,
    bodyLength,
    bodyHeight,
    bodyDepth,
    propellerHeight,
  } = values;
  const { chosen, pack, motor } = result;
  const along = lie === 'lengthwise' ? batteryLength : batteryWidth;
  const top = bodyHeight - bodyDepth;
  const c = { x: chosen.properties.centre.x, y: chosen.properties.centre.z };
  const edge = Math.max(bodyLength / 2, motor.x + 1.8 * BELL_RADIUS);
  const bounds = boundsOf([
    ...[1, -1].flatMap((s) => [
      { x: s * edge, y: 0 },
      { x: (s * bodyLength) / 2, y: s > 0 ? top : -bodyDepth },
      { x: forward + (s * along) / 2, y: pack.centre.z + (s * batteryHeight) / 2 },
    ]),
    { x: 0, y: propellerHeight },
  ]);
  const motors = [
    { x: motor.x, share: chosen.frontShare },
    { x: -motor.x, share: chosen.rearShare },
  ];
  return (
    <Drawing
      title="The same from the right"
      description={`The centre of mass is ${show(Math.abs(chosen.heightOffset), 'length')} ${chosen.heightOffset < 0 ? 'under' : 'above'} the propellers. In hover each front motor gives ${show(chosen.frontShare, 'percent')} of its full thrust, each rear one ${show(chosen.rearShare, 'percent')}.`}
      bounds={bounds}
      height={250}
      margin={{ left: 30, right: 44, top: 56, bottom: 40 }}
      show={show}
    >
      <Outline rect={{ x: -bodyLength / 2, y: -bodyDepth, width: bodyLength, height: bodyHeight }} fill="shade" />
      <Line from={{ x: -motor.x, y: 0 }} to={{ x: motor.x, y: 0 }} />
      {motors.map(({ x, share }) => (
        <g key={x}>
          <Outline
            rect={{ x: x - BELL_RADIUS, y: 0, width: 2 * BELL_RADIUS, height: propellerHeight * 0.8 }}
            fill="paper"
          />
          <Outline
            points={[
              { x: x - 1.8 * BELL_RADIUS, y: propellerHeight },
              { x: x + 1.8 * BELL_RADIUS, y: propellerHeight },
            ]}
            open
          />
          <ForceArrow
            at={{ x, y: propellerHeight }}
            direction={{ x: 0, y: 1 }}
            length={arrow(share, (chosen.frontShare + chosen.rearShare) / 2)}
            label={show(share, 'percent')}
          />
        </g>
      ))}
      <CentreLine from={{ x: -motor.x, y: propellerHeight }} to={{ x: motor.x, y: propellerHeight }} tone="quiet" />
      <Outline rect={around({ x: forward, y: pack.centre.z }, along, batteryHeight)} tone="accent" fill="paper" />
      <Label at={{ x: forward, y: pack.centre.z + batteryHeight / 2 }} dy={-9} text="pack" tone="accent" />
      <CentreOfMass at={c} />
      <DimensionLine
        from={{ x: forward + along / 2, y: pack.centre.z - batteryHeight / 2 }}
        to={{ x: forward + along / 2, y: pack.centre.z + batteryHeight / 2 }}
        offset={-16}
        label={show(batteryHeight, 'length')}
        tone="accent"
      />
      <DimensionLine
        from={{ x: edge, y: Math.min(c.y, propellerHeight) }}
        to={{ x: edge, y: Math.max(c.y, propellerHeight) }}
        offset={-14}
        label={show(Math.abs(chosen.heightOffset), 'length')}
      />
    </Drawing>
  );
}
