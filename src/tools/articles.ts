import { readdirSync } from 'node:fs';
import { basename, extname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineHastPlugin } from 'satteri';
import { TERMS } from '../search/glossary.ts';
import { termFinder } from '../search/terms.ts';

/*
 * What the pages do to the Markdown of an article. The policy of the pages forbids style attributes, so a column's
 * alignment becomes a class; a table may be wider than a phone, so it scrolls by itself; a paragraph that begins with
 * "Caution:" looks like one; and links between articles are bare slugs, which become addresses here.
 */

export const alignClass = defineHastPlugin({
  name: 'align-class',
  element: {
    filter: ['th', 'td'],
    visit(node, ctx) {
      const align = /text-align:\s*(\w+)/.exec(String(node.properties?.['style'] ?? ''))?.[1];
      if (align === undefined) return;
      ctx.setProperty(node, 'style', null);
      ctx.setProperty(node, 'className', [`align-${align}`]);
    },
  },
});

export const wideTables = defineHastPlugin({
  name: 'wide-tables',
  element: {
    filter: ['table'],
    visit(node, ctx) {
      const properties = { className: ['table-scroll'], tabIndex: 0, role: 'group', ariaLabel: 'Table' };
      ctx.wrapNode(node, { type: 'element', tagName: 'div', properties, children: [] });
    },
  },
});

export const cautions = defineHastPlugin({
  name: 'cautions',
  element: {
    filter: ['p'],
    visit(node, ctx) {
      const text = ctx.textContent(node).trim();
      const [first] = node.children;
      if (!text.startsWith('Caution:') || first?.type !== 'element' || first.tagName !== 'strong') return;
      ctx.setProperty(node, 'className', text === 'Caution:' ? ['caution', 'caution-list'] : ['caution']);
    },
  },
});

/** Every article by its slug, which is its file name. Two articles of one name would share an address. */
export function articleSlugs(content: string): ReadonlySet<string> {
  const slugs = new Set<string>();
  for (const file of readdirSync(content, { recursive: true, encoding: 'utf8' })) {
    if (extname(file) !== '.mdx') continue;
    const slug = basename(file, '.mdx');
    if (slugs.has(slug)) throw new Error(`Two articles are called ${slug}.mdx. Rename one: the name is its address.`);
    slugs.add(slug);
  }
  return slugs;
}

type Target = { readonly href: string } | { readonly problem: string };

/** Where a link in an article leads, or what is wrong with it in words for the author. */
export function articleTarget(written: string, base: string, slugs: ReadonlySet<string>): Target {
  if (written.startsWith('#')) return { href: written };
  const [slug = '', fragment] = written.split('#');
  if (slugs.has(slug)) return { href: `${base}read/${slug}/${fragment === undefined ? '' : `#${fragment}`}` };
  const known = [...slugs].sort().join(', ');
  return { problem: `links to “${written}”, which is no article. Write the bare name of one: ${known}.` };
}

/** Turns bare slugs into addresses, and stops the build at a link that leads nowhere. */
export const articleLinks = ({ base, content }: { base: string; content: string }) => {
  return defineHastPlugin({
    name: 'article-links',
    element: {
      filter: ['a'],
      visit(node, ctx) {
        // Read each time: while the site is being written, an article may have been added since.
        const target = articleTarget(String(node.properties?.['href'] ?? ''), base, articleSlugs(content));
        if ('href' in target) return ctx.setProperty(node, 'href', target.href);
        const file = ctx.fileURL ? basename(fileURLToPath(ctx.fileURL)) : 'An article';
        throw new Error(`${file} ${target.problem}`);
      },
    },
  });
};

/** Where a word is read, not looked for: a heading, a link and what is typed stay as they are. */
const READ_IN = new Set(['p', 'li', 'td', 'em', 'strong']);

/** Makes each word of the glossary a link to its entry where an article has it first. A script opens it in place. */
export const articleTerms = ({ base }: { base: string }) => {
  const piecesOf = termFinder(TERMS);
  return () => {
    const seen = new Set<string>();
    return defineHastPlugin({
      name: 'article-terms',
      text(node, ctx) {
        const parent = ctx.parent(node);
        if (parent?.type !== 'element' || !READ_IN.has(parent.tagName)) return;
        const pieces = piecesOf(node.value, seen);
        if (pieces.every((piece) => typeof piece === 'string')) return;
        ctx.replaceNode(
          node,
          pieces.map((piece) =>
            typeof piece === 'string'
              ? { type: 'text', value: piece }
              : {
                  type: 'element',
                  tagName: 'a',
                  properties: { href: `${base}words/#${piece.slug}`, className: ['term'] },
                  children: [{ type: 'text', value: piece.text }],
                },
          ),
        );
      },
    });
  };
};
