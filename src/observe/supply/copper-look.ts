import { option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

export const sayCopperLook: Say = ofItsAmp((_, { plusLead }) => option(plusLead.metal === 'clad' ? 'clad' : 'copper'));
