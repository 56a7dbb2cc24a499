import { InputError } from '@frameworthy/shared';
import { motorLayout } from '@frameworthy/shared/layout';
import {
  cuttingList,
  extentOf,
  fourArmOutline,
  innerEndGap,
  leastEdgeDistance,
  overallSize,
  planDimensions,
  planShapes,
  plateArea,
  sideDimensions,
  sideShapes,
  type FourArmFrame,
  type FrameOutline,
} from '@frameworthy/shared/outline';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import frameDrawing from '~/calculators/frame-drawing/index.ts';
import { startValues } from '~/island/values.ts';
import type { AnyCalculator } from '~/island/declaration.ts';
import { anyNumber, refusesOrFinite } from './garbage.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (value: number, expected: number, absolute = 1e-9): void =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(absolute);

const frames = fc
  .record({
    propellerDiameter: within(0.06, 0.3),
    share: within(-0.2, 0.8),
    shape: fc.constantFrom('true-x' as const, 'stretched' as const, 'wide' as const),
    stretch: within(1, 1.6),
    tube: fc.boolean(),
    width: within(0.006, 0.02),
    armShare: within(0.3, 0.9),
    tongueWidth: within(0, 0.03),
    bodyWidth: within(0.02, 0.08),
    standoffLength: within(0.01, 0.05),
    crosswise: fc.boolean(),
    below: fc.boolean(),
    tilt: within(-0.5, 0.8),
  })
  .map((f): FourArmFrame => {
    const layout = {
      propellerDiameter: f.propellerDiameter,
      tipGap: f.share * f.propellerDiameter,
      shape: f.shape,
      stretch: f.stretch,
    };
    return {
      name: 'any',
      layout,
      motor: { bellDiameter: 0.028, height: 0.02, propellerHeight: 0.027 },
      arm: {
        section: f.tube
          ? { kind: 'tube', outerDiameter: f.width, wall: 0.001 }
          : { kind: 'strip', rootWidth: f.width * 1.2, tipWidth: f.width, thickness: 0.005 },
        length: (motorLayout(layout).wheelbase / 2) * f.armShare,
        screwSpacing: 0.018,
        endDistance: 0.008,
        holeDiameter: 0.003,
        beyondMotor: 0.01,
      },
      body: {
        length: 0.15,
        width: f.bodyWidth,
        end: 0.02,
        tongueWidth: f.tongueWidth,
        crossPlate: 0.002,
        mainPlate: 0.003,
        topPlate: 0.002,
        topLength: 0.13,
      },
      standoff: {
        places: [
          { x: 0.008, y: 0.04 },
          { x: -0.008, y: -0.04 },
        ],
        length: f.standoffLength,
        diameter: 0.005,
        holeDiameter: 0.0032,
      },
      electronics: [
        {
          name: 'camera',
          centre: { x: 0, y: 0.05, z: 0.012 },
          size: { x: 0.019, y: 0.024, z: 0.019 },
          tilt: f.tilt + 0,
        },
      ],
      battery: {
        length: 0.078,
        width: 0.04,
        height: 0.046,
        lie: f.crosswise ? 'crosswise' : 'lengthwise',
        side: f.below ? 'below' : 'above',
        forward: 0.004,
        gap: 0.003,
      },
    };
  });

const valueOf = (list: readonly { name: string; value: number }[], name: string) =>
  list.find((dimension) => dimension.name === name)?.value ?? Number.NaN;

test('the drawing says the same as the layout: wheelbase, gap, arm, standoff, height', () => {
  fc.assert(
    fc.property(frames, (frame) => {
      const outline = fourArmOutline(frame);
      const layout = motorLayout(frame.layout);
      const plan = planDimensions(outline);
      near(valueOf(plan, 'wheelbase'), layout.wheelbase);
      near(valueOf(plan, 'tip gap'), frame.layout.tipGap);
      near(valueOf(plan, 'arm length'), frame.arm.length);
      near(valueOf(plan, 'screw spacing'), frame.arm.screwSpacing);
      near(valueOf(sideDimensions(outline), 'standoff length'), frame.standoff.length);
      near(valueOf(sideDimensions(outline), 'total height'), overallSize(outline).height);
      // A length that is shown is as long as it is drawn, the signed gap aside.
      for (const { name, from, to, value } of plan)
        near(Math.hypot(to.x - from.x, to.y - from.y), name === 'tip gap' ? Math.abs(value) : value);
    }),
  );
});

