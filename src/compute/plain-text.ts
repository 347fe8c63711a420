/**
 * Typed text with the signs of other scripts and keyboards as the ASCII ones that mean the same: decimal digits,
 * full-width letters and signs, decimal separators, minus signs. Marks that only steer the direction of writing go.
 */
export function plainText(text: string): string {
  // Nearly all text is ASCII already, and a replay reads every reading of a case again.
  if (/^[!-~]*$/.test(text)) return text;
  return text
    .replace(/\p{Nd}/gu, digitValue)
    .replace(/[\uFF01-\uFF5E]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - FULL_WIDTH_OFFSET))
    .replace(/\p{Cf}/gu, '')
    .replace(/[\u2012-\u2015\u2212\uFE63]/g, '-') // dashes and the real minus
    .replace(/\u066B/g, '.') // the Arabic decimal separator
    .replace(/\u060C/g, ',') // the Arabic comma
    .replace(/[\u2018\u2019\u066C]/g, "'") // the Arabic mark between thousands is written like an apostrophe
    .replace(/\u2126/g, 'Ω') // the ohm sign, next to the Greek letter
    .replace(/\u03BC/g, 'µ') // the Greek letter, next to the micro sign
    .replace(/\s+/g, ' ')
    .trim();
}

/** Unicode block Halfwidth and Fullwidth Forms: U+FF01 to U+FF5E are the ASCII signs U+0021 to U+007E in the same order. */
const FULL_WIDTH_OFFSET = 0xfee0;

/**
 * The value of a decimal digit of any script. Unicode encodes the ten of a script in one ascending row (UAX #44,
 * Numeric_Type=Decimal), and some rows stand back to back.
 */
function digitValue(digit: string): string {
  const code = digit.codePointAt(0) ?? 0;
  let first = code;
  while (/\p{Nd}/u.test(String.fromCodePoint(first - 1))) first--;
  return String((code - first) % 10);
}
