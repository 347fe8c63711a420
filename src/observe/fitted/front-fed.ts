export { asFitted as sayFrontFed } from '../as-fitted.ts';
