import type { Corner } from '../rig/corner.ts';

/** Speakers and their wires: an axle, all of them, or one. */
export type Where = 'front' | 'rear' | 'all' | Corner;

/** Plugs of the sound system that a hand can seat, clean or renew. */
export type PlugName = 'unit' | 'amp-input' | 'amp-power' | 'rear-dock' | 'front-speaker' | 'second';

/** The rating that was there before, unless a number is given, and never more than the most. */
export interface MainFuse {
  readonly fuseA?: number;
  readonly atMostA?: number;
  /** First a lamp in its place: while that stays lit, no fuse goes in. */
  readonly onceLampIsDark?: true;
}

/**
 * What a fix does to the bike, as data: the model of the bike can do it, harm is judged on the result, and what has to be
 * asked again follows from it. Amperes, volts, ohms and square metres in their names.
 */
export type RepairAction =
  // Settings.
  | { readonly do: 'centre-fader' }
  | { readonly do: 'turn-up-rear-control' }
  /** What is not named stays as it is set. */
  | {
      readonly do: 'set-unit-menu';
      readonly rear?: 'on';
      readonly bass?: 'flat';
      readonly compensation?: 'off';
      readonly mirroring?: 'on';
    }
  /** Off until it sleeps, and started anew. */
  | { readonly do: 'restart-unit' }
  /** Play on, unmuted, out of the speakers. */
  | { readonly do: 'play-here' }
  | { readonly do: 'flatten-tone'; readonly of: 'unit' | 'phone' }
  /** Tone set by ear with the engine running, position and ears seen to: what covers the bass is reckoned with. */
  | { readonly do: 'tune-for-riding' }
  /** Down to the loudest step that is clean. */
  | { readonly do: 'turn-down' }
  | { readonly do: 'set-filter'; readonly highpassHz: number; readonly bassBoostDb: number }
  /** Properties that are not named stay as they are stored. */
  | {
      readonly do: 'select-profile';
      readonly rear?: 'on';
      readonly level?: 'full' | 'lowered';
      readonly boost?: 'none' | 'as-delivered';
      readonly eq?: 'same';
    }
  | { readonly do: 'set-selector'; readonly selector: 'turn-on'; readonly to: 'wire' | 'signal' | 'dc' }
  | { readonly do: 'set-selector'; readonly selector: 'input-mode'; readonly to: 'as-wired' }
  | { readonly do: 'set-selector'; readonly selector: 'range'; readonly to: 'as-fed' }
  /** The output at the loudest clean step, per channel of that axle. */
  | {
      readonly do: 'set-gain';
      readonly axle: 'front' | 'rear' | 'both';
      readonly outputV: number;
      /** And no more than the speakers there take, by the watts that are printed on them. */
      readonly noMoreThanSpeakers?: true;
    }
  // Plugs, contacts and wires.
  | { readonly do: 'seat-plug'; readonly plug: PlugName; readonly where?: Where }
  | { readonly do: 'clean-contacts'; readonly plug: PlugName; readonly where?: Where }
  | { readonly do: 'renew-pin'; readonly plug: PlugName; readonly where?: Where }
  | { readonly do: 'complete-adapter'; readonly carries: 'rear-pairs' | 'remote' }
  | { readonly do: 'complete-adapter'; readonly carries: 'pair'; readonly where: Where }
  | {
      readonly do: 'renew-wire';
      readonly wire: 'lid-lead' | 'speaker-run' | 'remote' | 'signal';
      readonly where?: Where;
    }
  | { readonly do: 'free-wire'; readonly wire: 'speaker-run' | 'plus-lead' | 'unit-output'; readonly where?: Where }
  | { readonly do: 'join-looms'; readonly where?: Where }
  | { readonly do: 'uncross-pairs' }
  | { readonly do: 'turn-polarity'; readonly where: Where }
  /** Away from what it picks up, or what puts it there quietened. */
  | {
      readonly do: 'part-from-noise';
      readonly of: 'signal-lead' | 'phone-lead' | 'converter' | 'sparks' | 'other-device';
    }
  // The phone and its link.
  | { readonly do: 'pair-anew' }
  | { readonly do: 'end-voice-mode' }
  | { readonly do: 'update-phone' }
  | { readonly do: 'renew-phone-link'; readonly part: 'cable' | 'port' }
  | { readonly do: 'allow-without-headset' }
  // Power.
  | {
      readonly do: 'renew-lead';
      readonly lead: 'plus';
      readonly sectionM2: number;
      readonly fuseA: number;
      readonly onceLampIsDark?: true;
    }
  /** Whoever is told so reads the jacket of the positive lead first. */
  | {
      readonly do: 'renew-lead';
      readonly lead: 'ground';
      readonly sectionM2: number;
      readonly noThinnerThan?: 'plus-lead';
    }
  | ({ readonly do: 'renew-holder' } & MainFuse)
  | ({ readonly do: 'renew-fuse'; readonly fuse: 'main' } & MainFuse)
  /** Of the number that is printed beside it. */
  | { readonly do: 'renew-fuse'; readonly fuse: 'amp-body' | 'unit' }
  | {
      readonly do: 'tighten-joint';
      readonly at: 'battery-plus' | 'battery-minus' | 'bike-ring' | 'amp-ground' | 'amp-terminal';
    }
  | { readonly do: 'own-ground' }
  | { readonly do: 'move-remote'; readonly to: 'switched-feed' }
  | { readonly do: 'fit-remote-relay' }
  | { readonly do: 'wake-by-wire' }
  | { readonly do: 'charge-battery' }
  | { readonly do: 'replace-battery' }
  | { readonly do: 'repair-charging' }
  | { readonly do: 'take-off-load' }
  // Parts.
  /** The ohms of the old one, unless a number is given. */
  | { readonly do: 'replace-speaker'; readonly where: Where; readonly ratedOhm?: number }
  | { readonly do: 'rewire-speakers'; readonly where: Where; readonly togetherOhm: number }
  | { readonly do: 'seal-mount'; readonly where: Where }
  | { readonly do: 'isolate-mute-line' }
  | { readonly do: 'fasten-trim' }
  | { readonly do: 'fit-tweeter-filter'; readonly where: Where }
  | { readonly do: 'replace-converter' }
  | { readonly do: 'cool-amp' }
  | { readonly do: 'dry-amp' }
  | { readonly do: 'repair-amp' }
  | { readonly do: 'repair-unit' };

