import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, posix, sep } from 'node:path';
import { DIST, expect, pages, test } from './site.ts';

const html = new Map(pages.map((page) => [page, readFileSync(join(DIST, page), 'utf8')]));
const addresses = (text: string) => [...text.matchAll(/\s(?:href|src)="([^"]*)"/g)].map((match) => match[1] as string);
const ids = new Map(
  [...html].map(([page, text]) => [
    page,
    new Set([...text.matchAll(/\sid="([^"]*)"/g)].map((match) => match[1] as string)),
  ]),
);

function broken(page: string, address: string): string | undefined {
  if (address.startsWith('/')) return 'is absolute: it points at the root of the disk';
  if (/^[a-z]+:/.test(address)) return /^(mailto|data):/.test(address) ? undefined : 'leaves the site';
  const [path = '', fragment = ''] = address.split('#');
  const target = path === '' ? page : posix.normalize(posix.join(posix.dirname(page), path));
  if (!existsSync(join(DIST, target))) return `leads to ${target}, which is not there`;
  // A fragment with a query is a calculator's values: its page and calculator must be there.
  const id = decodeURIComponent(fragment.split('?')[0] ?? '');
  if (id && !ids.get(target)?.has(id))
    return `${target} has no "${id}"; it has: ${[...(ids.get(target) ?? [])].join(', ')}`;
  return undefined;
}

test('every link, script, style and fragment of the built site leads somewhere inside it', () => {
  const complaints = [...html].flatMap(([page, text]) =>
    addresses(text).flatMap((address) => {
      const why = broken(page, address);
      return why ? [`${page}: ${address} ${why}`] : [];
    }),
  );
  expect(complaints).toEqual([]);
  expect(html.size).toBeGreaterThan(10);
});

test('every address in the stylesheets leads to a file', () => {
  const sheets = readdirSync(DIST, { recursive: true })
    .map(String)
    .filter((file) => file.endsWith('.css'));
  const complaints = sheets.flatMap((sheet) =>
    [...readFileSync(join(DIST, sheet), 'utf8').matchAll(/url\(["']?([^)"']+)["']?\)/g)]
      .map((match) => match[1] as string)
      .filter((address) => !address.startsWith('data:') && !existsSync(join(DIST, sheet, '..', address)))
      .map((address) => `${sheet}: ${address}`),
  );
  expect(complaints).toEqual([]);
  expect(sheets.length).toBeGreaterThan(0);
});

test('no id stands twice on a page', () => {
  const twice = [...html].flatMap(([page, text]) => {
    const all = [...text.matchAll(/\sid="([^"]*)"/g)].map((match) => match[1] as string);
    return all.filter((id, i) => all.indexOf(id) !== i).map((id) => `${page}: ${id}`);
  });
  expect(twice).toEqual([]);
});

test('nothing in the build is left over: each font and script is used by a page or a stylesheet', () => {
  const files = readdirSync(DIST, { recursive: true }).map((file) => String(file).split(sep).join('/'));
  const texts = files
    .filter((file) => /\.(html|css)$/.test(file))
    .map((file) => readFileSync(join(DIST, file), 'utf8'))
    .join('\n');
  const unused = files.filter((file) => /\.(woff2?|ttf|js)$/.test(file) && !texts.includes(posix.basename(file)));
  expect(unused).toEqual([]);
});
