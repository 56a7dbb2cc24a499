import { LARGEST, readText, type Reading } from './read.ts';
import type { FrameRecord } from '@frameworthy/shared/frame';

/** Records in links: JSON, deflated by the browser, in the letters that addresses carry (RFC 1951, RFC 4648 § 5). */

async function through(bytes: Uint8Array, stream: CompressionStream | DecompressionStream): Promise<Uint8Array> {
  const writer = stream.writable.getWriter();
  const written = writer.write(bytes as BufferSource).then(() => writer.close());
  written.catch(() => undefined);
  const reader = stream.readable.getReader();
  const chunks: Uint8Array[] = [];
  let size = 0;
  for (;;) {
    const { done, value } = (await reader.read()) as ReadableStreamReadResult<Uint8Array>;
    if (done) break;
    size += value.length;
    // A few bytes can unfold to gigabytes.
    if (size > LARGEST) {
      void reader.cancel();
      throw new Error('too long');
    }
    chunks.push(value);
  }
  const all = new Uint8Array(size);
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}

const toLetters = (bytes: Uint8Array): string => {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text).replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');
};

const fromLetters = (text: string): Uint8Array =>
  Uint8Array.from(atob(text.replace(/-/g, '+').replace(/_/g, '/')), (letter) => letter.charCodeAt(0));

/** A record as one word for a link. */
export async function packRecord(record: FrameRecord): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify(record));
  return toLetters(await through(bytes, new CompressionStream('deflate-raw')));
}

/** The record of a link's word. */
export async function unpackRecord(word: string): Promise<Reading> {
  try {
    if (word.length > LARGEST) throw new Error('too long');
    const bytes = await through(fromLetters(word), new DecompressionStream('deflate-raw'));
    return readText(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return { ok: false, problems: ['The link is damaged: the frame in it cannot be unpacked.'] };
  }
}
