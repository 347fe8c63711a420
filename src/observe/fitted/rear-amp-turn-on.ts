export { ofTheRearAmp as sayRearAmpTurnOn } from '../as-fitted.ts';
