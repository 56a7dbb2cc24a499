import { taperedOutline } from '../layout/index.ts';
import { polygonMoments } from '../mass/index.ts';
import { STANDOFF_METALS } from '../material/index.ts';
import { wrapPath } from '../mount/index.ts';
import { standoffSection } from '../standoff/index.ts';
import { mountBond } from './checks/mount.ts';
import { armMaterial, armSection, hasSleeve, pastMotor, sleeveOf, sleeveSection } from './arm.ts';
import { currentArrangement } from './arrangement.ts';
import { framePlan } from './plan.ts';
import type { FrameRecord } from './record.ts';

export type PartGroup = 'arms' | 'motors' | 'plates' | 'standoffs' | 'electronics' | 'battery' | 'hardware';

/** One line of the mass budget. */
export interface FramePart {
  name: string;
  group: PartGroup;
  count: number;
  /** Of one [kg]. */
  mass: number;
  /** Of one, in the maker's currency; nothing where the record prices it with the hardware or not at all. */
  cost: number;
}

/** Carbon and epoxy of a wrap over the dry tow's mass: half fibre by volume, laid by hand. */
const WRAP_OVER_TOW = 1.7;
/** Plate of this thickness is what the record prices; others in proportion [m]. */
const PRICED_PLATE = 2e-3;

const plateCost = ({ costs }: FrameRecord, area: number, thickness: number): number =>
  (area * costs.platePerSquareMetre * thickness) / PRICED_PLATE;

function armParts(record: FrameRecord): FramePart[] {
  const { arm, mount, materials, costs } = record;
  const material = armMaterial(record);
  const length = arm.length + arm.root.screwSpacing + arm.root.endDistance + pastMotor(record);
  const line = (name: string, mass: number, cost: number): FramePart => ({ name, group: 'arms', count: 4, mass, cost });
  const wires = line('Motor wires', arm.wireMass, 0);
  const bare = armSection(record).area * length * material.density.typical;
  if (arm.kind === 'strip') {
    return [line('Plate arm', bare, plateCost(record, arm.strip.width * length, arm.strip.thickness)), wires];
  }
  const { outside } = sleeveOf(record);
  const adhesive = materials.adhesive.density.typical;
  const bond = Math.PI * outside * arm.sleeve.length * arm.sleeve.bondLine * adhesive;
  const sleeve = hasSleeve(record)
    ? [
        line(
          'Sleeve',
          sleeveSection(record).area * arm.sleeve.length * material.density.typical + bond,
          (arm.sleeve.length * costs.tubePerMetre * sleeveSection(record).area) / armSection(record).area +
            bond * costs.adhesivePerKilogram,
        ),
      ]
    : [];
  const sheet = mount.plateWidth * mount.plateLength;
  const plate = sheet * mount.plateThickness * materials.plate.density.typical;
  const glue = mountBond(record).glueArea * mount.plateLength * adhesive;
  const turn = wrapPath({ tubeDiameter: arm.tube.outerDiameter, ...mount }).length;
  const tow = 2 * mount.wrapTurns * mount.tow * turn;
  return [
    line('Tube', bare, length * costs.tubePerMetre),
    ...sleeve,
    line(
      'Motor plate',
      plate + glue,
      plateCost(record, sheet, mount.plateThickness) + glue * costs.adhesivePerKilogram,
    ),
    line('Tow wrap', WRAP_OVER_TOW * tow, WRAP_OVER_TOW * tow * costs.adhesivePerKilogram),
    wires,
  ];
}

function plateParts(record: FrameRecord): FramePart[] {
  const { body, materials, arm } = record;
  const outline = polygonMoments(taperedOutline({ length: body.length, waist: body.width, end: body.end })).area;
  // Tongues carry the arms' screws past the body's waist.
  const tongues = 4 * body.tongueWidth * Math.max(0, framePlan(record).rootDistance + 0.005 - body.width / 2);
  const hub = (arm.root.screwSpacing + arm.root.endDistance + 0.005) * body.tongueWidth * 4;
  const sheet = (name: string, area: number, thickness: number): FramePart => ({
    name,
    group: 'plates',
    count: 1,
    mass: area * thickness * materials.plate.density.typical,
    cost: plateCost(record, area, thickness),
  });
  const top = outline * Math.min(body.topPlate.length / body.length, 1);
  return [
    sheet('Main plate', (outline + tongues) * body.solidShare, body.mainPlate.thickness),
    sheet('Cross plate', hub, body.crossPlate.thickness),
    sheet('Top plate', top * body.solidShare, body.topPlate.thickness),
  ];
}

/**
 * Every part of a frame with its mass and cost.
 * @param record - a valid record
 * @returns lines of the mass budget [kg]; costs in the maker's currency
 * @validity plates as tapered outlines with the stated share left after cutouts, the cross plate as four lugs; a wrap
 * weighs 1.7 times its dry tow, a motor plate has its glue with it. Plates cost in proportion to their thickness, sleeves
 * to their mass per metre of tube, standoffs the same whatever their size. An estimate to compare revisions: weigh what you sell
 * @throws InputError where sizes do not make a part
 * @derivation volume times density
 */
export function frameParts(record: FrameRecord): FramePart[] {
  const { motor, battery, body, hardware, costs } = record;
  const { standoffs, items } = currentArrangement(record);
  const { metal } = STANDOFF_METALS[body.standoff.material];
  const post = standoffSection(body.standoff).area * body.standoff.length * metal.density.typical;
  return [
    ...armParts(record),
    { name: 'Motor with propeller', group: 'motors', count: 4, mass: motor.mass, cost: 0 },
    ...plateParts(record),
    { name: 'Standoffs', group: 'standoffs', count: standoffs.length, mass: post, cost: costs.standoff },
    ...items.map(({ name, mass }): FramePart => ({ name, group: 'electronics', count: 1, mass, cost: 0 })),
    ...hardware.map((item): FramePart => ({ group: 'hardware', ...item })),
    { name: 'Battery', group: 'battery', count: 1, mass: battery.mass, cost: 0 },
  ];
}

/**
 * Mass and cost of some groups of parts.
 * @param parts - lines of the budget
 * @param groups - which to add; all where not given
 * @returns mass [kg] and cost
 * @validity as frameParts
 * @derivation sum of count times mass
 */
export function totalOf(parts: readonly FramePart[], groups?: readonly PartGroup[]): { mass: number; cost: number } {
  return parts
    .filter(({ group }) => !groups || groups.includes(group))
    .reduce((sum, { count, mass, cost }) => ({ mass: sum.mass + count * mass, cost: sum.cost + count * cost }), {
      mass: 0,
      cost: 0,
    });
}
