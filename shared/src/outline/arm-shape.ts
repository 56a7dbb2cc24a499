import type { PlanPoint } from '../layout/motor-layout.ts';
import type { ArmSection, OutlineArm } from './frame-outline.ts';

/** Width of an arm at its inner and outer end, and how high its section is [m]. */
export function armSize(section: ArmSection): { inner: number; outer: number; height: number } {
  return section.kind === 'tube'
    ? { inner: section.outerDiameter, outer: section.outerDiameter, height: section.outerDiameter }
    : { inner: section.rootWidth, outer: section.tipWidth, height: section.thickness };
}

/** Unit vector along an arm, and its length [m]. */
export function armAxis({ innerEnd, outerEnd }: OutlineArm): { along: PlanPoint; length: number } {
  const [x, y] = [outerEnd.x - innerEnd.x, outerEnd.y - innerEnd.y];
  const length = Math.hypot(x, y);
  return { along: { x: x / length, y: y / length }, length };
}

/** Corners of an arm from above; `width` replaces that of its ends, as for a bore. */
export function armCorners(arm: OutlineArm, width?: number): PlanPoint[] {
  const { along } = armAxis(arm);
  const size = armSize(arm.section);
  const beside = ({ x, y }: PlanPoint, offset: number): PlanPoint => ({
    x: x - along.y * offset,
    y: y + along.x * offset,
  });
  const [inner, outer] = [(width ?? size.inner) / 2, (width ?? size.outer) / 2];
  return [
    beside(arm.innerEnd, -inner),
    beside(arm.outerEnd, -outer),
    beside(arm.outerEnd, outer),
    beside(arm.innerEnd, inner),
  ];
}
