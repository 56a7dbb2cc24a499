import { line } from 'd3-shape';
import { useRef } from 'preact/hooks';
import { ARM, PULL } from './values.ts';

/** Drawing units are pixels of the view box; the plan view is to scale, the bend is not. */
const SCALE = 5400;
const VIEW = { width: 640, height: 330 };
const AXIS_Y = 165;
const OUTER_X = 205;
const TIP_X = OUTER_X + ARM.length * SCALE;
/** Sideways movement drawn per newton of pull: far more than the tube bends. */
const PIXELS_PER_NEWTON = 1.7;
/** Arrow length drawn per newton of hole load. */
const ARROW_PER_NEWTON = 0.5;

interface Props {
  pull: number;
  spacing: number;
  inner: number;
  outer: number;
  onPull: (pull: number) => void;
}

interface Point {
  x: number;
  y: number;
}

/** Centre line of a cantilever under a tip load: x²(3L − x), scaled so that its tip moves with the pull. */
function bent(pull: number): Point[] {
  const span = TIP_X - OUTER_X;
  return Array.from({ length: 25 }, (_, i) => {
    const x = (span * i) / 24;
    return { x: OUTER_X + x, y: AXIS_Y - (pull * PIXELS_PER_NEWTON * x * x * (3 * span - x)) / (2 * span ** 3) };
  });
}

const path = line<Point>(
  (point) => point.x,
  (point) => point.y,
);

interface ArrowProps {
  from: Point;
  length: number;
  name: string;
  /** On which side of the arrow its name stands. */
  side: -1 | 1;
}

function Arrow({ from, length, name, side }: ArrowProps) {
  if (Math.abs(length) < 3) return null;
  const tip = Math.min(Math.max(from.y + length, 16), VIEW.height - 16);
  const back = Math.sign(length) * 9;
  return (
    <g class="pull-arrow">
      <path
        d={`M${from.x} ${from.y}V${tip}M${from.x - 6} ${tip - back}L${from.x} ${tip}L${from.x + 6} ${tip - back}`}
      />
      <text x={from.x + side * 11} y={tip + (length > 0 ? 4 : 8)} text-anchor={side > 0 ? 'start' : 'end'}>
        {name}
      </text>
    </g>
  );
}

/** Plan of the arm root with the loads that the screws put on the tube, and a handle at the motor that can be dragged. */
export function ArmRootDrawing({ pull, spacing, inner, outer, onPull }: Props) {
  const svg = useRef<SVGSVGElement>(null);
  const innerX = OUTER_X - spacing * SCALE;
  const halfTube = (ARM.diameter * SCALE) / 2;
  const tube = [{ x: innerX - ARM.edge * SCALE, y: AXIS_Y }, ...bent(pull)];
  const edges = [-halfTube, halfTube].map((shift) => tube.map(({ x, y }) => ({ x, y: y + shift })));
  const tip = tube.at(-1) as Point;
  const sign = Math.sign(pull);

  const follow = (event: PointerEvent) => {
    if (!svg.current || event.buttons === 0) return;
    const box = svg.current.getBoundingClientRect();
    const y = ((event.clientY - box.top) / box.height) * VIEW.height;
    const next = Math.round((AXIS_Y - y) / PIXELS_PER_NEWTON);
    onPull(Math.min(Math.max(next, PULL.min), PULL.max));
  };

  return (
    <svg
      ref={svg}
      class="pull-drawing"
      viewBox={`0 0 ${VIEW.width} ${VIEW.height}`}
      role="img"
      aria-label="Plan of a tube arm held by two screws and pulled sideways at the motor; arrows show the load on each hole"
      onPointerMove={follow}
    >
      <rect class="pull-plate" x={6} y={AXIS_Y - 74} width={OUTER_X + 26} height={148} rx={10} />
      <path
        class="pull-tube"
        d={`${path(edges[0] ?? [])}${path([...(edges[1] ?? [])].reverse())?.replace('M', 'L')}Z`}
      />
      <path class="pull-axis" d={path(tube) ?? ''} />
      <path
        class="pull-dimension"
        d={`M${innerX} ${AXIS_Y + 40}V${AXIS_Y + 98}M${OUTER_X} ${AXIS_Y + 40}V${AXIS_Y + 98}M${innerX} ${AXIS_Y + 92}H${OUTER_X}`}
      />
      <text
        class="pull-label"
        x={(innerX + OUTER_X) / 2}
        y={AXIS_Y + 98}
        text-anchor="middle"
        dominant-baseline="hanging"
      >
        {`${Math.round(spacing * 1000)} mm`}
      </text>
      {[innerX, OUTER_X].map((x) => (
        <circle class="pull-screw" cx={x} cy={AXIS_Y} r={(ARM.screw * SCALE) / 2} />
      ))}
      <Arrow from={{ x: innerX, y: AXIS_Y }} length={-sign * inner * ARROW_PER_NEWTON} name="inner" side={-1} />
      <Arrow from={{ x: OUTER_X, y: AXIS_Y }} length={sign * outer * ARROW_PER_NEWTON} name="outer" side={1} />
      <g
        class="pull-handle"
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          event.preventDefault();
        }}
        onPointerMove={follow}
      >
        <circle cx={tip.x} cy={tip.y} r={44} />
        <path
          d={`M${tip.x - 12} ${tip.y}H${tip.x + 12}M${tip.x} ${tip.y - 30}V${tip.y + 30}M${tip.x - 6} ${tip.y - 22}L${tip.x} ${tip.y - 30}L${tip.x + 6} ${tip.y - 22}M${tip.x - 6} ${tip.y + 22}L${tip.x} ${tip.y + 30}L${tip.x + 6} ${tip.y + 22}`}
        />
      </g>
    </svg>
  );
}
