import type { FigureProps } from '~/island/declaration.ts';
import { DimensionLine, Drawing, HiddenLine, Label, Outline } from '~/island/drawing/index.ts';
import type { HeightResult, HeightValues } from './index.ts';

const PLATE = 0.002;
const WIDTH = 0.036;
const POST = { at: 0.027, width: 0.005 };

/** The stack between the two plates, from the side. */
export function HeightFigure({ values, result, show }: FigureProps<HeightValues, HeightResult>) {
  const { mounts, boards, screws, hanging } = values;
  const top = result.length;
  const half = WIDTH / 2;
  const stack = mounts + boards;
  const edge = POST.at + POST.width;
  const each = [-1, 1] as const;
  return (
    <Drawing
      title="Between the plates"
      description={`${show(result.needed, 'length')} needed, standoffs ${show(top, 'length')}, ${show(result.spare, 'length', 2)} to spare.`}
      bounds={{ left: -edge, right: edge, bottom: -PLATE, top: top + PLATE }}
      height={260}
      margin={{ left: 74, right: 96, top: 26, bottom: 34 }}
      show={show}
    >
      <Outline rect={{ x: -edge, y: -PLATE, width: 2 * edge, height: PLATE }} fill="hatch" />
      <Outline rect={{ x: -edge, y: top, width: 2 * edge, height: PLATE }} fill="hatch" />
      {each.map((side) => (
        <Outline
          key={`post ${side}`}
          rect={{ x: side * POST.at - POST.width / 2, y: 0, width: POST.width, height: top }}
        />
      ))}
      {each.map((side) => (
        <Outline
          key={`mount ${side}`}
          rect={{ x: side * 0.0145 - 0.003, y: 0, width: 0.006, height: mounts }}
          fill="shade"
        />
      ))}
      <Outline rect={{ x: -half, y: mounts, width: WIDTH, height: boards }} fill="shade" />
      {each.map((side) => (
        <Outline
          key={`screw ${side}`}
          rect={{ x: side * 0.0145 - 0.0015, y: stack, width: 0.003, height: screws }}
          fill="hatch"
        />
      ))}
      {hanging > 0 && <Outline rect={{ x: -0.006, y: top - hanging, width: 0.012, height: hanging }} fill="shade" />}
      <HiddenLine
        points={[
          { x: -half, y: stack + screws },
          { x: edge, y: stack + screws },
        ]}
        open
        tone="quiet"
      />
      {hanging > 0 && (
        <HiddenLine
          points={[
            { x: -0.006, y: top - hanging },
            { x: edge, y: top - hanging },
          ]}
          open
          tone="quiet"
        />
      )}
      <Label at={{ x: 0, y: mounts + boards / 2 }} text="stack" tone="quiet" />
      <DimensionLine from={{ x: -edge, y: 0 }} to={{ x: -edge, y: top }} offset={28} label={show(top, 'length')} />
      <DimensionLine
        from={{ x: edge, y: 0 }}
        to={{ x: edge, y: stack + screws }}
        offset={-20}
        label={show(stack + screws, 'length')}
      />
      <DimensionLine
        from={{ x: edge, y: stack + screws }}
        to={{ x: edge, y: top - hanging }}
        offset={-48}
        label={show(top - hanging - stack - screws, 'length')}
        tone="accent"
      />
    </Drawing>
  );
}
