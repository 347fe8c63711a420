export { asFitted as sayDeliveredAmp } from '../as-fitted.ts';