test('the plan tells the spacings of four standoffs in a rectangle, and of no other layout', () => {
  fc.assert(
    fc.property(frames, within(0.02, 0.1), within(0.01, 0.05), within(-0.02, 0.02), (frame, along, across, ahead) => {
      const told = (places: readonly (readonly [x: number, y: number])[]) =>
        planDimensions(
          fourArmOutline({
            ...frame,
            standoff: { ...frame.standoff, places: places.map(([x, y]) => ({ x, y: y + ahead })) },
          }),
        );
      const [x, y] = [across / 2, along / 2];
      const four = [
        [x, y],
        [-x, y],
        [x, -y],
        [-x, -y],
      ] as const;
      near(valueOf(told(four), 'standoffs along'), along);
      near(valueOf(told(four), 'standoffs across'), across);
      const others = [
        four.slice(1),
        [...four, [0, 0] as const],
        [...four, [x, 0], [-x, 0]] as const,
        // A rear pair that stands closer, as under a camera.
        [...four.slice(0, 2), [x * 0.7, -y], [-x * 0.7, -y]] as const,
        // Two in one place.
        [...four.slice(0, 3), four[0]] as const,
        [],
      ];
      for (const places of others)
        for (const name of ['standoffs along', 'standoffs across']) expect(valueOf(told(places), name)).toBeNaN();
    }),
    { numRuns: 30 },
  );
});

test('the width of a tongue is told where its end stands out of the body', () => {
  fc.assert(
    fc.property(frames, (frame) => {
      const outline = fourArmOutline(frame);
      const told = planDimensions(outline).find(({ name }) => name === 'tongue width');
      // Far enough out that the body, which lies within half its length of the middle, can't cover it.
      const screw = outline.arms[3]!.rootScrews[1]!.at;
      if (frame.body.tongueWidth < 1e-4) expect(told).toBeUndefined();
      else if (Math.hypot(screw.x, screw.y) > 0.08) expect(told).toBeDefined();
      if (!told) return;
      near(told.value, frame.body.tongueWidth);
      // On the last arm, half the width beyond its outer screw.
      const middle = { x: (told.from.x + told.to.x) / 2, y: (told.from.y + told.to.y) / 2 };
      near(Math.hypot(middle.x - screw.x, middle.y - screw.y), frame.body.tongueWidth / 2);
    }),
  );
});

test('each plate has its thickness in the side view, where it lies', () => {
  fc.assert(
    fc.property(frames, (frame) => {
      const outline = fourArmOutline(frame);
      const side = sideDimensions(outline);
      for (const { name, z, thickness } of outline.plates) {
        const told = side.find((dimension) => dimension.name === `thickness of ${name}`)!;
        near(told.value, thickness);
        near(Math.min(told.from.y, told.to.y), z);
      }
    }),
  );
});

test('a cutting list counts arms and holes by name and size', () => {
  const frame = fc.sample(frames, 1)[0]!;
  const outline = fourArmOutline(frame);
  const board = (diameter: number) => ({ name: 'screw of a board', at: { x: 0, y: 0 }, diameter });
  const { arms, holes } = cuttingList({
    ...outline,
    holes: [...outline.holes, board(0.0022), board(0.003), board(0.0022)],
  });
  expect(arms).toEqual([{ name: 'arm', size: expect.any(Number) as number, count: 4 }]);
  // Overhang, free length, screws and what lies behind the inner one.
  near(arms[0]!.size, 0.01 + frame.arm.length + 0.018 + 0.008);
  expect(holes).toEqual([
    { name: 'root screw', size: 0.003, count: 8 },
    { name: 'standoff screw', size: 0.0032, count: 2 },
    { name: 'screw of a board', size: 0.0022, count: 2 },
    { name: 'screw of a board', size: 0.003, count: 1 },
  ]);
});

test('all of the frame is in the views, mirrored left to right, and its outline is plain data', () => {
  fc.assert(
    fc.property(frames, (frame) => {
      const outline = fourArmOutline(frame);
      expect(JSON.parse(JSON.stringify(outline))).toEqual(outline);
      const names = new Set(planShapes(outline).map(({ name }) => name));
      const parts = [
        ...outline.motors,
        ...outline.propellers,
        ...outline.arms,
        ...outline.plates,
        ...outline.electronics,
      ];
      for (const { name } of parts) expect(names).toContain(name);
      const { left, right } = extentOf(planShapes(outline));
      near(left, -right);
      const side = extentOf(sideShapes(outline));
      const plan = extentOf(planShapes(outline));
      near(side.right, plan.top);
      near(side.left, plan.bottom);
    }),
  );
});

/** Area by counting the middles of small squares, with an inside test of its own: how often a ray to the right crosses. */
function countedArea(corners: readonly { x: number; y: number }[], step: number): number {
  const inside = (px: number, py: number) =>
    corners.filter(({ x, y }, i) => {
      const other = corners[(i + 1) % corners.length]!;
      return y > py !== other.y > py && px < x + ((py - y) / (other.y - y)) * (other.x - x);
    }).length %
      2 ===
    1;
  let count = 0;
  for (let x = -0.12 + step / 2; x < 0.12; x += step)
    for (let y = -0.12 + step / 2; y < 0.12; y += step) if (inside(x, y)) count++;
  return count * step ** 2;
}

