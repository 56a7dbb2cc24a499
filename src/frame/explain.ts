import { InputError } from '@frameworthy/shared';
import { FIELDS, type LeafPath } from '@frameworthy/shared/frame';
import type { Show } from '~/island/declaration.ts';
import { errorText } from '~/island/evaluate.ts';

/** Where in the record the package's own names of values belong. */
const PATHS: Readonly<Record<string, LeafPath>> = {
  outerDiameter: 'arm.tube.outerDiameter',
  tubeOutside: 'arm.tube.outerDiameter',
  wall: 'arm.tube.wall',
  tubeInside: 'arm.tube.wall',
  sleeveOutside: 'arm.sleeve.bondLine',
  bondLine: 'arm.sleeve.bondLine',
  sleeveWall: 'arm.sleeve.wall',
  length: 'arm.sleeve.length',
  taper: 'arm.sleeve.taper',
  holeDiameter: 'arm.root.holeDiameter',
  screwDiameter: 'arm.root.holeDiameter',
  endDistance: 'arm.root.endDistance',
  edgeDistance: 'arm.root.endDistance',
  screwSpacing: 'arm.root.screwSpacing',
  width: 'arm.strip.width',
  height: 'arm.strip.thickness',
  armLength: 'arm.length',
  tipGap: 'layout.tipGap',
  bore: 'body.standoff.bore',
  plateRadius: 'body.standoff.plateRadius',
  bossRadius: 'body.standoff.outerDiameter',
  from: 'motor.hoverSpeed',
  filletRadius: 'mount.fillet',
  bandWidth: 'mount.bandWidth',
  edgeRadius: 'mount.edgeRadius',
  tongueLength: 'body.tongueLength',
};

/** Path of a problem with all standoffs together. */
export const STANDOFFS = 'electronics.standoffs';

export interface Explained {
  /** Of the field that cannot be so, where one is to blame: a leaf's, or one within the electronics. */
  path?: string;
  text: string;
}

const own = <T>(table: Readonly<Record<string, T>>, key: string): T | undefined =>
  Object.hasOwn(table, key) ? table[key] : undefined;

/** Why a record cannot be worked out, in the reader's words and units. */
export function explainRecord(error: unknown, show: Show): Explained {
  if (!(error instanceof InputError))
    return { text: 'These values together cannot be computed. Take the last one back.' };
  const { parameter } = error;
  const leaf = Object.hasOwn(FIELDS, parameter) ? (parameter as LeafPath) : own(PATHS, parameter);
  const path = parameter.startsWith('electronics.') ? parameter : parameter === 'columns' ? STANDOFFS : leaf;
  const field = leaf && FIELDS[leaf];
  return { path, text: errorText(error, field && 'kind' in field ? field.kind : 'ratio', show) };
}
