import { Fragment } from 'preact';
import { plateCorners, type Box, type PlacedItem } from '@frameworthy/shared/fit';
import type { FigureProps, Show } from '~/island/declaration.ts';
import { CentreLine, DimensionLine, Drawing, HiddenLine, Label, Leader, Outline } from '~/island/drawing/index.ts';
import type { Filled, FitResult } from './compute.ts';
import type { FitValues } from './inputs.ts';
import { collisionWords } from './words.ts';

type Props = FigureProps<FitValues, FitResult>;
interface ViewProps {
  one: Filled;
  values: FitValues;
  show: Show;
}

const PLATE = 0.002;

/** A station's own name also stands for its two standoffs. */
const isTouched = ({ touched }: Filled, name: string) =>
  touched.has(name) || touched.has(name.replace(/(left|right) standoff$/, 'standoffs'));

function standoffs({ arrangement: { standoffs: all } }: Filled) {
  const xs = [...new Set(all.map(({ x }) => x))].sort((p, q) => q - p);
  return all.map((at) => {
    const i = xs.indexOf(at.x);
    const station = i === 0 ? 'front' : i === xs.length - 1 ? 'rear' : 'middle';
    return { ...at, name: `${station} ${at.y > 0 ? 'left' : 'right'} standoff` };
  });
}

const rectOf = (box: Box, v0: number, v1: number) => ({ x: box.x0, y: v0, width: box.x1 - box.x0, height: v1 - v0 });

/** Corners of the turned camera body in the side view, and of its lens. */
function cameraShapes({ item, parts }: PlacedItem) {
  const body = parts[0]!.box;
  const [cx, cz] = [(body.x0 + body.x1) / 2, (body.z0 + body.z1) / 2];
  const [cos, sin] = [Math.cos(item.tilt ?? 0), Math.sin(item.tilt ?? 0)];
  const turned = (x: number, z: number) => ({ x: cx + x * cos - z * sin, y: cz + x * sin + z * cos });
  const corners = (x0: number, x1: number, half: number) =>
    [
      [x0, -half],
      [x1, -half],
      [x1, half],
      [x0, half],
    ].map(([x, z]) => turned(x!, z!));
  const half = item.length / 2;
  const { reach = 0, diameter = 0 } = item.lens ?? {};
  return { body: corners(-half, half, item.height / 2), lens: corners(half, half + reach, diameter / 2) };
}

function Plan({ one, values, show }: ViewProps) {
  const { bodyLength, bodyWidth, outerDiameter, endWidth, endLength } = values;
  const end = { width: endWidth, length: endLength };
  const half = bodyLength / 2;
  const corners = plateCorners({ length: bodyLength, width: bodyWidth, nose: end, tail: end });
  const reach = Math.max(half, ...one.items.flatMap(({ parts }) => parts.flatMap(({ box }) => [box.x1, -box.x0])));
  return (
    <Drawing
      title={`Arrangement ${one.letter} from above, nose to the right`}
      description={`Plate ${show(bodyLength, 'length')} by ${show(bodyWidth, 'length')}. ${one.collisions.length === 0 ? 'Nothing collides.' : `${one.collisions.length} collisions, hatched: ${collisionWords(one, show)}.`}`}
      bounds={{ left: -reach, right: reach, bottom: -bodyWidth / 2, top: bodyWidth / 2 }}
      height={214}
      margin={{ left: 22, right: 22, top: 34, bottom: 40 }}
      show={show}
    >
      <Outline points={corners} />
      <CentreLine from={{ x: -half, y: 0 }} to={{ x: half, y: 0 }} tone="quiet" />
      {one.items.map((placed) => {
        const bad = isTouched(one, placed.item.name);
        const look = bad ? ({ tone: 'bad', fill: 'hatch' } as const) : ({ fill: 'shade' } as const);
        return (
          <g key={placed.item.name}>
            {placed.parts.map(({ role, box }, i) =>
              role === 'wires' ? (
                <HiddenLine key={i} rect={rectOf(box, box.y0, box.y1)} tone="quiet" />
              ) : (
                <Outline
                  key={i}
                  rect={rectOf(box, box.y0, box.y1)}
                  {...(role === 'screw' ? { line: 'thin' as const, ...(bad ? { tone: 'bad' as const } : {}) } : look)}
                />
              ),
            )}
          </g>
        );
      })}
      {standoffs(one).map(({ x, y, name }) => {
        const bad = isTouched(one, name);
        return (
          <Outline
            key={name}
            circle={{ x, y, radius: outerDiameter / 2 }}
            fill={bad ? 'hatch' : 'paper'}
            tone={bad ? 'bad' : 'ink'}
          />
        );
      })}
      {one.items.map(({ item: { name, kind, x, y, z } }) => {
        const tone = isTouched(one, name) ? 'bad' : 'quiet';
        const text = isTouched(one, name) ? 'collides' : '';
        if (kind === 'board' || kind === 'transmitter') {
          // What sits on the stack would hide its name.
          const under = kind === 'board' && one.items.some(({ item }) => item.kind === 'transmitter' && item.z > z);
          const says = [kind === 'board' ? 'stack' : name, text].filter(Boolean).join(': ');
          return <Label key={name} at={{ x, y }} dy={under ? -9 : 9} text={under ? `on ${says}` : says} tone={tone} />;
        }
        if (kind !== 'camera' && kind !== 'capacitor') return null;
        const out = Math.abs(x) > 0.6 * half ? -Math.sign(x) : Math.sign(x) || 1;
        return (
          <Leader
            key={name}
            at={{ x, y }}
            dx={8 * out}
            dy={kind === 'camera' ? -66 : 68}
            text={[name, text].filter(Boolean).join(': ')}
            tone={tone}
          />
        );
      })}
      <DimensionLine
        from={{ x: -half, y: -bodyWidth / 2 }}
        to={{ x: half, y: -bodyWidth / 2 }}
        offset={-26}
        label={show(bodyLength, 'length')}
      />
    </Drawing>
  );
}

