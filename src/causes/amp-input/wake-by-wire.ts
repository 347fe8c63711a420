/** An amplifier that listened is switched by a wire instead. */
export const WAKE_BY_WIRE_STEPS: readonly string[] = [
  'Key off, battery negative off, amplifier gain down.',
  'Run a thin wire from a feed that comes and goes with the ignition to its remote terminal, 1 A fuse where it starts.',
  'Turn-on selector to wire, remote or 12 V. Battery negative on, key on.',
];
export const WAKE_BY_WIRE_PARTS: readonly string[] = ['1 A fuse with its holder, a few metres of thin wire'];
export const STARTS_WITH_KEY = 'The amplifier starts and stops with the key, twice in a row.';
