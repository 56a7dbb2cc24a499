import { useEffect, useRef, useState } from 'preact/hooks';

interface Props {
  canUndo: boolean;
  onUndo: () => void;
  onReset: () => void;
  /** The whole address, with the values. */
  link: () => string;
  text: () => string;
}

/** The clipboard can be missing or refused, above all from disk. */
async function copied(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

const SHORT = 4000;

/** What can be done with the calculator as a whole, and a line that confirms it. */
export function Toolbar({ canUndo, onUndo, onReset, link, text }: Props) {
  const [message, setMessage] = useState('');
  const [byHand, setByHand] = useState<string>();
  const box = useRef<HTMLTextAreaElement>(null);
  useEffect(() => {
    if (byHand === undefined) {
      const timer = setTimeout(() => setMessage(''), SHORT);
      return () => clearTimeout(timer);
    }
    box.current?.focus();
    box.current?.select();
    return undefined;
  }, [message, byHand]);

  const say = (words: string) => {
    setByHand(undefined);
    setMessage(words);
  };
  const copy = async (what: string, name: string) => {
    if (await copied(what)) return say(`${name} copied.`);
    setByHand(what);
    setMessage('The browser does not let the page copy. The text below is selected: copy it from there.');
  };

  return (
    <div class="toolbar">
      <div class="buttons">
        <button
          type="button"
          aria-disabled={!canUndo}
          onClick={() => canUndo && (onUndo(), say('Last change undone.'))}
        >
          Undo
        </button>
        <button type="button" onClick={() => (onReset(), say('Back to the values of this page.'))}>
          Reset
        </button>
        <button type="button" onClick={() => void copy(link(), 'Link')}>
          Copy link
        </button>
        <button type="button" onClick={() => void copy(text(), 'Text')}>
          Copy as text
        </button>
      </div>
      <p class="message" role="status">
        {message}
      </p>
      {byHand !== undefined && (
        <textarea
          ref={box}
          class="by-hand"
          readOnly
          rows={byHand.includes('\n') ? 8 : 2}
          aria-label="To copy by hand"
          value={byHand}
        />
      )}
    </div>
  );
}
