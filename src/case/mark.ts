/**
 * A short mark of a line of text, the same for the same line: FNV-1a over its characters, 32 bits, by its published
 * constants. A line whose numbers have changed is another line.
 */
export function markOf(line: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < line.length; i++) hash = Math.imul(hash ^ line.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(36);
}
