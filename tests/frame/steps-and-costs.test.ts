import {
  designSteps,
  evaluateFrame,
  gainPerGram,
  leafOf,
  withValue,
  type FrameRecord,
  type LeafPath,
} from '@frameworthy/shared/frame';
import { describe, expect, test } from 'vitest';
import { SAMPLES } from '~/frame/samples.ts';

const [D, , FLAT] = SAMPLES as readonly [FrameRecord, FrameRecord, FrameRecord];
const before = evaluateFrame(D);
const { gains, impossible } = gainPerGram(D, before);
const gain = (id: string) => gains.find(({ step }) => step.path === id)!;
const part = (record: FrameRecord, name: string) =>
  evaluateFrame(record).balance.parts.find((one) => one.name === name)!;

describe('a step for each dimension', () => {
  /** Dimension, value of the sample, value afterwards: sizes that are sold and steps, common practice without source. */
  const STEPS: readonly (readonly [path: LeafPath, now: number | string, then: number | string])[] = [
    ['arm.tube.outerDiameter', 0.014, 0.016],
    ['arm.tube.wall', 0.001, 0.00125],
    ['arm.root.thread', 'M3', 'M4'],
    ['arm.root.grade', '10.9', '12.9'],
    ['mount.plateWidth', 0.026, 0.028],
    ['mount.plateLength', 0.026, 0.03],
    ['mount.plateThickness', 0.002, 0.0025],
    ['mount.bondLine', 0.0002, 0.0003],
    ['mount.fillet', 0.002, 0.0025],
    ['mount.bandWidth', 0.006, 0.008],
    ['mount.tow', 0.000198, 0.000396],
    ['body.mainPlate.thickness', 0.003, 0.0035],
    ['body.crossPlate.thickness', 0.002, 0.0025],
    ['body.topPlate.thickness', 0.002, 0.0025],
    ['body.tongueWidth', 0.016, 0.018],
    ['body.tongueLength', 0.012, 0.01],
    ['body.standoff.length', 0.022, 0.02],
    ['body.standoff.outerDiameter', 0.005, 0.0055],
    ['body.standoff.material', 'aluminium-6061', 'aluminium-7075'],
    ['body.standoff.screwClass', '10.9', '12.9'],
  ];

  test.each(STEPS)('%s', (path, now, then) => {
    expect(leafOf(D, path)).toBe(now);
    const step = designSteps(D).find((one) => one.path === path)!;
    expect(leafOf(step.record, path)).toBe(then);
  });

  test('a thread takes its hole along, with the play that the maker gave it', () => {
    expect([D.arm.root.holeDiameter, gain('arm.root.thread').step.record.arm.root.holeDiameter]).toEqual([
      0.0032, 0.0042,
    ]);
  });

  test('all of them can be built, and none is of what a drawing decides', () => {
    expect(impossible).toEqual([]);
    expect(designSteps(D).filter(({ path }) => path === 'body.solidShare')).toEqual([]);
  });

  test('none where nothing larger is sold, where the field ends, or where there is nothing to enlarge', () => {
    const ends: readonly (readonly [step: string, path: string, value: unknown])[] = [
      ['mount.tow', 'mount.tow', 800e-6],
      ['mount.tow', 'mount.wrapTurns', 0],
      ['mount.bandWidth', 'mount.wrapTurns', 0],
      ['arm.root.thread', 'arm.root.thread', 'M4'],
      ['body.standoff.screwClass', 'body.standoff.screwClass', '12.9'],
      ['body.tongueLength', 'body.tongueLength', 0.002],
      ['mount.plateThickness', 'mount.plateThickness', 0.006],
      ['mount.bondLine', 'mount.bondLine', 0.0005],
    ];
    for (const [step, path, value] of ends) {
      const ids = designSteps(withValue(D, path, value)).map(({ path: one }) => one);
      expect(ids, path).not.toContain(step);
      expect(ids.length).toBeGreaterThan(20);
    }
  });

  test('a larger thread helps a blow that its screws or holes give in, and is no gift: its mass is not known', () => {
    const weak = withValue(D, 'arm.root.thread', 'M2');
    const found = gainPerGram(withValue(weak, 'arm.root.holeDiameter', 0.0022), undefined, 'strike-sideways').gains;
    const thread = found.find(({ step }) => step.path === 'arm.root.thread')!;
    expect(thread.speed).toBeGreaterThan(0);
    expect([thread.mass, thread.perMass, thread.step.unweighed, thread.step.unpriced]).toEqual([0, 0, true, true]);
  });
});

