import type { FrameRecord } from '@frameworthy/shared/frame';
import { packRecord } from './compress.ts';

/**
 * Takes the frame along from page to page where storage does not: pages on disk may each have their own, and a frame
 * that came with a link is not kept unless the reader changes it.
 */
export function carryFrame(current: () => FrameRecord | undefined, needed: () => boolean): void {
  let packed: { record: FrameRecord; word: string } | undefined;
  const prepare = async () => {
    const record = current();
    if (record && record !== packed?.record) packed = { record, word: await packRecord(record) };
  };
  // Packed before the click, which cannot wait.
  addEventListener('pointerover', () => void prepare());
  addEventListener('focusin', () => void prepare());
  void prepare();
  addEventListener(
    'click',
    (event) => {
      const link = event.target instanceof Element ? event.target.closest('a') : null;
      const record = current();
      if (!link || !needed() || !record || packed?.record !== record) return;
      const to = new URL(link.href, location.href);
      const inside = to.protocol === location.protocol && to.host === location.host && to.pathname.endsWith('.html');
      if (!inside || /frame=/.test(to.hash) || to.pathname === location.pathname) return;
      // From disk a query keeps the fragment free for the browser. Over http it would reach the server's log.
      if (location.protocol === 'file:') to.searchParams.set('frame', packed.word);
      else to.hash = to.hash === '' ? `frame=${packed.word}` : `${to.hash.slice(1)}&frame=${packed.word}`;
      link.href = to.href;
    },
    true,
  );
}
