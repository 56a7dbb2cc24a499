import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** What was opened or shut, as long as the page is open. */
const chosen = new Map<string, boolean>();

/** Where fields stand above their outcome, everything starts shut: the way to the outcome is long otherwise. */
const ONE_COLUMN = '(max-width: 61.99rem)';

interface Props {
  id: string;
  title: string;
  open?: boolean;
  /** Something in it is wrong: it opens, and stays so until it is shut by hand. */
  wrong?: boolean;
  children: ComponentChildren;
}

/** A part of the sheet that opens and shuts. */
export function Section({ id, title, open = false, wrong = false, children }: Props) {
  const [shown, show] = useState(chosen.get(id) ?? open);
  const choose = (next: boolean) => {
    chosen.set(id, next);
    show(next);
  };
  useEffect(() => {
    if (!chosen.has(id) && matchMedia(ONE_COLUMN).matches) choose(false);
  }, []);
  useEffect(() => {
    if (wrong) choose(true);
  }, [wrong]);
  return (
    <details id={`sheet-${id}`} open={shown} onToggle={(event) => show(event.currentTarget.open)}>
      <summary
        onClick={(event) => {
          event.preventDefault();
          choose(!shown);
        }}
      >
        {title}
      </summary>
      {children}
    </details>
  );
}
