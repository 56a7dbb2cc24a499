import * as materials from '@frameworthy/shared/material';
import type { MaterialValue, MaterialValueKind } from '@frameworthy/shared/material';
import * as laminate from '@frameworthy/shared/laminate';
import { formatQuantity, type QuantityKind } from '@frameworthy/shared/quantity';
import type { SourceId } from '../../content/sources/index.ts';

/** Each value's name for readers, and what kind of quantity it is. A value without one stops the build. */
const VALUES: Readonly<Record<string, readonly [label: string, kind: QuantityKind]>> = {
  density: ['Density', 'density'],
  youngsModulus: ['Young’s modulus, along', 'modulus'],
  hoopModulus: ['Young’s modulus, round the tube', 'modulus'],
  modulusAlong: ['Modulus along the fibre', 'modulus'],
  modulusAcross: ['Modulus across the fibre', 'modulus'],
  shearModulus: ['Shear modulus', 'modulus'],
  poissonRatio: ['Poisson’s ratio', 'ratio'],
  bendingStrength: ['Bending strength, along', 'stress'],
  hoopBendingStrength: ['Bending strength, round the tube', 'stress'],
  yieldStrength: ['Yield strength', 'stress'],
  tensileStrength: ['Tensile strength', 'stress'],
  shearStrength: ['Shear strength', 'stress'],
  bearingStrength: ['Bearing strength at a screw', 'stress'],
  headPressure: ['Pressure under a head', 'stress'],
  alongTension: ['Tension along the fibre', 'stress'],
  alongCompression: ['Compression along the fibre', 'stress'],
  acrossTension: ['Tension across the fibre', 'stress'],
  acrossCompression: ['Compression across the fibre', 'stress'],
  shear: ['Shear in the plane', 'stress'],
  lapShearStrength: ['Lap shear strength', 'stress'],
  acrossStrength: ['Strength across the bond', 'stress'],
  friction: ['Coefficient of friction', 'ratio'],
};

/** A material belongs to the first group whose value it has. */
const GROUPS = [
  ['hoopModulus', 'Tubes'],
  ['bearingStrength', 'Plates'],
  ['alongTension', 'Plies'],
  ['yieldStrength', 'Metals'],
  ['lapShearStrength', 'Adhesive'],
  ['', 'Fibre, resin, contact'],
] as const;

export interface ListedValue {
  key: string;
  label: string;
  low: string;
  typical: string;
  high: string;
  unit: string;
  kind: MaterialValueKind;
  source: SourceId;
  note?: string;
}

export interface ListedMaterial {
  /** Anchor on the page. */
  id: string;
  name: string;
  values: readonly ListedValue[];
}

type Entry = { name: string } & Readonly<Record<string, MaterialValue | string>>;
const isEntry = (value: unknown): value is Entry =>
  typeof value === 'object' &&
  value !== null &&
  'name' in value &&
  Object.values(value).some((one) => typeof one === 'object' && one !== null && 'typical' in one);

function listed(key: string, value: MaterialValue): ListedValue {
  const known = VALUES[key];
  if (!known)
    throw new Error(`The materials page has no name for "${key}"; there are: ${Object.keys(VALUES).join(', ')}`);
  const [label, kind] = known;
  // Number and unit stand in columns of their own.
  const unit = formatQuantity(value.typical, kind).split('\u202f')[1] ?? '';
  const plain = (si: number): string => formatQuantity(si, kind, { digits: 4 }).replace(`\u202f${unit}`, '');
  return {
    key,
    label,
    low: plain(value.low),
    typical: plain(value.typical),
    high: plain(value.high),
    unit,
    kind: value.kind,
    source: value.source as SourceId,
    ...(value.note === undefined ? {} : { note: value.note }),
  };
}

const named: readonly (readonly [string, unknown])[] = [...Object.entries(materials), ...Object.entries(laminate)];
/** Everything in the package that has a name and values with a spread: nothing is registered here. */
const entries = named.filter((pair): pair is readonly [string, Entry] => isEntry(pair[1]));

export const materialGroups = GROUPS.map(([, title], g) => ({
  title,
  materials: entries
    .filter(([, entry]) => GROUPS.findIndex(([key]) => key === '' || key in entry) === g)
    .map(([id, entry]): ListedMaterial => ({
      id: id.toLowerCase().replaceAll('_', '-'),
      name: entry.name,
      values: Object.entries(entry).flatMap(([key, value]) => (typeof value === 'string' ? [] : [listed(key, value)])),
    })),
}));

/** What each kind of value is worth, best first. */
export const KINDS: Readonly<Record<MaterialValueKind, string>> = {
  'standard minimum': 'A standard promises at least this much.',
  'data sheet': 'A maker prints it for a product. Yours may come from another.',
  'typical published': 'Printed in tables as typical. Half of the pieces may lie below.',
  'common practice': 'What builders count with. Nobody has published it.',
  estimate: 'Our own, derived from one of the others as the note says. Test a piece before you rely on it.',
};
