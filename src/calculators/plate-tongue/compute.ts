import type { Warning } from '@frameworthy/shared';
import { CHARACTERISTIC_LENGTHS, notchedStrengthRatio, twoScrewRoot } from '@frameworthy/shared/joint';
import { QUASI_ISOTROPIC_PLATE, WOVEN_PLATE } from '@frameworthy/shared/material';
import {
  leastWeb,
  plateBendingHoleFactor,
  tongue,
  twoPlates,
  webs,
  type PlateLink,
  type Tongue,
  type TonguePlate,
  type Web,
} from '@frameworthy/shared/plate';
import { typicalPlate } from '../plate-material-inputs.ts';
import type { TongueValues } from './inputs.ts';

const materialOf = ({ material, plateModulus, plateShear, plateStrength }: TongueValues) =>
  material === 'own'
    ? { youngsModulus: plateModulus, shearModulus: plateShear, bendingStrength: plateStrength }
    : typicalPlate(material === 'woven' ? WOVEN_PLATE : QUASI_ISOTROPIC_PLATE);

export type Place = 'root' | 'hole' | 'screw' | 'web';

export const PLACE_WORDS: Record<Place, string> = {
  root: 'the plate at the edge of the body',
  hole: 'the plate beside the hole',
  screw: 'the plate at the outer screw',
  web: 'a web beside the cutout',
};

/** Strength beside a hole over that of the whole plate: the laminate evens out part of the peak. */
function keptAtHole({ plane, holeDiameter, tongueWidth, bottomPlate }: TongueValues): number {
  // Sideways the hole lies on the middle line, where the stress is low.
  if (plane === 'horizontal') return 1;
  const holeFactor = plateBendingHoleFactor({ width: tongueWidth, thickness: bottomPlate, holeDiameter });
  return notchedStrengthRatio({ holeDiameter, characteristicLength: CHARACTERISTIC_LENGTHS.point, holeFactor });
}

/** The main plate's webs; what it carries at the edge of the body goes on inwards. */
function websOf(
  values: TongueValues,
  { outer, inner }: { outer: number; inner: number },
  rootMoment: number,
  bottom: TonguePlate,
  share: number,
) {
  const { plane, force, tongueLength, screwSpacing, cutoutAt, plateWidth, bottomPlate, cutoutWidth } = values;
  // Outside the inner screw the plate carries the outer one's force alone; the arm carries the rest past it.
  const moment = outer * (tongueLength + cutoutAt) - inner * Math.max(0, tongueLength + cutoutAt - screwSpacing);
  const pushed = tongueLength + cutoutAt < screwSpacing ? outer : force;
  const material = materialOf(values);
  const plate = {
    plateWidth,
    thickness: bottomPlate,
    cutoutWidth,
    cutoutLength: values.cutoutLength,
    cutoutOffset: values.cutoutOffset,
    youngsModulus: material.youngsModulus,
    shearModulus: material.shearModulus,
  };
  const inPlane = plane === 'horizontal';
  const grown = moment / rootMoment;
  const load = {
    axial: inPlane ? 0 : bottom.axial * grown,
    shear: inPlane ? share * pushed : 0,
    moment: inPlane ? share * moment : 0,
    outOfPlane: inPlane ? 0 : Math.abs(bottom.rootMoment) * grown,
  };
  return cutoutWidth > 0 ? webs(plate, load) : whole(plate, load);
}

/** A plate without a cutout, as one web as wide as itself. */
function whole(
  { plateWidth: width, thickness }: { plateWidth: number; thickness: number },
  load: { axial: number; shear: number; moment: number; outOfPlane: number },
): readonly [Web, Web] {
  const axialStress = Math.abs(load.axial) / (width * thickness);
  const bendingStress = (6 * Math.abs(load.moment)) / (thickness * width ** 2);
  const outOfPlaneStress = (6 * load.outOfPlane) / (width * thickness ** 2);
  const stress = axialStress + bendingStress + outOfPlaneStress;
  const web = {
    width,
    axial: load.axial,
    shear: load.shear,
    moment: load.moment,
    axialStress,
    bendingStress,
    outOfPlaneStress,
    stress,
  };
  return [web, web];
}

