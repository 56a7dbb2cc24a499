import { getCollection, type CollectionEntry } from 'astro:content';
import { chapters, type Chapter } from '../../content/order.ts';

export interface Place {
  chapter: Chapter;
  article: CollectionEntry<'articles'>;
  /** `2.1`: chapter and place in it, counted from 1. */
  sheet: string;
  href: string;
}

/** All articles in reading order. Stops the build when the order list and the folder disagree. */
export async function readingOrder(): Promise<readonly Place[]> {
  const articles = new Map((await getCollection('articles')).map((article) => [article.id, article]));
  const places = chapters.flatMap((chapter, c) =>
    chapter.articles.map((slug, a): Place => {
      const id = `${chapter.slug}/${slug}`;
      const article = articles.get(id);
      if (!article) throw new Error(`content/order.ts names "${id}", but there is no such article`);
      articles.delete(id);
      return { chapter, article, sheet: `${c + 1}.${a + 1}`, href: `/${id}.html` };
    }),
  );
  if (articles.size > 0) throw new Error(`Not in content/order.ts: ${[...articles.keys()].join(', ')}`);
  return places;
}
