import { fourArmOutline, planDimensions } from '@frameworthy/shared/outline';
import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import frameDrawing from '~/calculators/frame-drawing/index.ts';
import motorLayout from '~/calculators/motor-layout/index.ts';
import { PlanView } from '~/drawings/index.ts';
import { Drawing, FullSize, Outline, sheet } from '~/island/drawing/index.ts';
import { showIn } from '~/island/show.ts';
import { startValues, type ValueSet } from '~/island/values.ts';
import type { AnyCalculator } from '~/island/declaration.ts';
import type { ComponentChildren } from 'preact';

const show = showIn({ system: 'metric' });
const about = { title: 'Frame <D> & sister', text: 'Given\n  a < b', date: '2026-11-25' };
const saved = (drawing: ComponentChildren) =>
  sheet(render(<FullSize.Provider value={true}>{drawing}</FullSize.Provider>), about);

function savedFigure(tool: AnyCalculator, changed: ValueSet = {}): { svg: string; result: unknown } {
  const values = { ...startValues(tool), ...changed };
  const result: unknown = tool.compute(values);
  return { svg: saved(<tool.Figure values={values} result={result} show={show} />) ?? '', result };
}

const attribute = (tag: string, name: string) => Number(new RegExp(` ${name}="([-\\d.]+)`).exec(tag)?.[1]);

