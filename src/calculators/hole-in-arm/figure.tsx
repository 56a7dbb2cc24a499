import type { FigureProps } from '~/island/declaration.ts';
import {
  CentreLine,
  DimensionLine,
  Drawing,
  ForceArrow,
  HiddenLine,
  Label,
  Outline,
  type Point,
} from '~/island/drawing/index.ts';
import { cutRing } from '../cut-ring.ts';
import { PLACE_WORDS, type HoleResult } from './compute.ts';
import type { HoleValues } from './inputs.ts';

interface Size {
  /** Of the section, across and upright on the paper, the load upright. */
  across: number;
  deep: number;
}

function sizeOf(values: HoleValues): Size {
  if (values.part === 'tube') return { across: values.outerDiameter, deep: values.outerDiameter };
  return values.bending === 'vertical'
    ? { across: values.width, deep: values.height }
    : { across: values.height, deep: values.width };
}

/** The section through the hole as outlines, drawn so that the load is upright. */
function section(values: HoleValues, { across, deep }: Size): Point[][] {
  const along = values.holeAxis === values.bending;
  const half = values.holeDiameter / 2;
  if (values.part === 'tube') {
    const outer = values.outerDiameter / 2;
    const pieces = cutRing({ outer, inner: outer - values.wall, half, walls: values.walls });
    return along ? pieces : pieces.map((piece) => piece.map(({ x, y }) => ({ x: y, y: x })));
  }
  const box = (left: number, right: number, bottom: number, top: number): Point[] => [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
  const e = values.offset;
  return along
    ? [box(-across / 2, e - half, -deep / 2, deep / 2), box(e + half, across / 2, -deep / 2, deep / 2)]
    : [box(-across / 2, across / 2, -deep / 2, e - half), box(-across / 2, across / 2, e + half, deep / 2)];
}

/** The arm in the plane in which it is bent, the moment along it, and the section through the hole. */
export function HoleInArmFigure({ values, result, show }: FigureProps<HoleValues, HoleResult>) {
  const { armLength: L, station: x, holeDiameter: d } = values;
  const size = sizeOf(values);
  const { deep, across } = size;
  const along = values.holeAxis === values.bending;
  const offset = values.part === 'strip' && !along ? values.offset : 0;
  const triangle = 0.12 * L;
  const foot = -deep / 2 - 0.3 * L;
  const at = (u: number): number => foot + (triangle * (L - u)) / L;
  const kept = show(result.drilled.notchedShare, 'percent', 2);
  return (
    <>
      <Drawing
        title={values.bending === 'vertical' ? 'Arm from the side' : 'Arm from above'}
        description={`Hole of ${show(d, 'length')}, ${show(x, 'length')} from the outer screw, ${PLACE_WORDS[result.drilled.place]}. The moment there is ${show(result.moment, 'moment')}; the section keeps ${kept} of its strength.`}
        bounds={{ left: 0, right: L, bottom: foot, top: deep / 2 }}
        height={270}
        margin={{ left: 40, right: 50, top: 92, bottom: 30 }}
        show={show}
      >
        <Outline rect={{ x: 0, y: -deep / 2, width: L, height: deep }} fill="shade" />
        <CentreLine from={{ x: 0, y: 0 }} to={{ x: L, y: 0 }} />
        {along ? (
          [x - d / 2, x + d / 2].map((at) => (
            <HiddenLine
              key={at}
              points={[
                { x: at, y: -deep / 2 },
                { x: at, y: deep / 2 },
              ]}
              open
            />
          ))
        ) : (
          <Outline circle={{ x, y: offset, radius: d / 2 }} fill="paper" />
        )}
        <Outline
          points={[
            { x: 0, y: foot },
            { x: 0, y: at(0) },
            { x: L, y: foot },
          ]}
          line="thin"
          fill="hatch"
        />
        <CentreLine from={{ x, y: foot }} to={{ x, y: -deep / 2 }} />
        <Label at={{ x, y: at(x) }} dx={8} dy={12} align="start" text={show(result.moment, 'moment')} />
        <ForceArrow
          at={{ x: L, y: deep / 2 }}
          direction={{ x: 0, y: 1 }}
          length={28}
          label={show(values.tipForce, 'force')}
        />
        <DimensionLine from={{ x: 0, y: deep / 2 }} to={{ x, y: deep / 2 }} offset={22} label={show(x, 'length')} />
        <DimensionLine from={{ x: 0, y: deep / 2 }} to={{ x: L, y: deep / 2 }} offset={64} label={show(L, 'length')} />
      </Drawing>
      <Drawing
        title="Section through the hole, load upright"
        description="The neutral axis is dash-dotted."
        bounds={{ left: -across / 2, right: across / 2, bottom: -deep / 2, top: deep / 2 }}
        height={200}
        margin={{ left: 80, right: 150, top: 34, bottom: 34 }}
        show={show}
      >
        {section(values, size).map((points, i) => (
          <Outline key={i} points={points} fill="hatch" />
        ))}
        <CentreLine from={{ x: -across / 2, y: 0 }} to={{ x: across / 2, y: 0 }} />
        <Label at={{ x: across / 2, y: 0 }} dx={16} align="start" text="neutral axis" tone="quiet" />
        <DimensionLine
          from={{ x: -across / 2, y: -deep / 2 }}
          to={{ x: -across / 2, y: deep / 2 }}
          offset={26}
          label={show(deep, 'length')}
        />
      </Drawing>
    </>
  );
}
