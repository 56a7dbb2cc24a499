import { unitFor, type UnitChoice } from '@frameworthy/shared/quantity';
import { useMemo, useRef } from 'preact/hooks';
import { placeTexts } from './contour-labels.ts';
import { fieldOf, heights, linesAt, type Place, roundLevels } from './contour-lines.ts';
import type { AnyCalculator, ContourMap as MapDeclaration, MapAxis, QuantityInput, Show } from './declaration.ts';
import { PlotAxes } from './PlotAxes.tsx';
import { DASHES } from './PlotCurves.tsx';
import { axis, PAPER } from './plot-frame.ts';
import type { ValueSet } from './values.ts';

interface Props {
  calculator: AnyCalculator;
  map: MapDeclaration<ValueSet, unknown>;
  good: { values: ValueSet; result: unknown };
  units: UnitChoice;
  show: Show;
  /** The reader points at a place: both inputs at once. The fields do the same. */
  onPick: (values: ValueSet) => void;
}

/** As wide as a plot, and higher: lines run in all directions. */
const MAP = { ...PAPER, height: 340 };
const RIGHT = MAP.width - MAP.right;
const BASE = MAP.height - MAP.bottom;

/** Lines of equal mass, stiffness and the like over two inputs, with the reader's own values marked. */
export function ContourMap({ calculator, map, good, units, show, onPick }: Props) {
  const svg = useRef<SVGSVGElement>(null);
  const { values, result } = good;
  const [ownX, ownY] = [map.x, map.y].map(({ input }) => values[input] as number) as [number, number];
  // The ground does not change while only the two inputs of the map move.
  const others = JSON.stringify({ ...values, [map.x.input]: 0, [map.y.input]: 0 });
  const field = useMemo(() => fieldOf(map, values), [map, others]);
  const grounds = useMemo(() => map.families.map(({ of }) => heights(field, of)), [map, field]);
  const unit = { x: unitFor(map.x.quantity, units), y: unitFor(map.y.quantity, units) };
  const factors = { x: unit.x.factor, y: unit.y.factor };
  const x = axisOf(map.x, [MAP.left, RIGHT], factors.x);
  const y = axisOf(map.y, [BASE, MAP.top], factors.y);
  const paper = ([across, up]: Place) => ({
    x: Math.round((MAP.left + across * (RIGHT - MAP.left)) * 10) / 10,
    y: Math.round((BASE - up * (BASE - MAP.top)) * 10) / 10,
  });

  const families = map.families.map((family, i) => {
    const ground = grounds[i] ?? [];
    const levels =
      typeof family.levels === 'number'
        ? roundLevels(ground, family.levels, unitFor(family.quantity, units).factor)
        : family.levels(values, result);
    const match = family.match && { ...family.match, level: family.match.at(result, values) };
    const drawn = [
      ...(match ? [{ level: match.level, text: match.label, heavy: true }] : []),
      ...levels.map((level) => ({ level, text: show(level, family.quantity), heavy: false })),
    ].map((line, k) => ({ ...line, key: `${i}-${k}`, lines: linesAt(ground, line.level).map((l) => l.map(paper)) }));
    return {
      ...family,
      match,
      levels,
      drawn,
      dash: DASHES[i % DASHES.length] || undefined,
      first: [0.5, 0.68, 0.32][i % 3]!,
    };
  });
  const onMap = ownX >= map.x.from && ownX <= map.x.to && ownY >= map.y.from && ownY <= map.y.to;
  const own = { x: x.place(ownX), y: y.place(ownY) };
  const texts = families
    .flatMap(({ drawn, first }) => drawn.map((line) => ({ ...line, first })))
    .sort((a, b) => Number(b.heavy) - Number(a.heavy));
  const labels = placeTexts(texts, { left: MAP.left, right: RIGHT, top: MAP.top, bottom: BASE }, onMap ? [own] : []);

  const point = onMap ? valuesHere(map, values) : undefined;
  const where = onMap
    ? `Yours: ${map.x.label} ${show(ownX, map.x.quantity)}, ${map.y.label} ${show(ownY, map.y.quantity)}`
    : 'Yours lies off this map';
  const heavy = families.map(({ match, quantity }) =>
    match ? `heavy, ${match.label}: ${show(match.level, quantity)}` : '',
  );
  const grey = field.grey.length > 0 ? `Grey: ${map.impossible}` : '';
  const range = ({ label, from, to, quantity }: MapAxis<ValueSet>) =>
    `${label} ${show(from, quantity)} to ${show(to, quantity)}`;
  const words = [
    map.title,
    `Across: ${range(map.x)}. Upwards: ${range(map.y)}`,
    ...families.map(({ label, quantity, levels }, i) =>
      [`Lines of equal ${label}: ${levels.map((level) => show(level, quantity)).join(', ')}`, heavy[i]]
        .filter(Boolean)
        .join('; '),
    ),
    grey,
    where,
  ].filter(Boolean);

  const pick = (event: MouseEvent) => {
    if (!svg.current) return;
    const box = svg.current.getBoundingClientRect();
    const across = (((event.clientX - box.left) / box.width) * MAP.width - MAP.left) / (RIGHT - MAP.left);
    const down = ((event.clientY - box.top) / box.height) * (MAP.height + 14) - 14;
    const up = (BASE - down) / (BASE - MAP.top);
    if (across < 0 || across > 1 || up < 0 || up > 1) return;
    onPick({
      [map.x.input]: snapped(calculator, map.x, across),
      [map.y.input]: snapped(calculator, map.y, up),
    });
  };

  return (
    <figure class="plot map">
      <h3>{map.title}</h3>
      <svg
        ref={svg}
        viewBox={`0 -14 ${MAP.width} ${MAP.height + 14}`}
        role="img"
        aria-label={`${words.join('. ')}.`}
        onClick={pick}
      >
        <PlotAxes
          x={x}
          y={y}
          xTitle={titled(map.x.label, unit.x.symbol)}
          yTitle={titled(map.y.label, unit.y.symbol)}
          factors={factors}
          paper={MAP}
        />
        <path class="impossible" d={field.grey.map((square) => squarePath(square, paper)).join('')} />
        {families.map(({ drawn, dash }) =>
          drawn.map(({ key, lines, heavy }) => (
            <path
              key={key}
              class={heavy ? 'contour match' : 'contour'}
              stroke-dasharray={dash}
              d={lines.map((line) => `M${line.map((p) => `${p.x} ${p.y}`).join('L')}`).join('')}
            />
          )),
        )}
        {labels.map(({ key, text, at }) => (
          <text key={key} class="label" text-anchor="middle" dominant-baseline="central" {...at}>
            {text}
          </text>
        ))}
        {onMap && (
          <g class="own">
            <path class="marker" d={`M${own.x} ${BASE}V${MAP.top}M${MAP.left} ${own.y}H${RIGHT}`} />
            <circle cx={own.x} cy={own.y} r="4.5" />
          </g>
        )}
      </svg>
      <p class="readout">
        <span class="where">{where}</span>
        {families.map(({ label, dash, of, quantity }, i) => (
          <span key={label} class="entry">
            <svg viewBox="0 0 28 8" aria-hidden="true">
              <path class="contour" stroke-dasharray={dash} d="M0 4H28" />
            </svg>
            {`${label} `}
            {point !== undefined && <b>{show(of(point, values), quantity)}</b>}
            {heavy[i] && ` (${heavy[i]})`}
          </span>
        ))}
        {grey && <span class="entry">{grey}</span>}
      </p>
      <figcaption>
        <span id={`${calculator.id}-${map.id}-caption`}>{map.caption}</span>{' '}
        <span class="pick">Click on the map to set both values; the fields do the same.</span>
      </figcaption>
    </figure>
  );
}

const titled = (label: string, unit: string) => (unit ? `${label}, ${unit}` : label);

const axisOf = ({ from, to }: MapAxis<ValueSet>, places: [number, number], factor: number) =>
  axis([from / factor, to / factor], places, 6, factor);

function squarePath({ place, side }: { place: Place; side: number }, paper: (p: Place) => { x: number; y: number }) {
  const [a, b] = [paper(place), paper([place[0] + side, place[1] + side])];
  return `M${a.x} ${a.y}H${b.x}V${b.y}H${a.x}Z`;
}

/** The point at the reader's own values, or none where they are refused. */
function valuesHere(map: MapDeclaration<ValueSet, unknown>, values: ValueSet): unknown {
  try {
    return map.at(values);
  } catch {
    return undefined;
  }
}

/** The value at a share of an axis, on a whole step of its field and within the field's range. */
function snapped(calculator: AnyCalculator, { input, from, to }: MapAxis<ValueSet>, share: number): number {
  const { step, min, max } = calculator.inputs[input] as QuantityInput;
  const value = Number((Math.round((from + share * (to - from)) / step) * step).toPrecision(12));
  return Math.min(Math.max(value, min), max);
}