/** Circles of a file that stand under a name, in millimetres of paper. */
function circles(svg: string, name: RegExp): { x: number; y: number; radius: number }[] {
  const mmPerUnit = attribute(/<svg[^>]*>/.exec(svg)![0], 'width') / Number(/viewBox="0 0 ([\d.]+)/.exec(svg)![1]);
  return svg.split('<g transform=').flatMap((group) => {
    const scale = Number(/scale\(([\d.]+)\)/.exec(group)?.[1]) * mmPerUnit;
    return [...group.matchAll(/data-name="([^"]*)"[^>]*>\s*(<circle[^>]*>)/g)]
      .filter(([, own]) => name.test(own as string))
      .map(([, , tag]) => ({
        x: attribute(tag as string, 'cx') * scale,
        y: attribute(tag as string, 'cy') * scale,
        radius: attribute(tag as string, 'r') * scale,
      }));
  });
}

const apart = (a: { x: number; y: number }, b: { x: number; y: number }) => Math.hypot(a.x - b.x, a.y - b.y);

describe('a drawing saved at full size', () => {
  test('has its motors as far apart on paper as the frame has, to a hundredth of a millimetre', () => {
    fc.assert(
      fc.property(
        fc.record({
          propellerDiameter: fc.double({ min: 0.06, max: 0.4, noNaN: true }),
          tipGap: fc.double({ min: 0, max: 0.1, noNaN: true }),
          stretch: fc.double({ min: 1, max: 1.6, noNaN: true }),
          shape: fc.constantFrom('true-x', 'stretched', 'wide'),
        }),
        (changed) => {
          const { svg, result } = savedFigure(frameDrawing, { ...changed, armLength: 0.03 });
          const { layout } = result as { layout: { wheelbase: number; lateralSpacing: number } };
          const motors = circles(svg, /^motor/);
          expect(motors).toHaveLength(4);
          const [frontRight, frontLeft, rearLeft] = motors as [
            (typeof motors)[0],
            (typeof motors)[0],
            (typeof motors)[0],
          ];
          expect(Math.abs(apart(frontRight, rearLeft) - layout.wheelbase * 1000)).toBeLessThan(0.01);
          expect(Math.abs(apart(frontRight, frontLeft) - layout.lateralSpacing * 1000)).toBeLessThan(0.01);
          expect(Math.abs(motors[0]!.radius - 14)).toBeLessThan(0.01);
        },
      ),
      { numRuns: 25 },
    );
  });

  test('agrees with the wheelbase of a worked frame: 5-inch true X, 159 mm from side to side, so 224.86 mm across', () => {
    const [a, , c] = circles(savedFigure(frameDrawing).svg, /^motor/);
    expect(apart(a!, c!)).toBeCloseTo(224.86, 2);
  });

  test('needs nothing from outside and no stylesheet', () => {
    for (const tool of [frameDrawing, motorLayout] as AnyCalculator[]) {
      const { svg } = savedFigure(tool);
      expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
      expect(svg.replace('http://www.w3.org/2000/svg', '')).not.toMatch(
        /https?:|url\((?!#)|href|<style|class=|var\(|currentColor|@/,
      );
      expect(svg).not.toMatch(/NaN|undefined|Infinity/);
      // Each element with a line or a filling says so itself.
      for (const [tag] of svg.matchAll(/<(?:circle|rect)[^>]*>/g)) expect(tag).toMatch(/ stroke="#/);
      for (const [, id] of svg.matchAll(/url\(#([^)]*)\)/g)) expect(svg).toContain(`id="${id}"`);
    }
  });

  test('keeps text and lines of a technical drawing whatever the size of the frame', () => {
    for (const propellerDiameter of [0.06, 0.129, 0.4]) {
      const { svg } = savedFigure(frameDrawing, { propellerDiameter, tipGap: 0.06, armLength: 0.03 });
      const scales = [...svg.matchAll(/scale\(([\d.]+)\)/g)].map(([, scale]) => Number(scale));
      expect(scales.length).toBe(2);
      for (const scale of scales) {
        expect(scale * 14).toBeGreaterThan(2.4);
        expect(scale * 14).toBeLessThanOrEqual(3.5);
      }
    }
  });

  test('carries a ruler of 50 mm, title, date and the word estimate, escaped', () => {
    const { svg } = savedFigure(frameDrawing);
    expect(svg).toMatch(/M10 \d+v3M20 \d+v3M30 \d+v3M40 \d+v3M50 \d+v3M60 \d+v3M10 \d+h50"/);
    expect(svg).toContain('Frame &lt;D> &amp; sister');
    expect(svg).toContain('a &lt; b');
    expect(svg).toContain('Values of 2026-11-25');
    expect(svg).toContain('An estimate');
    const [, width, height] = /width="(\d+)mm" height="(\d+)mm"/.exec(svg) as unknown as [string, string, string];
    expect(svg).toContain(`viewBox="0 0 ${width} ${height}"`);
  });

  test('is not offered where nothing is to scale, something is exaggerated, or the drawing is a magnified detail', () => {
    const drawing = (props: object, size = 0.1) => (
      <Drawing title="Bar" bounds={{ left: 0, right: size, bottom: 0, top: size / 10 }} {...props}>
        <Outline rect={{ x: 0, y: 0, width: size, height: size / 10 }} />
      </Drawing>
    );
    expect(saved(drawing({}))).toBeUndefined();
    expect(saved(drawing({ show, exaggerated: true }))).toBeUndefined();
    expect(saved(drawing({ show }, 0.005))).toBeUndefined();
    expect(saved(drawing({ show }))).toMatch(/<rect[^>]* width="400"/);
  });
});

describe('the views', () => {
  const outline = fourArmOutline({
    name: 'Dunnock, revision D',
    layout: { propellerDiameter: 0.129, tipGap: -0.01, shape: 'true-x', stretch: 1 },
    motor: { bellDiameter: 0.028, height: 0.02, propellerHeight: 0.027 },
    arm: {
      section: { kind: 'strip', rootWidth: 0.014, tipWidth: 0.01, thickness: 0.005 },
      length: 0.05,
      screwSpacing: 0.015,
      endDistance: 0.008,
      holeDiameter: 0.003,
      beyondMotor: 0.01,
    },
    body: {
      length: 0.12,
      width: 0.04,
      end: 0.02,
      tongueWidth: 0,
      crossPlate: 2e-3,
      mainPlate: 3e-3,
      topPlate: 2e-3,
      topLength: 0.1,
    },
    standoff: { places: [{ x: 0, y: 0.04 }], length: 0.022, diameter: 0.005, holeDiameter: 0.0032 },
    electronics: [{ name: 'stack', centre: { x: 0, y: 0, z: 0.01 }, size: { x: 0.036, y: 0.036, z: 0.014 } }],
  });

  test('overlapping propellers are drawn, with their gap below zero', () => {
    expect(planDimensions(outline).find(({ name }) => name === 'tip gap')?.value).toBeCloseTo(-0.01, 12);
    const html = render(<PlanView outline={outline} show={show} />).replace(/\u202f/g, ' ');
    expect(html).toContain('−10 mm');
    expect(html).not.toMatch(/NaN|undefined/);
  });

  test('a layer is told from the others by line or filling, colour aside', () => {
    const html = render(<PlanView outline={outline} show={show} />);
    const looks = new Map(
      [...html.matchAll(/data-layer="(\w+)"[^>]*><\w+[^>]*class="([^"]*)"/g)].map(([, layer, look]) => [
        layer,
        (look as string).replace(/tone-\w+ ?/, ''),
      ]),
    );
    expect(looks.size).toBeGreaterThanOrEqual(6);
    expect(new Set(looks.values()).size).toBe(looks.size);
  });
});
