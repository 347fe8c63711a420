import { formatQuantity, formatRange } from '../compute/quantity.ts';
import { AMP_FIELDS, BIKE_FIELDS, type Field, type NumberField } from '../rig/fields.ts';
import type { KnownAmp, Rig } from '../rig/rig.ts';
import type { Findings } from '../steps/outcome.ts';

type Fields = Readonly<Record<string, Field>>;

const inWords = (field: NumberField, where: string): string => {
  const [low, high] = field.usual.map((value) => value / field.siPerTyped) as [number, number];
  const typical = formatQuantity(field.typical / field.siPerTyped, field.unit, 3);
  return `${field.label}${where}: ${typical} (usual ${formatRange(low, high, field.unit)})`;
};

/**
 * A stand-in that notes every number that is looked at and not known. A choice that nobody knows is not noted: remedies
 * look at choices to find out whether they are known, and then say so in words.
 */
const watched = <T extends object>(known: T, fields: Fields, where: string, noted: Map<string, string>): T =>
  new Proxy(known, {
    get(target, key, receiver) {
      const value: unknown = Reflect.get(target, key, receiver);
      const field = typeof key === 'string' && Object.hasOwn(fields, key) ? fields[key] : undefined;
      if (value === undefined && field?.kind === 'number') noted.set(`${where}${String(key)}`, inWords(field, where));
      return value;
    },
  });

/**
 * The values of the bike that something was worked out with and nobody knows. Found by watching what the computation
 * looks at, so it cannot forget to say one.
 */
export function assumedFor(compute: (findings: Findings) => unknown, findings: Findings): readonly string[] {
  const noted = new Map<string, string>();
  const { amps } = findings.rig;
  const watchedAmps = amps?.map(
    (amp, i): KnownAmp => watched(amp, AMP_FIELDS, amps.length > 1 ? `, amplifier ${i + 1}` : '', noted),
  );
  const rig: Rig = watchedAmps ? { ...findings.rig, amps: watchedAmps } : findings.rig;
  compute({ ...findings, rig: watched(rig, BIKE_FIELDS, '', noted) });
  return [...noted.values()];
}
