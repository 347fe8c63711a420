import { type AnyMachineSnapshot, initialTransition, type SnapshotFrom, transition } from 'xstate';
import type { Flow, FlowMachine, FlowMeta } from '../../machines/rows.ts';
import type { Rig } from '../rig/rig.ts';
import type { Answer, Step } from '../steps/step.ts';
import { oncePer, oncePerKey } from '../world/remembered.ts';

type FlowSnapshot = SnapshotFrom<FlowMachine>;

/** Where a flow stands after some answers, and where the next answer leads. */
export interface Standing {
  readonly snapshot: FlowSnapshot;
  readonly meta: FlowMeta | undefined;
  after(step: Step, answer: Answer): Standing;
}

/**
 * The machine of a flow, as XState's pure functions take it. Beside each step they start an actor without input, whose
 * state nobody looks at; a flow without a bike throws, which costs more than the step itself.
 */
const steppable = oncePer((machine: FlowMachine): FlowMachine => {
  const idle = {} as FlowSnapshot;
  const logic: Pick<FlowMachine, 'transition' | 'getInitialSnapshot'> = {
    transition: (snapshot, event, scope) => machine.transition(snapshot, event, scope),
    getInitialSnapshot: (scope, input) => (input ? machine.getInitialSnapshot(scope, input) : idle),
  };
  return logic as FlowMachine;
});

function standing(machine: FlowMachine, snapshot: FlowSnapshot): Standing {
  const led = new Map<string, Standing>();
  return {
    snapshot,
    meta: Object.values((snapshot as AnyMachineSnapshot).getMeta())[0] as FlowMeta | undefined,
    after: (step, answer) => {
      const given = JSON.stringify(answer);
      const known = led.get(given);
      if (known) return known;
      const [next] = transition(steppable(machine), snapshot, { type: 'answer', step: step.id, answer });
      const made = standing(machine, next);
      led.set(given, made);
      return made;
    },
  };
}

const startsOn = oncePerKey<Rig, Standing>();
/**
 * A flow at its first question on this bike. A machine is a pure function of bike and answers, so riders who answer the
 * same stand at the same place, which is worked out once.
 */
export const startOf = ({ id, machine }: Flow, rig: Rig): Standing =>
  startsOn(rig, id, () => standing(machine, initialTransition(steppable(machine), { rig, facts: {} })[0]));
