export { asFitted as sayUnitKind } from '../as-fitted.ts';
