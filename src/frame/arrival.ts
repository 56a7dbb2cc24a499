import { unpackRecord } from './compress.ts';
import type { Reading } from './read.ts';

/** The packed frame in an address: after `#frame=`, among a calculator's values, or as a query from a page on disk. */
export function frameWord(address: Pick<Location, 'hash' | 'search'>): string | undefined {
  const found = /(?:^#|[?&])frame=([\w-]+)/.exec(address.hash) ?? /[?&]frame=([\w-]+)/.exec(address.search);
  return found?.[1];
}

/** The frame that an address carries, if any. */
export async function arrivingFrame(address: Pick<Location, 'hash' | 'search'>): Promise<Reading | undefined> {
  const word = frameWord(address);
  return word === undefined ? undefined : unpackRecord(word);
}
