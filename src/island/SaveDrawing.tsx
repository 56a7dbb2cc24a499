import { type ComponentChildren, render } from 'preact';
import { useState } from 'preact/hooks';
import { FullSize, sheet } from './drawing/index.ts';

interface Props {
  title: string;
  /** Of the file, without its ending. */
  name: string;
  /** Values and results in words, to be kept in the file. */
  text: () => string;
  draw: () => ComponentChildren;
}

/** False where the browser refuses; a refusal without a word can't be seen from here. */
function saved(name: string, svg: string): boolean {
  try {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
    link.download = `${name}.svg`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
    return true;
  } catch {
    return false;
  }
}

/**
 * Saves the drawings of a figure as one SVG in which a millimetre is a millimetre. They are drawn again for it, so that
 * text and lines keep the size of a technical drawing: a scaled copy of the screen would scale them along.
 */
export function SaveDrawing({ title, name, text, draw }: Props) {
  const [file, setFile] = useState<{ svg?: string; saved: boolean }>();
  const save = () => {
    const paper = document.createElement('div');
    render(<FullSize.Provider value={true}>{draw()}</FullSize.Provider>, paper);
    const markup = new XMLSerializer().serializeToString(paper);
    render(null, paper);
    // Sweden writes dates as the standard does.
    const svg = sheet(markup, { title, text: text(), date: new Date().toLocaleDateString('sv') });
    setFile({ svg, saved: svg !== undefined && saved(name, svg) });
  };
  return (
    <div class="save-drawing">
      <button type="button" onClick={save}>
        Save at full size (SVG)
      </button>
      <p role="status">
        {file &&
          (!file.svg
            ? 'Nothing here can be drawn at full size.'
            : file.saved
              ? `${name}.svg goes to your downloads. Print it at 100 % and measure its ruler.`
              : 'The browser does not let the page save. Copy the text below into a file that ends in .svg.')}
      </p>
      {file?.svg && (
        <details open={!file.saved}>
          <summary>{file.saved ? 'No file? Its text' : 'Text of the file'}</summary>
          <textarea
            class="by-hand"
            readOnly
            rows={8}
            aria-label="Text of the SVG file"
            value={file.svg}
            onFocus={(event) => event.currentTarget.select()}
          />
        </details>
      )}
    </div>
  );
}
