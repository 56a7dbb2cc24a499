import { PlanView, SideView } from '~/drawings/index.ts';
import type { FigureProps } from '~/island/declaration.ts';
import type { DrawingResult } from './compute.ts';
import type { DrawingValues } from './inputs.ts';

/** Both views of the outline that the numbers are computed from. */
export function FrameDrawingFigure({ values, result, show }: FigureProps<DrawingValues, DrawingResult>) {
  const outline = values.discs === 'drawn' ? result.outline : { ...result.outline, propellers: [] };
  return (
    <>
      <PlanView outline={outline} show={show} />
      <SideView outline={outline} show={show} keyed={false} />
    </>
  );
}
