import { h, hydrate } from 'preact';
import { Revisions } from './Revisions.tsx';

/** Brings the comparison to life where the server drew it with two samples. */
export function hydratePart(root: Element): void {
  document.documentElement.classList.add('scripted');
  hydrate(h(Revisions, {}), root);
}
