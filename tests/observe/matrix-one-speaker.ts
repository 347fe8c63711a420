/**
 * What each test shows for each fault behind one silent speaker, written by hand before there was a model of the bike.
 * A cell is the outcome that a fault gives. `a/b`: either can happen. `any`: it says nothing of this fault. Common practice
 * of the trade, no published source.
 */
export const MATRIX_ONE_SPEAKER = `
| fault | w | \`fader-balance-centre\` | \`four-corners\` | \`lid-check\` | \`wiggle\` | \`swap-outputs\` | \`swap-inputs\` | \`run-ohms\` | \`coil-ohms\` | \`wire-to-frame\` | \`pop-cell\` | \`ac-unit\` | \`ac-amp-in\` | \`ac-amp-out\` |
|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|
| \`fader-or-balance-off\` | 8 | cured | all | no-effect | no-effect | any | any | ok | ok | clear | ok | ok | ok | ok |
| \`coil-open\` | 7 | no-change | one-corner | no-effect | no-effect | stays | stays | open | open | clear | dead | ok | ok | ok |
| \`rear-plug-off\` | 7 | no-change | one-corner | cured | any | stays | stays | open | ok | clear | ok | ok | ok | ok |
| \`lid-lead-broken\` | 6 | no-change | one-corner | reacts | reacts | stays | stays | open | ok | clear | ok | ok | ok | ok |
| \`lid-contacts-dirty\` | 5 | no-change | one-corner | cured/reacts | reacts | stays | stays | high/open | ok | clear | ok | ok | ok | ok |
| \`speaker-wire-open\` | 6 | no-change | one-corner | no-effect | reacts/no-effect | stays | stays | open | ok | clear | ok | ok | ok | ok |
| \`one-input-lead-open\` | 4 | no-change | one-corner | no-effect | reacts/no-effect | moves | moves | ok | ok | clear | ok | ok | one-only | one-only |
| \`replaced-unit-adapter-gap\` | 3 | no-change | one-corner/one-side/no-rear | no-effect | no-effect | moves | moves | ok | ok | clear | ok | ok | one-only | one-only |
| \`amp-channel-dead\` | 3 | no-change | one-corner/one-side | no-effect | no-effect | moves | stays | ok | ok | clear | ok | ok | ok | one-only |
| \`unit-channel-dead\` | 2 | no-change | one-corner | no-effect | no-effect | moves | moves | ok | ok | clear | ok | one-only | one-only | one-only |
| \`speaker-wire-to-frame\` | 5 | no-change | one-corner/one-side/none | reacts/no-effect | reacts/no-effect | any | any | ok | ok | shorted | any | ok | ok | one-only/none |
| \`speaker-pair-shorted\` | 3 | no-change | one-corner/one-side/none | no-effect | no-effect | any | any | low | ok/low | clear | any | ok | ok | one-only/none |
`;
