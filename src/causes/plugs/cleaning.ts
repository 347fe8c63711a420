import { JOINTS_BAD_OHM } from '../../compute/signal-path.ts';
import type { Figure } from '../figure.ts';

/** Contacts that are cleaned, not exchanged. */
export const CLEANING_STEPS: readonly string[] = [
  'Contact cleaner and a lint-free cloth on both halves. No abrasive on plated contacts.',
  'Let it dry, close slack sockets a little, then contact grease.',
  'Push the plug home until it locks.',
];
export const CLEANING_TOOLS = 'Contact cleaner, lint-free cloth, contact grease';
export const CLEANING_PARTS: readonly string[] = ['Contact cleaner and contact grease, if you have none'];
export const BAD_CONTACT: Figure = {
  id: 'bad-contact',
  label: 'A bad contact adds to coil and wires',
  value: JOINTS_BAD_OHM,
  unit: 'Ω',
  limit: 'above',
};
