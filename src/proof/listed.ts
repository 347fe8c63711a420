/**
 * The faults behind what a verdict lists besides its own, by the words it uses. A wording that is missing here is a
 * failure of the proof, so that a list cannot be reworded past it.
 */
const WEAK_SUPPLY = ['fuse-holder-resistive', 'amp-ground-resistive', 'battery-lug-loose', 'plus-lead-too-thin'];
const AMP_STAYS_OFF = ['main-fuse-open', 'remote-wire-open', 'remote-source-dead', 'amp-ground-open', 'amp-dead'];

export const LISTED: Readonly<Record<string, readonly string[]>> = {
  // Settings and the head unit.
  'The fader': ['fader-or-balance-off'],
  'Balance at its end': ['fader-or-balance-off'],
  'The fader or a rear control turned down': ['fader-or-balance-off', 'rear-control-off'],
  'Paused, muted, or phone volume at zero': ['paused-or-muted'],
  'Sound sent to a headset': ['routed-to-headset'],
  'Head unit hung': ['unit-hung'],
  'A feed of the head unit missing': ['unit-feed-missing'],
  'One channel of the head unit is weak': ['unit-channel-dead'],
  'A dead channel of the head unit': ['unit-channel-dead'],
  'One half of that output of the head unit is dead': ['unit-channel-dead'],
  // An output on the frame or on itself protects itself, and its check has the wires taken off.
  'Both rear outputs of the head unit are dead, or protect themselves': [
    'speaker-wire-to-frame',
    'speaker-pair-shorted',
  ],
  'The rear outputs of the head unit are off, dead or protect themselves': [
    'rear-channels-disabled',
    'profile-reverted',
    'replaced-unit-setting',
    'speaker-wire-to-frame',
    'speaker-pair-shorted',
  ],
  'The reflash did not enable the rear': ['rear-channels-disabled', 'profile-reverted'],
  'Rear channels switched off as delivered': ['rear-channels-disabled'],
  'Back on a profile without rear channels': ['profile-reverted'],
  'Rear outputs off in the replaced head unit': ['replaced-unit-setting'],
  'The head unit is a replaced one, with the rear off in its own menu': ['replaced-unit-setting'],
  'The head unit’s rear outputs are switched off, and rest at zero': [
    'rear-channels-disabled',
    'profile-reverted',
    'replaced-unit-setting',
  ],
  'Nothing comes from the head unit': [
    'rear-channels-disabled',
    'profile-reverted',
    'replaced-unit-setting',
    'replaced-unit-adapter-gap',
  ],
  'The head unit sends nothing': [
    'rear-channels-disabled',
    'profile-reverted',
    'replaced-unit-setting',
    'bridge-output-grounded',
  ],
  'The head unit sends nothing, or carries no DC by design': [
    'rear-channels-disabled',
    'profile-reverted',
    'replaced-unit-setting',
    'sense-no-half-supply',
    'bridge-output-grounded',
  ],
  // Between head unit and amplifier.
  'The adapter of the replaced head unit has no rear pairs': ['replaced-unit-adapter-gap'],
  'The adapter has no rear pairs': ['replaced-unit-adapter-gap'],
  'The adapter of the replaced head unit leaves the pair out': ['replaced-unit-adapter-gap'],
  'A plug or joint before the place where you measured': ['replaced-unit-adapter-gap', 'amp-input-plug-off'],
  'The signal plug at the amplifier is not home': ['amp-input-plug-off'],
  'Nothing reaches its inputs': ['amp-input-plug-off'],
  'A wire of its signal plug open': ['amp-input-plug-off'],
  'Nothing reaches its inputs: the head unit sends nothing to the rear': [
    'rear-channels-disabled',
    'profile-reverted',
    'replaced-unit-setting',
  ],
  'No DC on its inputs': ['sense-no-half-supply'],
  'Outputs that carry no DC by design': ['sense-no-half-supply'],
  // The amplifier and its supply.
  'A weak contact in its power or ground': WEAK_SUPPLY,
  'An amplifier that drives everything is off': AMP_STAYS_OFF,
  'An amplifier that nobody saw': AMP_STAYS_OFF,
  // An open fuse has a cause, and its check asks for it: a lead that is chafed through, or an amplifier shorted inside.
  'Main fuse open': ['main-fuse-open', 'wire-chafed', 'amp-dead'],
  'A lead that touches the frame only when moved': ['wire-chafed'],
  'The plus lead touches the frame': ['wire-chafed'],
  'The amplifier is shorted inside': ['amp-dead'],
  'A fuse holder that passes volts but no current': ['fuse-holder-resistive'],
  'Remote wire open, or its source dead': ['remote-wire-open', 'remote-source-dead', 'replaced-unit-adapter-gap'],
  'The feed it was tapped from is dead': ['remote-source-dead'],
  'Too few volts on its remote wire': ['remote-volts-low'],
  'Ground open': ['amp-ground-open'],
  'The plus lead too thin or half broken': ['plus-lead-too-thin'],
  'A loose ring at the battery': ['battery-lug-loose'],
  'A crimp that pulled out behind the ring': ['battery-lug-loose'],
  'Its ground ring loose at the battery minus post': ['battery-lug-loose', 'amp-ground-open'],
  'Its ring loose at the battery minus post': ['battery-lug-loose', 'amp-ground-resistive'],
  'A loose battery post': ['battery-lug-loose'],
  // Its check is a lamp across the terminals, which stays dark on an open ground.
  'A supply that gives way under load': [...WEAK_SUPPLY, 'amp-ground-open'],
  'Its turn-on selector': ['turn-on-mode-wrong'],
  'Its settings': ['channel-mode-wrong', 'amp-input-too-low'],
  'Amplifier dead': ['amp-dead'],
  'The part of it that listens is dead': ['amp-dead'],
  Heat: ['amp-heat-protect'],
  'It protects itself, and nobody sees its fault lamp': [
    'speaker-wire-to-frame',
    'speaker-pair-shorted',
    'amp-load-too-low',
    'amp-output-dc',
    'amp-heat-protect',
  ],
  'It protects itself from heat or from its own output, and nobody sees its fault lamp': [
    'amp-heat-protect',
    'amp-output-dc',
  ],
  'DC at its output': ['amp-output-dc'],
  'A speaker run that is shorted, or too few ohms': [
    'speaker-wire-to-frame',
    'speaker-pair-shorted',
    'amp-load-too-low',
  ],
  'A load that is too heavy': ['amp-load-too-low'],
  // The battery.
  'Supply that is too low or too high while it starts': [
    'battery-undercharged',
    'battery-worn',
    'regulator-out-of-range',
  ],
  'A battery below 12.2 V or above 15 V': ['battery-undercharged', 'battery-worn', 'regulator-out-of-range'],
  'The amplifier never goes off and empties it': ['remote-on-permanent'],
  'The battery is only empty': ['battery-undercharged'],
  'The battery is worn': ['battery-worn'],
  'The charging system does not keep up': ['regulator-out-of-range', 'stator-phase-lost', 'load-above-idle-output'],
  // Runs and coils.
  'A rear speaker wire on the frame': ['speaker-wire-to-frame'],
  'A short on the rear run: to the frame, or its two wires': ['speaker-wire-to-frame', 'speaker-pair-shorted'],
  'A wire on the frame': ['speaker-wire-to-frame'],
  'A shorted run or coil': ['speaker-pair-shorted'],
  'Its two wires on each other, or a burnt coil': ['speaker-pair-shorted'],
  'A speaker run or a coil is open': ['speaker-wire-open', 'coil-open', 'rear-plug-off', 'lid-lead-broken'],
  'Dirty contacts in that plug': ['lid-contacts-dirty'],
  'Dirty contacts in the plug': ['lid-contacts-dirty'],
  'A lead breaking inside its insulation': ['lid-lead-broken'],
  'A plug or wire on the way to what is silent': ['rear-plug-off', 'lid-lead-broken', 'speaker-wire-open'],
  // Advice that names no fault of the model.
  'A contact that opens with movement or heat': [],
  'A contact that opens when it is hot': [],
  'A reading taken on the wrong pair': [],
  'A joint between two places that were measured': [],
  'The amplifier takes everything from the front pair': [],
};
