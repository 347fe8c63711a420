import { execFileSync } from 'node:child_process';
import type { TestProject } from 'vitest/node';
import { findChromium } from '../../src/tools/chromium.ts';
import { serveFolder } from '../../src/tools/serve.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** The address of the served site, with a slash at its end. */
    site: string;
    chromium: string;
  }
}

/** Builds the site unless the run has built it already, and serves it on a free port for all browser tests. */
export default async function setup(project: TestProject) {
  if (process.env['SIDESTAND_BUILT'] === undefined) execFileSync('npm', ['run', '-s', 'build'], { stdio: 'pipe' });
  const server = await serveFolder({ folder: 'dist' });
  project.provide('site', server.url);
  project.provide('chromium', findChromium());
  return () => server.stop();
}
