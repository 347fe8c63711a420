import { rearAmp } from '../bike.ts';
import { option, type Say } from '../observer.ts';

export const sayRearDrive: Say = ({ bike }) => option(rearAmp(bike) === null ? 'unit' : 'amp');
