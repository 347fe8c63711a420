import ts from 'typescript';

/*
 * Changes to the source that must not go unnoticed: a caution that is gone, a certainty that is another one, a probe at
 * another place, a repair that is not done. Each is one edit of one file.
 */

export const KINDS = ['caution', 'certainty', 'probe', 'repair'] as const;
export type Kind = (typeof KINDS)[number];

/** One change: from and to are places in the text of the file. */
export interface Mutant {
  readonly file: string;
  readonly kind: Kind;
  readonly how: 'emptied' | 'swapped' | 'halved';
  readonly line: number;
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** What stood there, in short. */
  readonly was: string;
}

type Make = (
  node: ts.Node,
  kind: Kind,
  how: Mutant['how'],
  text: string,
  at?: readonly [from: number, to: number],
) => void;

const nameOf = (node: ts.PropertyAssignment | ts.VariableDeclaration): string =>
  ts.isIdentifier(node.name) || ts.isStringLiteral(node.name) ? node.name.text : '';
const quoted = (text: string): string => `'${text}'`;

/** The other one of a list, the next in it: where there is only one there is no other. */
const next = (all: readonly string[], one: string): string => all[(all.indexOf(one) + 1) % all.length] ?? one;

const firstHalf = (text: string): string => {
  const words = text.split(' ');
  return words.slice(0, Math.floor(words.length / 2)).join(' ');
};

/** Elements of an array: each gone, each another one, and of several the second half gone. */
function ofArray(array: ts.ArrayLiteralExpression, kind: Kind, others: readonly string[], make: Make): void {
  const strings = array.elements.filter((one) => ts.isStringLiteral(one));
  for (const one of strings) {
    const i = array.elements.indexOf(one);
    const [before, after] = [array.elements[i - 1], array.elements[i + 1]];
    const from = after || !before ? one.getStart() : before.getEnd();
    const to = after ? after.getStart() : one.getEnd();
    make(one, kind, 'emptied', '', [from, to]);
    make(one, kind, 'swapped', quoted(next(others, one.text)));
  }
  if (array.elements.length < 2) return;
  const half = array.elements[Math.ceil(array.elements.length / 2) - 1] as ts.Expression;
  const last = array.elements.at(-1) as ts.Expression;
  make(array, kind, 'halved', '', [half.getEnd(), last.getEnd()]);
}

/** A text: gone, that of its neighbour, and its first half. */
function ofText(text: ts.StringLiteral, kind: Kind, others: readonly string[], make: Make): void {
  make(text, kind, 'emptied', "''");
  make(text, kind, 'swapped', quoted(next(others, text.text)));
  if (text.text.includes(' ')) make(text, kind, 'halved', quoted(firstHalf(text.text)));
}

/** The first argument of `as const`, `satisfies` and brackets. */
const bare = (node: ts.Expression): ts.Expression =>
  ts.isAsExpression(node) || ts.isSatisfiesExpression(node) || ts.isParenthesizedExpression(node)
    ? bare(node.expression)
    : node;

const textsIn = (object: ts.ObjectLiteralExpression): readonly ts.StringLiteral[] =>
  object.properties.flatMap((one) =>
    ts.isPropertyAssignment(one) && ts.isStringLiteral(one.initializer) ? [one.initializer] : [],
  );

const CERTAINTIES = ['proved', 'likely', 'short list'];
const NUMBERS = /(M2|A|V|Ohm)$/;

/** A repair action, as data: not done, another one done, and of its numbers half. */
function ofAction(object: ts.ObjectLiteralExpression, make: Make): void {
  const properties = object.properties.filter((one) => ts.isPropertyAssignment(one));
  const done = properties.find((one) => nameOf(one) === 'do');
  if (!done || !ts.isStringLiteral(done.initializer)) return;
  const { parent } = object;
  if (ts.isArrayLiteralExpression(parent)) {
    const i = parent.elements.indexOf(object);
    const after = parent.elements[i + 1];
    make(object, 'repair', 'emptied', '', [object.getStart(), after ? after.getStart() : object.getEnd()]);
  }
  const other = done.initializer.text === 'cool-amp' ? 'centre-fader' : 'cool-amp';
  make(done.initializer, 'repair', 'swapped', quoted(other));
  for (const one of properties) {
    if (NUMBERS.test(nameOf(one))) make(one.initializer, 'repair', 'halved', `(${one.initializer.getText()}) / 2`);
    if (one !== done && ts.isStringLiteral(one.initializer))
      make(one, 'repair', 'halved', '', [one.getStart(), cutEnd(object, one)]);
  }
}
/** Where a property ends, its comma included. */
function cutEnd(object: ts.ObjectLiteralExpression, one: ts.ObjectLiteralElementLike): number {
  const after = object.properties[object.properties.indexOf(one) + 1];
  if (after) return after.getStart();
  const end = one.getEnd();
  return end + (/^\s*,/.exec(one.getSourceFile().text.slice(end))?.[0].length ?? 0);
}

