import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro';
import { durationOf, TONES, toneWav } from '../../sound/tone.ts';

/** The tones as files: computed at build time, so that what is played and what is said about it cannot differ. */
export const getStaticPaths = (() =>
  TONES.map(({ file, frequencyHz, peakDbfs, steps }) => ({
    params: { file },
    props: { frequencyHz, peakDbfs, steps },
  }))) satisfies GetStaticPaths;

type Props = InferGetStaticPropsType<typeof getStaticPaths>;

export const GET: APIRoute<Props> = ({ props: { frequencyHz, peakDbfs, steps } }) =>
  new Response(toneWav({ frequencyHz, durationS: durationOf({ steps }), peakDbfs, steps }), {
    headers: { 'Content-Type': 'audio/wav' },
  });
