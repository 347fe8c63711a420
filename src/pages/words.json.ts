import type { APIRoute } from 'astro';
import { ENTRIES } from '../search/glossary.ts';

/** The glossary as it opens in place, by the name of each word, fetched when the first of them is opened. */
export const GET: APIRoute = () =>
  new Response(
    JSON.stringify(
      Object.fromEntries(ENTRIES.map(({ slug, word, also, text, article }) => [slug, { word, also, text, article }])),
    ),
    { headers: { 'Content-Type': 'application/json' } },
  );
