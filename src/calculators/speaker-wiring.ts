import { combinedRatedOhm, lowestImpedanceOhm, runBandOhm } from '../compute/impedance.ts';
import { formatRange } from '../compute/quantity.ts';
import { BIKE_FIELDS, choice, number } from '../rig/fields.ts';
import { CannotWork, calculator, known, type Line } from './calculator.ts';
import { written } from './in-words.ts';

/** What several speakers on one channel add up to, and what a meter shows of them. */
export const speakerWiring = calculator({
  id: 'speaker-wiring',
  title: 'Speakers on one channel',
  asks: 'How many ohms do they make, may the channel drive them, and what should a meter show?',
  inputs: {
    ratedOhm: { ...BIKE_FIELDS.rearRatedOhm, label: 'One speaker, rated' },
    count: { ...BIKE_FIELDS.rearPerChannel, label: 'Speakers on this channel', typical: 2 },
    wiring: { ...BIKE_FIELDS.rearWiring, label: 'Joined how', typical: 'parallel' },
    bridged: choice(
      'The channel',
      { no: 'One channel', yes: 'Two channels bridged' },
      'no',
      'Bridged: positive of one channel and negative of another.',
    ),
    leastOhm: number(
      'Least load of the channel',
      'Ω',
      2,
      [2, 4],
      [0.5, 16],
      'From its papers, bridged or not as it is used. A head unit: 4 Ω.',
    ),
    runM: BIKE_FIELDS.rearRunM,
    runM2: BIKE_FIELDS.rearRunM2,
  },
  fromBike: (rig) =>
    known({
      ratedOhm: rig.rearRatedOhm,
      count: rig.rearPerChannel,
      wiring: rig.rearWiring,
      leastOhm: rig.rearFedBy === 'unit' ? 4 : undefined,
      runM: rig.rearRunM,
      runM2: rig.rearRunM2,
    }),
  result: ({ ratedOhm, count, wiring, bridged, leastOhm, runM, runM2 }) => {
    if (wiring === 'single' && count > 1)
      throw new CannotWork('Several speakers are joined in parallel or in series. Choose which.');
    if (wiring !== 'single' && count === 1)
      throw new CannotWork('One speaker alone is neither in parallel nor in series. Choose “There is only one”.');
    const loadOhm = combinedRatedOhm({ ratedOhm, count, wiring });
    const band = runBandOhm({ ratedOhm, count, wiring, wireLengthM: runM, wireSectionM2: runM2 });
    const allowed = loadOhm >= leastOhm;
    const halves: readonly Line[] =
      bridged === 'yes'
        ? [
            {
              label: 'Each of the two bridged channels sees',
              text: written(loadOhm / 2, 'Ω'),
              note: 'Half the load, because each makes half the volts.',
            },
          ]
        : [];
    return {
      lines: [
        {
          label: 'Load of the channel',
          text: written(loadOhm, 'Ω'),
          note: allowed
            ? `At or above its least of ${written(leastOhm, 'Ω')}.`
            : `Below its least of ${written(leastOhm, 'Ω')}: it runs hot, protects itself, or dies. Join them otherwise.`,
          mood: allowed ? 'good' : 'bad',
        },
        ...halves,
        {
          label: 'A meter on the run, plug off, shows',
          text: formatRange(band.lowOhm, band.highOhm, 'Ω').replace(/ (?=Ω)/, '\u00a0'),
          note: 'Cold coils read 0.7 to 0.95 of what is printed; the wires come on top. Take off what the leads alone read.',
        },
        {
          label: 'Lowest at any tone',
          text: written(lowestImpedanceOhm({ ratedOhm: loadOhm }), 'Ω'),
          note: 'A speaker may fall to 0.8 of its rated ohms.',
        },
      ],
      picture: { kind: 'joined', count, wiring, each: { value: ratedOhm, unit: 'Ω' } },
      says:
        wiring === 'single'
          ? `One speaker of ${written(ratedOhm, 'Ω')} between positive and negative.`
          : wiring === 'parallel'
            ? `${count} speakers of ${written(ratedOhm, 'Ω')} side by side, positive to positive and negative to negative: ${written(loadOhm, 'Ω')}.`
            : `${count} speakers of ${written(ratedOhm, 'Ω')} one after the other, negative of one to positive of the next: ${written(loadOhm, 'Ω')}.`,
    };
  },
  cautions: ['ohms-dead', 'bridge'],
  sources: [
    'Series and parallel: Lessons In Electric Circuits, DC vol.',
    'A speaker may fall to 80 % of its rated ohms: IEC 60268-5, 16.1.',
    'Cold coils at 0.7 to 0.95 of the rated ohms: common practice, no published source.',
  ],
  article: 'impedance',
});
