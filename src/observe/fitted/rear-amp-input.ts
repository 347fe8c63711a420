export { ofTheRearAmp as sayRearAmpInput } from '../as-fitted.ts';
