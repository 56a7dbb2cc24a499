import { type ComponentChildren, render } from 'preact';
import { useState } from 'preact/hooks';
import { FullSize } from './drawing/index.ts';
import type { SavedFile } from './full-size.ts';
import { later } from './later.ts';

interface Props {
  title: string;
  /** Of the file, without its ending. */
  name: string;
  /** Values and results in words, to be kept in the file. */
  text: () => string;
  draw: () => ComponentChildren;
}

/**
 * Saves the drawings of a figure as one SVG in which a millimetre is a millimetre. They are drawn again for it, so that
 * text and lines keep the size of a technical drawing: a scaled copy of the screen would scale them along.
 */
export function SaveDrawing({ title, name, text, draw }: Props) {
  const [file, setFile] = useState<SavedFile>();
  const save = async () => {
    const paper = document.createElement('div');
    render(<FullSize.Provider value={true}>{draw()}</FullSize.Provider>, paper);
    const markup = new XMLSerializer().serializeToString(paper);
    render(null, paper);
    // Sweden writes dates as the standard does.
    const about = { title, text: text(), date: new Date().toLocaleDateString('sv') };
    if (!window.frameworthySave) await later('full-size');
    setFile(
      window.frameworthySave?.(`${name}.svg`, markup, about) ?? {
        words: 'The script that makes the file did not come. Try again with a connection.',
        saved: false,
      },
    );
  };
  return (
    <div class="save-drawing">
      <button type="button" onClick={() => void save()}>
        Save at full size (SVG)
      </button>
      <p role="status">{file?.words}</p>
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
