/** One block of a `_headers` file: a path, which may end in a star, and what is sent with it. */
export interface HeaderRule {
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
}

/** Reads a `_headers` file: a path at the margin, its headers indented below it. */
export function parseHeaders(text: string): readonly HeaderRule[] {
  const rules: { path: string; headers: Record<string, string> }[] = [];
  for (const line of text.split('\n')) {
    const [, name, value] = /^\s+([\w-]+):\s*(.+?)\s*$/.exec(line) ?? [];
    const rule = rules.at(-1);
    if (name !== undefined && value !== undefined && rule) rule.headers[name] = value;
    else if (/^\//.test(line)) rules.push({ path: line.trim(), headers: {} });
  }
  return rules;
}

/** Everything that is sent with a path. A later block wins. */
export function headersFor(rules: readonly HeaderRule[], path: string): Record<string, string> {
  const matching = rules.filter((rule) =>
    rule.path.endsWith('*') ? path.startsWith(rule.path.slice(0, -1)) : path === rule.path,
  );
  return Object.assign({}, ...matching.map((rule) => rule.headers));
}
