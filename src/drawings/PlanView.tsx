import {
  extentOf,
  planDimensions,
  planShapes,
  type FrameOutline,
  type OutlineDimension,
} from '@frameworthy/shared/outline';
import type { Show } from '~/island/declaration.ts';
import { type Bounds, boundsOf, CentreLine, DimensionLine, Drawing, Label, usePaper } from '~/island/drawing/index.ts';
import { keyOf } from './key-of.ts';
import { keyHeight, LineKey } from './LineKey.tsx';
import { Shapes } from './Shapes.tsx';

export interface ViewProps {
  outline: FrameOutline;
  show: Show;
}

interface PlacedProps {
  dimensions: readonly OutlineDimension[];
  bounds: Bounds;
  show: Show;
  /** Half the width of an arm [m]. */
  armHalf: number;
}

/** Lengths along the arms stand beside them, those of the body outside everything. */
function Placed({ dimensions, bounds, show, armHalf }: PlacedProps) {
  const paper = usePaper();
  const beside = paper.length(armHalf) + 20;
  const body = boundsOf(dimensions.filter(({ name }) => /^body/.test(name)).flatMap(({ from, to }) => [from, to]));
  return (
    <>
      {dimensions.map(({ name, from, to, value }) => {
        const common = { label: show(value, 'length'), from, to };
        switch (name) {
          case 'wheelbase':
            return <DimensionLine key={name} {...common} offset={beside} textAt={0.81} />;
          case 'tip gap':
            return <DimensionLine key={name} {...common} offset={0.01} tone="accent" />;
          case 'arm length':
            return <DimensionLine key={name} {...common} label={`L ${common.label}`} offset={-beside} />;
          case 'screw spacing':
            return <DimensionLine key={name} {...common} offset={beside} />;
          case 'body length':
            return <DimensionLine key={name} {...common} offset={-(paper.length(bounds.right - from.x) + 16)} />;
          case 'standoffs along':
            return <DimensionLine key={name} {...common} offset={paper.length(from.x - body.left) + 14} />;
          case 'standoffs across':
            return <DimensionLine key={name} {...common} offset={-(paper.length(from.y - body.bottom) + 20)} />;
          case 'tongue width':
            return <DimensionLine key={name} {...common} offset={-12} />;
          default:
            return <DimensionLine key={name} {...common} offset={-(paper.length(from.y - bounds.bottom) + 16)} />;
        }
      })}
    </>
  );
}

/** The frame from above, front upwards, to scale, with its main lengths. */
export function PlanView({ outline, show }: ViewProps) {
  const shapes = planShapes(outline);
  const dimensions = planDimensions(outline);
  const bounds = extentOf(shapes);
  const section = outline.arms[0]?.section;
  const armWidth = section ? (section.kind === 'tube' ? section.outerDiameter : section.rootWidth) : 0;
  const key = keyOf(shapes);
  return (
    <Drawing
      title={`${outline.name}, from above`}
      description={dimensions.map(({ name, value }) => `${name} ${show(value, 'length')}`).join(', ')}
      bounds={bounds}
      height={430 + keyHeight(key.length)}
      margin={{ left: 14, right: 40, top: 26, bottom: keyHeight(key.length) + 36 }}
      show={show}
      source={outline}
    >
      <Shapes shapes={shapes} />
      <CentreLine from={{ x: 0, y: bounds.bottom }} to={{ x: 0, y: bounds.top }} tone="quiet" />
      <Placed dimensions={dimensions} bounds={bounds} show={show} armHalf={armWidth / 2} />
      <Label at={{ x: 0, y: bounds.top }} dy={16} text="front" tone="quiet" />
      <LineKey entries={key} />
    </Drawing>
  );
}
