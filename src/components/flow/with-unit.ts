/** A number is not parted from its unit at the end of a line, nor from the other number that belongs to it. */
export const withUnit = (value: string): string =>
  value.replace(/ (?=(?:[mk]?[VWΩA]|dB|Hz|mm²)(?:[ ,).]|$))/g, '\u00A0').replaceAll(' · ', '\u00A0·\u00A0');
