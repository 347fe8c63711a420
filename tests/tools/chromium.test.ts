import { describe, expect, it } from 'vitest';
import { findChromium, type Machine } from '../../src/tools/chromium.ts';

const machine = (over: Partial<Machine>): Machine => ({
  named: undefined,
  exists: () => false,
  install: () => false,
  ...over,
});

describe('findChromium', () => {
  it('takes what CHROMIUM names', () => {
    expect(findChromium(machine({ named: '/opt/c', exists: (path) => path === '/opt/c' }))).toBe('/opt/c');
  });
  it('does not look elsewhere when CHROMIUM names nothing that exists', () => {
    const wrong = machine({ named: '/opt/c', exists: (path) => path === '/usr/bin/chromium' });
    expect(() => findChromium(wrong)).toThrow('CHROMIUM names /opt/c, and there is no such file.');
  });
  it('takes a usual place', () => {
    expect(findChromium(machine({ exists: (path) => path === '/usr/bin/chromium-browser' }))).toBe(
      '/usr/bin/chromium-browser',
    );
  });
  it('installs it where it can, and looks again', () => {
    let installed = false;
    const bare = machine({
      exists: (path) => installed && path === '/usr/bin/chromium',
      install: () => {
        installed = true;
        return true;
      },
    });
    expect(findChromium(bare)).toBe('/usr/bin/chromium');
  });
  it('says in one sentence what to install where it cannot', () => {
    expect(() => findChromium(machine({}))).toThrow(
      /^The browser tests need Chromium: install the package chromium, or set/,
    );
  });
});
