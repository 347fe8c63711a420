export { asRemembered as sayRearHistory } from '../as-remembered.ts';
