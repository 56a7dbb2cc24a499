/** In the order of their code points. The one after rho is the final sigma, which no symbol is. */
const GREEK =
  'alpha beta gamma delta epsilon zeta eta theta iota kappa lambda mu nu xi omicron pi rho final sigma tau upsilon phi chi psi omega'.split(
    ' ',
  );
const ALPHA = 0x3b1;

/** A letter by its name in TeX; a variant form is the same letter, a capital name a capital. */
function letter(name: string): string {
  if (name === 'ell') return 'ℓ';
  const index = GREEK.indexOf(name.replace('var', '').toLowerCase());
  const small = index < 0 ? '' : String.fromCharCode(ALPHA + index);
  return /^[A-Z]/.test(name) ? small.toUpperCase() : small;
}

function plain(tex: string): string {
  return tex
    .replace(/\\(?:mathrm|text|mathit|operatorname)\b/g, '')
    .replace(/\\([A-Za-z]+) ?/g, (_, name: string) => letter(name))
    .replace(/\\[,;! ]/g, '')
    .replace(/[{}]/g, '');
}

/** A symbol of the worked steps beside its label: a letter with at most a subscript, written without a typesetter. */
export function MathSymbol({ tex }: { tex: string }) {
  const [base = '', below] = tex.split('_');
  return (
    <span class="symbol" aria-hidden="true">
      <i>{plain(base)}</i>
      {below && <sub>{plain(below)}</sub>}
    </span>
  );
}
