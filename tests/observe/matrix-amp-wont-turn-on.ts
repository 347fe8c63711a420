/**
 * What each test shows for each fault behind an amplifier that stays off, written by hand before there was a model.
 * A cell is the outcome that a fault gives. `a/b`: either can happen. `any`: it says nothing of this fault. `n/a`: it
 * cannot be done on such a bike. `@…` names a case of a fault. Common practice of the trade, no published source.
 */
export const MATRIX_AMP_WONT_TURN_ON = `
| fault | w | \`amp-light\` | \`wiggle\` | \`amp-switches-look\` | \`fuse-check\` | \`amp-supply-split\` | \`remote-volts\` | \`remote-jumper\` | \`speakers-unplugged\` | \`recover\` | \`half-supply\` | \`ac-amp-in\` | \`wire-to-frame\` | \`run-ohms\` |
|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|
| \`main-fuse-open\` | 7 | off | no-effect | right | open | plus-open | ok | dead | stays | any | any | ok | clear | ok |
| \`remote-wire-open\` @wire | 7 | off | reacts/no-effect | right | ok | ok | lost-on-way | wakes | stays | any | any | ok | clear | ok |
| \`remote-source-dead\` @wire | 5 | off | no-effect | right | ok | ok | none-at-source | wakes | stays | any | any | ok | clear | ok |
| \`remote-volts-low\` @wire | 3 | off | no-effect | right | ok | ok | low | wakes | stays | any | any | ok | clear | ok |
| \`amp-ground-open\` | 5 | off | reacts/no-effect | right | ok | ground-open | ok | dead | stays | any | any | ok | clear | ok |
| \`amp-ground-resistive\` @over-1-ohm | 4 | off/fault | no-effect | right | ok | ground-drop | ok | wakes/dead | stays | at-once | any | ok | clear | ok |
| \`fuse-holder-resistive\` @over-1-ohm | 4 | off/fault | reacts/no-effect | right | drop | plus-drop | ok | wakes/dead | stays | at-once | any | ok | clear | ok |
| \`battery-lug-loose\` @amp-ring | 4 | off | reacts | right | ok | plus-open/plus-drop/ground-open/ground-drop | ok | dead/wakes | stays | at-once | any | ok | clear | ok |
| \`turn-on-mode-wrong\` @set-to-sense-but-wire-used | 2 | off | no-effect | turn-on | ok | ok | ok | dead | stays | any | any | ok | clear | ok |
| \`turn-on-mode-wrong\` @set-to-wire-but-none-fitted | 3 | off | no-effect | turn-on | ok | ok | n/a | wakes | stays | any | half | ok | clear | ok |
| \`sense-starved-by-profile\` @sense | 5 | off | no-effect | right | ok | ok | n/a | wakes | stays | any | half/zero | low | clear | ok |
| \`sense-no-half-supply\` @sense | 4 | off | no-effect | right | ok | ok | n/a | wakes | stays | any | zero | ok | clear | ok |
| \`rear-channels-disabled\` @sense-on-rear-wires | 4 | off | no-effect | right | ok | ok | n/a | wakes | stays | any | half/zero | none | clear | ok |
| \`amp-input-plug-off\` @sense | 4 | off | reacts | right | ok | ok | n/a | wakes | stays | any | half | none | clear | ok |
| \`replaced-unit-adapter-gap\` @wire | 3 | off | no-effect | right | ok | ok | lost-on-way | wakes | stays | any | any | ok/one-only/none | clear | ok |
| \`amp-dead\` | 4 | off | no-effect | right | ok | ok | ok/n/a | dead | stays | any | any | ok | clear | ok |
| \`amp-dead\` @internal-short | 2 | off | no-effect | right | open | plus-open | ok/n/a | dead | stays | any | any | ok | clear | ok |
| \`wire-chafed\` @plus-lead | 3 | off | reacts/no-effect | right | open | plus-open | ok | dead | stays | any | any | ok | clear | ok |
| \`speaker-wire-to-frame\` | 5 | fault | reacts/no-effect | right | ok | ok | ok/n/a | any | clears | key-cycle | any | ok | shorted | ok |
| \`speaker-pair-shorted\` | 3 | fault | no-effect | right | ok | ok | ok/n/a | any | clears | key-cycle | any | ok | clear | low |
| \`amp-output-dc\` | 2 | fault | no-effect | right | ok | ok | ok/n/a | any | stays | key-cycle | any | ok | clear | ok |
| \`amp-heat-protect\` | 4 | fault | no-effect | right | ok | ok | ok/n/a | any | stays | after-minutes | any | ok | clear | ok |
`;
