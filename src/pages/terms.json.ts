import type { APIRoute } from 'astro';
import { TERMS } from '../search/glossary.ts';

/** The words that open their entry where they stand, for the pages of flows, fetched when such a page is idle. */
export const GET: APIRoute = () =>
  new Response(JSON.stringify(TERMS), { headers: { 'Content-Type': 'application/json' } });
