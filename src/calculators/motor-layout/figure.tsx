import type { FigureProps } from '~/island/declaration.ts';
import { CentreLine, DimensionLine, Drawing, Label, Outline, type Point } from '~/island/drawing/index.ts';
import type { LayoutResult, LayoutValues } from './compute.ts';

/** Plan from above, front at the top: body, arms, motors and the circles that the tips run on. */
export function MotorLayoutFigure({ values, result, show }: FigureProps<LayoutValues, LayoutResult>) {
  const { layout, outline, body, freeLength } = result;
  const radius = values.propellerDiameter / 2;
  const [x, y] = [layout.lateralSpacing / 2, layout.longitudinalSpacing / 2];
  const reach = Math.hypot(x, y);
  const at = (motor: Point, distance: number): Point => ({
    x: (motor.x / reach) * distance,
    y: (motor.y / reach) * distance,
  });
  const [, frontLeft, rearLeft] = layout.motors as [Point, Point, Point, Point];
  const room = {
    left: -Math.max(x + radius, values.bodyWaist / 2),
    bottom: -Math.max(y + radius, values.bodyLength / 2),
  };
  const crossing = layout.overlap > 0;
  return (
    <Drawing
      title="Motor layout, from above"
      description={`Wheelbase ${show(layout.wheelbase, 'length')}, gaps ${show(layout.lateralGap, 'length')} from side to side and ${show(layout.longitudinalGap, 'length')} fore and aft, arms ${show(freeLength, 'length')} free${crossing ? ', propeller circles overlap' : ''}.`}
      bounds={{ left: room.left, right: -room.left, bottom: room.bottom, top: -room.bottom }}
      height={430}
      margin={{ left: 46, right: 52, top: 52, bottom: 46 }}
      show={show}
    >
      {layout.motors.map((motor, i) => (
        <Outline
          key={i}
          circle={{ ...motor, radius }}
          line={crossing ? 'hidden' : 'thin'}
          tone={crossing ? 'warn' : 'ink'}
        />
      ))}
      <CentreLine from={{ x: 0, y: room.bottom }} to={{ x: 0, y: -room.bottom }} tone="quiet" />
      <Outline points={outline} fill="shade" tone={body.clearance < 0 ? 'bad' : 'ink'} />
      {layout.motors.map((motor, i) => (
        <g key={i}>
          <Outline points={[at(motor, values.rootDistance), motor]} open />
          <Outline circle={{ ...at(motor, values.rootDistance), radius: 0.0016 }} fill="paper" />
          <Outline circle={{ ...motor, radius: radius * 0.17 }} fill="paper" />
        </g>
      ))}
      <DimensionLine
        from={{ x: -x, y: -room.bottom }}
        to={{ x, y: -room.bottom }}
        offset={20}
        label={show(layout.lateralSpacing, 'length')}
      />
      <DimensionLine
        from={{ x: -Math.abs(x - radius), y }}
        to={{ x: Math.abs(x - radius), y }}
        offset={0.01}
        label={show(layout.lateralGap, 'length')}
        tone="accent"
      />
      <DimensionLine
        from={{ x, y: Math.abs(y - radius) }}
        to={{ x, y: -Math.abs(y - radius) }}
        offset={0.01}
        label={show(layout.longitudinalGap, 'length')}
        tone="accent"
      />
      <DimensionLine
        from={at(frontLeft, values.rootDistance)}
        to={frontLeft}
        offset={-16}
        label={`L ${show(freeLength, 'length')}`}
      />
      <DimensionLine from={rearLeft} to={{ x, y }} offset={12} label={show(layout.wheelbase, 'length')} />
      {body.clearance < 0 && (
        <Label at={{ x: 0, y: -values.bodyLength / 2 }} dx={0} dy={-12} text="body under propeller" tone="bad" />
      )}
      <Label at={{ x: 0, y: -room.bottom }} dx={0} dy={-10} text="front" tone="quiet" />
    </Drawing>
  );
}
