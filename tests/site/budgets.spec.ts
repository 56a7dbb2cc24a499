import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { DIST, expect, guides, test } from './site.ts';

const SCRIPT = 40_000;
const FIRST_VISIT = 200_000;
/** Pages that work with a whole frame, and what a guide fetches where the reader has one. */
const FRAME_SCRIPT = 80_000;

const sizes = (html: string, page: string, pattern: RegExp) =>
  [...html.matchAll(pattern)].map(
    (match) => gzipSync(readFileSync(join(DIST, posix.dirname(page), match[1] as string))).length,
  );
const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);

for (const page of guides) {
  test(`${page}: script and first visit within their budgets`, async ({ page: tab, places }) => {
    const html = readFileSync(join(DIST, page), 'utf8');
    const scripts = sum(sizes(html, page, /<script[^>]*\ssrc="([^"]+)"/g));
    const inline = sum(
      [...html.matchAll(/<script(?![^>]*\ssrc=)[^>]*>([^<]*)</g)].map((match) => gzipSync(match[1] ?? '').length),
    );
    const styles = sum(sizes(html, page, /<link[^>]*rel="stylesheet"[^>]*href="([^"]+)"/g));
    // Fonts are already compressed, and only those that the page asks for count: the browser says which.
    const fonts: number[] = [];
    tab.on('response', (response) => {
      if (response.url().endsWith('.woff2'))
        fonts.push(
          Number(response.headers()['content-length'] ?? 0) ||
            readFileSync(join(DIST, '_astro', posix.basename(response.url()))).length,
        );
    });
    await tab.goto(places.http + page);
    await tab.evaluate(() => document.fonts.ready);
    const total = scripts + inline + styles + sum(fonts) + gzipSync(html).length;
    console.info(
      `${page}: script ${scripts + inline} B, styles ${styles} B, fonts ${sum(fonts)} B, page ${gzipSync(html).length} B, first visit ${total} B`,
    );
    expect(scripts + inline).toBeLessThanOrEqual(SCRIPT);
    expect(total).toBeLessThanOrEqual(FIRST_VISIT);
    expect(fonts.length).toBeGreaterThan(0);
  });
}

for (const page of ['frame.html', 'revisions.html', 'card.html']) {
  test(`${page}: script, and what guides fetch for a frame, within their budget`, () => {
    const html = readFileSync(join(DIST, page), 'utf8');
    const scripts = sum(sizes(html, page, /<script[^>]*\ssrc="([^"]+)"/g));
    const fill = sum(sizes(html, page, /data-frame-fill="([^"]+)"/g));
    const styles = sum(sizes(html, page, /<link[^>]*rel="stylesheet"[^>]*href="([^"]+)"/g));
    console.info(
      `${page}: script ${scripts} B, styles ${styles} B, page ${gzipSync(html).length} B; guides fetch ${fill} B for a frame`,
    );
    expect(scripts).toBeGreaterThan(0);
    expect(scripts).toBeLessThanOrEqual(FRAME_SCRIPT);
    expect(fill).toBeGreaterThan(0);
    expect(fill).toBeLessThanOrEqual(FRAME_SCRIPT);
  });
}
