import { defineCollection, reference } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';

/** Where a claim comes from, and the figures of the article that it gives. */
const source = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  text: z.string().min(1),
  gives: z.string().min(1).optional(),
});

/** A picture: of a calculator, of a curve that no calculator draws, or a chain of places or deeds. */
const figure = z.union([
  z.strictObject({ calculator: z.string(), typed: z.record(z.string(), z.string()).optional() }),
  z.strictObject({ plot: z.string() }),
  z.strictObject({
    chain: z.array(z.strictObject({ name: z.string().min(1), note: z.string().min(1).optional() })).min(3),
    says: z.string().min(1),
  }),
]);

const everyArticle = {
  title: z.string().min(1),
  /** One sentence: the list of articles and search engines show it. */
  summary: z.string().min(1),
  sources: z.array(source).min(1),
  figure,
  /** What a reader should be able to answer now. */
  question: z.strictObject({ asks: z.string().regex(/[?.]$/), answer: z.string().min(1) }),
  /** The flows and calculators that it explains, by id. */
  serves: z.strictObject({ flows: z.array(z.string()).default([]), calculators: z.array(z.string()).default([]) }),
};

const articles = defineCollection({
  loader: glob({
    base: './content',
    pattern: '**/*.mdx',
    generateId: ({ entry }) => entry.replace(/^.*\/|\.mdx$/g, ''),
  }),
  schema: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('explanation'), ...everyArticle }),
    z.strictObject({
      kind: z.literal('how-to'),
      ...everyArticle,
      /** What to have at hand before the first step. */
      needs: z.array(z.string().min(1)).min(1),
      /** The explanation behind it. */
      background: reference('articles'),
    }),
  ]),
});

export const collections = { articles };
