import { describe, expect, test, vi } from 'vitest';
import { arrivingFrame, frameWord, withWord } from '~/frame/arrival.ts';
import { packRecord, unpackRecord } from '~/frame/compress.ts';
import { LARGEST, readValue } from '~/frame/read.ts';
import { FIRST_SAMPLE, SAMPLES } from '~/frame/samples.ts';

describe('links', () => {
  test.each(SAMPLES.map((record) => [record.name + record.revision, record] as const))(
    '%s comes back from its word, in letters that any address carries',
    async (_, record) => {
      const word = await packRecord(record);
      expect(word).toMatch(/^[\w-]+$/);
      // Chat programs and browsers cut longer addresses.
      expect(word.length).toBeLessThan(4000);
      expect(await unpackRecord(word)).toEqual({ ok: true, record, notices: [] });
      expect(frameWord({ hash: `#frame=${word}`, search: '' })).toBe(word);
      expect(await arrivingFrame({ hash: `#two-screw-root?frame=${word}&wall=1mm`, search: '' })).toEqual({
        ok: true,
        record,
        notices: [],
      });
      expect(await arrivingFrame({ hash: '', search: `?frame=${word}` })).toEqual({ ok: true, record, notices: [] });
    },
  );

  test('names in any script come back', async () => {
    const record = { ...FIRST_SAMPLE, name: 'Heckenbraunelle 林岩鹨 🪶', notes: '“½ mm” → ⌀14 × 1' };
    expect(await unpackRecord(await packRecord(record))).toEqual({ ok: true, record, notices: [] });
  });

  test('an address without a frame', async () => {
    expect(await arrivingFrame({ hash: '#two-screw-root?wall=1mm', search: '' })).toBeUndefined();
  });

  test.each([
    ['http://x.test/a.html', 'http://x.test/a.html#frame=N-w_', 'http://x.test/a.html'],
    ['http://x.test/a.html#arms', 'http://x.test/a.html#arms&frame=N-w_', 'http://x.test/a.html#arms'],
    ['http://x.test/a.html#arms&frame=old', 'http://x.test/a.html#arms&frame=N-w_', 'http://x.test/a.html#arms'],
    ['http://x.test/a.html#frame=old', 'http://x.test/a.html#frame=N-w_', 'http://x.test/a.html'],
    [
      'http://x.test/a.html#c?wall=1mm',
      'http://x.test/a.html#c?wall=1mm&frame=N-w_',
      'http://x.test/a.html#c?wall=1mm',
    ],
    [
      'http://x.test/a.html#c?frame=old&wall=1mm',
      'http://x.test/a.html#c?wall=1mm&frame=N-w_',
      'http://x.test/a.html#c?wall=1mm',
    ],
    ['http://x.test/a.html?frame=old#arms', 'http://x.test/a.html#arms&frame=N-w_', 'http://x.test/a.html#arms'],
    ['file:///k/a.html', 'file:///k/a.html?frame=N-w_', 'file:///k/a.html'],
    ['file:///k/a.html?frame=old#arms', 'file:///k/a.html?frame=N-w_#arms', 'file:///k/a.html#arms'],
    ['file:///k/a.html#c?frame=old', 'file:///k/a.html?frame=N-w_#c', 'file:///k/a.html#c'],
  ])('%s takes one frame, in place of any other, and gives it up again', (href, carrying, bare) => {
    expect(withWord(href, 'N-w_')).toBe(carrying);
    expect(frameWord(new URL(carrying))).toBe('N-w_');
    expect(withWord(href, undefined)).toBe(bare);
    expect(withWord(carrying, undefined)).toBe(bare);
  });

  test('a link cut right after the equals sign is damaged, and not without a frame', async () => {
    expect(await arrivingFrame({ hash: '#frame=', search: '' })).toMatchObject({ ok: false });
    expect(await arrivingFrame({ hash: '#frames', search: '' })).toBeUndefined();
  });

  test('a word that is damaged in any one place is refused in words, or still a record that passes the door', async () => {
    const word = await packRecord(FIRST_SAMPLE);
    const damaged = [
      '',
      '-',
      'abc',
      word.slice(0, -8),
      word.slice(8),
      `${word}AAAA`,
      ...Array.from({ length: 60 }, (_, i) => {
        const at = Math.floor((i * word.length) / 60);
        return `${word.slice(0, at)}${word[at] === 'A' ? 'B' : 'A'}${word.slice(at + 1)}`;
      }),
    ];
    let refused = 0;
    for (const one of damaged) {
      const reading = await unpackRecord(one);
      if (reading.ok) expect(readValue(reading.record).ok).toBe(true);
      else {
        refused++;
        for (const problem of reading.problems)
          expect(problem).toMatch(/^(The link is damaged|This is no|[\w.]+: |and )/);
      }
    }
    expect(refused).toBeGreaterThan(40);
  });

  test('a few thousand letters that unfold to two hundred megabytes are refused before they do', async () => {
    const zeros = new Uint8Array(1 << 20);
    const stream = new ReadableStream<Uint8Array>({
      start(controller) {
        for (let i = 0; i < 200; i++) controller.enqueue(zeros);
        controller.close();
      },
    }).pipeThrough(new CompressionStream('deflate-raw') as ReadableWritablePair<Uint8Array, Uint8Array>);
    const bytes = new Uint8Array(await new Response(stream).arrayBuffer());
    const word = Buffer.from(bytes).toString('base64url');
    expect(word.length).toBeLessThan(LARGEST);
    const before = process.memoryUsage().arrayBuffers;
    const reading = await unpackRecord(word);
    expect(reading).toEqual({ ok: false, problems: [expect.stringMatching(/damaged/)] });
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(50e6);
  });

  test('a word longer than any record is refused unread', async () => {
    const stream = vi.spyOn(globalThis, 'DecompressionStream');
    expect((await unpackRecord('A'.repeat(LARGEST + 1))).ok).toBe(false);
    expect(stream).not.toHaveBeenCalled();
    stream.mockRestore();
  });
});
