/**
 * Works out the arithmetic of a worked step from its TeX, so that a line that names one quantity too few shows.
 * Knows what the steps use and no more; what it does not know it refuses, and the caller counts that.
 */
const FUNCTIONS: Readonly<Record<string, (...given: number[]) => number>> = {
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  ln: Math.log,
  max: Math.max,
  min: Math.min,
  coth: (x) => 1 / Math.tanh(x),
  tanh: Math.tanh,
};
/** Size of brackets and spaces between signs: nothing to work out. */
const SILENT = /\\(?:left|right|[bB]igg?[lr]?|,|;|!|\s)|\s+/y;
const TOKEN = /\\[a-zA-Z]+|\d+(?:\.\d+)?|#\d+#|[-+*/^(){}[\],]/y;

function tokens(tex: string): string[] {
  const found: string[] = [];
  for (let at = 0; at < tex.length;) {
    SILENT.lastIndex = at;
    if (SILENT.test(tex)) {
      at = SILENT.lastIndex;
      continue;
    }
    TOKEN.lastIndex = at;
    const token = TOKEN.exec(tex)?.[0];
    if (token === undefined) throw new SyntaxError(`not arithmetic: ${tex.slice(at)}`);
    found.push(token);
    at += token.length;
  }
  return found;
}

class Reader {
  private at = 0;
  constructor(
    private readonly given: readonly string[],
    private readonly slots: readonly number[],
  ) {}

  whole(): number {
    const value = this.sum();
    if (this.at < this.given.length) throw new SyntaxError(`not arithmetic: ${this.given[this.at]}`);
    return value;
  }

  private get next(): string | undefined {
    return this.given[this.at];
  }

  private take(...wanted: string[]): boolean {
    const taken = wanted.includes(this.next ?? '');
    if (taken) this.at++;
    return taken;
  }

  private must(...wanted: string[]): void {
    if (!this.take(...wanted)) throw new SyntaxError(`${wanted.join(' or ')} expected, not ${this.next}`);
  }

  private sum(): number {
    let value = this.take('-') ? -this.product() : this.product();
    for (;;) {
      if (this.take('+')) value += this.product();
      else if (this.take('-')) value -= this.product();
      else return value;
    }
  }

  private product(): number {
    let value = this.power();
    for (;;) {
      if (this.take('\\cdot', '\\times', '*')) value *= this.power();
      else if (this.take('/')) value /= this.power();
      else if (this.next !== undefined && !/^[-+)}\],]$/.test(this.next)) value *= this.power();
      else return value;
    }
  }

  private power(): number {
    const base = this.factor();
    return this.take('^') ? base ** this.argument() : base;
  }

  /** In braces, or one sign: `\frac12`. */
  private argument(): number {
    if (this.take('{')) {
      const value = this.sum();
      this.must('}');
      return value;
    }
    const [first = '', rest = ''] = [this.next?.[0], this.next?.slice(1)];
    if (!/\d/.test(first) || rest === '') return this.factor();
    (this.given as string[])[this.at] = rest;
    return Number(first);
  }

  private factor(): number {
    const token = this.next ?? 'the end';
    this.at++;
    if (/^\d/.test(token)) return Number(token);
    if (token.startsWith('#')) return this.slots[Number(token.slice(1, -1))]!;
    if (token === '\\pi') return Math.PI;
    if (/^\\[td]?frac$/.test(token)) return this.argument() / this.argument();
    if (token === '\\sqrt') return Math.sqrt(this.argument());
    if (token === '(' || token === '[' || token === '{') {
      const value = this.sum();
      this.must(')', ']', '}');
      return value;
    }
    const named = FUNCTIONS[token.slice(1)];
    if (token.startsWith('\\') && named) {
      if (!this.take('(')) return named(this.factor());
      const given = [this.sum()];
      while (this.take(',')) given.push(this.sum());
      this.must(')');
      return named(...given);
    }
    throw new SyntaxError(`not arithmetic: ${token}`);
  }
}

/** The value of a TeX expression; `slots` stand in it as `#0#`, `#1#`. @throws SyntaxError where it is no arithmetic */
export const texValue = (tex: string, slots: readonly number[]): number => new Reader(tokens(tex), slots).whole();
