import { followLink } from './read-link.ts';

declare global {
  interface Window {
    frameworthyFollow?: typeof followLink;
  }
}

/** A script of its own: most visits come without a link that holds values. */
window.frameworthyFollow = followLink;
