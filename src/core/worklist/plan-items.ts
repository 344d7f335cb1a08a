/** What the plan itself puts on the worklist: open signs, pauses nobody has resumed, doses that were stopped. */
import { signsInWords } from '../danger/sign-words.ts';
import { exerciseTitle } from '../exercises/catalogue.ts';
import type { Plan, PlanItem, PlanReason } from '../plan/plan.ts';
import type { Day } from '../time/day.ts';
import { always, type DueItem } from './item.ts';
import { noon } from './noon.ts';

export const keyOfSign = (signId: string): string => `sign ${signId}`;

/** A sign goes on asking until a contact has reached the patient; acknowledging it does not end it. */
const signItems = ({ signs }: Pick<Plan, 'signs'>): readonly DueItem[] =>
  signs
    .filter(({ endedBy }) => endedBy === null)
    .map(({ sign, state, failedAttempts, contactDueAt }) => ({
      key: keyOfSign(sign.id),
      kind: 'red-flag',
      since: sign.reportedAt,
      showsFrom: always,
      joint: sign.joint,
      decisionId: null,
      facts: {
        signId: sign.id,
        sign: signsInWords(sign.flags),
        source: sign.source,
        urgency: sign.urgency,
        state,
        failedAttempts,
        contactDueAt: contactDueAt ?? sign.reportedAt,
      },
    }));

/** A pause whose sign has ended, or that had none: somebody decides whether to resume. */
const pauseItems = ({ pauses }: Pick<Plan, 'pauses'>): readonly DueItem[] =>
  pauses
    .filter(({ isSignOpen }) => !isSignOpen)
    .map(({ pause }) => ({
      key: `pause ${pause.id}`,
      kind: 'resume-due',
      since: pause.at,
      showsFrom: pause.until ?? always,
      joint: pause.joint,
      decisionId: null,
      facts: { cause: pause.cause, by: pause.by, until: pause.until ?? '' },
    }));

type Stopping = Extract<
  PlanReason,
  { readonly code: 'contraindicated' | 'needs-clearance' | 'limit-closes' | 'limit-load' }
>;

const isStopping = (reason: PlanReason): reason is Stopping =>
  reason.code === 'contraindicated' ||
  reason.code === 'needs-clearance' ||
  reason.code === 'limit-closes' ||
  reason.code === 'limit-load';

const whyStopped = (reason: Stopping): string => {
  if (reason.code === 'limit-load') return `Limit of ${reason.limitKg} kg set by ${reason.author}.`;
  return reason.code === 'limit-closes' ? reason.text : reason.findings.map(({ text }) => text).join(' ');
};

/** A cause is an item of its own: whatever was done about one leaves the next as it is. */
const keyOfStop = (itemId: string, reason: Stopping): string => {
  const { code, foundOn } = reason;
  const joint = 'joint' in reason ? ` ${reason.joint}` : '';
  return `dose-stopped ${itemId} ${code} ${foundOn}${joint}${code === 'limit-load' ? ` ${reason.limitKg}` : ''}`;
};

/** A limit from its first day on; a finding at once. */
const showsFromOf = (reason: Stopping): Day =>
  reason.code === 'limit-load' || reason.code === 'limit-closes' ? reason.foundOn : always;

type LeftOfDose = 'nothing' | 'easier' | 'lowered';

const leftBy = (stopping: readonly Stopping[]): LeftOfDose =>
  stopping.some(({ today }) => today !== 'bad-day') ? 'nothing' : 'easier';

/** Signed exercises that a limit or a finding stops or has lowered, each until the clinician writes it anew. */
const stoppedItems = (
  { itemId, exerciseId, reasons }: Pick<PlanItem, 'itemId' | 'exerciseId' | 'reasons'>,
  left: (stopping: readonly Stopping[]) => LeftOfDose,
): readonly DueItem[] => {
  const byKey = new Map<string, Stopping[]>();
  for (const reason of reasons.filter(isStopping)) {
    const key = keyOfStop(itemId, reason);
    byKey.set(key, [...(byKey.get(key) ?? []), reason]);
  }
  return [...byKey].map(([key, stopping]) => ({
    key,
    kind: 'dose-stopped' as const,
    since: noon(stopping[0]!.foundOn),
    showsFrom: showsFromOf(stopping[0]!),
    joint: null,
    decisionId: null,
    facts: {
      exercise: exerciseTitle(exerciseId),
      left: left(stopping),
      why: [...new Set(stopping.map(whyStopped))].join(' '),
    },
  }));
};

type Gone = Extract<PlanReason, { readonly code: 'machine-gone' | 'machine-load-gone' }>;

const isGone = (reason: PlanReason): reason is Gone =>
  reason.code === 'machine-gone' || reason.code === 'machine-load-gone';

const whyGone = ({ code, machine }: Gone): string =>
  code === 'machine-gone'
    ? `${machine} is no longer in use for it at the clinic.`
    : `Its load can no longer be set on ${machine}.`;

/** Whoever entered the machine anew reads no record: whose dose it took away stands here, with each person. */
const machineItems = ({ itemId, exerciseId, reasons }: PlanItem): readonly DueItem[] =>
  reasons.filter(isGone).map((reason) => ({
    key: `dose-stopped ${itemId} ${reason.code} ${reason.version}`,
    kind: 'dose-stopped' as const,
    since: reason.since,
    showsFrom: always,
    joint: null,
    decisionId: null,
    facts: { exercise: exerciseTitle(exerciseId), left: 'nothing', why: whyGone(reason) },
  }));

export const planItems = (
  plan: Pick<Plan, 'items' | 'coming' | 'lowered' | 'signs' | 'pauses'>,
): readonly DueItem[] => [
  ...signItems(plan),
  ...pauseItems(plan),
  ...plan.items.flatMap(machineItems),
  ...[...plan.items, ...plan.coming].flatMap((item) => stoppedItems(item, leftBy)),
  ...plan.lowered.flatMap((item) => stoppedItems(item, () => 'lowered')),
];
