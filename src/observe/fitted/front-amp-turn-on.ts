export { asFitted as sayFrontAmpTurnOn } from '../as-fitted.ts';
