import type { FigureProps } from '~/island/declaration.ts';
import type { PlacementResult, PlacementValues } from './compute.ts';
import { Plan } from './plan-view.tsx';
import { Side } from './side-view.tsx';

/** Plan and side view to scale, with pack, centre of mass and hover thrusts. */
export function BatteryPlacementFigure(props: FigureProps<PlacementValues, PlacementResult>) {
  return (
    <>
      <Plan {...props} />
      <Side {...props} />
    </>
  );
}
