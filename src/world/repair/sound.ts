import type { Where } from '../../causes/repair-action.ts';
import { axleOf, CORNERS, type Corner } from '../../rig/corner.ts';
import { healthyWorld, SOUND } from '../healthy.ts';
import { oncePer } from '../remembered.ts';
import type { Amp, Contact, PairOf, World } from '../state.ts';

/* What a repair makes of the parts that it touches. */

const soundOf = oncePer((rig: World['rig']) => healthyWorld(rig));
/** The same build without a fault: what a part that is renewed comes from. */
export const sound = ({ rig }: World): World => soundOf(rig);
/** The amplifier that is meant, on a sound bike of this build; nothing where there is none. */
export const soundAmp = (world: World): Amp | undefined => sound(world).amps[world.about ?? -1];

export const cornersAt = (where: Where = 'all'): readonly Corner[] =>
  CORNERS.filter((corner) => where === 'all' || where === corner || where === axleOf(corner));

export type Mend = (contact: Contact) => Contact;
/** Pushed home, joined or tightened. A film, a pin that has slipped back and a wire that is broken stay as they are. */
export const seated: Mend = (contact) => (contact.wants === undefined || contact.wants === 'joining' ? SOUND : contact);
/** Cleaned, and pushed home after that. */
export const cleaned: Mend = (contact) => (contact.wants === 'cleaning' ? SOUND : seated(contact));
/** With a pin that latches. */
export const pinned: Mend = (contact) => (contact.wants === 'pin' ? SOUND : seated(contact));
/** With a new wire up to it, or a new one where there was none. */
export const wired: Mend = (contact) => (contact.wants === 'wire' ? SOUND : contact);

export const bothOf = (mend: Mend, { plus, minus }: PairOf<Contact>): PairOf<Contact> => ({
  plus: mend(plus),
  minus: mend(minus),
});
