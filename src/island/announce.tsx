import { useEffect, useRef, useState } from 'preact/hooks';

const PAUSE = 700;

/** Reads the answer out once the values have come to rest; says nothing when the page opens. */
export function Announcement({ text }: { text: string }) {
  const [said, setSaid] = useState('');
  const first = useRef(true);
  useEffect(() => {
    if (first.current) {
      first.current = false;
      return undefined;
    }
    const timer = setTimeout(() => setSaid(text), PAUSE);
    return () => clearTimeout(timer);
  }, [text]);
  return (
    <p class="visually-hidden" aria-live="polite">
      {said}
    </p>
  );
}
