import type { FigureProps } from '~/island/declaration.ts';
import {
  CentreLine,
  DimensionLine,
  Drawing,
  HiddenLine,
  Label,
  Line,
  Outline,
  type Point,
} from '~/island/drawing/index.ts';
import { cutRing } from '../cut-ring.ts';
import type { NotchResult } from './compute.ts';
import type { NotchValues } from './inputs.ts';

/** Outline of the tube seen onto the slot, from the cut inwards round the slot: x outwards from the motor axis. */
function slotted(values: NotchValues, cut: number): Point[] {
  const { tubePast, slotReach, slotWidth } = values;
  const half = values.outerDiameter / 2;
  const radius = slotWidth / 2;
  const middle = -slotReach + radius;
  const round = Array.from({ length: 25 }, (_, i) => {
    const angle = Math.PI / 2 + (Math.PI * i) / 24;
    return { x: Math.min(tubePast, middle + radius * Math.cos(angle)), y: radius * Math.sin(angle) };
  });
  return [
    { x: cut, y: half },
    { x: tubePast, y: half },
    { x: tubePast, y: radius },
    ...round,
    { x: tubePast, y: -radius },
    { x: tubePast, y: -half },
    { x: cut, y: -half },
  ];
}

/** Centres of the wires, in rows from the inner end of the slot. */
function wires(values: NotchValues, { wires: { abreast, rows, bundle } }: NotchResult): Point[] {
  const d = values.wireDiameter;
  const first = -values.slotReach + bundle - (rows - 0.5) * d;
  return Array.from({ length: Math.ceil(values.wireCount) }, (_, i) => {
    const row = Math.floor(i / abreast);
    const inRow = Math.min(abreast, Math.ceil(values.wireCount) - row * abreast);
    return { x: first + row * d, y: ((i % abreast) - (inRow - 1) / 2) * d };
  });
}

/** The slot from where it faces, the scrape from the side, and the open section. */
export function TipNotchFigure({ values, result, show }: FigureProps<NotchValues, NotchResult>) {
  const { tubePast, slotReach, mountGrip, outerDiameter: D, wall, slotWidth, proud, scrapeAngle } = values;
  const half = D / 2;
  const cut = -Math.max(slotReach, mountGrip, 0) - 0.012;
  const edge = -slotReach + result.wires.bundle;
  const { standPast, needed } = result.wires;
  const safe = standPast >= needed;
  const rise = Math.min(0.012, Math.tan(scrapeAngle) * (tubePast - cut));
  const run = rise / Math.tan(scrapeAngle);
  const centre = tubePast + 0.012 + half;
  const faces = values.slotFaces === 'vertical' ? 'from above or below' : 'from its side';
  const tall = Math.max(proud, 0);
  return (
    <>
      <Drawing
        title={`Tube end, seen ${faces}`}
        description={`Slot ${show(slotWidth, 'length')} wide, reaching ${show(slotReach, 'length')} inwards of the motor axis. The tube stands ${show(standPast, 'length')} past the wires and needs ${show(needed, 'length')}.`}
        bounds={{ left: cut, right: tubePast, bottom: -half, top: half }}
        height={230}
        margin={{ left: 30, right: 60, top: 54, bottom: 62 }}
        show={show}
      >
        <Outline points={slotted(values, cut)} open fill="shade" />
        {wires(values, result).map(({ x, y }) => (
          <Outline
            key={`${x},${y}`}
            circle={{ x, y, radius: values.wireDiameter / 2 }}
            line="thin"
            fill="paper"
            tone="accent"
          />
        ))}
        <HiddenLine
          points={[
            { x: -mountGrip, y: -half },
            { x: -mountGrip, y: half },
          ]}
          open
        />
        <Label at={{ x: -mountGrip, y: -half }} dx={-4} dy={-10} align="end" text="mount to here" tone="quiet" />
        <CentreLine from={{ x: 0, y: -half }} to={{ x: 0, y: half }} />
        {slotReach > 0 && (
          <DimensionLine
            from={{ x: -slotReach, y: half }}
            to={{ x: 0, y: half }}
            offset={26}
            label={show(slotReach, 'length')}
          />
        )}
        {standPast > 0 && (
          <DimensionLine
            from={{ x: edge, y: -half }}
            to={{ x: tubePast, y: -half }}
            offset={-36}
            label={show(standPast, 'length')}
            tone={safe ? 'good' : 'bad'}
          />
        )}
      </Drawing>
      <Drawing
        title="Scrape, slot upwards, and the open section"
        description={`An obstacle at ${show(scrapeAngle, 'angle')} that touches the end of the tube ${safe ? 'clears' : 'meets'} the wires.`}
        bounds={{ left: cut, right: centre + half, bottom: -half, top: half + Math.max(rise, tall) }}
        height={210}
        margin={{ left: 30, right: 24, top: 30, bottom: 40 }}
        show={show}
      >
        <Outline
          points={[
            { x: cut, y: half },
            { x: tubePast, y: half },
            { x: tubePast, y: -half },
            { x: cut, y: -half },
          ]}
          open
          fill="shade"
        />
        <Outline
          rect={{ x: -slotReach, y: half - wall, width: result.wires.bundle, height: wall + tall }}
          fill="paper"
          tone="accent"
        />
        <Line from={{ x: tubePast, y: half }} to={{ x: tubePast - run, y: half + rise }} tone={safe ? 'good' : 'bad'} />
        <Label
          at={{ x: tubePast - run / 2, y: half + rise / 2 }}
          dx={8}
          dy={8}
          align="start"
          text={safe ? 'tube first' : 'wire first'}
          tone={safe ? 'good' : 'bad'}
        />
        {cutRing({ outer: half, inner: half - wall, half: slotWidth / 2, walls: 'one' }).map((points, i) => (
          <Outline key={i} points={points.map(({ x, y }) => ({ x: x + centre, y }))} fill="hatch" />
        ))}
      </Drawing>
    </>
  );
}
