/* What only the page of a plan or of a reading has, and only once the first question is there. */
import { ProfileChart } from './ProfileChart.tsx';

export { doubtInWords } from './doubt.ts';
export { VerdictView } from './VerdictView.tsx';
/** What such a page may draw under the open step and in the verdict. */
export const PICTURES = { profile: ProfileChart };
