import { formatRange } from '../compute/quantity.ts';
import { AMP_FIELDS, BIKE_FIELDS, type Field } from './fields.ts';
import type { KnownAmp, ProfileReadings, Rig, SavedAnswer } from './rig.ts';

/** The most amplifiers a bike is taken to have. */
export const MOST_AMPS = 4;

export interface Validated {
  readonly rig: Rig;
  /** A sentence for every value that could not be used. The values themselves are left out of `rig`. */
  readonly refused: readonly string[];
}

type Fields = Readonly<Record<string, Field>>;
export type Loose = Readonly<Record<string, unknown>>;

export const isRecord = (value: unknown): value is Loose =>
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

/** More than anybody reads of one head unit, and longer than any number that a meter shows. */
const MOST_ANSWERS = 8;
const LONGEST_TEXT = 20;

const isText = (value: unknown): value is string => typeof value === 'string' && value.length <= LONGEST_TEXT;
const isAnswer = (value: unknown): value is SavedAnswer => {
  if (!isRecord(value)) return false;
  const { option, readings } = value;
  if (readings === undefined) return isText(option);
  return isRecord(readings) && Object.keys(readings).length <= MOST_ANSWERS && Object.values(readings).every(isText);
};

/** Readings of the stored profile out of anything that claims to be some. Which steps they belong to is not known here. */
function readingsIn(claimed: unknown): ProfileReadings | undefined {
  if (!isRecord(claimed) || !isRecord(claimed['answers'])) return undefined;
  const { on } = claimed;
  const answers = Object.entries(claimed['answers']).filter(
    (entry): entry is [string, SavedAnswer] => isText(entry[0]) && isAnswer(entry[1]),
  );
  if (typeof on !== 'string' || !/^\d{4}-\d{2}-\d{2}$/.test(on) || Number.isNaN(Date.parse(on))) return undefined;
  return answers.length === 0 ? undefined : { on, answers: Object.fromEntries(answers.slice(0, MOST_ANSWERS)) };
}

/** Keeps what is usable of anything that claims to be a rig (a file, a link, storage) and says what is not. */
export function validateRig(claimed: unknown): Validated {
  if (!isRecord(claimed)) return { rig: {}, refused: ['This is not a description of a bike.'] };
  const refused: string[] = [];
  const { name, amps, profileRead, ...values } = claimed;
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
  const read = readingsIn(profileRead);
  if (read) rig['profileRead'] = read;
  else if (profileRead !== undefined) refused.push('What was read of the stored profile cannot be used.');
  return { rig: rig as Rig, refused };
}
