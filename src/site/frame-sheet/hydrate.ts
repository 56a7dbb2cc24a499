import { h, hydrate } from 'preact';
import { FrameSheet } from './FrameSheet.tsx';

/** Brings the frame sheet to life where the server drew it with the sample. */
export function hydratePart(root: Element): void {
  document.documentElement.classList.add('scripted');
  hydrate(h(FrameSheet, {}), root);
}