/** What a fix costs besides its minutes, the dearest of its actions first. */
export type Effort = 'reflash' | 'part' | 'visit' | 'small part' | 'hands';

type Do = RepairAction['do'];

/** What each action takes. `hands` harms nothing and can be undone; a fuse or a crimp is a small part. */
export const EFFORT: Readonly<Record<Do, Effort>> = {
  'centre-fader': 'hands',
  'turn-up-rear-control': 'hands',
  'set-unit-menu': 'hands',
  'restart-unit': 'hands',
  'play-here': 'hands',
  'flatten-tone': 'hands',
  'tune-for-riding': 'hands',
  'turn-down': 'hands',
  'set-filter': 'hands',
  'select-profile': 'reflash',
  'set-selector': 'hands',
  'set-gain': 'hands',
  'seat-plug': 'hands',
  'clean-contacts': 'hands',
  'renew-pin': 'small part',
  'complete-adapter': 'small part',
  'renew-wire': 'small part',
  'free-wire': 'small part',
  'join-looms': 'hands',
  'uncross-pairs': 'hands',
  'turn-polarity': 'hands',
  'part-from-noise': 'small part',
  'pair-anew': 'hands',
  'end-voice-mode': 'hands',
  'update-phone': 'hands',
  'renew-phone-link': 'small part',
  'allow-without-headset': 'visit',
  'renew-lead': 'small part',
  'renew-holder': 'small part',
  'renew-fuse': 'small part',
  'tighten-joint': 'hands',
  'own-ground': 'small part',
  'move-remote': 'small part',
  'fit-remote-relay': 'small part',
  'wake-by-wire': 'small part',
  'charge-battery': 'hands',
  'replace-battery': 'part',
  'repair-charging': 'visit',
  'take-off-load': 'hands',
  'replace-speaker': 'part',
  'rewire-speakers': 'small part',
  'seal-mount': 'small part',
  'isolate-mute-line': 'hands',
  'fasten-trim': 'hands',
  'fit-tweeter-filter': 'small part',
  'replace-converter': 'part',
  'cool-amp': 'hands',
  'dry-amp': 'hands',
  'repair-amp': 'part',
  'repair-unit': 'part',
};

/**
 * How often a repair is done and does not hold: a part exchanged for a sound one, a joint that was made, contacts that were
 * wiped. Estimates of the trade, for ranking only.
 */
export const FAILS_RATIO: Readonly<Partial<Record<Do, number>>> = {
  'clean-contacts': 0.15,
  'renew-pin': 0.1,
  'renew-wire': 0.1,
  'free-wire': 0.1,
  'renew-lead': 0.1,
  'renew-holder': 0.1,
  'own-ground': 0.1,
  'tighten-joint': 0.1,
  'dry-amp': 0.3,
};
export const FAILS_AT_LEAST_RATIO = 0.02;

/** How likely it is that a repair made of these actions left its cause in place. */
export const failsRatio = (actions: readonly RepairAction[]): number =>
  Math.max(FAILS_AT_LEAST_RATIO, ...actions.map((action) => FAILS_RATIO[action.do] ?? FAILS_AT_LEAST_RATIO));

const DEAREST_FIRST: readonly Effort[] = ['reflash', 'part', 'visit', 'small part', 'hands'];
export const effortOf = (actions: readonly RepairAction[]): Effort =>
  DEAREST_FIRST.find((effort) => actions.some((action) => EFFORT[action.do] === effort)) ?? 'hands';
