const found = new Map<string, string>();

/**
 * Words that never change and stand on the page since the server rendered it: help, meanings, captions. The page's script
 * comes without them (see `src/open-from-disk/standing-words.ts`) and finds them at their element, also for later.
 */
export function standing(id: string, declared: string): string {
  if (declared) return declared;
  if (!found.has(id)) found.set(id, document.getElementById(id)?.textContent ?? '');
  return found.get(id) as string;
}
