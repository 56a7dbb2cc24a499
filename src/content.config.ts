import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { sources, type SourceId } from '../content/sources/index.ts';

/** An enum over the bibliography, so that a wrong key stops the build and is named. */
const sourceId = z.enum(Object.keys(sources) as [SourceId, ...SourceId[]]);

const articles = defineCollection({
  loader: glob({ base: './content/articles', pattern: '**/*.mdx' }),
  schema: z
    .object({
      title: z.string().max(60),
      /** The question in the reader's words. */
      question: z.string().max(160).endsWith('?'),
      /** One or two sentences for lists and previews. No numbers that a calculator can give. */
      summary: z.string().max(220),
      /** Ids of the calculators that the article carries. */
      calculators: z.array(z.string()).min(1),
      sources: z.array(sourceId).min(1),
    })
    .strict(),
});

const glossary = defineCollection({
  loader: glob({ base: './content/glossary', pattern: '*.md' }),
  schema: z
    .object({
      term: z.string().max(60),
      /** Article where the term matters most: `arms/doublers`. */
      article: z.string().optional(),
    })
    .strict(),
});

export const collections = { articles, glossary };
