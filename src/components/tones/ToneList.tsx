import { TONES } from '../../sound/tone.ts';
import { pitchOf } from './pitch.ts';
import { TonePlayer } from './TonePlayer.tsx';

const USES = {
  '80hz': 'The low tone. Bass boost shows here.',
  '400hz': 'The middle tone. Most readings are taken with it.',
  '1khz': 'A high tone. Engine off against engine running.',
  '4khz': 'The highest tone. It goes to the tweeters: quietly and briefly.',
  'quiet-80hz': 'The low tone for ratios. A bass boost cannot clip it before the volume control.',
  'quiet-400hz': 'The middle tone for ratios, to go with it.',
  'quiet-1khz': 'A high tone for ratios.',
  'quiet-4khz': 'The highest tone for ratios.',
  'stepped-80hz': 'The low tone, louder by 3 dB every two seconds up to full scale. For ears: clipping turns it raspy.',
} as const satisfies Record<(typeof TONES)[number]['name'], string>;

/** All the tones, each with what it is for. */
export function ToneList({ folder }: { readonly folder: string }) {
  return (
    <ul class="tone-list">
      {TONES.map((tone) => (
        <li key={tone.name}>
          <h2 id={tone.name}>{pitchOf(tone)}</h2>
          <p>{USES[tone.name]}</p>
          <TonePlayer pitch={pitchOf(tone)} src={folder + tone.file} file={`tone-${tone.file}`} />
        </li>
      ))}
    </ul>
  );
}
