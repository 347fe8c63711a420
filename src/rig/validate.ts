import { formatRange } from '../compute/quantity.ts';
import { AMP_FIELDS, BIKE_FIELDS, type Field } from './fields.ts';
import type { KnownAmp, Rig } from './rig.ts';

/** The most amplifiers a bike is taken to have. */
export const MOST_AMPS = 4;

export interface Validated {
  readonly rig: Rig;
  /** A sentence for every value that could not be used. The values themselves are left out of `rig`. */
  readonly refused: readonly string[];
}

type Fields = Readonly<Record<string, Field>>;
type Loose = Readonly<Record<string, unknown>>;

const isRecord = (value: unknown): value is Loose =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Why a value cannot stand in a field, or null when it can. */
export function whyRefused(field: Field, value: unknown): string | null {
  if (field.kind === 'choice') {
    if (typeof value === 'string' && Object.hasOwn(field.options, value)) return null;
    return `${field.label}: ${quoted(value)} is not one of ${Object.values(field.options).join(', ')}.`;
  }
  const [low, high] = field.allowed;
  if (typeof value === 'number' && value >= low && value <= high) return null;
  return `${field.label}: ${typed(value, field.siPerTyped)} is outside ${formatRange(low / field.siPerTyped, high / field.siPerTyped, field.unit)}.`;
}

/** Quotes no more of a strange value than fits a sentence. A file can hold objects that have no text form at all. */
const quoted = (value: unknown): string => {
  if (typeof value === 'object' && value !== null) return 'what stands there';
  const text = String(value);
  return `“${text.length > 40 ? `${text.slice(0, 40)}…` : text}”`;
};
const typed = (value: unknown, siPerTyped: number) =>
  typeof value === 'number' && Number.isFinite(value)
    ? String(Number((value / siPerTyped).toPrecision(4)))
    : quoted(value);

function validateFields(fields: Fields, loose: Loose, refused: string[], where: string): Loose {
  const kept: Record<string, unknown> = {};
  for (const [id, value] of Object.entries(loose)) {
    const field = Object.hasOwn(fields, id) ? fields[id] : undefined;
    if (value === undefined) continue;
    if (!field) {
      refused.push(`${where}${quoted(id)} is not something this version knows about a bike.`);
      continue;
    }
    const why = whyRefused(field, value);
    if (why === null) kept[id] = value;
    else refused.push(where + why);
  }
  return kept;
}

/** Keeps what is usable of anything that claims to be a rig (a file, a link, storage) and says what is not. */
export function validateRig(claimed: unknown): Validated {
  if (!isRecord(claimed)) return { rig: {}, refused: ['This is not a description of a bike.'] };
  const refused: string[] = [];
  const { name, amps, ...values } = claimed;
  const rig: Record<string, unknown> = validateFields(BIKE_FIELDS, values, refused, '');
  if (typeof name === 'string') rig['name'] = name.slice(0, 60);
  else if (name !== undefined) refused.push('The name of the bike is not text.');
  if (Array.isArray(amps)) {
    if (amps.length > MOST_AMPS) refused.push(`Only the first ${MOST_AMPS} of ${amps.length} amplifiers are kept.`);
    rig['amps'] = amps.slice(0, MOST_AMPS).map((amp: unknown, i): KnownAmp => {
      if (isRecord(amp)) return validateFields(AMP_FIELDS, amp, refused, `Amplifier ${i + 1}, `) as KnownAmp;
      refused.push(`Amplifier ${i + 1} is not a description of an amplifier.`);
      return {};
    });
  } else if (amps !== undefined) refused.push('The list of amplifiers is not a list.');
  return { rig: rig as Rig, refused };
}
