import { posix } from 'node:path';

const ATTRIBUTE = /(\s(?:href|src|poster)=")(\/(?!\/)[^"]*)"/g;
const CSS_URL = /url\((["']?)(\/(?!\/)[^)"']*)\1\)/g;

/** The way from one file of the build to an absolute address in it: `/checks.html#x` from `arms/a.html` is `../checks.html#x`. */
export function relativeAddress(address: string, file: string): string {
  const [, path = '', rest = ''] = /^([^?#]*)(.*)$/.exec(address) ?? [];
  const target = path.endsWith('/') ? `${path}index.html` : path;
  return (posix.relative(posix.dirname(`/${file}`), target) || posix.basename(target)) + rest;
}

/** Every absolute address in a page, made relative. Text is left alone: only quoted attribute values match. */
export function relativeHtml(html: string, file: string): string {
  return html.replace(ATTRIBUTE, (_, before: string, address: string) => `${before}${relativeAddress(address, file)}"`);
}

export function relativeCss(css: string, file: string): string {
  return css.replace(
    CSS_URL,
    (_, quote: string, address: string) => `url(${quote}${relativeAddress(address, file)}${quote})`,
  );
}
