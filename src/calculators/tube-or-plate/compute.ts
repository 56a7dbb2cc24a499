import { bundleDiameter, type Match } from '@frameworthy/shared/arm';
import type { Warning } from '@frameworthy/shared';
import type { ArmValues } from './inputs.ts';
import { matchingThickness, matchingWall, matchingWidth, type Matches } from './matches.ts';
import { stripPart, tubePart, type Part } from './parts.ts';
import { stripWarnings, tubeWarnings } from './warnings.ts';

export interface ArmResult {
  tube: Part;
  strip: Part;
  bore: number;
  /** Bore that the wires ask for. */
  wireRoom: number;
  thickestWire: number;
  /** Width at the root of a strip that matches the tube. */
  width: Matches;
  /** Thickness of a plate as stiff up and down as the tube. */
  thickness: Match;
  /** Wall of a tube that matches the strip. */
  wall: Matches;
  warnings: readonly Warning[];
}

export function compute(values: ArmValues): ArmResult {
  const { outerDiameter, wall, wireCount, wireDiameter } = values;
  const tube = tubePart(values);
  const strip = stripPart(values);
  const bore = outerDiameter - 2 * wall;
  return {
    tube,
    strip,
    bore,
    wireRoom: bundleDiameter(wireCount, wireDiameter),
    thickestWire: bore / bundleDiameter(wireCount, 1),
    width: matchingWidth(values, tube),
    thickness: matchingThickness(values, tube),
    wall: matchingWall(values, strip),
    warnings: [...tubeWarnings(values, tube), ...stripWarnings(values)],
  };
}

/** Part of the tube's figure over the strip's. */
export const ratio = ({ tube, strip }: ArmResult, of: (part: Part) => number): number => of(tube) / of(strip);
