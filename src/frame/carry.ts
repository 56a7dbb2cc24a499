import type { FrameRecord } from '@frameworthy/shared/frame';
import { frameWord, withWord } from './arrival.ts';
import { browserStore } from './browser-store.ts';
import { packRecord } from './compress.ts';

/** Every way into a link: by button or key, with the middle button, and by the menu of the other one. */
const WAYS = ['click', 'auxclick', 'contextmenu'] as const;

/** Leads to another page of the site. */
const isInner = ({ protocol, host, pathname }: HTMLAnchorElement): boolean =>
  protocol === location.protocol &&
  host === location.host &&
  pathname.endsWith('.html') &&
  pathname !== location.pathname;

/**
 * Takes the frame along from page to page where storage does not: pages on disk may each have their own, and a frame
 * that came with a link is not kept unless the reader changes it.
 */
export function carryFrame(current: () => FrameRecord | undefined, needed: () => boolean): void {
  let packed: { record: FrameRecord; word: string } | undefined;
  const prepare = async () => {
    const record = current();
    if (!record || record === packed?.record) return;
    const word = await packRecord(record);
    if (record === current()) packed = { record, word };
  };
  // Packed before the click, which cannot wait.
  addEventListener('pointerover', () => void prepare());
  addEventListener('focusin', () => void prepare());
  browserStore().subscribe(() => void prepare());
  void prepare();
  /** What links were before, and what they were made: the next click may carry another frame, or none. */
  const made = new WeakMap<HTMLAnchorElement, { from: string; to: string }>();
  const make = ({ target }: Event) => {
    const link = target instanceof Element ? target.closest<HTMLAnchorElement>('a[href]') : null;
    if (!link) return;
    const before = made.get(link);
    if (before && link.href === before.to) link.href = before.from;
    if (!needed() || !packed || packed.record !== current() || !isInner(link) || frameWord(link) !== undefined) return;
    const from = link.href;
    link.href = withWord(from, packed.word);
    made.set(link, { from, to: link.href });
  };
  for (const way of WAYS) addEventListener(way, make, true);
  showHeading();
}

/** A heading whose name shares the fragment with a frame is not found by the browser. */
function showHeading(): void {
  const name = /^#([^?&=]+)&frame=/.exec(location.hash)?.[1];
  if (name) document.getElementById(name)?.scrollIntoView();
}
