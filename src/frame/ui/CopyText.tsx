import { useRef, useState } from 'preact/hooks';

/** Text to paste elsewhere. */
export function CopyText({ text, label }: { text: string; label: string }) {
  const box = useRef<HTMLTextAreaElement>(null);
  const [said, setSaid] = useState('');
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setSaid(`${label} copied.`);
    } catch {
      box.current?.select();
      setSaid('The browser does not let the page copy. The text is selected: copy it from there.');
    }
  };
  return (
    <>
      <textarea ref={box} class="by-hand" readOnly rows={text.split('\n').length + 1} aria-label={label} value={text} />
      <p class="buttons">
        <button type="button" onClick={() => void copy()}>
          Copy as text
        </button>
        <span role="status">{said}</span>
      </p>
    </>
  );
}
