import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/** How a page is opened in a test: without a sandbox that needs rights, and without asking the network for anything. */
export const CHROMIUM_FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const USUAL_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/lib/chromium/chromium',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  `${process.env['LOCALAPPDATA'] ?? 'C:'}\\Chromium\\Application\\chrome.exe`,
];

/** What the search may ask of the machine. A test gives it another one. */
export interface Machine {
  readonly named: string | undefined;
  exists(path: string): boolean;
  /** Installs Chromium if it can, and says whether it tried. */
  install(): boolean;
}

const thisMachine: Machine = {
  named: process.env['CHROMIUM'],
  exists: existsSync,
  install: () => {
    const isRoot = process.getuid?.() === 0;
    if (!isRoot || !existsSync('/etc/debian_version') || !existsSync('/usr/bin/apt-get')) return false;
    console.log('Installing chromium with apt-get …');
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    const get = (...args: string[]) => spawnSync('apt-get', args, { env, stdio: ['ignore', 'ignore', 'inherit'] });
    get('update', '-qq');
    get('install', '-y', '-qq', '--no-install-recommends', 'chromium');
    return true;
  },
};

/**
 * Where Chromium is: what CHROMIUM names, a usual place, or freshly installed where that is possible (Debian, as root).
 * @throws {Error} one sentence that says what to install.
 */
export function findChromium(machine: Machine = thisMachine): string {
  const { named, exists, install } = machine;
  if (named) {
    if (exists(named)) return named;
    throw new Error(`CHROMIUM names ${named}, and there is no such file.`);
  }
  const find = () => USUAL_PLACES.find((place) => exists(place));
  const found = find() ?? (install() ? find() : undefined);
  if (found) return found;
  throw new Error('The browser tests need Chromium: install the package chromium, or set CHROMIUM to its path.');
}
