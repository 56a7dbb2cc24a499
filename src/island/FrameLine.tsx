import { useEffect, useRef } from 'preact/hooks';
import type { AnyCalculator, Show } from './declaration.ts';
import type { CalculatorState } from './state.ts';
import type { FrameFill, FrameView } from './frame-fill.ts';

export interface FrameLineProps {
  calculator: AnyCalculator;
  view: FrameView;
  state: CalculatorState;
  show: Show;
}

const SAME = 1e-9;

/** Whether a calculator's value is the frame's, rounding apart. */
export const isFrames = (own: number | string | undefined, frames: number | string | undefined): boolean =>
  typeof own === 'number' && typeof frames === 'number'
    ? Math.abs(own - frames) <= SAME * Math.max(Math.abs(frames), SAME)
    : own === frames;

/** The place of what is said about the reader's frame. The words come with the script that knows frames. */
export function FrameLine({ fill, ...props }: FrameLineProps & { fill: FrameFill }) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (place.current) fill.tell(place.current, props);
  });
  return <div class="frame-line" ref={place} />;
}
