import { option, type Say } from '../observer.ts';

export const sayToolsAtHand: Say = () => option('meter');
