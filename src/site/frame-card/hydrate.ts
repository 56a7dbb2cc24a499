import { h, hydrate } from 'preact';
import { FrameCard } from './FrameCard.tsx';

/** Brings the card to life where the server drew it with the sample. */
export function hydratePart(root: Element): void {
  document.documentElement.classList.add('scripted');
  hydrate(h(FrameCard, {}), root);
}
