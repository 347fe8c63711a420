/**
 * What each fault shows at each test, written by hand by people of the trade: common practice, no published source. `a/b`
 * means that either can happen, `any` that the test says nothing about the fault. A factory unit unless a case says so.
 */
export const MATRIX_EQ_CHANGES = `
| fault | w | \`engine-compare\` | \`settings-flat\` | \`other-source\` | \`ac-unit-rear\` | \`bass-ratio\` | \`bass-ratio-running\` | \`profile-readback\` | \`amp-light\` | \`amp-supply-split\` |
|---|---|---|---|---|---|---|---|---|---|---|
| \`eq-changes-by-design\` @no-amp | 8 | tone-changes | no-change | same | none/ok | boosted | changes | unaltered/rear-on | n/a | n/a |
| \`unaltered-profile-with-amp\` | 7 | tone-changes | no-change | same | none/ok | boosted | changes | unaltered/rear-on | normal | ok |
| \`profile-reverted\` | 3 | tone-changes | no-change | same | none/ok | boosted | changes | unaltered | normal | ok |
| \`amplified-profile-eq-changes\` | 5 | tone-changes | no-change | same | ok | flat | changes | amp-changes | normal | ok |
| \`loudness-or-speed-volume\` | 4 | same/tone-changes | cured | same | any | any | same | any | any | ok |
| \`bass-masked-by-noise\` | 6 | tone-changes | no-change | same | any | any | same | any | any | ok |
| \`replaced-unit-setting\` @replaced | 3 | tone-changes | cured | same | ok | any | changes | n/a | any | ok |
| \`battery-worn\` | 2 | better-running | no-change | same | any | any | same | any | normal | battery-sags |
`;
