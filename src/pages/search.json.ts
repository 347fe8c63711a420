import type { APIRoute } from 'astro';
import { allDocuments } from '../search/documents.ts';
import { factNames, type IndexFile } from '../search/index-file.ts';
import { articleHeads } from '../tools/article-heads.ts';

/** Everything that can be found, made when the site is built and fetched when somebody begins to type. */
export const GET: APIRoute = async () => {
  const file: IndexFile = { documents: await allDocuments(articleHeads()), factNames: await factNames() };
  return new Response(JSON.stringify(file), { headers: { 'Content-Type': 'application/json' } });
};
