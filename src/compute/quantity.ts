/*
 * Where text and numbers meet. Everything behind this file is plain numbers in the unit their name ends with; note that
 * mm² and Ah are not SI, so multiply by 1e-6 (m²) before a formula of `wire.ts`.
 */
export { formatLimit, formatQuantity, formatRange } from './format-quantity.ts';
export { isLoneOne, type ParsedQuantity, parseQuantity } from './parse-quantity.ts';
export { UNITS, type Unit } from './units.ts';
