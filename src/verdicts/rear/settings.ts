import type { Verdict } from '../verdict.ts';
import { YOURSELF } from '../who.ts';
import { supplyUnseen } from './alternatives.ts';

/** Faults that are a setting: nothing to buy, nothing to open. */

export const faderOff: Verdict = {
  id: 'fader-or-balance-off',
  title: 'Fader or balance stood at its end',
  faults: ['fader-or-balance-off'],
  evidence: ['fader-centre', 'four-corners', 'rear-pair', 'rear-pair-again'],
  mends: ['settings'],
  remedy: (f) => {
    const all = f.outcome('four-corners') === 'all';
    const comesAndGoes = f.outcome('rear-history') === 'comes-and-goes';
    const seen =
      !comesAndGoes && (f.outcome('fader-centre') === 'cured' || (all && f.outcome('fader-centre') !== 'no-change'));
    const { frontV, leftV, rightV } = f.values('rear-pair');
    const again = f.outcome('rear-pair-again') === 'ok';
    const ratio = (valueV: number | undefined) =>
      valueV === undefined || !frontV ? [] : [(valueV / frontV).toFixed(2)];
    return {
      what: 'The fader or the balance stood away from the middle and turned the rear down.',
      certainty: seen ? 'proved' : 'likely',
      howSure: seen
        ? 'Moving it brought the rear back, so nothing else can be wrong.'
        : f.outcome('fader-centre') === 'cured'
          ? 'Moving it brought the rear back. It came and went before, so listen for a ride before you trust it.'
          : all
            ? 'All four corners play now, so the rear is alive. Either the fader was not quite in the middle, or it came back by itself.'
            : again
              ? 'With everything at 0 the rear pairs read as much as the front. Before that they did not. It is proved when the rear plays.'
              : 'The rear pairs do carry signal, only not as much as the front. That is nearly always a fader, a balance or a bass control.',
      numbers: frontV
        ? [
            {
              label: again ? 'Rear over front, before' : 'Rear over front, now',
              value: [...ratio(leftV), ...ratio(rightV)].join(' and '),
            },
            { label: 'Rear over front, healthy', value: '0.7 to 1.4' },
          ]
        : [],
      fix: [
        'Set fader and balance to 0.',
        'Bass and treble flat, loudness and speed volume off.',
        'Write the old values down if somebody liked them.',
      ],
      tools: 'None',
      minutes: 2,
      who: YOURSELF,
      notBuy: ['Speakers, an amplifier or a reflash: nothing is broken.'],
      cautions: ['riding'],
      proof:
        'All four corners play equally loud by ear. With a meter: the rear pair reads 0.7 to 1.4 of the front pair.',
      ...(seen
        ? {}
        : {
            mayAlsoBe: [
              ...(f.outcome('rear-control') === 'cannot'
                ? [
                    {
                      what: 'Passenger or rear control off',
                      split: 'Turn the rear control down and up again: does it matter?',
                    },
                  ]
                : []),
              ...supplyUnseen(f),
              {
                what: 'One channel of the head unit is weak',
                split: 'Flat settings, fader at 0, and still under 0.7 of the front: have the unit looked at.',
              },
            ],
          }),
    };
  },
};

export const rearControlOff: Verdict = {
  id: 'rear-control-off',
  title: 'The passenger or rear control was off',
  faults: ['rear-control-off'],
  evidence: ['rear-control', 'four-corners'],
  mends: ['settings'],
  remedy: () => ({
    what: 'The control for the rear was off or turned down.',
    certainty: 'proved',
    howSure: 'Turning it up brought the rear back.',
    numbers: [],
    fix: ['Leave the rear control on.', 'Show the passenger which button does it.'],
    tools: 'None',
    minutes: 1,
    who: YOURSELF,
    notBuy: ['Anything: nothing is broken.'],
    cautions: ['riding'],
    proof: 'The rear still plays after key off and on.',
  }),
};
