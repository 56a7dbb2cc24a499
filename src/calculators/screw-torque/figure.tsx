import type { FigureProps } from '~/island/declaration.ts';
import { CentreLine, DimensionLine, Drawing, ForceArrow, Hatch, Leader, Outline } from '~/island/drawing/index.ts';
import type { ScrewResult, ScrewValues } from './compute.ts';

const PLATE = 0.002;
const FLANGE = 0.0008;
const SEAT_NAMES = { 'cap-head': 'cap head', 'button-head': 'button head', washer: 'washer' } as const;
const HOLDER_NAMES = { tapped: 'tapped part', 'press-nut': 'press nut', insert: 'insert' } as const;

interface Holder {
  /** Half of its width, of the metal that is tapped [m]. */
  half: number;
  /** From where to where it is tapped; 0 is under the head [m]. */
  top: number;
  low: number;
  /** Half of the widest part, and the lowest place drawn [m]. */
  widest: number;
  bottom: number;
}

function holderOf(values: ScrewValues, { diameter, seatDiameter, engagement }: ScrewResult): Holder {
  const low = -PLATE - engagement;
  if (values.into === 'insert') {
    const half = values.insertDiameter / 2;
    return { half, top: -PLATE, low, widest: half, bottom: low - 0.002 };
  }
  if (values.into === 'press-nut') {
    const under = Math.min(low, -2 * PLATE - FLANGE);
    return {
      half: values.nutHole / 2,
      top: under + engagement,
      low: under,
      widest: values.flangeDiameter / 2,
      bottom: under - 0.001,
    };
  }
  const half = Math.max(0.85 * diameter, 0.475 * seatDiameter);
  return { half, top: -PLATE, low, widest: half, bottom: low - 0.002 };
}

/** A cut along the screw: head or washer, plate, and below it what the screw goes into. Plates are drawn 2 mm thick. */
export function ScrewFigure({ values, result, show }: FigureProps<ScrewValues, ScrewResult>) {
  const { diameter: d, holeDiameter, seatDiameter, engagement } = result;
  const [screw, hole, seat] = [d / 2, holeDiameter / 2, seatDiameter / 2];
  const holder = holderOf(values, result);
  const loose = values.seat === 'washer';
  const head = { half: loose ? Math.min(seat, 0.95 * d) : seat, low: loose ? 0.0006 : 0 };
  const height = values.seat === 'cap-head' ? d : 0.55 * d;
  const plateHalf = Math.max(seat, holder.widest) + 0.004;
  const both = [-1, 1] as const;
  const { bottom } = holder;
  const end = values.into === 'press-nut' ? bottom : holder.low;
  // Half of a part that is cut along the middle of the screw.
  const ring = (side: 1 | -1, inner: number, outer: number, low: number, top: number) => ({
    x: side > 0 ? inner : -outer,
    y: low,
    width: outer - inner,
    height: top - low,
  });
  return (
    <Drawing
      title="Cut along the screw"
      description={`${SEAT_NAMES[values.seat]} of ${show(seatDiameter, 'length')} on a hole of ${show(holeDiameter, 'length')}, ${show(engagement, 'length')} of thread engaged in the ${HOLDER_NAMES[values.into]}, preload ${show(result.preload.nominal, 'force')}.`}
      bounds={{ left: -plateHalf, right: plateHalf, bottom, top: head.low + height }}
      height={320}
      margin={{ left: 90, right: 110, top: 44, bottom: 36 }}
      show={show}
    >
      {values.into === 'insert' && (
        <Hatch rect={{ x: -plateHalf, y: bottom, width: 2 * plateHalf, height: -PLATE - bottom }} />
      )}
      {both.map((side) => (
        <g key={side}>
          <Hatch rect={ring(side, hole, plateHalf, -PLATE, 0)} />
          {values.into === 'press-nut' && (
            <>
              <Hatch rect={ring(side, holder.half, plateHalf, -2 * PLATE, -PLATE)} />
              <Outline rect={ring(side, screw, holder.widest, -2 * PLATE - FLANGE, -2 * PLATE)} fill="shade" />
            </>
          )}
          <Outline
            rect={ring(side, screw, holder.half, values.into === 'tapped' ? bottom : holder.low, holder.top)}
            fill="shade"
          />
          {head.low > 0 && <Outline rect={ring(side, hole, seat, 0, head.low)} fill="paper" />}
        </g>
      ))}
      <Outline rect={{ x: -screw, y: end, width: d, height: head.low - end }} fill="paper" />
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
      <CentreLine from={{ x: 0, y: bottom }} to={{ x: 0, y: head.low + height }} />
      <DimensionLine
        from={{ x: -seat, y: head.low + height }}
        to={{ x: seat, y: head.low + height }}
        offset={16}
        label={show(seatDiameter, 'length')}
      />
      <DimensionLine
        from={{ x: holder.widest, y: holder.top }}
        to={{ x: holder.widest, y: holder.top - engagement }}
        offset={18}
        label={show(engagement, 'length')}
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
      <Leader
        at={{
          x: 0.0003 - holder.widest,
          y: values.into === 'press-nut' ? -2 * PLATE - FLANGE / 2 : 0.2 * holder.top + 0.8 * holder.low,
        }}
        dx={-16}
        dy={0}
        text={HOLDER_NAMES[values.into]}
      />
    </Drawing>
  );
}
