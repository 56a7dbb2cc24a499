import { useEffect, useRef, useState } from 'preact/hooks';
import type { AnyCalculator } from './declaration.ts';
import { loadFrame, type FrameFill, type FrameView } from './frame-fill.ts';
import type { CalculatorState } from './state.ts';

/** Lets the reader's frame fill a calculator, where there is one. Returns what it says of the fields. */
export function useFrame(
  calculator: AnyCalculator,
  state: CalculatorState,
): { view: FrameView; fill: FrameFill } | undefined {
  const [shown, setShown] = useState<{ view: FrameView; fill: FrameFill }>();
  const latest = useRef(state);
  latest.current = state;
  useEffect(() => {
    let stop: (() => void) | undefined;
    let gone = false;
    void loadFrame().then((fill) => {
      if (!fill || gone) return;
      stop = fill.attend(
        calculator,
        () => latest.current,
        (view) => setShown(view && { view, fill }),
      );
    });
    return () => {
      gone = true;
      stop?.();
    };
  }, []);
  return shown;
}
