/**
 * Parts for figures drawn as engineering line drawings.
 *
 *     <Drawing title="Arm root, from above" description={`Screws ${show(spacing, 'length')} apart.`}
 *              bounds={{ left: -0.02, right: 0.1, bottom: -0.03, top: 0.03 }} show={show}>
 *       <Outline rect={{ x: 0, y: -0.007, width: 0.09, height: 0.014 }} />
 *       <Outline circle={{ x: 0.01, y: 0, radius: 0.0015 }} fill="paper" />
 *       <CentreLine from={{ x: 0, y: 0 }} to={{ x: 0.09, y: 0 }} />
 *       <DimensionLine from={{ x: 0.01, y: 0 }} to={{ x: 0.03, y: 0 }} offset={-40} label={show(spacing, 'length')} />
 *       <ForceArrow at={{ x: 0.09, y: 0 }} direction={{ x: 0, y: 1 }} label={show(force, 'force')} tone="accent" />
 *     </Drawing>
 *
 * - **World**: metres, x to the right, y **upwards**. Pass the calculator's SI values as they are.
 * - **Paper**: `offset`, `length`, `radius` of marks, `dx`, `dy` and `margin` are paper units: the paper is 440 wide by
 *   default (`width`, `height`), about one CSS pixel each on a phone, up to 1.4 on a large screen. `dy` counts upwards too.
 * - The drawing fits `bounds` into the paper less `margin` (room for dimensions, 40 by default) and rounds the scale down
 *   to a preferred number, so that small changes of a value change the drawing and not its scale. x and y have one scale.
 * - `show` draws a scale bar. Leave it out for a drawing that is not to scale, and say so in the caption.
 * - A drawing to scale can be saved at full size: it is then drawn once more with `FullSize` set, on as much paper as the
 *   part takes, and `sheet` makes one file of it. Say `exaggerated` where something is drawn larger than it is.
 * - Order is depth: later parts lie on top.
 * - Line: thick `Outline`, thin for everything else, dashed `HiddenLine`, dash-dot `CentreLine`. Colour by `tone` only
 *   (`ink`, `quiet`, `accent`, `good`, `warn`, `bad`); never by colour alone: say it in the label as well.
 * - A reader who does not see it gets `title` and `description`: put the main values into `description`.
 * - For anything else: `usePaper()` gives `{ x(worldX), y(worldY), length(world), point(p) }` in paper units; draw plain SVG
 *   with class `thin`, `thick` or `label`.
 * - Two views (plan and side): two `<Drawing>`s in a fragment, or shift the second one in the world.
 */
export { Drawing } from './Drawing.tsx';
export type { Bounds, Paper, Point } from './paper.ts';
export { boundsOf, FullSize, usePaper } from './paper.ts';
export { sheet } from './sheet.ts';
export { CentreLine, HiddenLine, Line, Outline } from './Outline.tsx';
export type { Fill, Shape, Tone } from './Outline.tsx';
export { Hatch } from './Hatch.tsx';
export { DimensionLine } from './DimensionLine.tsx';
export { Label, Leader, PaperText } from './Label.tsx';
export { ForceArrow } from './Arrow.tsx';
