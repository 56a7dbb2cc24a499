import { sources, type Source, type SourceId } from '../../content/sources/index.ts';

/** Short form for running text: `Gere 2004`, or the title where nobody is named. */
export function citation(id: SourceId): string {
  const source: Source = sources[id];
  if (source.type === 'practice') return 'common practice, no source';
  if (source.type === 'own') return 'own derivation';
  const [people, others] = source.authors?.replace(/, after .*$/, '').split(/ (et al\.|and others)$/) ?? [];
  const names = people?.split(/, | and /).map(familyName);
  const who = names ? (names.length > 2 || others ? `${names[0]} et al.` : names.join(' and ')) : source.title;
  return source.year ? `${who} ${source.year}` : who;
}

/** `R. de Azambuja` is cited as de Azambuja: what follows the initials. */
const familyName = (name: string) => name.trim().replace(/^(?:\p{Lu}\.[\s-]*)+/u, '');

/** Full form for lists, without the title's markup. */
export function reference(id: SourceId): { before: string; title: string; after: string } {
  const source: Source = sources[id];
  const before = source.authors ? `${source.authors}${source.year ? ` (${source.year})` : ''}. ` : '';
  const after = [source.authors ? undefined : source.year, source.published].filter(Boolean).join(', ');
  return { before, title: source.title, after: after ? `. ${after}.` : '.' };
}
