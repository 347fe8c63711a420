/**
 * What each fault shows at each test, written by hand by people of the trade: common practice, no published source. `a/b`
 * means that either can happen, `any` that the test says nothing about the fault. The build is a factory unit with speaker
 * wires into an amplifier, but where a case says so.
 */
export const MATRIX_DISTORTION_AT_VOLUME = `
| fault | w | \`other-source\` | \`settings-flat\` | \`where-harsh\` | \`volume-onset\` | \`bass-or-all\` | \`gain-down\` | \`highpass-on\` | \`amp-switches-look\` | \`cone-look-feel\` | \`engine-compare\` | \`amp-supply-split\` | \`fuse-check\` | \`half-supply\` | \`ac-amp-in\` | \`bass-ratio\` | \`paper-check\` |
|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|
| \`unaltered-profile-with-amp\` | 9 | same | no-change | everywhere | middle | bass-only | still-harsh/clean | still-harsh/clean | right | smooth | tone-changes | ok | ok | half | ok/too-high | boosted | within |
| \`profile-reverted\` | 3 | same | no-change | everywhere | middle | bass-only | still-harsh/clean | still-harsh/clean | right | smooth | tone-changes | ok | ok | half | ok/too-high | boosted | within |
| \`unit-output-driven-too-far\` @replaced-or-tone-raised | 5 | same | no-change/cured | everywhere | near-top | all | still-harsh | still-harsh | right | smooth | same/better-running | ok | ok | half/zero | ok | flat | within |
| \`unit-output-driven-too-far\` @no-amp | 8 | same | no-change | everywhere | middle/near-top | bass-only/all | n/a | n/a | n/a | smooth | tone-changes | n/a | n/a | half | n/a | boosted | within |
| \`amp-input-too-low\` @unit-at-its-limit | 4 | same | no-change | everywhere | near-top | bass-only/all | still-harsh | still-harsh | range/right | smooth | any | ok | ok | half/zero | ok | flat/boosted | within |
| \`range-too-sensitive\` | 6 | same | no-change | everywhere | low/middle | all | still-harsh | still-harsh | range | smooth | same | ok | ok | half | too-high | flat/boosted | within |
| \`gain-too-high\` | 8 | same | no-change | everywhere | low/middle | bass-only/all | clean | still-harsh/clean | right | smooth | same | ok | ok | half | ok | flat | within |
| \`highpass-off-with-boost\` | 8 | same | no-change | everywhere/one-pair | middle | bass-only | clean | clean | filter/boost | smooth | same | ok | ok | half | ok | flat | within |
| \`phone-tone-changed\` | 5 | good | cured | everywhere | middle | bass-only/all | still-harsh/clean | still-harsh/clean | right | smooth | same | ok | ok | half | ok | flat | within |
| \`loudness-or-speed-volume\` | 4 | same | cured | everywhere | middle | bass-only | still-harsh/clean | still-harsh/clean | right | smooth | same | ok | ok | half | ok | flat | within |
| \`coil-rubbing-or-cone-torn\` | 6 | same | no-change | one-speaker | low/middle | bass-only/all | any | any | right | scrapes/torn | same | ok | ok | half | ok | flat | within |
| \`speaker-underrated\` | 5 | same | no-change | one-pair/everywhere | middle/near-top | bass-only | clean | clean | right | smooth | same | ok | ok | half | ok | flat | over-power |
| \`speaker-mount-loose\` | 4 | same | no-change | one-speaker | middle | bass-only | any | clean | right | loose-mount | same | ok | ok | half | ok | flat | within |
| \`amp-ground-resistive\` | 6 | same | no-change | everywhere | middle | bass-only/all | clean | clean/still-harsh | right | smooth | same/better-running | ground-drop | ok | half | ok | flat | within |
| \`plus-lead-too-thin\` | 4 | same | no-change | everywhere | middle/near-top | bass-only/all | clean | clean/still-harsh | right | smooth | same/better-running | plus-drop | ok | half | ok | flat | within |
| \`fuse-holder-resistive\` | 4 | same | no-change | everywhere | middle/near-top | bass-only/all | clean | clean/still-harsh | right | smooth | same/better-running | plus-drop | drop | half | ok | flat | within |
| \`battery-worn\` | 4 | same | no-change | everywhere | middle/near-top | bass-only/all | clean | clean/still-harsh | right | smooth | better-running | battery-sags | ok | half | ok | flat | within |
| \`load-above-idle-output\` | 4 | same | no-change | everywhere | near-top | all | clean | clean/still-harsh | right | smooth | better-running | battery-sags | ok | half | ok | flat | over-budget |
| \`amp-load-too-low\` | 4 | same | no-change | one-pair | near-top | all | clean | still-harsh/clean | right | smooth | same | ok | ok | half | ok | flat | load-too-low |
| \`bridge-output-grounded\` | 3 | same | no-change | one-pair/everywhere | low | all | still-harsh | still-harsh | right | smooth | same | ok | ok | one-odd | ok/low | flat/boosted | within |
`;
