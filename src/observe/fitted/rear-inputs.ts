export { ofTheRearAmp as sayRearInputs } from '../as-fitted.ts';
