import type { APIRoute } from 'astro';
import { indexFile } from '../search/index-file.ts';
import { packed } from '../search/packed.ts';
import { articleHeads } from '../tools/article-heads.ts';
import { heard } from '../tools/heard.ts';

/** Everything that can be found, made when the site is built and fetched when somebody begins to type. */
export const GET: APIRoute = async () =>
  new Response(JSON.stringify(packed(await indexFile(articleHeads(), heard()))), {
    headers: { 'Content-Type': 'application/json' },
  });
