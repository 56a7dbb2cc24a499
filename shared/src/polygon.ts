/** A point of a plane [m]. */
export interface PlanePoint {
  x: number;
  y: number;
}

export interface Segment {
  from: PlanePoint;
  to: PlanePoint;
}

/** Closer to an edge than this counts as on it [m]. */
const ON_EDGE = 1e-7;

export const sidesOf = (corners: readonly PlanePoint[]): Segment[] =>
  corners.map((from, i) => ({ from, to: corners[(i + 1) % corners.length] as PlanePoint }));

const along = ({ from, to }: Segment, t: number): PlanePoint => ({
  x: from.x + t * (to.x - from.x),
  y: from.y + t * (to.y - from.y),
});

/** The point of a segment that lies nearest to a point. */
export function nearestOnSegment(segment: Segment, point: PlanePoint): PlanePoint {
  const { from, to } = segment;
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((point.x - from.x) * dx + (point.y - from.y) * dy) / square;
  return along(segment, Math.min(1, Math.max(0, share)));
}

/** Distance of a point from the outline of a polygon [m]. */
export function distanceToOutline(corners: readonly PlanePoint[], point: PlanePoint): number {
  return Math.min(
    ...sidesOf(corners).map((side) => {
      const { x, y } = nearestOnSegment(side, point);
      return Math.hypot(x - point.x, y - point.y);
    }),
  );
}

/** Whether a point lies inside a polygon and on none of its edges. */
export function isInside(corners: readonly PlanePoint[], point: PlanePoint): boolean {
  const crossed = sidesOf(corners).filter(
    ({ from: a, to: b }) =>
      a.y > point.y !== b.y > point.y && point.x < a.x + ((point.y - a.y) / (b.y - a.y)) * (b.x - a.x),
  );
  return crossed.length % 2 === 1 && distanceToOutline(corners, point) > ON_EDGE;
}

/** Where a segment crosses another, as the share of the way along it and as a point, if it does. */
export function crossing(segment: Segment, other: Segment): { share: number; point: PlanePoint } | undefined {
  const vector = ({ from, to }: Segment): PlanePoint => ({ x: to.x - from.x, y: to.y - from.y });
  const [a, b] = [vector(segment), vector(other)];
  const cross = a.x * b.y - a.y * b.x;
  if (cross === 0) return undefined;
  const [dx, dy] = [other.from.x - segment.from.x, other.from.y - segment.from.y];
  const [share, shareOfOther] = [(dx * b.y - dy * b.x) / cross, (dx * a.y - dy * a.x) / cross];
  const meets = share >= 0 && share <= 1 && shareOfOther >= 0 && shareOfOther <= 1;
  return meets ? { share, point: along(segment, share) } : undefined;
}

/** The pieces of a segment that lie inside any of the polygons, each as long as it can be. */
export function piecesInside(segment: Segment, polygons: readonly (readonly PlanePoint[])[]): Segment[] {
  const cuts = polygons.flatMap((corners) => sidesOf(corners).flatMap((side) => crossing(segment, side)?.share ?? []));
  const stations = [...new Set([0, ...cuts, 1])].sort((a, b) => a - b);
  const pieces: { start: number; end: number }[] = [];
  stations.slice(1).forEach((end, i) => {
    const start = stations[i] as number;
    const middle = along(segment, (start + end) / 2);
    if (!polygons.some((corners) => isInside(corners, middle))) return;
    const last = pieces.at(-1);
    if (last?.end === start) last.end = end;
    else pieces.push({ start, end });
  });
  return pieces.map(({ start, end }) => ({ from: along(segment, start), to: along(segment, end) }));
}
