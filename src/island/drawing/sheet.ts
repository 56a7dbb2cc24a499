/** Colours for white paper, whatever the reader's screen has. */
const INK: Readonly<Record<string, string>> = {
  quiet: '#555',
  accent: '#a33a12',
  good: '#22643c',
  warn: '#7d5600',
  bad: '#a31621',
};
const FILL: Readonly<Record<string, string>> = { none: 'none', paper: '#fff', shade: '#eee' };
/** Width and dashes by class, in paper units. */
const LINE: Readonly<Record<string, string>> = {
  thick: '2',
  thin: '1',
  hidden: '1" stroke-dasharray="8 4',
  centre: '1" stroke-dasharray="24 4 3 4',
  arrow: '2',
};

/** What a stylesheet says on the page, as attributes that any program reads. The first class says what it is. */
function look(classes: string): string {
  const ink = INK[/tone-(\w+)/.exec(classes)?.[1] ?? ''] ?? '#000';
  const fill = FILL[/fill-(\w+)/.exec(classes)?.[1] ?? ''];
  const kind = classes.replace(/ .*/, '');
  if (kind === 'dot') return ` fill="${ink}"`;
  if (kind === 'label') return ` fill="${ink}" font-size="14"`;
  return `${LINE[kind] ? ` stroke="${ink}" stroke-width="${LINE[kind]}"` : ''}${fill ? ` fill="${fill}"` : ''}`;
}

const escaped = (text: string) => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');

function plain(drawing: string): string {
  return (
    drawing
      .replace(/ class="([^"]*)"/g, (_, classes: string) => look(classes))
      .replace(/ dominant-baseline="central"/g, ' dy=".35em"')
      // Not every program paints a stroke under its text: a white copy beneath does the same everywhere.
      .replace(
        /<text.*?<\/text>/gs,
        (text) => text.replace(/fill="[^"]*"/, 'fill="#fff" stroke="#fff" stroke-width="3"') + text,
      )
  );
}

interface About {
  title: string;
  /** The values and results in full; kept in the file, not drawn. */
  text: string;
  /** As it stands on the paper: `2026-11-25`. */
  date: string;
  /** Lines of text under the ruler. */
  notes?: readonly string[];
}

const EDGE = 10;
const RULER = 50;

/**
 * One SVG file of drawings made with `FullSize`: a unit of the file is a millimetre of frame and of paper. Nothing in it
 * points outside. Without a drawing that lends itself to full size there is no file.
 */
export function sheet(markup: string, { title, text, date, notes = [] }: About): string | undefined {
  let [width, y] = [110, 18];
  const drawings = [
    ...markup.matchAll(/<svg[^>]*data-unit="([\d.]+)" [^>]*viewBox="0 0 ([\d.]+) ([\d.]+)"[^>]*>(.*?)<\/svg>/gs),
  ].map(([, unit, w, h, inner]) => {
    const group = `<g transform="translate(${EDGE} ${y}) scale(${unit})">${plain(inner as string)}</g>`;
    width = Math.max(width, Number(w) * Number(unit));
    y += Math.ceil(Number(h) * Number(unit)) + 4;
    return group;
  });
  if (drawings.length === 0) return undefined;
  const line = (words: string, down: number) =>
    `<text x="${EDGE}" y="${y + down}" font-size="3.5">${escaped(words)}</text>`;
  const ticks = Array.from({ length: RULER / 10 + 1 }, (_, i) => `M${EDGE + 10 * i} ${y + 2}v3`).join('');
  const [w, h] = [Math.ceil(width) + 2 * EDGE, y + 28 + 5 * notes.length];
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${w}mm" height="${h}mm" viewBox="0 0 ${w} ${h}" font-family="sans-serif">
<title>${escaped(title)}</title>
<desc>${escaped(text)}</desc>
<text x="${EDGE}" y="14" font-size="5">${escaped(title)}</text>
${drawings.join('\n')}
<path d="${ticks}M${EDGE} ${y + 5}h${RULER}" stroke="#000" stroke-width=".25" fill="none"/>
${line(`${RULER} mm: measure this ruler on the print. Print at 100 %.`, 11)}
${line(`Scale 1 : 1 in millimetres. Values of ${date}.`, 16)}
${[...notes, 'An estimate: check every size before you cut.'].map((words, i) => line(words, 21 + 5 * i)).join('\n')}
</svg>
`;
}