function tongueOf(values: TongueValues, link: TongueValues['link']): { tongue: Tongue; outer: number; inner: number } {
  const { armLength, screwSpacing, tongueLength, holeDiameter } = values;
  const material = materialOf(values);
  const { outer, inner } = twoScrewRoot({ tipForce: values.force, armLength, screwSpacing });
  const plate = (thickness: number) => ({ thickness, youngsModulus: material.youngsModulus });
  const innerAt = tongueLength - screwSpacing;
  return {
    outer,
    inner,
    tongue: {
      length: tongueLength,
      width: values.tongueWidth,
      bottom: plate(values.bottomPlate),
      ...(link === 'none' ? {} : { top: plate(values.topPlate) }),
      gap: values.gap,
      shearModulus: material.shearModulus,
      link: link === 'none' ? 'sliding' : (link as PlateLink),
      plane: values.plane,
      // An inner screw behind the edge presses on the stiff body and not on the tongue.
      loads: [{ at: tongueLength, force: outer }, ...(innerAt > 0 ? [{ at: innerAt, force: -inner }] : [])],
      ...(holeDiameter > 0 ? { hole: { at: values.holeAt, diameter: holeDiameter } } : {}),
    },
  };
}

/** The tongue with one way of joining the plates. */
export function solve(values: TongueValues, link: TongueValues['link']) {
  const { tongue: given, outer, inner } = tongueOf(values, link);
  const found = tongue(given);
  const strength = materialOf(values).bendingStrength;
  const kept = values.holeDiameter > 0 ? keptAtHole(values) : 1;
  const rigidity = twoPlates(given);
  const share = link === 'none' ? 1 : values.bottomPlate / (values.bottomPlate + values.topPlate);
  const bottom = found.plates[0]!;
  const sides = websOf(values, { outer, inner }, found.rootMoment, bottom, share);
  const web = sides[0].stress >= sides[1].stress ? sides[0] : sides[1];
  const most = (of: (plate: TonguePlate) => number) => Math.max(...found.plates.map(of));
  const uses: readonly (readonly [Place, number])[] = [
    ['root', most((p) => p.rootStress) / strength],
    ['hole', most((p) => p.holeStress) / (kept * strength)],
    ['screw', most((p) => p.endStress) / strength],
    ['web', web.stress / strength],
  ];
  const [weakest, use] = uses.reduce((worst, one) => (one[1] > worst[1] ? one : worst));
  const [outerMove, innerMove = 0] = found.movements as readonly [number, number?];
  return {
    ...found,
    outer,
    inner,
    strength,
    kept,
    rigidity,
    bottom,
    sides,
    web,
    weakest,
    use,
    useOf: (place: Place) => uses.find(([name]) => name === place)![1],
    /** The stiff arm goes through both screws, so that its end moves more than they do. */
    motorMovement: outerMove + ((outerMove - innerMove) * values.armLength) / values.screwSpacing,
  };
}

export function compute(values: TongueValues) {
  const found = solve(values, values.link);
  const least = leastWeb(values.bottomPlate, values.holeBeside);
  const narrowest = Math.min(found.sides[0].width, found.sides[1].width);
  const warnings: Warning[] = [];
  if (values.plane === 'horizontal' && values.tongueLength < values.tongueWidth)
    warnings.push({
      code: 'short-tongue',
      message:
        'Sideways the tongue is shorter than it is wide: no beam. Its movement is mostly shear, and the stress at its root a nominal one.',
    });
  if (values.holeDiameter > values.tongueWidth / 3)
    warnings.push({
      code: 'wide-hole',
      message: 'The hole takes more than a third of the tongue: the factor for its peak was not made for that.',
    });
  if (values.cutoutWidth > 0 && values.cutoutAt < values.cutoutLength / 2)
    warnings.push({
      code: 'cutout-in-tongue',
      message:
        'The cutout reaches into the tongue: there the webs belong to the tongue and it is softer than worked out here.',
    });
  const innerScrew = values.screwSpacing - values.tongueLength;
  if (
    innerScrew > 0 &&
    Math.abs(values.cutoutAt - innerScrew) < values.cutoutLength / 2 &&
    Math.abs(values.cutoutOffset) < values.cutoutWidth / 2
  )
    warnings.push({
      code: 'screw-in-cutout',
      message: 'The inner screw of the arm stands in the cutout: move the cutout farther in, or the screw.',
    });
  return { ...found, least, narrowest, warnings };
}

export type TongueAnswer = ReturnType<typeof compute>;
