export { asRemembered as sayToneHistory } from '../as-remembered.ts';
