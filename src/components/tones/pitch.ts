import { formatQuantity } from '../../compute/quantity.ts';
import { QUIET_PEAK_DBFS, type TONES } from '../../sound/tone.ts';

type Tone = Pick<(typeof TONES)[number], 'frequencyHz' | 'peakDbfs'>;

/** What a tone is called: `400 Hz`, or `400 Hz, quiet`. */
export const pitchOf = ({ frequencyHz, peakDbfs }: Tone): string =>
  `${formatQuantity(frequencyHz, 'Hz')}${peakDbfs === QUIET_PEAK_DBFS ? ', quiet' : ''}`;
