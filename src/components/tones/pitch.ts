import { formatQuantity } from '../../compute/quantity.ts';
import { QUIET_PEAK_DBFS, type TONES } from '../../sound/tone.ts';

type Tone = Pick<(typeof TONES)[number], 'frequencyHz' | 'peakDbfs' | 'steps'>;

/** What a tone is called: `400 Hz`, or `400 Hz, quiet`, or `80 Hz, in steps`. */
export const pitchOf = ({ frequencyHz, peakDbfs, steps }: Tone): string =>
  `${formatQuantity(frequencyHz, 'Hz')}${steps > 1 ? ', in steps' : peakDbfs === QUIET_PEAK_DBFS ? ', quiet' : ''}`;
