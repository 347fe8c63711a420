import type { ResultType, Simulation } from 'eecircuit-engine';

/**
 * ngspice as WebAssembly, one instance for all runs of a file. A run that its solver gives up may never settle, so each
 * has a limit of time.
 */
const LIMIT_MS = 20_000;
let started: Promise<Simulation> | undefined;

async function simulation(): Promise<Simulation> {
  const { Simulation } = await import('eecircuit-engine');
  const made = new Simulation();
  await made.start();
  return made;
}

async function withinLimit<T>(what: Promise<T>): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`ngspice gave no answer in ${LIMIT_MS} ms`)), LIMIT_MS);
  });
  return Promise.race([what, late]).finally(() => clearTimeout(timer));
}

/** The lines of a netlist without title and end, at one frequency: volts of every node, as size and phase. */
export async function spiceVolts(
  lines: readonly string[],
  frequencyHz: number,
): Promise<(node: string) => { re: number; im: number }> {
  started ??= simulation();
  const sim = await started;
  const analysis = frequencyHz === 0 ? '.op' : `.ac lin 1 ${frequencyHz} ${frequencyHz}`;
  sim.setNetList(['network', ...lines, '.options reltol=1e-6', analysis, '.end'].join('\n'));
  const result: ResultType = await withinLimit(sim.runSim());
  return (node) => {
    const column = result.data.find(({ name }) => name.toLowerCase() === `v(${node.toLowerCase()})`);
    const value = column?.values[0];
    if (value === undefined) throw new Error(`ngspice has no volts for ${node}: ${sim.getError().join(' ')}`);
    return typeof value === 'number' ? { re: value, im: 0 } : { re: value.real, im: value.img };
  };
}
