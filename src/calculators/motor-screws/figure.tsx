import {
  CentreLine,
  DimensionLine,
  Drawing,
  ForceArrow,
  Hatch,
  HiddenLine,
  Label,
  Leader,
  Outline,
} from '~/island/drawing/index.ts';
import type { FigureProps } from '~/island/declaration.ts';
import type { ScrewResult } from './compute.ts';
import type { ScrewValues } from './inputs.ts';

const WINDING = 0.003;

/** Left the motor's foot from above, right a cut across the tube with both kinds of screw. */
export function MotorScrewsFigure({ values, result, show }: FigureProps<ScrewValues, ScrewResult>) {
  const { along, across, diameter: d, headDiameter, headHeight, holeDiameter, fit, grip, mine } = result;
  const foot = values.baseDiameter / 2;
  const radius = values.outerDiameter / 2;
  const wide = Math.max(foot, radius, across / 2 + headDiameter / 2);
  const middle = foot + wide + 0.009;
  const face = 0;
  const tubeAxis = -values.plateThickness - radius;
  const inUse = (x: number, y: number) => mine.places.some((place) => Math.hypot(place.x - x, place.y - y) < 1e-9);
  const holes = [
    { x: along / 2, y: 0 },
    { x: -along / 2, y: 0 },
    { x: 0, y: across / 2 },
    { x: 0, y: -across / 2 },
  ];
  const planMiddle = tubeAxis + radius / 2;
  const screw = (x: number, under: number, reach: number, tone: 'ink' | 'bad') => (
    <g>
      <Outline rect={{ x: x - d / 2, y: -under, width: d, height: under + reach }} fill="paper" tone={tone} />
      <Outline
        rect={{
          x: x - headDiameter / 2,
          y: -under - headHeight,
          width: headDiameter,
          height: headHeight,
          cornerRadius: values.head === 'button' ? 0.2 * d : 0,
        }}
        fill="paper"
        tone={tone}
      />
    </g>
  );
  const tone = (room: number) => (room < 5e-4 - 1e-9 ? 'bad' : 'ink');
  const tall = values.windingDepth + WINDING;
  return (
    <Drawing
      title="Motor screws from above, and cut across the tube"
      description={`Pairs ${show(along, 'length')} along and ${show(across, 'length')} across the arm. Worst shear ${show(mine.shear, 'force')}, worst pull ${show(mine.tension, 'force')}. ${show(result.room, 'length')} before the winding.`}
      bounds={{
        left: -foot,
        right: middle + wide,
        bottom: Math.min(tubeAxis - radius - headHeight, planMiddle - foot),
        top: Math.max(tall, planMiddle + foot),
      }}
      height={270}
      margin={{ left: 20, right: 74, top: 40, bottom: 54 }}
      show={show}
    >
      <g>
        <Outline
          rect={{ x: -foot - 0.003, y: planMiddle - radius, width: 2 * foot + 0.006, height: 2 * radius }}
          fill="shade"
          line="thin"
        />
        <Outline circle={{ x: 0, y: planMiddle, radius: foot }} />
        <CentreLine from={{ x: -foot, y: planMiddle }} to={{ x: foot, y: planMiddle }} />
        <CentreLine from={{ x: 0, y: planMiddle - foot }} to={{ x: 0, y: planMiddle + foot }} />
        {holes.map(({ x, y }) => {
          const circle = { x, y: planMiddle + y, radius: holeDiameter / 2 };
          return inUse(x, y) ? (
            <g key={`${x} ${y}`}>
              <Outline circle={circle} fill="paper" />
              <ForceArrow
                at={{ x, y: planMiddle + y }}
                direction={{ x: -y, y: x }}
                length={Math.min(40, 10 + 1.2 * Math.sqrt(mine.shear))}
              />
            </g>
          ) : (
            <HiddenLine key={`${x} ${y}`} circle={circle} tone="quiet" />
          );
        })}
        <Label at={{ x: 0, y: planMiddle + foot }} dy={14} text={`shear ${show(mine.shear, 'force')}`} tone="accent" />
        <DimensionLine
          from={{ x: -along / 2, y: planMiddle - foot }}
          to={{ x: along / 2, y: planMiddle - foot }}
          offset={-18}
          label={show(along, 'length')}
        />
      </g>
      <g>
        <Outline circle={{ x: middle, y: tubeAxis, radius }} fill="shade" />
        <Outline circle={{ x: middle, y: tubeAxis, radius: radius - values.wall }} fill="paper" line="thin" />
        <Hatch
          rect={{ x: middle - foot, y: face + values.windingDepth, width: 2 * foot, height: WINDING }}
          tone="bad"
        />
        <Outline rect={{ x: middle - foot, y: face, width: 2 * foot, height: values.threadDepth }} fill="shade" />
        <Outline
          rect={{ x: middle - wide, y: -values.plateThickness, width: 2 * wide, height: values.plateThickness }}
          fill="shade"
        />
        {fit.through && screw(middle, grip.through, fit.through.reach, tone(fit.through.room))}
        {fit.beside && screw(middle + across / 2, grip.beside, fit.beside.reach, tone(fit.beside.room))}
        {fit.beside && screw(middle - across / 2, grip.beside, fit.beside.reach, tone(fit.beside.room))}
        <Leader
          at={{ x: middle + foot, y: face + values.windingDepth + WINDING / 2 }}
          dx={12}
          dy={10}
          text="winding"
          tone="bad"
        />
        <Leader at={{ x: middle + foot, y: face + values.threadDepth / 2 }} dx={12} dy={-4} text="thread" />
        <Leader at={{ x: middle + wide, y: -values.plateThickness / 2 }} dx={10} dy={-22} text="plate" />
        <DimensionLine
          from={{ x: middle - across / 2, y: tubeAxis - radius }}
          to={{ x: middle + across / 2, y: tubeAxis - radius }}
          offset={-24}
          label={show(across, 'length')}
        />
      </g>
    </Drawing>
  );
}
