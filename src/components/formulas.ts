const texts = import.meta.glob<string>('/shared/src/*/*.ts', { query: '?raw', import: 'default', eager: true });

/** `joint/two-screw-root.ts` stands at `two-screw-root` on its topic's page. */
export const formulaAnchor = (file: string) => (file.split('/').at(-1) ?? file).replace(/\.ts$/, '');

/** Address of a formula: `/formulas/joint.html#two-screw-root`. */
export const formulaAddress = (file: string) => `/formulas/${file.split('/')[0]}.html#${formulaAnchor(file)}`;

/** The package by topic; indexes hold names and no formulas. */
export function formulaTopics(): { topic: string; files: { file: string; text: string }[] }[] {
  const files = Object.entries(texts)
    .map(([path, text]) => ({ file: path.replace('/shared/src/', ''), text }))
    .filter(({ file }) => !file.endsWith('/index.ts'))
    .sort((a, b) => a.file.localeCompare(b.file));
  const topics = [...new Set(files.map(({ file }) => file.split('/')[0] as string))];
  return topics.map((topic) => ({ topic, files: files.filter(({ file }) => file.startsWith(`${topic}/`)) }));
}
