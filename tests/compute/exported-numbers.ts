import ts from 'typescript';

const OPTIONS = { strict: true, noEmit: true, allowImportingTsExtensions: true, target: ts.ScriptTarget.ES2024 };
const SNIPPET = 'snippet.ts';
const parsed = new Map<string, ts.SourceFile | undefined>(); // the library is large, and the same each time

function programOf(files: readonly string[], snippet: string): ts.Program {
  const host = ts.createCompilerHost(OPTIONS);
  const readFile = host.getSourceFile;
  host.getSourceFile = (name, language, ...rest) => {
    if (name === SNIPPET) return ts.createSourceFile(name, snippet, language);
    if (!parsed.has(name)) parsed.set(name, readFile(name, language, ...rest));
    return parsed.get(name);
  };
  return ts.createProgram([...files, SNIPPET], OPTIONS, host);
}

/**
 * The names of all numbers that modules show to others: constants, parameters, results, and the fields of each, however
 * deep. `files` are absolute paths; `snippet` is the text of one more module.
 */
export function exportedNumbers(files: readonly string[], snippet = ''): string[] {
  const program = programOf(files, snippet);
  const checker = program.getTypeChecker();
  const found = new Set<string>();

  // The key of a record has no declaration of its own, and is ours.
  const isOurs = (symbol: ts.Symbol) =>
    !symbol.declarations?.every((place) => program.isSourceFileDefaultLibrary(place.getSourceFile()));

  /** An array, a tuple or a map is called what its numbers are called. */
  const isCollection = (type: ts.Type): type is ts.TypeReference =>
    ((type as ts.ObjectType).objectFlags & ts.ObjectFlags.Reference) !== 0 && !(type.symbol && isOurs(type.symbol));

  const visitSymbol = (symbol: ts.Symbol, seen: readonly ts.Type[]) =>
    visit(symbol.name, checker.getTypeOfSymbol(symbol), seen);

  const visit = (name: string, type: ts.Type, seen: readonly ts.Type[]): void => {
    if (seen.includes(type)) return;
    const deeper = [...seen, type];
    if (type.flags & ts.TypeFlags.NumberLike) found.add(name);
    else if (type.isUnion()) for (const part of type.types) visit(name, part, deeper);
    else if (isCollection(type)) for (const part of checker.getTypeArguments(type)) visit(name, part, deeper);
    else for (const field of type.getProperties().filter(isOurs)) visitSymbol(field, deeper);
    for (const call of type.getCallSignatures()) {
      visit(name, call.getReturnType(), deeper);
      for (const parameter of call.getParameters()) visitSymbol(parameter, deeper);
    }
  };

  for (const file of [...files, SNIPPET]) {
    const source = program.getSourceFile(file);
    const module = source && checker.getSymbolAtLocation(source);
    for (const exported of module ? checker.getExportsOfModule(module) : []) {
      const origin = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
      const isType = (origin.flags & ts.SymbolFlags.Value) === 0;
      visit(exported.name, isType ? checker.getDeclaredTypeOfSymbol(origin) : checker.getTypeOfSymbol(origin), []);
    }
  }
  return [...found];
}
