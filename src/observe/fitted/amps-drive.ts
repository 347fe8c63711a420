export { asFitted as sayAmpsDrive } from '../as-fitted.ts';
