import { voltageRatio } from '../compute/decibel.ts';
import { boostClipsAtV, boostPowerRatio, headroomLostDb } from '../compute/headroom.ts';
import { BRIDGE_LOSS_LOADED_V, cleanOutputV, powerW } from '../compute/level.ts';
import { AMPLIFIED_SAME_SHAPE, profileGainDb, UNALTERED_SHAPE } from '../compute/profile-response.ts';
import { BIKE_FIELDS } from '../rig/fields.ts';
import { calculator, known } from './calculator.ts';
import { changeInWords, written } from './in-words.ts';
import { type Axis, traced } from './picture.ts';

const HZ: Axis = { label: 'Hz', low: 30, high: 8000, log: true };
const REFERENCE_HZ = 400;

/** What a stored output profile does to level, bass and watts. */
export const profile = calculator({
  id: 'what-a-profile-does',
  title: 'What an output profile does',
  asks: 'How loud, how much bass, and what does the boost cost?',
  inputs: {
    supplyV: BIKE_FIELDS.supplyRunningV,
    loadOhm: BIKE_FIELDS.frontRatedOhm,
    boostDb: BIKE_FIELDS.boostDb,
    loweredByDb: BIKE_FIELDS.loweredByDb,
  },
  fromBike: (rig) =>
    known({
      supplyV: rig.supplyRunningV,
      loadOhm: rig.frontRatedOhm,
      boostDb: rig.boostDb,
      loweredByDb: rig.loweredByDb,
    }),
  result: ({ supplyV, loadOhm, boostDb, loweredByDb }) => {
    const cleanV = cleanOutputV({ supplyV, lossV: BRIDGE_LOSS_LOADED_V });
    const loweredV = cleanV * voltageRatio({ gainDb: -loweredByDb });
    const unaltered = { ...UNALTERED_SHAPE, boostDb };
    const amplified = { ...AMPLIFIED_SAME_SHAPE, levelDb: -loweredByDb };
    const response = (shape: typeof unaltered, engineRunning: boolean) => (frequencyHz: number) =>
      profileGainDb({ profile: shape, frequencyHz, engineRunning });
    const bassV = boostClipsAtV({ cleanV, boostDb });
    return {
      lines: [
        {
          label: `Unaltered: the bass clips once ${written(REFERENCE_HZ, 'Hz', 3)} reads`,
          text: written(bassV, 'V'),
          note: `Without the boost it would play clean to ${written(cleanV, 'V')}: ${changeInWords(-headroomLostDb({ boostDb }))} of headroom.`,
        },
        {
          label: 'The boost takes in the bass',
          text: `${Number(boostPowerRatio({ boostDb }).toPrecision(2))} times the watts`,
          note: 'Small speakers turn most of it into heat and travel.',
        },
        {
          label: 'For an amplifier: loudest clean step',
          text: written(loweredV, 'V'),
          note: `Into ${written(loadOhm, 'Ω')} that is ${written(powerW({ levelV: loweredV, loadOhm }), 'W')} in place of ${written(powerW({ levelV: cleanV, loadOhm }), 'W')}: on bare speakers it sounds weak.`,
        },
        {
          label: 'Between the two at 80 Hz',
          text: changeInWords(response(unaltered, false)(80) - response(amplified, false)(80)),
          note: 'So much louder the bass comes back when the profile does. Gain down first.',
        },
      ],
      picture: {
        kind: 'plot',
        x: HZ,
        y: { label: 'dB', low: -18, high: 21 },
        curves: [
          { name: 'unaltered', points: traced(HZ, response(unaltered, false)) },
          { name: 'unaltered, engine on', dashed: true, points: traced(HZ, response(unaltered, true)) },
          { name: 'for an amplifier', points: traced(HZ, response(amplified, false)) },
        ],
      },
      says: `Unaltered, the output rises by ${changeInWords(boostDb)} around 80 Hz and changes again with the engine on. A profile for an amplifier is flat and ${changeInWords(-loweredByDb)} everywhere.`,
    };
  },
  sources: [
    'Boost of 12 to 14 dB near 80 Hz, level about 7 dB lower, another tone with the engine on: common practice, no published source. How wide the boost is, and which way the engine moves the tone, is assumed.',
    'Curves: the peaking filter of the W3C Web Audio API.',
    'Decibels: Lessons In Electric Circuits, Semiconductors vol., “Decibels”.',
  ],
  article: 'what-a-reflash-is',
});
