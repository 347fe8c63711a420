export { asRemembered as sayHarshHistory } from '../as-remembered.ts';
