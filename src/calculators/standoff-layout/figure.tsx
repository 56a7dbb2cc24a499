import { movementAt } from '@frameworthy/shared/standoff';
import type { FigureProps } from '~/island/declaration.ts';
import { CentreLine, Drawing, ForceArrow, HiddenLine, Label, Leader, Outline } from '~/island/drawing/index.ts';
import { drawnFactor } from '../drawn-factor.ts';
import type { LayoutResult } from './compute.ts';
import type { LayoutValues } from './inputs.ts';

/** Of the drawn length of the plate, for the movement drawn larger. */
const DRAWN = 0.06;
/** A push steeper than this is told in words: seen from above it has no length. */
const STEEP = 0.1;

/** The plan: standoffs with what each holds against, the load, and where the plate goes. */
export function LayoutFigure({ values, result, show }: FigureProps<LayoutValues, LayoutResult>) {
  const { plateLength, plateWidth, outerDiameter, boardSide } = values;
  const { places, forces, push, at, plate, worst } = result;
  const half = { x: plateLength / 2, y: plateWidth / 2 };
  const corners = [
    { x: -half.x, y: -half.y },
    { x: half.x, y: -half.y },
    { x: half.x, y: half.y },
    { x: -half.x, y: half.y },
  ];
  const moved = corners.map((corner) => movementAt(plate, { ...corner, z: 0 }));
  const factor = drawnFactor(Math.max(...moved.map(({ x, y }) => Math.hypot(x, y))), DRAWN * plateLength);
  const most = Math.max(...forces.map(({ shear }) => shear)) || 1;
  const level = Math.hypot(push.x, push.y);
  const down = push.z < 0 ? 'down' : 'up';
  const text = `${show(result.peakForce, 'force', 2)}${Math.abs(push.z) > STEEP ? `, ${show(Math.abs(push.z) * result.peakForce, 'force', 2)} of it ${down}` : ''}`;
  const reach = { x: Math.max(half.x, Math.abs(at.x)), y: Math.max(half.y, Math.abs(at.y)) };
  const bad = places[worst]!;
  return (
    <Drawing
      title="The standoffs from above"
      description={`${places.length} standoffs under a plate ${show(plateLength, 'length')} by ${show(plateWidth, 'length')}, nose to the right. Load ${text}. Standoff ${worst + 1} is stressed most: ${show(result.wall[worst]!, 'stress')}.`}
      bounds={{ left: -reach.x, right: reach.x, bottom: -reach.y, top: reach.y }}
      height={300}
      margin={{ left: 46, right: 70, top: 62, bottom: 62 }}
      show={show}
      exaggerated={factor !== 1}
    >
      <Outline rect={{ x: -half.x, y: -half.y, width: plateLength, height: plateWidth, cornerRadius: 0.004 }} />
      <HiddenLine
        points={corners.map((corner, i) => ({
          x: corner.x + factor * moved[i]!.x,
          y: corner.y + factor * moved[i]!.y,
        }))}
        tone="quiet"
      />
      <HiddenLine rect={{ x: -boardSide / 2, y: -boardSide / 2, width: boardSide, height: boardSide }} tone="quiet" />
      <CentreLine from={{ x: -half.x, y: 0 }} to={{ x: half.x, y: 0 }} tone="quiet" />
      {places.map(({ x, y }, i) => (
        <Outline
          key={`post ${i}`}
          circle={{ x, y, radius: outerDiameter / 2 }}
          fill={i === worst ? 'hatch' : 'paper'}
          tone={i === worst ? 'bad' : 'ink'}
        />
      ))}
      {places.map((place, i) => (
        <ForceArrow
          key={`force ${i}`}
          at={place}
          direction={{ x: forces[i]!.shearX, y: forces[i]!.shearY }}
          length={(34 * forces[i]!.shear) / most}
          tone={i === worst ? 'bad' : 'ink'}
        />
      ))}
      {places.map((place, i) => (
        <Label key={`name ${i}`} at={place} dx={11} dy={place.y < 0 ? -11 : 11} text={String(i + 1)} />
      ))}
      {level > STEEP ? (
        <ForceArrow at={at} direction={{ x: push.x, y: push.y }} length={46} pushes tone="accent" />
      ) : (
        <Outline circle={{ x: at.x, y: at.y, radius: 0.003 }} tone="accent" />
      )}
      <Label at={{ x: 0, y: reach.y }} dy={44} text={`load ${text}`} tone="accent" />
      <Leader
        at={bad}
        dx={bad.x > 0 ? -26 : 26}
        dy={bad.y >= 0 ? 34 : -34}
        text={`stressed most: ${show(result.wall[worst]!, 'stress')}`}
        tone="bad"
      />
      <Label
        at={{ x: 0, y: -reach.y }}
        dy={-46}
        text={factor === 1 ? 'movement to scale' : `movement drawn ${factor} times`}
        tone="quiet"
      />
    </Drawing>
  );
}
