import type { ArmPlay } from '@frameworthy/shared/joint';
import type { FigureProps } from '~/island/declaration.ts';
import { CentreLine, DimensionLine, Drawing, Outline, type Point } from '~/island/drawing/index.ts';

interface PlayValues {
  armClearance: number;
  plateClearance: number;
  screwSpacing: number;
  armLength: number;
  armHeight: number;
}

/** Plan view: the arm in place (thin) and turned to the end of its play (thick). */
export function ArmPlayFigure({ values, result, show }: FigureProps<PlayValues, ArmPlay>) {
  const { screwSpacing: s, armLength: L, armHeight } = values;
  const half = armHeight / 2;
  const end = -s - half;
  // The arm turns about the middle between the screws.
  const turned = (x: number, y: number): Point => ({ x: x - y * result.angle, y: y + (x + s / 2) * result.angle });
  const corners: readonly (readonly [number, number])[] = [
    [end, -half],
    [L, -half],
    [L, half],
    [end, half],
  ];
  const tip = turned(L, 0);
  return (
    <Drawing
      title="Arm in its play, from above"
      description={`The arm may turn by ${show(result.angle, 'angle', 2)}; the motor then stands ${show(result.motorError, 'length', 2)} beside its place.`}
      bounds={{ left: end, right: L + half, bottom: -half, top: half + Math.abs(tip.y) }}
      height={220}
      margin={{ left: 30, right: 74, top: 40, bottom: 60 }}
      show={show}
    >
      <Outline points={corners.map(([x, y]) => ({ x, y }))} line="thin" tone="quiet" />
      <Outline points={corners.map(([x, y]) => turned(x, y))} />
      <CentreLine from={{ x: end - 0.003, y: 0 }} to={{ x: L + 0.006, y: 0 }} />
      {[0, -s].map((x) => (
        <Outline key={x} circle={{ x, y: 0, radius: 0.0015 }} fill="paper" />
      ))}
      <Outline circle={{ x: tip.x, y: tip.y, radius: Math.min(half * 0.5, 0.003) }} tone="accent" fill="paper" />
      <DimensionLine
        from={{ x: L + half * 0.6, y: 0 }}
        to={{ x: L + half * 0.6, y: tip.y }}
        offset={-14}
        label={show(result.motorError, 'length', 2)}
        tone="accent"
      />
      <DimensionLine from={{ x: -s, y: -half }} to={{ x: 0, y: -half }} offset={-26} label={show(s, 'length')} />
      <DimensionLine from={{ x: 0, y: -half }} to={{ x: L, y: -half }} offset={-26} label={show(L, 'length')} />
    </Drawing>
  );
}
