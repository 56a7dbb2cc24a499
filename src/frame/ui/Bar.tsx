import type { FrameRecord } from '@frameworthy/shared/frame';
import { useEffect, useRef, useState } from 'preact/hooks';
import { packRecord } from '../compress.ts';
import { fileName, fileText, LARGEST, readText } from '../read.ts';
import { SAMPLES, titleOf } from '../samples.ts';
import { currentFrame, withFrame, without, withRevision, type Shelf } from '../shelf.ts';
import type { ShelfState } from '../store.ts';
import { browserStore } from '../browser-store.ts';
import { giveUpUnread } from './unread.ts';

interface Props {
  state: ShelfState | undefined;
  /** What is shown: the current frame, or the sample where none is kept. */
  record: FrameRecord;
  /** Things to say that came from elsewhere, such as a link. */
  notices: readonly string[];
  /** A field holds text that is not understood: undo takes that back first. */
  unread: boolean;
}

function download(name: string, text: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

const change = (next: (shelf: Shelf) => Shelf) => browserStore().change(next);

/** Reads a file into the shelf and says what came of it. */
async function takeFile(file: File): Promise<string[]> {
  if (file.size > LARGEST * 4) {
    return [
      `${file.name} is ${(file.size / 1e6).toFixed(1)} MB; a frame record is at most ${LARGEST / 1e6} MB. Nothing was changed.`,
    ];
  }
  const reading = readText(await file.text());
  if (!reading.ok) return [`${file.name} was not taken, nothing was changed.`, ...reading.problems];
  change((shelf) => withFrame(shelf, reading.record));
  return [`${titleOf(reading.record)} taken from ${file.name}. Undo takes it away again.`, ...reading.notices];
}

/** Which frame is open, where frames come from and where they go. */
export function Bar({ state, record, notices, unread }: Props) {
  const [said, setSaid] = useState<readonly string[]>([]);
  const [byHand, setByHand] = useState<string>();
  const file = useRef<HTMLInputElement>(null);
  const box = useRef<HTMLTextAreaElement>(null);
  const kept = state && currentFrame(state.shelf);
  const say = (...words: string[]) => {
    setByHand(undefined);
    setSaid(words);
  };

  useEffect(() => {
    const over = (event: DragEvent) => event.dataTransfer?.types.includes('Files') && event.preventDefault();
    const drop = (event: DragEvent) => {
      const dropped = event.dataTransfer?.files[0];
      if (!dropped) return;
      event.preventDefault();
      void takeFile(dropped).then((words) => say(...words));
    };
    addEventListener('dragover', over);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('drop', drop);
    };
  }, []);
  useEffect(() => box.current?.select(), [byHand]);

  const copyLink = async (page: string) => {
    const link = `${new URL(page, location.href).href.replace(/[#?].*$/, '')}#frame=${await packRecord(record)}`;
    try {
      await navigator.clipboard.writeText(link);
      say('Link copied. It carries the whole frame.');
    } catch {
      setSaid(['The browser does not let the page copy. The link below is selected: copy it from there.']);
      setByHand(link);
    }
  };

  return (
    <div class="bar">
      <div class="choosing">
        <label for="frame-choice">Frame</label>
        <select
          id="frame-choice"
          autocomplete="off"
          onChange={(event) => {
            const id = event.currentTarget.value;
            change((shelf) => ({ ...shelf, current: id }));
          }}
        >
          {!kept && <option value="">{`${titleOf(record)} (sample)`}</option>}
          {state?.shelf.frames.map((one) => (
            <option key={one.id} value={one.id} selected={one.id === kept?.id}>
              {titleOf(one.record)}
            </option>
          ))}
        </select>
        <span id="start-from">Start from a sample:</span>
        <span class="buttons" role="group" aria-labelledby="start-from">
          {SAMPLES.map((sample) => (
            <button
              key={titleOf(sample)}
              type="button"
              onClick={() => {
                change((shelf) => withFrame(shelf, sample));
                say(`${titleOf(sample)} put beside your frames.`);
              }}
            >
              {titleOf(sample)}
            </button>
          ))}
        </span>
      </div>
      <div class="buttons">
        <button
          type="button"
          aria-disabled={!state?.canUndo && !unread}
          onClick={() => {
            if (giveUpUnread()) return;
            if (!state?.canUndo) return;
            browserStore().undo();
            say('Last change undone.');
          }}
        >
          Undo
        </button>
        <button
          type="button"
          onClick={() => {
            change((shelf) => withRevision(kept ? shelf : withFrame(shelf, record)));
            say('A copy, as the next revision. The one before stays as it is.');
          }}
        >
          Next revision
        </button>
        <button type="button" onClick={() => file.current?.click()}>
          Open a file
        </button>
        <input
          ref={file}
          type="file"
          accept=".json,application/json"
          hidden
          onChange={(event) => {
            const chosen = event.currentTarget.files?.[0];
            event.currentTarget.value = '';
            if (chosen) void takeFile(chosen).then((words) => say(...words));
          }}
        />
        <button
          type="button"
          onClick={() => {
            download(fileName(record), fileText(record));
            say(`Saved as ${fileName(record)}.`);
          }}
        >
          Save as a file
        </button>
        <button type="button" onClick={() => void copyLink('frame.html')}>
          Copy link
        </button>
        <button type="button" onClick={() => void copyLink('card.html')}>
          Copy link to its card
        </button>
        <button
          type="button"
          aria-disabled={!kept}
          onClick={() => {
            if (!kept) return;
            change((shelf) => without(shelf, kept.id));
            say(`${titleOf(record)} removed. Undo brings it back.`);
          }}
        >
          Remove
        </button>
      </div>
      <div class="notices" role="status">
        {[...(state?.problems ?? []), ...notices, ...said].map((words) => (
          <p key={words}>{words}</p>
        ))}
      </div>
      {byHand !== undefined && (
        <textarea ref={box} class="by-hand" readOnly rows={3} aria-label="To copy by hand" value={byHand} />
      )}
    </div>
  );
}
