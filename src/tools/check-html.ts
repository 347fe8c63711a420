import { createHash } from 'node:crypto';

const TAG = /<([a-z][\w-]*)((?:\s+[^\s"'>/=]+(?:\s*=\s*(?:"[^"]*"|'[^']*'|[^\s"'>]+))?)*)\s*\/?>/gi;
const ATTRIBUTE = /([^\s"'>/=]+)(?:\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'>]+)))?/g;
const INLINE = /<(script|style)\b([^>]*)>([\s\S]*?)<\/\1>/gi;
const LEADS_SOMEWHERE =
  /^(href|src|srcset|poster|action|formaction|data|cite|ping|xlink:href|component-url|renderer-url)$/;

export interface Tag {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
}

/** The tags of a page in order. What stands inside scripts and styles is not one. */
export function tagsOf(html: string): readonly Tag[] {
  const markup = html.replace(/<!--[\s\S]*?-->/g, '').replace(INLINE, '<$1$2></$1>');
  return [...markup.matchAll(TAG)].map(([, name = '', written = '']) => ({
    name: name.toLowerCase(),
    attributes: new Map(
      [...written.matchAll(ATTRIBUTE)].map(([, key = '', a, b, c]) => [key.toLowerCase(), a ?? b ?? c ?? '']),
    ),
  }));
}

/**
 * What a built page must not have, in words: an address on another origin, a style or event attribute, an inline
 * script or style that its own policy does not allow. The browser would block most of it in silence.
 */
export function faultsOf(html: string): readonly string[] {
  const faults: string[] = [];
  let policy = '';
  for (const { name, attributes } of tagsOf(html)) {
    if (attributes.get('http-equiv') === 'content-security-policy') policy = attributes.get('content') ?? '';
    for (const [key, value] of attributes) {
      if (LEADS_SOMEWHERE.test(key) && /(^|[\s,])(https?:)?\/\//i.test(value)) {
        faults.push(`<${name} ${key}="${value}"> leads to another origin`);
      }
      if (key === 'style' || /^on[a-z]/.test(key)) faults.push(`<${name} ${key}="${value}"> is blocked by the policy`);
    }
  }
  if (policy === '') faults.push('there is no content security policy');
  for (const [, name = '', attributes = '', text = ''] of html.matchAll(INLINE)) {
    if (text === '' || /\bsrc=|application\/(ld\+)?json/.test(attributes)) continue;
    const hash = createHash('sha256').update(text).digest('base64');
    if (!policy.includes(`'sha256-${hash}'`)) {
      faults.push(`the inline <${name}> that begins “${text.trim().slice(0, 40)}” is not in the policy`);
    }
  }
  return faults;
}
