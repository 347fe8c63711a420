import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro';
import { TONE_DURATION_S, TONES, toneWav } from '../../sound/tone.ts';

/** The tones as files: computed at build time, so that what is played and what is said about it cannot differ. */
export const getStaticPaths = (() =>
  TONES.map(({ file, frequencyHz, peakDbfs }) => ({
    params: { file },
    props: { frequencyHz, peakDbfs },
  }))) satisfies GetStaticPaths;

type Props = InferGetStaticPropsType<typeof getStaticPaths>;

export const GET: APIRoute<Props> = ({ props: { frequencyHz, peakDbfs } }) =>
  new Response(toneWav({ frequencyHz, durationS: TONE_DURATION_S, peakDbfs }), {
    headers: { 'Content-Type': 'audio/wav' },
  });
