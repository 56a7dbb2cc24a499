/** A number read from text, or why it is none. */
export type ParsedNumber = { ok: true; value: number; rest: string } | { ok: false; problem: string };

/** Plain digits for raised ones and for those of a fraction, as Unicode pairs them. */
const digitsOf = (mark: string) => mark.normalize('NFKC');

/** One spelling for what can be written in several ways: signs, narrow spaces, fractions, powers of ten, the decimal mark. */
function plain(text: string): string {
  return text
    .replace(/[−–—]/g, '-')
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (mark) => ` ${digitsOf(mark)}`)
    .replace(/⁄/g, '/')
    .replace(/(\d)[\u2009\u202f\u00a0](?=\d{3}(?!\d))/g, '$1')
    .replace(
      /\s*[×x*]\s*10\s*\^?\s*([-⁻+]?)([\d⁰¹²³⁴-⁹]+)/,
      (_, sign: string, digits: string) => `e${sign && sign !== '+' ? '-' : ''}${digitsOf(digits)}`,
    )
    .trim();
}

const DECIMAL = /^[-+]?(?:\d+[.,]?\d*|[.,]\d+)(?:e[-+]?\d+)?/i;
const FRACTION = /^([-+]?)\s*(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*\/\s*(\d+)/;

/**
 * Reads the number at the start of a text: `12.5`, `12,5`, `1/2`, `1 1/2`, `3e-2`, `3 × 10⁻²`, with any minus sign.
 * @param text - what was typed
 * @returns the number and the text after it, or a plain sentence that says what is wrong
 */
export function parseNumber(text: string): ParsedNumber {
  const clean = plain(text);
  if (clean === '') return { ok: false, problem: 'Type a number.' };
  const fraction = FRACTION.exec(clean);
  if (fraction) {
    const [all, sign, whole = '0', over, under] = fraction;
    if (Number(under) === 0) return { ok: false, problem: `"${text.trim()}" divides by zero.` };
    const size = Number(whole) + Number(over) / Number(under);
    return { ok: true, value: sign === '-' ? -size : size, rest: clean.slice(all.length).trim() };
  }
  const decimal = DECIMAL.exec(clean)?.[0];
  if (decimal === undefined) return { ok: false, problem: `"${text.trim()}" is not a number.` };
  const rest = clean.slice(decimal.length);
  if (/^[.,]/.test(rest)) return { ok: false, problem: `"${text.trim()}" has two decimal points.` };
  if (/^\s*\d/.test(rest)) return { ok: false, problem: `"${text.trim()}" holds two numbers; one is wanted.` };
  return { ok: true, value: Number(decimal.replace(',', '.')), rest: rest.trim() };
}
