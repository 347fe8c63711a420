export { asFitted as sayDeliveredWith } from '../as-fitted.ts';
