import { createHash } from 'node:crypto';
import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { KEEP_FIRST_TAP } from './src/browser/first-tap.ts';
import { SEAT_BEFORE_PAINT } from './src/browser/seat.ts';
import { alignClass, articleLinks, articleTerms, cautions, wideTables } from './src/tools/articles.ts';
import { sharedFiles } from './src/tools/chunks.ts';
import { moduleFiles } from './src/tools/module-files.ts';
import { siteBase, siteFolder } from './src/tools/site.ts';

// Nothing about the machine that builds the site leaves it.
process.env.ASTRO_TELEMETRY_DISABLED = '1';

const base = siteBase();
const hashOf = (script) => `sha256-${createHash('sha256').update(script).digest('base64')}`;

export default defineConfig({
  srcDir: './src',
  publicDir: './src/public',
  outDir: siteFolder(),
  base,
  output: 'static',
  trailingSlash: 'always',
  // The other way of compressing drops the space between a word and a link on the next line.
  compressHTML: true,
  build: { inlineStylesheets: 'always' },
  devToolbar: { enabled: false },
  vite: {
    plugins: [moduleFiles()],
    environments: {
      client: {
        build: {
          rolldownOptions: {
            output: { codeSplitting: { groups: sharedFiles() } },
          },
        },
      },
    },
  },
  integrations: [mdx(), preact()],
  markdown: {
    syntaxHighlight: false,
    processor: satteri({
      hastPlugins: [
        alignClass,
        wideTables,
        cautions,
        articleLinks({ base, content: './content' }),
        articleTerms({ base }),
      ],
      features: { smartPunctuation: false },
    }),
  },
  security: {
    csp: {
      algorithm: 'SHA-256',
      directives: [
        "default-src 'none'",
        "base-uri 'none'",
        "connect-src 'self'",
        "font-src 'self'",
        "form-action 'none'",
        "img-src 'self' data:",
        "manifest-src 'self'",
        "media-src 'self' blob:",
        "object-src 'none'",
        "worker-src 'self'",
      ],
      scriptDirective: { hashes: [SEAT_BEFORE_PAINT, KEEP_FIRST_TAP].map(hashOf) },
    },
  },
});