/** Two probes: changed over, and each at another place. */
function ofProbes(object: ts.ObjectLiteralExpression, points: readonly string[], make: Make): void {
  const [red, black] = ['red', 'black'].map((name) =>
    object.properties.find((one): one is ts.PropertyAssignment => ts.isPropertyAssignment(one) && nameOf(one) === name),
  );
  if (!red || !black || !ts.isStringLiteral(red.initializer) || !ts.isStringLiteral(black.initializer)) return;
  const [r, b] = [red.initializer.text, black.initializer.text];
  make(object, 'probe', 'swapped', `{ red: '${b}', black: '${r}' }`);
  make(red.initializer, 'probe', 'swapped', quoted(next(points, r)));
  make(black.initializer, 'probe', 'swapped', quoted(next(points, b)));
  make(object, 'probe', 'halved', `{ red: '${r}', black: '${r}' }`);
  if (ts.isPropertyAssignment(object.parent) && nameOf(object.parent) === 'probes' && isReading(object.parent.parent))
    make(object, 'probe', 'emptied', "'not drawn'");
}
const isReading = (node: ts.Node): boolean =>
  ts.isObjectLiteralExpression(node) && node.properties.some((one) => ts.isSpreadAssignment(one));

/** What is looked for in which files. */
const FOLDERS = /^src\/(steps|causes|components\/caution|components\/flow\/HowSure|inference\/certainty)/;
/** What is written of the data, not the data. */
const NOT_DATA = /repair-action\.ts$|\/(step|cause|verdict)\.ts$/;
export const mayMutate = (file: string): boolean => FOLDERS.test(file) && !NOT_DATA.test(file) && /\.tsx?$/.test(file);

export interface Names {
  readonly cautions: readonly string[];
  readonly points: readonly string[];
  readonly conditions: readonly string[];
}

/** Tables whose texts or lists are cautions, by the names that they have in the source. */
const CAUTION_TABLES = ['CAUTIONS', 'SPOKEN', 'AT_A_PROBE', 'AT_A_CLIP', 'OF_A_TOOL'];
const CAUTION_LISTS = /caution|^OF_ACTIONS$|^AT_THE_BATTERY$|^ON_[A-Z_]+$|^onThePlug$/i;
/** A probe there asks for no caution; the place next to one that does may ask for the same. */
const NOTHING_TO_FEAR = ['frame'];
const SIGNAL_WORDS = ['Danger', 'Warning', 'Caution', 'Notice'];

/** Whether an array stands, directly or in a function, in something that lists cautions. */
function listsCautions(node: ts.Node): boolean {
  for (let at: ts.Node | undefined = node; at; at = at.parent) {
    if (ts.isPropertyAssignment(at) && nameOf(at) === 'cautions') return true;
    if (
      ts.isPropertyAssignment(at) &&
      ts.isObjectLiteralExpression(at.parent) &&
      ['repair', 'probes', 'options'].includes(nameOf(at))
    )
      return false;
    if (ts.isVariableDeclaration(at) && CAUTION_LISTS.test(nameOf(at))) return true;
    if (ts.isFunctionDeclaration(at) && at.name && CAUTION_LISTS.test(at.name.text)) return true;
  }
  return false;
}

/** Every change of a file. */
export function mutantsOf(file: string, source: string, { cautions, points, conditions }: Names): readonly Mutant[] {
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true);
  const found: Mutant[] = [];
  const make: Make = (node, kind, how, text, at = [node.getStart(), node.getEnd()]) => {
    const [from, to] = at;
    if (source.slice(from, to) === text) return;
    const line = tree.getLineAndCharacterOfPosition(from).line + 1;
    const was = source.slice(from, to).replace(/\s+/g, ' ').slice(0, 60);
    found.push({ file, kind, how, line, from, to, text, was });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isVariableDeclaration(node) && node.initializer) {
      const name = nameOf(node);
      const value = bare(node.initializer);
      if (ts.isObjectLiteralExpression(value) && CAUTION_TABLES.includes(name)) {
        const texts = textsIn(value);
        for (const text of texts)
          ofText(text, 'caution', text.text.includes(' ') ? texts.map((one) => one.text) : cautions, make);
      }
      if (ts.isObjectLiteralExpression(value) && name === 'SIGNAL_WORDS')
        for (const text of textsIn(value)) make(text, 'caution', 'swapped', quoted(next(SIGNAL_WORDS, text.text)));
      if (ts.isObjectLiteralExpression(value) && file.endsWith('HowSure.tsx') && name.endsWith('WORDS'))
        for (const text of textsIn(value))
          ofText(
            text,
            'certainty',
            textsIn(value).map((one) => one.text),
            make,
          );
      if (file.endsWith('inference/certainty.ts') && ts.isNumericLiteral(value))
        make(value, 'certainty', 'halved', `${Number(value.text) / 2}`);
    }
    if (ts.isArrayLiteralExpression(node)) {
      const property = ts.isPropertyAssignment(node.parent) ? nameOf(node.parent) : '';
      if (property === 'needs') ofArray(node, 'caution', conditions, make);
      else if (property === 'touches' || property === 'clips') ofArray(node, 'caution', NOTHING_TO_FEAR, make);
      else if (
        listsCautions(node) &&
        node.elements.some((one) => ts.isStringLiteral(one) && cautions.includes(one.text))
      )
        ofArray(node, 'caution', cautions, make);
    }
    if (ts.isStringLiteral(node) && CERTAINTIES.includes(node.text)) {
      const property = [node.parent, node.parent.parent, node.parent.parent?.parent].some(
        (at) => at && ts.isPropertyAssignment(at) && nameOf(at) === 'certainty',
      );
      const returned = file.endsWith('inference/certainty.ts') && !ts.isLiteralTypeNode(node.parent);
      if (property || returned) make(node, 'certainty', 'swapped', quoted(next(CERTAINTIES, node.text)));
    }
    if (ts.isObjectLiteralExpression(node)) {
      ofAction(node, make);
      ofProbes(node, points, make);
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

/** The source with a change. */
export const changed = (source: string, { from, to, text }: Mutant): string =>
  source.slice(0, from) + text + source.slice(to);
