const asked = new Map<string, Promise<boolean>>();

/**
 * Fetches a script that a page needs only where the reader asks for what it does. Its address stands on the page's root
 * element, as `data-<name>`. It is a classic script, which loads from a folder too.
 * @returns whether it came
 */
export function later(name: string): Promise<boolean> {
  const fetched = asked.get(name) ?? fetchScript(name);
  asked.set(name, fetched);
  return fetched;
}

function fetchScript(name: string): Promise<boolean> {
  return new Promise((resolve) => {
    const address = document.documentElement.getAttribute(`data-${name}`);
    if (!address) return resolve(false);
    const script = document.createElement('script');
    script.src = address;
    script.onload = () => resolve(true);
    script.onerror = () => {
      // The next one to ask tries again.
      asked.delete(name);
      resolve(false);
    };
    document.head.append(script);
  });
}
