/*
 * What counts as a figure: a number with a unit of measurement, or one with a decimal point. Counts, times of waiting and
 * numbers of steps are none; what a standard is called neither.
 */

const UNIT =
  'dBFS|dBV|dBA|dB|kHz|Hz|mA|mAh|Ah|A|mV|V|kW|W|kΩ|Ω|milliohm|ohm|mm²|mm|cm|m|km/h|mph|AWG|gauge|°C|rpm|times|%';
const NUMBER = '\\d+(?:\\.\\d+)?';
const BETWEEN = '(?:,? (?:to|and|or) |, |–)';
/** One number or several, and the unit of all of them. */
const WITH_UNIT = new RegExp(`(?<![\\w.])(${NUMBER}(?:${BETWEEN}${NUMBER})*) ?(${UNIT})(?![\\w²/])`, 'g');
const DECIMAL = /(?<![\w.])\d+\.\d+(?!\w|\.\d)/g;

/** Names rather than figures: the tones of this site, and what the whole trade calls its supply. */
const NAMES = new Set(['80 Hz', '400 Hz', '1000 Hz', '4000 Hz', '12 V']);

/** The figures of a text, each once: `12 dB` and `14 dB` of “12 to 14 dB”, and decimals without a unit as they are. */
export function figuresIn(text: string): readonly string[] {
  const plain = text
    .replace(/\]\([^)]*\)/g, ']')
    .replace(/[*_]/g, '')
    .replace(/[\s\u00a0]+/g, ' ');
  const found = new Set<string>();
  const rest = plain.replace(WITH_UNIT, (_, numbers: string, unit: string) => {
    for (const number of numbers.match(new RegExp(NUMBER, 'g')) ?? []) found.add(`${Number(number)} ${unit}`);
    return ' ';
  });
  for (const number of rest.match(DECIMAL) ?? []) found.add(String(Number(number)));
  return [...found].filter((figure) => !NAMES.has(figure));
}

/** Whether a figure is among those given: one without a unit by its number alone. */
export const isGiven = (figure: string, given: ReadonlySet<string>): boolean =>
  given.has(figure) || (!figure.includes(' ') && [...given].some((one) => one.startsWith(`${figure} `)));
