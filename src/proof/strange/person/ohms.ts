import { stepName } from '../../../steps/subject.ts';
import { between, type Draw, type Observe, type Oddity } from '../oddity.ts';
import { type Given, instead, isLeads, retyped, saying, typed, unitOf } from './saying.ts';

/* Ohms of something else than what is between the probes. */

const ofOhms = (reads: (ohm: number, name: string) => number) => (given: Given) =>
  retyped(given, (name, value, { step }) => (unitOf(step, name) === 'Ω' ? typed(reads(value, name), 'Ω') : undefined));

/** Below this the range of megohms shows nothing but zeros. */
const ZERO_BELOW_OHM = 5_000;
/** A choice that somebody makes by looking for ohms. */
const LOOKS_FOR_OHMS = 'run-split';

export const OHMS: readonly Oddity[] = [
  {
    id: 'ohms-on-a-high-range',
    says: 'the meter left on a range of megohms: zeros for whatever conducts',
    class: 'ohms',
    fits: () => true,
    person: saying(ofOhms((ohm) => (ohm < ZERO_BELOW_OHM ? 0 : ohm))),
  },
  {
    id: 'ohms-lead-broken',
    says: 'a broken lead of the meter, or its plug in the jack for amperes: OL at every reading in ohms',
    class: 'ohms',
    fits: () => true,
    person: saying((given) =>
      stepName(given.step) === LOOKS_FOR_OHMS ? instead(given, 'lid-side') : ofOhms(() => Infinity)(given),
    ),
  },
  {
    id: 'damp-fingers',
    says: 'damp fingers on both probes, 10 to 500 kΩ beside what is read',
    class: 'ohms',
    fits: () => true,
    person: (observe: Observe, draw: Draw) => {
      const fingersOhm = 10 ** between(draw, 4, 5.7);
      return saying(ofOhms((ohm) => (ohm === Infinity ? fingersOhm : (ohm * fingersOhm) / (ohm + fingersOhm))))(
        observe,
      );
    },
  },
  {
    id: 'tips-scratch-no-bare-metal',
    says: 'tips on lacquer and grime: another ohm or three at every touch',
    class: 'ohms',
    fits: () => true,
    person: (observe: Observe, draw: Draw) =>
      saying(ofOhms((ohm, name) => (isLeads(name) ? ohm : ohm + between(draw, 0.4, 3))))(observe),
  },
];
