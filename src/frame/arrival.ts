import { unpackRecord } from './compress.ts';
import type { Reading } from './read.ts';

/** The packed frame in an address: after `#frame=`, among a calculator's values, or as a query from a page on disk. */
export function frameWord(address: Pick<Location, 'hash' | 'search'>): string | undefined {
  const found = /(?:^#|[?&])frame=([\w-]*)/.exec(address.hash) ?? /[?&]frame=([\w-]*)/.exec(address.search);
  return found?.[1];
}

const withoutWord = (part: string): string =>
  part.replace(/([#?&])frame=[\w-]*(&|$)/, (_, lead: string, end: string) => (end === '&' ? lead : ''));

/**
 * The one rule for frames in addresses.
 * @param href a full address
 * @param word a packed frame; nothing takes out what the address carries
 * @returns the address with this word in place of any other. Over http it is in the fragment, which reaches no server's
 * log; from disk in the query, which leaves the fragment to the browser.
 */
export function withWord(href: string, word: string | undefined): string {
  const to = new URL(href);
  to.search = withoutWord(to.search);
  to.hash = withoutWord(to.hash);
  if (word === undefined) return to.href;
  if (to.protocol === 'file:') to.searchParams.set('frame', word);
  else to.hash = `${to.hash && `${to.hash}&`}frame=${word}`;
  return to.href;
}

/** The frame that an address carries, if any. */
export async function arrivingFrame(address: Pick<Location, 'hash' | 'search'>): Promise<Reading | undefined> {
  const word = frameWord(address);
  return word === undefined ? undefined : unpackRecord(word);
}