test('plate with tongues: all of body and tongues, and nothing else', () => {
  fc.assert(
    fc.property(frames, (frame) => {
      const outline = fourArmOutline({
        ...frame,
        layout: { ...frame.layout, propellerDiameter: 0.12, tipGap: 0.02 },
        arm: { ...frame.arm, length: 0.055 },
      });
      const bare = fourArmOutline({
        ...frame,
        layout: { ...frame.layout, propellerDiameter: 0.12, tipGap: 0.02 },
        arm: { ...frame.arm, length: 0.055 },
        body: { ...frame.body, tongueWidth: 0 },
      });
      const [plate, body] = [outline.plates[0]!, bare.plates[0]!];
      const area = plateArea(plate, []);
      const corners = plate.shape.kind === 'polygon' ? plate.shape.corners : [];
      near(area, countedArea(corners, 1e-3), 2e-4);
      expect(area).toBeGreaterThanOrEqual(plateArea(body, []) - 1e-12);
      // Four tongues reach from the middle to half their width beyond the outer screw.
      const screw = outline.arms[0]!.rootScrews[1]!.at;
      const half = frame.body.tongueWidth / 2;
      expect(area).toBeLessThanOrEqual(
        plateArea(body, []) + 4 * 2 * half * (Math.hypot(screw.x, screw.y) + half) + 1e-12,
      );
    }),
    { numRuns: 15 },
  );
});

test('holes take their area, and their edge distance is from rim to rim', () => {
  const plate = {
    name: 'square',
    shape: { kind: 'chamfered' as const, centre: { x: 0, y: 0 }, length: 0.1, width: 0.06, chamfer: 0.01 },
    z: 0,
    thickness: 0.002,
  };
  near(plateArea(plate, []), 0.006 - 2e-4, 1e-12);
  near(plateArea(plate, [{ at: { x: 0, y: 0 }, diameter: 0.01 }]), 0.0058 - 25e-6 * Math.PI, 1e-12);
  near(plateArea(plate, [{ at: { x: 1, y: 0 }, diameter: 0.01 }]), 0.0058, 1e-12);
  near(leastEdgeDistance(plate, [{ at: { x: 0.02, y: 0 }, diameter: 0.004 }]), 0.008, 1e-12);
  near(leastEdgeDistance(plate, [{ at: { x: 0.032, y: 0 }, diameter: 0.004 }]), -0.004, 1e-12);
});

test('the gap between inner ends is that of the corners as drawn', () => {
  fc.assert(
    fc.property(within(0.002, 0.1), within(0.004, 0.03), within(0.3, Math.PI), (distance, width, angle) => {
      const corner = (turn: number, side: number) => ({
        x: distance * Math.cos(turn) - (side * width * Math.sin(turn)) / 2,
        y: distance * Math.sin(turn) + (side * width * Math.cos(turn)) / 2,
      });
      const [a, b] = [corner(0, 1), corner(angle, -1)];
      near(Math.abs(innerEndGap({ distance, width, angle })), Math.hypot(a.x - b.x, a.y - b.y));
    }),
  );
});

test('an arm longer than its motor is far out is refused at the arm', () => {
  const frame = fc.sample(frames, 1)[0]!;
  expect(() => fourArmOutline({ ...frame, arm: { ...frame.arm, length: 1 } })).toThrow(
    expect.objectContaining({ parameter: 'armLength' }) as Error,
  );
});

test('a hole as wide as its standoff is refused at the hole', () => {
  const tool = frameDrawing as AnyCalculator;
  const drawn = (standoffHole: number) => tool.compute({ ...startValues(tool), standoffDiameter: 0.005, standoffHole });
  expect(() => drawn(0.0049)).not.toThrow();
  for (const hole of [0.005, 0.006])
    expect(() => drawn(hole)).toThrow(expect.objectContaining({ parameter: 'standoffHole', limit: 0.005 }) as Error);
});

test('garbage anywhere in an outline is refused by the name of its list, or drawn finitely', () => {
  const sound = fourArmOutline(fc.sample(frames, 1)[0]!);
  const leaves = (value: unknown, path: string[] = []): string[][] =>
    typeof value === 'number'
      ? [path]
      : value !== null && typeof value === 'object'
        ? Object.entries(value).flatMap(([key, inner]) => leaves(inner, [...path, key]))
        : [];
  const paths = leaves(sound);
  expect(paths.length).toBeGreaterThan(60);
  fc.assert(
    fc.property(fc.constantFrom(...paths), anyNumber, (path, garbage) => {
      const broken = JSON.parse(JSON.stringify(sound)) as FrameOutline;
      let place = broken as unknown as Record<string, unknown>;
      for (const key of path.slice(0, -1)) place = place[key] as Record<string, unknown>;
      place[path.at(-1)!] = garbage;
      for (const draw of [planShapes, sideShapes, planDimensions, sideDimensions, overallSize])
        refusesOrFinite(() => draw(broken));
      try {
        planShapes(broken);
      } catch (error) {
        expect(error).toBeInstanceOf(InputError);
        expect(path[0]).toBe((error as InputError).parameter);
      }
    }),
    { numRuns: 400 },
  );
});
