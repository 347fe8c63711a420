import { lastChange, rearHistory } from '../../steps/history.ts';
import { CANNOT, oneOf, option, type Says } from './observer.ts';

/* What somebody remembers: drawn from what such bikes usually have behind them. */

export const HISTORY: Says = {
  [rearHistory.id]: ({ found, observer }) => {
    const { history } = found.world;
    return history === 'unknown' ? CANNOT : option(oneOf(observer, history.before));
  },
  [lastChange.id]: ({ found, observer }) => {
    const { history } = found.world;
    return option(history === 'unknown' ? 'nothing' : oneOf(observer, history.lastChange));
  },
};
