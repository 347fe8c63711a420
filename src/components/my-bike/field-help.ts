import { AMP_FIELDS, BIKE_FIELDS, type BikeFieldId, type Field } from '../../rig/fields.ts';

/* Where a number or a name stands on the bike, for whoever fills it in. No flow loads it. */

type AmpFieldId = keyof typeof AMP_FIELDS;

const BIKE_HELP: Readonly<Record<BikeFieldId, string>> = {
  unitKind: 'Only a factory head unit has stored output profiles.',
  deliveredWith: 'A bike built with front speakers only has its rear channels switched off as delivered.',
  deliveredAmp: 'A bike built with an amplifier may have the lowered profile from new.',
  supplyRunningV: 'At the battery, at cruising revs.',
  supplyOffV: 'At the battery, with the ignition on.',
  loweredByDb: 'How much quieter the head unit plays with an amplified profile.',
  boostDb: 'At about 80 Hz. Common practice of the trade says 12 to 14 dB.',
  frontRatedOhm: 'Printed on the speaker. One speaker, not the pair.',
  frontFedBy: 'Follow the wires from the speaker, or ask who fitted them.',
  rearFitted: 'In the lids, the saddlebags, the top case or the trunk.',
  rearFedBy: 'Follow the wires from the speaker, or ask who fitted them.',
  rearPlug: 'Where the leads of the rear speakers come apart when the lid, bag or case comes off.',
  rearRatedOhm: 'Printed on the speaker. One speaker, not the pair.',
  rearPerChannel: 'How many speakers are wired to one pair of wires.',
  rearWiring: 'In parallel: positive to positive. In series: one after the other.',
  rearRunM: 'Length of the cable from its driver to the speaker.',
  rearRunM2: 'Printed on the cable. 0.8 to 2.5 is usual.',
  batteryKind: 'Printed on the battery. A lithium battery can switch itself off.',
  batteryAh: 'Printed on the battery.',
  chargingIdleA: 'What the charging system makes at idle.',
  chargingCruiseA: 'What the charging system makes on the road.',
};

const AMP_HELP: Readonly<Record<AmpFieldId, string>> = {
  kind: 'A factory amplifier answers on the data bus of the bike. An added one does not.',
  drives: 'Speakers in the trunk or top case count as rear.',
  fedFrom: 'When everything comes from the front pair, the fader has no say.',
  input: 'Speaker wires carry volts. A line-level lead has a small shielded plug.',
  turnOn: 'A remote wire is a thin wire that carries 12 V while the head unit is on.',
  needs: 'Its papers say so. Some amplifiers wake on the full output and correct for its bass boost.',
  channels: 'Pairs of speaker terminals. Two that are joined to one still count as two.',
  powerW: 'Continuous watts into the ohms below. Not peak watts.',
  ratedOhm: 'The ohms that the watts above belong to.',
  plusLeadM: 'From the battery to the amplifier.',
  plusLeadM2: 'Copper. 8.37 mm² is 8 gauge.',
  mainFuseA: 'In the positive lead, close to the battery.',
};

const HELP: ReadonlyMap<Field, string> = new Map<Field, string>([
  ...(Object.keys(BIKE_HELP) as BikeFieldId[]).map((id) => [BIKE_FIELDS[id], BIKE_HELP[id]] as const),
  ...(Object.keys(AMP_HELP) as AmpFieldId[]).map((id) => [AMP_FIELDS[id], AMP_HELP[id]] as const),
]);

/** What helps to find a value: that of the bike's own fields, or what the field brings along. */
export const helpOf = (field: Field): string => field.help ?? HELP.get(field) ?? '';
