/** Where something is moved: by a bump, a finger on a plug, a lid on its hinge. */
export type Place =
  | 'battery'
  | 'amp-supply'
  | 'amp-inputs'
  | 'rear-run'
  | 'lid'
  | 'fairing'
  | 'unit-plug'
  | 'usb'
  | 'steering';
/** What a step takes apart before it looks: every run from its driver, or only those that hang on an amplifier. */
export type Plug = 'runs' | 'amp-outputs' | 'amp-inputs' | 'dock' | 'tabs' | 'remote';

/** What is done to the bike while it is looked at. Nothing in here is a fault: it is the condition of a reading. */
export interface Moment {
  readonly key: 'off' | 'accessory' | 'on';
  readonly engine: 'off' | 'idle' | 'cruise';
  /** The tone that plays, in hertz; `null` while the music is paused. */
  readonly toneHz: number | null;
  /** 1 is the step at which a flat, full output is just clean at 14.2 V into 4 Ω. Steps above it exist. */
  readonly volumeRatio: number;
  /** Average power of what plays over that of a sine of the same peak: 1 for a tone, an eighth for music. */
  readonly averageRatio: number;
  readonly apart: readonly Plug[];
  readonly moves: readonly Place[];
  /** After half an hour of loud music in the sun. */
  readonly hot: boolean;
  /** Settings that a step changes for the time of its reading. */
  readonly fader?: number;
  readonly balance?: number;
  readonly rearControlRatio?: number;
  /** A fused jumper from the amplifier's positive to its remote terminal. */
  readonly jumper?: boolean;
  /** A bulb of a head lamp across the amplifier's positive and ground. */
  readonly lamp?: boolean;
}

/** A rider's ordinary level, 20 dB under the loudest clean step. An estimate: about a tenth of a watt in each speaker. */
export const ORDINARY_VOLUME = 0.1;
/** A fifth of an ordinary level: navigation, a quiet song. */
export const QUIET_VOLUME = 0.02;
/** What riders call loud: the loudest step that is clean on paper. */
export const LOUD_VOLUME = 1;

/** Key on, engine off, a tone of 400 Hz at an ordinary level, nothing taken apart, nothing moved. */
export const ORDINARY: Moment = {
  key: 'on',
  engine: 'off',
  toneHz: 400,
  volumeRatio: ORDINARY_VOLUME,
  averageRatio: 1,
  apart: [],
  moves: [],
  hot: false,
};
