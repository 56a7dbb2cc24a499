import type { FigureProps } from '~/island/declaration.ts';
import { CentreLine, DimensionLine, Drawing, ForceArrow, Hatch, Leader, Outline } from '~/island/drawing/index.ts';
import type { ScrewResult, ScrewValues } from './compute.ts';

const PLATE = 0.002;
const SEAT_NAMES = {
  'cap-head': 'cap head',
  'button-head': 'button head',
  washer: 'washer',
  'press-nut': 'flange of the press nut',
} as const;

/** A cut along the screw: head or washer, plate, tapped part below it. The plate is drawn 2 mm thick. */
export function ScrewFigure({ values, result, show }: FigureProps<ScrewValues, ScrewResult>) {
  const { diameter: d, holeDiameter, seatDiameter } = result;
  const [screw, hole, seat] = [d / 2, holeDiameter / 2, seatDiameter / 2];
  const tapped = Math.max(0.85 * d, seat * 0.95);
  const depth = values.engagement + 0.002;
  const loose = values.seat === 'washer' || values.seat === 'press-nut';
  const head = { half: loose ? Math.min(seat, 0.95 * d) : seat, low: loose ? 0.0006 : 0 };
  const height = values.seat === 'cap-head' ? d : 0.55 * d;
  const plateHalf = seat + 0.004;
  const both = [-1, 1] as const;
  return (
    <Drawing
      title="Cut along the screw"
      description={`${SEAT_NAMES[values.seat]} of ${show(seatDiameter, 'length')} on a hole of ${show(holeDiameter, 'length')}, ${show(values.engagement, 'length')} of thread engaged, preload ${show(result.preload.nominal, 'force')}.`}
      bounds={{ left: -plateHalf, right: plateHalf, bottom: -PLATE - depth, top: head.low + height }}
      height={320}
      margin={{ left: 90, right: 110, top: 44, bottom: 36 }}
      show={show}
    >
      {both.map((side) => (
        <g key={side}>
          <Hatch rect={{ x: side > 0 ? hole : -plateHalf, y: -PLATE, width: plateHalf - hole, height: PLATE }} />
          <Outline
            rect={{ x: side > 0 ? screw : -tapped, y: -PLATE - depth, width: tapped - screw, height: depth }}
            fill="shade"
          />
          {head.low > 0 && (
            <Outline rect={{ x: side > 0 ? hole : -seat, y: 0, width: seat - hole, height: head.low }} fill="paper" />
          )}
        </g>
      ))}
      <Outline
        rect={{ x: -screw, y: -PLATE - values.engagement, width: d, height: PLATE + values.engagement + head.low }}
        fill="paper"
      />
      <Outline
        rect={{
          x: -head.half,
          y: head.low,
          width: 2 * head.half,
          height,
          cornerRadius: values.seat === 'cap-head' ? 0 : 0.2 * d,
        }}
        fill="paper"
      />
      <CentreLine from={{ x: 0, y: -PLATE - depth }} to={{ x: 0, y: head.low + height }} />
      <DimensionLine
        from={{ x: -seat, y: head.low + height }}
        to={{ x: seat, y: head.low + height }}
        offset={16}
        label={show(seatDiameter, 'length')}
      />
      <DimensionLine
        from={{ x: tapped, y: -PLATE }}
        to={{ x: tapped, y: -PLATE - values.engagement }}
        offset={18}
        label={show(values.engagement, 'length')}
      />
      <ForceArrow at={{ x: -(seat + hole) / 2, y: 0 }} direction={{ x: 0, y: -1 }} length={34} pushes />
      <Leader
        at={{ x: -(seat + hole) / 2, y: head.low / 2 }}
        dx={-34}
        dy={30}
        text={show(result.preload.nominal, 'force')}
        tone="accent"
      />
      <Leader at={{ x: plateHalf - 0.001, y: -PLATE / 2 }} dx={16} dy={22} text="plate" />
      <Leader at={{ x: -tapped + 0.0003, y: -PLATE - depth * 0.8 }} dx={-16} dy={0} text="tapped part" />
    </Drawing>
  );
}