describe('what a step costs', () => {
  const { costs, arm, body, materials } = D;

  test('plates in proportion to thickness, the price being that of 2 mm', () => {
    // 26 by 26 mm of 2 mm at 380 a square metre: 0.257; half as thick again, half as much again.
    const glue = part(D, 'Motor plate').cost - 0.026 * 0.026 * 380;
    expect(part(withValue(D, 'mount.plateThickness', 0.003), 'Motor plate').cost - glue).toBeCloseTo(0.38532, 6);
    for (const [id, name, thickness] of [
      ['body.mainPlate.thickness', 'Main plate', body.mainPlate.thickness],
      ['body.crossPlate.thickness', 'Cross plate', body.crossPlate.thickness],
      ['body.topPlate.thickness', 'Top plate', body.topPlate.thickness],
    ] as const) {
      // Mass over density is area times thickness: the price of plate by volume.
      const { mass, cost } = part(D, name);
      expect(cost).toBeCloseTo(((mass / materials.plate.density.typical) * costs.platePerSquareMetre) / 0.002, 9);
      expect(gain(id).cost).toBeCloseTo((cost * 0.0005) / thickness, 9);
    }
    const { mass, cost } = part(FLAT, 'Plate arm');
    expect(cost).toBeCloseTo((mass / FLAT.materials.plate.density.typical) * (380 / 0.002), 9);
  });

  test('tubes in proportion to mass: a step takes the price of a metre along', () => {
    // π/4 (14² − 12²) = 40.8 mm²; 16 by 1: π/4 (16² − 14²) = 47.1; 14 by 1.25: π/4 (14² − 11.5²) = 50.1.
    for (const [id, area] of [
      ['arm.tube.outerDiameter', 256 - 196],
      ['arm.tube.wall', 196 - 132.25],
    ] as const) {
      const price = gain(id).step.record.costs.tubePerMetre;
      expect(price).toBeCloseTo((costs.tubePerMetre * area) / (196 - 144), 3);
      const per = (record: FrameRecord) => part(record, 'Tube').cost / part(record, 'Tube').mass;
      expect(per(gain(id).step.record)).toBeCloseTo(per(D), 3);
      expect(gain(id).cost).toBeGreaterThan(1);
    }
    // A sleeve of 11.8 by 1 mm weighs less than its tube: π/4 (11.8² − 9.8²) = 33.9 mm².
    const glue = Math.PI * 0.0118 * arm.sleeve.length * 0.0001 * 1200 * costs.adhesivePerKilogram;
    const share = (11.8 ** 2 - 9.8 ** 2) / (14 ** 2 - 12 ** 2);
    expect(part(D, 'Sleeve').cost).toBeCloseTo(0.048 * 24 * share + glue, 9);
  });

  test('not priced: sizes, alloys and classes that the record has one price for', () => {
    const unpriced = gains.filter(({ step }) => step.unpriced).map(({ step }) => step.path);
    expect(unpriced.sort()).toEqual([
      'arm.root.grade',
      'arm.root.thread',
      'body.standoff.length',
      'body.standoff.material',
      'body.standoff.outerDiameter',
      'body.standoff.screwClass',
      'body.tongueLength',
    ]);
  });

  test('glue of the mount weighs: fillet and glue line are no gifts', () => {
    // Own derivation: the room between plate, tube and fillet, summed in strips.
    const glued = (fillet: number, line: number) => glueBySteps(fillet, line) * 0.026 * 1200;
    const more = (id: string) => part(gain(id).step.record, 'Motor plate').mass - part(D, 'Motor plate').mass;
    expect(part(D, 'Motor plate').mass).toBeCloseTo(0.026 * 0.026 * 0.002 * 1580 + glued(2, 0.2), 8);
    expect(more('mount.fillet')).toBeCloseTo(glued(2.5, 0.2) - glued(2, 0.2), 8);
    expect(more('mount.bondLine')).toBeCloseTo(glued(2, 0.3) - glued(2, 0.2), 8);
    expect(gain('mount.bondLine').mass).toBeGreaterThan(5e-5);
    expect(gain('mount.fillet').mass).toBeGreaterThan(2e-4);
  });
});

/** Area of glue under a plate on a tube of 14 mm, fillets drawn on both sides, in strips of the width [m²]; sizes in mm. */
function glueBySteps(fillet: number, line: number): number {
  const [radius, plate] = [7, 7 + line];
  const centre = { x: Math.sqrt((radius + fillet) ** 2 - (plate - fillet) ** 2), z: plate - fillet };
  const strips = 200_000;
  const width = centre.x / strips;
  let sum = 0;
  for (let i = 0; i < strips; i++) {
    const x = (i + 0.5) * width;
    const aside = Math.abs(x - centre.x);
    const tube = x < radius ? Math.sqrt(radius ** 2 - x ** 2) : 0;
    const chord = Math.sqrt(Math.max(0, fillet ** 2 - aside ** 2));
    // Under the hollow of the fillet there is air; above it glue.
    const touch = (radius * centre.x) / (radius + fillet);
    const air = aside >= fillet ? 0 : x < touch ? 2 * chord : centre.z + chord - tube;
    sum += Math.max(0, plate - tube - air) * width;
  }
  return 2 * sum * 1e-6;
}
