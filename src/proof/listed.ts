/**
 * The faults behind what a verdict lists besides its own, by the words it uses. A wording that is missing here is a
 * failure of the proof, so that a list cannot be reworded past it.
 */
export const LISTED: Readonly<Record<string, readonly string[]>> = {
  'The adapter of the replaced head unit has no rear pairs': ['replaced-unit-adapter-gap'],
  'The adapter has no rear pairs': ['replaced-unit-adapter-gap'],
  'A weak contact in its power or ground': ['fuse-holder-resistive', 'amp-ground-resistive', 'battery-lug-loose'],
  // An open fuse has a cause, and its check asks for it: a lead that is chafed through, or an amplifier shorted inside.
  'Main fuse open': ['main-fuse-open', 'wire-chafed', 'amp-dead'],
  'Remote wire open, or its source dead': ['remote-wire-open', 'remote-source-dead', 'replaced-unit-adapter-gap'],
  'Ground open': ['amp-ground-open'],
  'Amplifier dead': ['amp-dead'],
  'A rear speaker wire on the frame': ['speaker-wire-to-frame'],
  'A shorted run or coil': ['speaker-pair-shorted'],
  Heat: ['amp-heat-protect'],
  'DC at its output': ['amp-output-dc'],
  'Both rear outputs of the head unit are dead': ['unit-channel-dead'],
  'One channel of the head unit is weak': ['unit-channel-dead'],
  'A dead channel of the head unit': ['unit-channel-dead'],
  'Dirty contacts in that plug': ['lid-contacts-dirty'],
  'Dirty contacts in the plug': ['lid-contacts-dirty'],
  'A lead breaking inside its insulation': ['lid-lead-broken'],
  'Balance at its end': ['fader-or-balance-off'],
  'Paused, muted, or phone volume at zero': ['paused-or-muted'],
  'Sound sent to a headset': ['routed-to-headset'],
  'Head unit hung': ['unit-hung'],
  'An amplifier that drives everything is off': [
    'main-fuse-open',
    'remote-wire-open',
    'remote-source-dead',
    'amp-ground-open',
    'amp-dead',
  ],
  // Advice that is no fault of its own.
  'A contact that opens with movement or heat': [],
  'A reading taken on the wrong pair': [],
  'A plug that both share': [],
};
