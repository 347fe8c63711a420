import { option, type Say } from '../observer.ts';

export const sayMetersDigit: Say = ({ observer }) => {
  const { acDigitV } = observer.meter;
  return option(acDigitV <= 0.001 ? '0.001' : acDigitV <= 0.01 ? '0.01' : '0.1');
};
