import { relative, sep } from 'node:path';

/** The build's own note of which file a module became. It is read when the build is finished, and not part of the site. */
export const MODULE_FILES = 'module-files.json';

interface Chunk {
  readonly type: 'chunk' | 'asset';
  readonly fileName: string;
  readonly facadeModuleId?: string | null;
}
interface Bundling {
  emitFile(file: { readonly type: 'asset'; readonly fileName: string; readonly source: string }): void;
}

/** Part of the bundler: notes the file of every module that is imported by itself, as a path below the project. */
export const moduleFiles = () => ({
  name: 'module-files',
  applyToEnvironment: ({ name }: { readonly name: string }) => name === 'client',
  generateBundle(this: Bundling, _: unknown, bundle: Readonly<Record<string, Chunk>>) {
    const files = Object.values(bundle).flatMap(({ type, facadeModuleId, fileName }) =>
      type === 'chunk' && facadeModuleId
        ? [[relative(process.cwd(), facadeModuleId).split(sep).join('/'), fileName] as const]
        : [],
    );
    this.emitFile({ type: 'asset', fileName: MODULE_FILES, source: JSON.stringify(Object.fromEntries(files)) });
  },
});
