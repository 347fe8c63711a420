import { h, hydrate } from 'preact';
import { CALCULATORS } from '../../calculators/all.ts';
import { Calculation } from './Calculation.tsx';

const place = document.querySelector<HTMLElement>('#calculation');
const one = CALCULATORS.find(({ id }) => id === place?.dataset['calculator']);
if (place && one) hydrate(h(Calculation, { one }), place);
