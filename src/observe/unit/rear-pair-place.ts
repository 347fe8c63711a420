import { option, type Say } from '../observer.ts';

export const sayRearPairPlace: Say = () => option('unit');
