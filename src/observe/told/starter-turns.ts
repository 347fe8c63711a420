import { cranksBadly } from '../../world/symptoms/index.ts';
import { option, type Say } from '../observer.ts';

export const sayStarterTurns: Say = ({ bike }) => option(cranksBadly(bike) ? 'slow' : 'brisk');
