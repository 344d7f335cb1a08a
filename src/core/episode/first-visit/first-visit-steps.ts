/**
 * A first visit in the order of the appointment, and where it stands: read from the record alone, so that
 * it goes on where it was, whoever comes back and whenever. The order is a choice of this project; a step
 * that is open never stands in the way of a later one, only what the record refuses does.
 */
import type { Joint } from '../../exercises/joints.ts';
import { type Method, methods } from '../../prescribing/methods.ts';
import type { MethodOutcome, MethodReason } from '../../screening/screening.ts';
import type { ConsentState } from '../consent.ts';

export const firstVisitSteps = [
  'consents',
  'reason',
  'screening',
  'measurements',
  'home',
  'exercise',
  'week',
  'invitation',
] as const;
export type FirstVisitStep = (typeof firstVisitSteps)[number];

/** Consents a first visit asks for; those for a cuff are asked for with the cuff. */
export const firstVisitConsents = ['treatment', 'record-keeping', 'remote-monitoring'] as const;
export type FirstVisitConsent = (typeof firstVisitConsents)[number];

export interface FirstVisitFacts {
  readonly consents: Readonly<Record<FirstVisitConsent, ConsentState>>;
  readonly isReasonKnown: boolean;
  readonly followedJoints: readonly Joint[];
  readonly jointsWithBaseline: readonly Joint[];
  /** Of the questions that any exercise needs; a screening past its age counts as not answered. */
  readonly questions: { readonly answered: number; readonly all: number };
  readonly isPressureMeasured: boolean;
  readonly isHomeAsked: boolean;
  /** What screening, measurements and consents leave of each method. */
  readonly outcomes: readonly MethodOutcome[];
  /** Exercises signed and in force. */
  readonly signed: number;
  /** Each exercise in force has its days. */
  readonly isWeekSet: boolean;
  /** An invitation is open, or the patient has been let in before. */
  readonly isInvited: boolean;
}

export interface FirstVisitStepState {
  readonly step: FirstVisitStep;
  readonly state: 'done' | 'open' | 'refused';
  /** Why it is refused; empty otherwise. */
  readonly because: readonly string[];
}

const isOpen = ({ eligibility }: MethodOutcome): boolean => eligibility.startsWith('open');

/** Methods that are eligible on a limb at least. */
export const methodsOpen = (outcomes: readonly MethodOutcome[]): readonly Method[] =>
  methods.filter((method) => outcomes.some((row) => row.method === method && isOpen(row)));

/** A question or a measurement that is missing; nothing that was found stands behind it. */
const isMissing = ({ code }: Pick<MethodReason, 'code'>): boolean =>
  code === 'never-screened' || code.startsWith('not-asked-') || code.endsWith('-not-measured');

/** Methods that are closed now and would be eligible on a limb once what is missing has been asked and measured. */
export const methodsWaiting = (outcomes: readonly MethodOutcome[]): readonly Method[] => {
  const closing = ({ reasons }: MethodOutcome) =>
    reasons.filter(({ eligibility }) => eligibility.startsWith('closed'));
  const open = methodsOpen(outcomes);
  return methods.filter(
    (method) =>
      !open.includes(method) &&
      outcomes.some((row) => row.method === method && !isOpen(row) && closing(row).every(isMissing)),
  );
};

/** What closes low load on a limb, each reason once: where it is closed on every limb, no method is open. */
export const closingReasons = (outcomes: readonly MethodOutcome[]): readonly MethodReason[] => {
  const closing = outcomes
    .filter(({ method }) => method === 'low-load')
    .flatMap(({ reasons }) => reasons)
    .filter(({ eligibility }) => eligibility.startsWith('closed'));
  return [...new Map(closing.map((reason) => [`${reason.code} ${reason.text}`, reason])).values()];
};

const consentsDone = ({ consents }: FirstVisitFacts): boolean =>
  firstVisitConsents.every((kind) => consents[kind] !== 'not-asked');

const reasonDone = (facts: FirstVisitFacts): boolean =>
  facts.isReasonKnown &&
  facts.followedJoints.length > 0 &&
  facts.followedJoints.every((joint) => facts.jointsWithBaseline.includes(joint));

const nothingPossible = ({ outcomes, signed }: FirstVisitFacts): readonly string[] =>
  signed > 0 || methodsOpen(outcomes).length > 0 ? [] : closingReasons(outcomes).map(({ text }) => text);

const nothingSigned = 'No exercise is signed yet.';

export const firstVisitStates = (facts: FirstVisitFacts): readonly FirstVisitStepState[] => {
  const { questions, signed } = facts;
  const isDone: Readonly<Record<FirstVisitStep, boolean>> = {
    consents: consentsDone(facts),
    reason: reasonDone(facts),
    screening: questions.answered >= questions.all,
    measurements: facts.isPressureMeasured,
    home: facts.isHomeAsked,
    exercise: signed > 0,
    week: signed > 0 && facts.isWeekSet,
    invitation: facts.isInvited,
  };
  const because: Partial<Record<FirstVisitStep, readonly string[]>> = {
    exercise: nothingPossible(facts),
    week: signed > 0 ? [] : [nothingSigned],
  };
  return firstVisitSteps.map((step) => {
    const reasons = because[step] ?? [];
    const state = isDone[step] ? 'done' : reasons.length > 0 ? 'refused' : 'open';
    return { step, state, because: state === 'refused' ? reasons : [] };
  });
};

/** Where it goes on: the first step that is not done; null where all are. */
export const goesOnAt = (states: readonly FirstVisitStepState[]): FirstVisitStep | null =>
  states.find(({ state }) => state !== 'done')?.step ?? null;

/** The step an address asks for; without one it goes on where it was, and a finished visit begins at its top. */
export const stepAsked = (states: readonly FirstVisitStepState[], asked: unknown): FirstVisitStep =>
  firstVisitSteps.find((step) => step === asked) ?? goesOnAt(states) ?? firstVisitSteps[0];

/** The step after one; the last is its own. */
export const stepAfter = (step: FirstVisitStep): FirstVisitStep =>
  firstVisitSteps[Math.min(firstVisitSteps.indexOf(step) + 1, firstVisitSteps.length - 1)]!;

export const stepBefore = (step: FirstVisitStep): FirstVisitStep | null =>
  firstVisitSteps[firstVisitSteps.indexOf(step) - 1] ?? null;
