import { option } from '../observer.ts';

export const curedBy = (cured: boolean) => option(cured ? 'cured' : 'no-change');
