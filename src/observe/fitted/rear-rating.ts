export { asFitted as sayRearRating } from '../as-fitted.ts';
