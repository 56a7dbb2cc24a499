import type { ArmMode } from '@frameworthy/shared/vibration';
import { CentreLine, DimensionLine, Drawing, HiddenLine, Label, Outline } from '~/island/drawing/index.ts';
import type { FigureProps } from '~/island/declaration.ts';
import type { FrequencyResult } from './compute.ts';
import type { FrequencyValues } from './inputs.ts';

/** Share of the arm's length that the largest movement is drawn with: far more than any arm moves. */
const DRAWN = 0.14;

/** The two edges of the arm, moved along its shape. */
function moved({ shape }: ArmMode, length: number, half: number) {
  return [1, -1].map((side) => shape.map(({ x, deflection }) => ({ x, y: DRAWN * length * deflection + side * half })));
}

/** The arm at rest from the side and from above, and dashed the shape of its first mode in each plane. */
export function Figure({ values, result, show }: FigureProps<FrequencyValues, FrequencyResult>) {
  const { armLength: L, motorDiameter, motorHeight, motorRise } = values;
  const { section, upDown, sideways } = result.modes;
  const [high, wide] = [section.vertical.extremeFibre, section.horizontal.extremeFibre];
  const foot = Math.max(motorRise - motorHeight / 2, high);
  const bounds = {
    left: -0.02,
    right: L + motorDiameter / 2,
    bottom: -Math.max(high, 0.01),
    top: foot + motorHeight + DRAWN * L,
  };
  const plan = Math.max(motorDiameter / 2, wide) + DRAWN * L;
  return (
    <>
      <Drawing
        title="Arm from the side, first mode up and down"
        description={`${show(L, 'length')} from the root to the motor axis. It nods with ${show(upDown[0].frequency, 'frequency')}.`}
        bounds={bounds}
        height={190}
        margin={{ left: 14, right: 30, top: 20, bottom: 44 }}
        show={show}
      >
        <Outline rect={{ x: -0.02, y: -high, width: 0.02, height: 2 * high }} fill="hatch" />
        <Outline rect={{ x: 0, y: -high, width: L + 0.3 * motorDiameter, height: 2 * high }} />
        <Outline
          rect={{ x: L - motorDiameter / 2, y: foot, width: motorDiameter, height: motorHeight, cornerRadius: 0.002 }}
          fill="shade"
        />
        <CentreLine from={{ x: L, y: -high }} to={{ x: L, y: foot + motorHeight }} />
        {moved(upDown[0], L, high).map((points, i) => (
          <HiddenLine key={i} points={points} open tone="accent" />
        ))}
        <Label
          at={{ x: L * 0.35, y: high }}
          dy={34}
          text={`up and down ${show(upDown[0].frequency, 'frequency')}`}
          tone="accent"
        />
        <DimensionLine from={{ x: 0, y: -high }} to={{ x: L, y: -high }} offset={-20} label={show(L, 'length')} />
      </Drawing>
      <Drawing
        title="Arm from above, first mode sideways"
        description={`It swings with ${show(sideways[0].frequency, 'frequency')}, ${show(sideways[0].twistShare, 'percent', 2)} of the spring energy in twist.`}
        bounds={{ ...bounds, bottom: -Math.max(motorDiameter / 2, wide), top: plan }}
        height={170}
        margin={{ left: 14, right: 30, top: 16, bottom: 16 }}
      >
        <Outline rect={{ x: -0.02, y: -wide, width: 0.02, height: 2 * wide }} fill="hatch" />
        <Outline rect={{ x: 0, y: -wide, width: L + 0.3 * motorDiameter, height: 2 * wide }} />
        <Outline circle={{ x: L, y: 0, radius: motorDiameter / 2 }} fill="shade" />
        <CentreLine from={{ x: -0.02, y: 0 }} to={{ x: L, y: 0 }} />
        {moved(sideways[0], L, wide).map((points, i) => (
          <HiddenLine key={i} points={points} open tone="accent" />
        ))}
        <Label
          at={{ x: L * 0.35, y: wide }}
          dy={34}
          text={`sideways ${show(sideways[0].frequency, 'frequency')}`}
          tone="accent"
        />
      </Drawing>
    </>
  );
}