function Side({ one, values, show }: ViewProps) {
  const { bodyLength, outerDiameter, hanging } = values;
  const { bySway, byStack } = one.shortestStandoff;
  const top = bySway.sold ?? byStack.sold ?? byStack.needed;
  const half = bodyLength / 2;
  const xs = [...new Set(one.arrangement.standoffs.map(({ x }) => x))];
  return (
    <Drawing
      title={`Arrangement ${one.letter} from the right, on its shortest standoffs`}
      description={`${show(byStack.needed, 'length')} needed by the stack, ${show(bySway.needed, 'length')} with the hit, standoffs of ${show(top, 'length')}.`}
      bounds={{ left: -half, right: half, bottom: -PLATE, top: top + PLATE }}
      height={150}
      margin={{ left: 22, right: 60, top: 22, bottom: 30 }}
      show={show}
    >
      <Outline rect={{ x: -half, y: -PLATE, width: bodyLength, height: PLATE }} fill="paper" />
      <Outline rect={{ x: -half, y: top, width: bodyLength, height: PLATE }} fill="paper" />
      {xs.map((x) => (
        <Outline key={x} rect={{ x: x - outerDiameter / 2, y: 0, width: outerDiameter, height: top }} fill="paper" />
      ))}
      {one.items.map((placed) => {
        const { item, parts } = placed;
        const look = isTouched(one, item.name)
          ? ({ tone: 'bad', fill: 'hatch' } as const)
          : ({ fill: 'shade' } as const);
        if (item.kind === 'camera') {
          const { body, lens } = cameraShapes(placed);
          return (
            <g key={item.name}>
              <Outline points={body} {...look} />
              {item.lens && item.lens.reach > 0 && <Outline points={lens} {...look} />}
            </g>
          );
        }
        if (item.kind === 'capacitor' && item.length <= item.width) {
          const { x0, x1, z0, z1 } = parts[0]!.box;
          return (
            <Outline key={item.name} circle={{ x: (x0 + x1) / 2, y: (z0 + z1) / 2, radius: (x1 - x0) / 2 }} {...look} />
          );
        }
        return (
          <g key={item.name}>
            {parts
              .filter(({ role }) => role !== 'wires')
              .toReversed()
              .map(({ role, box }, i) => (
                <Outline
                  key={i}
                  rect={rectOf(box, box.z0, box.z1)}
                  {...(role === 'screw' ? { line: 'thin' as const } : look)}
                />
              ))}
          </g>
        );
      })}
      {hanging > 0 && (
        <HiddenLine
          points={[
            { x: -half, y: top - hanging },
            { x: half, y: top - hanging },
          ]}
          open
          tone="quiet"
        />
      )}
      <HiddenLine
        points={[
          { x: -half, y: byStack.needed },
          { x: half, y: byStack.needed },
        ]}
        open
        tone="accent"
      />
      <DimensionLine from={{ x: half, y: 0 }} to={{ x: half, y: top }} offset={-18} label={show(top, 'length')} />
    </Drawing>
  );
}

/** Plan and side view of both, to scale. */
export function FitFigure({ values, result, show }: Props) {
  return (
    <>
      {[result.a, result.b].map((one) => (
        <Fragment key={one.letter}>
          <Plan {...{ one, values, show }} />
          <Side {...{ one, values, show }} />
        </Fragment>
      ))}
    </>
  );
}
