/**
 * What each test shows for each fault behind a silent rear, written by hand before there was a model of the bike.
 * A cell is the outcome that a fault gives. `a/b`: either can happen. `any`: it says nothing of this fault. `n/a`: it
 * cannot be done on such a bike. `@…` names a case of a fault. Common practice of the trade, no published source.
 */
export const MATRIX_NO_REAR_SOUND = `
| fault | w | \`fader-balance-centre\` | \`four-corners\` | \`lid-check\` | \`wiggle\` | \`amp-light\` | \`amp-switches-look\` | \`half-supply\` | \`ac-unit-rear\` | \`ac-amp-in\` | \`ac-amp-out\` | \`run-ohms\` | \`coil-ohms\` | \`swap-inputs\` |
|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|
| \`rear-channels-disabled\` | 9 | no-change | no-rear | no-effect | no-effect | normal/off | right | any | none | none | none | ok | ok | moves |
| \`rear-channels-disabled\` @no-amp | 9 | no-change | no-rear | no-effect | no-effect | n/a | n/a | any | none | n/a | n/a | ok | ok | n/a |
| \`fader-or-balance-off\` | 8 | cured | all | no-effect | no-effect | normal | right | half | ok | ok | ok | ok | ok | any |
| \`rear-plug-off\` | 8 | no-change | no-rear | cured | any | normal | right | half | ok | ok | ok | open | ok | stays |
| \`amp-input-plug-off\` | 5 | no-change | no-rear/none | no-effect | reacts | normal/off | right | half | ok | none | none | ok | ok | any |
| \`channel-mode-wrong\` | 5 | no-change | no-rear | no-effect | no-effect | normal | mode | half/zero | ok/none | none | none | ok | ok | any |
| \`remote-wire-open\` @amp-on-rear-only | 5 | no-change | no-rear | no-effect | reacts/no-effect | off | right | half | ok | ok | none | ok | ok | stays |
| \`main-fuse-open\` @amp-on-rear-only | 4 | no-change | no-rear | no-effect | no-effect | off | right | half | ok | ok | none | ok | ok | stays |
| \`remote-source-dead\` @amp-on-rear-only | 3 | no-change | no-rear | no-effect | no-effect | off | right | half | ok | ok | none | ok | ok | stays |
| \`amp-ground-open\` @amp-on-rear-only | 3 | no-change | no-rear | no-effect | reacts/no-effect | off | right | half | ok | ok | none | ok | ok | stays |
| \`amp-dead\` @amp-on-rear-only | 2 | no-change | no-rear | no-effect | no-effect | off | right | half | ok | ok | none | ok | ok | stays |
| \`sense-starved-by-profile\` @amp-on-rear-only | 4 | no-change | no-rear | no-effect | no-effect | off | right | half/zero | ok | low | none | ok | ok | stays |
| \`turn-on-mode-wrong\` @amp-on-rear-only | 3 | no-change | no-rear | no-effect | no-effect | off | turn-on | half | ok | ok | none | ok | ok | stays |
| \`speaker-wire-to-frame\` | 4 | no-change | no-rear/none | reacts/no-effect | reacts/no-effect | fault | right | half | ok | ok | none | ok | ok | stays |
| \`replaced-unit-setting\` | 4 | no-change | no-rear | no-effect | no-effect | normal | right | any | none | none | none | ok | ok | moves |
| \`replaced-unit-adapter-gap\` | 4 | no-change | no-rear | no-effect | no-effect | normal/off | right | zero | ok | none | none | ok | ok | moves |
| \`profile-reverted\` | 3 | no-change | no-rear | no-effect | no-effect | normal/off | right | any | none | none | none | ok | ok | moves |
| \`amp-input-too-low\` | 3 | no-change | no-rear | no-effect | no-effect | normal | right/range | half/zero | ok | ok | low | ok | ok | stays |
| \`lid-contacts-dirty\` | 4 | no-change | no-rear/one-corner | cured/reacts | reacts | normal | right | half | ok | ok | ok | open/high | ok | stays |
| \`lid-lead-broken\` | 3 | no-change | no-rear/one-corner | reacts | reacts | normal | right | half | ok | ok | ok | open | ok | stays |
| \`speaker-wire-open\` | 3 | no-change | no-rear/one-corner | no-effect | reacts/no-effect | normal | right | half | ok | ok | ok | open | ok | stays |
| \`coil-open\` @both-rear | 3 | no-change | no-rear | no-effect | no-effect | normal | right | half | ok | ok | ok | open | open | stays |
| \`amp-channel-dead\` @rear-pair | 2 | no-change | no-rear | no-effect | no-effect | normal | right | half | ok | ok | none | ok | ok | stays |
`;
