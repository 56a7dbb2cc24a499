import { sheetNotes } from '~/drawings/sheet-notes.ts';
import { sheet } from './drawing/sheet.ts';

/** Makes the file of a drawing at full size. A script of its own, fetched when the reader saves one. */

/** What came of it, in words; the file too, for a reader whose browser keeps it back. */
export interface SavedFile {
  words: string;
  svg?: string;
  saved: boolean;
}

declare global {
  interface Window {
    frameworthySave?: typeof saveSheet;
  }
}

/** False where the browser refuses; a refusal without a word can't be seen from here. */
function saved(name: string, svg: string): boolean {
  try {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
    return true;
  } catch {
    return false;
  }
}

function saveSheet(name: string, markup: string, about: Parameters<typeof sheet>[1]): SavedFile {
  const svg = sheet(markup, { ...about, notes: sheetNotes(markup) });
  if (svg === undefined) return { words: 'Nothing here can be drawn at full size.', saved: false };
  return saved(name, svg)
    ? { words: `${name} goes to your downloads. Print it at 100 % and measure its ruler.`, svg, saved: true }
    : {
        words: 'The browser does not let the page save. Copy the text below into a file that ends in .svg.',
        svg,
        saved: false,
      };
}

window.frameworthySave = saveSheet;
