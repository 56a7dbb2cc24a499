import { h, hydrate } from 'preact';
import ArmRoot from './ArmRoot.tsx';

/** Brings the home page's figure to life where it stands. */
export function hydratePart(root: Element): void {
  hydrate(h(ArmRoot, {}), root);
}
