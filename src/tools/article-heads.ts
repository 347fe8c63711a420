import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { ArticleHead } from '../search/documents.ts';

const line = (front: string, key: string): string =>
  new RegExp(`^${key}: *['"]?(.*?)['"]?$`, 'm').exec(front)?.[1] ?? '';

/** Slug, title and summary of every article, read from the top of its file. */
export const articleHeads = (content = 'content'): readonly ArticleHead[] =>
  readdirSync(content, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.mdx'))
    .map((file) => {
      const [, front = ''] = readFileSync(join(content, file), 'utf8').split(/^---$/m);
      return { slug: basename(file, '.mdx'), title: line(front, 'title'), summary: line(front, 'summary') };
    });
