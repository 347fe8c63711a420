import { axleOf, CORNERS, type Corner, type PerCorner, perCorner } from '../rig/corner.ts';
import type { Wave } from './bike/clip.ts';
import { coilTop, tab } from './bike/nodes.ts';
import type { Operating } from './bike/operate.ts';
import { magnitude, subtract } from './complex.ts';
import type { Moment } from './moment.ts';
import { type Amp, isJoined, ohmNow, type Speaker, type World } from './state.ts';
import { driverOf, isFitted } from './valued-rig.ts';

/* What an ear can tell. Limits are estimates: nobody publishes how quiet a motorcycle may be. */

/** A tenth of a milliwatt in a speaker is heard with an ear near it, and taken for silence by a rider. */
const SILENT_W = 1e-4;
/** Noise of this much at a coil is heard at a standstill. */
const AUDIBLE_NOISE_V = 0.02;
/** What an amplifier's own input stage hisses, before its gain. From memory. */
const INPUT_NOISE_V = 1e-3;
/** How much of the ripple on its supply an amplifier lets through to its input. From memory. */
const RIPPLE_SHARE_RATIO = 0.01;
/** Ripple of the current that an amplifier draws with the engine running: it lifts a ground that has ohms. An estimate. */
const RIPPLE_A = 0.2;
/** The most ohms of a ground that count: past them the shield of a signal lead carries it, or nothing does. */
const GROUND_MOST_OHM = 0.6;
/** Ripple of the ground that gets into a pair which is joined to it. An estimate. */
const GROUNDED_PAIR_V = 0.05;
/** A coil that gets a tenth of the volts is 20 dB down: the faint hiss of an output is lost there, as its music is. */
const HISS_LEAST_RATIO = 0.1;

export interface Heard {
  /** Average power in the coils of this corner. */
  readonly powerW: number;
  readonly plays: boolean;
  /** How far the wave was cut off on the way, wherever that was. */
  readonly overdriveDb: number;
  /** 1 when positive volts push the cone outward as on a healthy bike, −1 when they pull it in. */
  readonly polarity: 1 | -1;
  /** With the music paused: an awake output and a whole run hiss, faintly. */
  readonly hisses: boolean;
  readonly noiseV: number;
  readonly noisy: boolean;
  readonly scrapes: Speaker['scrapes'];
  /** Bass that the speaker loses by itself, through a gap around it. */
  readonly leakDb: number;
}

const SILENT_WAVE: Wave = { cleanV: 0, overdriveDb: 0 };

/** Noise that wiring by itself lets in with the engine running, before any gain. */
function wiringNoiseV({ unit, supply }: World, amp: Amp | undefined, moment: Moment): number {
  if (moment.engine === 'off') return 0;
  const groundedV = CORNERS.some((corner) => isJoined(unit.toGround[corner])) ? GROUNDED_PAIR_V : 0;
  if (!amp) return groundedV;
  const groundOhm = Math.min(ohmNow(amp.groundRing, 'amp-supply', moment), GROUND_MOST_OHM);
  return groundedV + RIPPLE_SHARE_RATIO * supply.rippleV + RIPPLE_A * groundOhm;
}

/** Noise that gets in before or at an amplifier, as volts at its output; what comes with the source needs none. */
function noiseAtV(world: World, corner: Corner, moment: Moment): number {
  const driver = driverOf(world.rig, corner);
  const amp = driver === 'unit' ? undefined : world.amps[driver];
  const comes = world.noises.filter(
    ({ kind, enters }) => (kind === 'steady' || moment.engine !== 'off') && (amp || enters === 'source-lead'),
  );
  const inV = comes.reduce((sum, { levelV }) => sum + levelV, wiringNoiseV(world, amp, moment));
  return driver === 'unit' ? inV : (INPUT_NOISE_V + inV) * (amp?.gainRatio[axleOf(corner)] ?? 0);
}

/** What comes out of each corner. */
export function hear(world: World, moment: Moment, now: Operating): PerCorner<Heard> {
  return perCorner((corner) => {
    const driver = driverOf(world.rig, corner);
    const fitted = isFitted(world.rig, corner);
    const side = driver === 'unit' ? now.unit : now.amps[driver]?.side;
    const wave = side?.waves[corner] ?? SILENT_WAVE;
    const speaker = world.speakers[corner];
    const state = side?.stages[corner];
    const awake = fitted && state !== undefined && state !== 'off';
    const tone = side?.tone;
    const coilV =
      awake && tone ? magnitude(subtract(tone.voltageV(coilTop(corner)), tone.voltageV(tab(corner, '−')))) : 0;
    const loadOhm = coilsOhm(world, corner);
    const powerW = (moment.averageRatio * coilV ** 2) / loadOhm;
    const noiseV = awake ? noiseAtV(world, corner, moment) : 0;
    const whole = awake && loadOhm > HISS_LEAST_RATIO * now.loadsOhm[corner];
    return {
      powerW,
      plays: powerW > SILENT_W && (speaker.gives === 'sound' || speaker.gives === 'rough sound'),
      overdriveDb: powerW > SILENT_W ? wave.overdriveDb : 0,
      polarity: world.runs[corner].reversed ? -1 : 1,
      hisses: whole && speaker.gives !== 'nothing',
      noiseV,
      noisy: whole && noiseV > AUDIBLE_NOISE_V,
      scrapes: powerW > SILENT_W ? speaker.scrapes : 'never',
      leakDb: speaker.leakDb,
    };
  });
}

/** The coils that hang on one channel as one resistance. */
export const togetherOhm = ({ coilOhm, count, wiring }: Pick<Speaker, 'coilOhm' | 'count' | 'wiring'>): number =>
  wiring === 'parallel' ? coilOhm / count : coilOhm * count;
export const coilsOhm = ({ speakers }: World, corner: Corner): number => togetherOhm(speakers[corner]);

export const playing = (heard: PerCorner<Heard>): readonly Corner[] => CORNERS.filter((c) => heard[c].plays);
