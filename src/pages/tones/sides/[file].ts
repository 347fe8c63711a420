import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro';
import { SIDE_TONES, sideToneWav } from '../../../sound/side-tone.ts';

/** The tones that name a side as files: computed at build time, as all tones are. */
export const getStaticPaths = (() =>
  SIDE_TONES.map((tone) => ({ params: { file: tone.file }, props: tone }))) satisfies GetStaticPaths;

type Props = InferGetStaticPropsType<typeof getStaticPaths>;

export const GET: APIRoute<Props> = ({ props }) =>
  new Response(sideToneWav(props), { headers: { 'Content-Type': 'audio/wav' } });
