/**
 * Whether every surface says the same of one patient: what each handler returned is read, and whatever
 * differs from the plan is named. The plan is asked for by the page of signs and pauses.
 */
import type { TodayView } from '#api/patient/today-view.ts';
import { holdsBack } from '#core/danger/danger-state.ts';
import type { Today } from '#core/decision/answers.ts';
import { prescribedLoadKg } from '#core/decision/dose/volume.ts';
import type { DocumentItem } from '#core/episode/documents/document-facts.ts';
import { openSigns, type Plan, type PlanItem } from '#core/plan/plan.ts';

export interface Surfaces {
  readonly today: Pick<TodayView, 'exercises' | 'isStopped' | 'danger' | 'contact'>;
  readonly review: Pick<Plan, 'items' | 'contact'>;
  readonly handover: {
    readonly plan: Pick<Plan, 'items'>;
    readonly dangers: readonly { readonly kind: string }[];
  };
  /** Items of the worklist that show now. */
  readonly worklist: readonly { readonly kind: string; readonly key: string }[];
  /** Null while care goes on. */
  readonly document: readonly Pick<DocumentItem, 'itemId' | 'suspended'>[] | null;
}

const stops = new Set<Today>(['none', 'rest-this-joint']);

const byItem = (rows: readonly { readonly itemId: string; readonly today: Today }[]): string =>
  rows
    .map(({ itemId, today }) => `${itemId} ${today}`)
    .sort()
    .join('; ');

const ofToday = ({ today }: Surfaces, plan: Plan): readonly string[] => {
  const isOpen = openSigns(plan).length > 0;
  const holds = plan.pauses.some((pause) => plan.items.some((item) => holdsBack(pause, item)));
  const over = today.exercises.filter(({ itemId, dose, today: left }) => {
    const item = plan.items.find((one) => one.itemId === itemId);
    return (
      item?.dose === null &&
      !stops.has(left) &&
      (item.easierSession === null || prescribedLoadKg(dose) > prescribedLoadKg(item.easierSession))
    );
  });
  return [
    ...(byItem(today.exercises) === byItem(plan.items) ? [] : ['the phone: what is left of an exercise']),
    ...(today.isStopped === isOpen ? [] : ['the phone: stopped']),
    ...(today.danger.length > 0 === (isOpen || holds) ? [] : ['the phone: sentence on danger']),
    ...(today.contact === plan.contact ? [] : ['the phone: contact']),
    ...(over.length === 0 ? [] : ['the phone: a dose over a limit']),
  ];
};

const isStopped = ({ reasons }: PlanItem): boolean =>
  reasons.some(({ code }) =>
    ['contraindicated', 'needs-clearance', 'limit-closes', 'limit-load'].includes(code),
  );

/** Of a stopped dose the key goes on with what stopped it, one item a cause; the exercise stands second. */
const keysOf = (rows: Surfaces['worklist'], kind: string, isByItem = false): string => {
  const keys = rows
    .filter((row) => row.kind === kind)
    .map(({ key }) => (isByItem ? key.split(' ')[1]! : key));
  return [...new Set(keys)].sort().join('; ');
};

const ofWorklist = ({ worklist, document }: Surfaces, plan: Plan, day: string): readonly string[] => {
  const expected: Readonly<Record<string, readonly string[]>> = {
    'red-flag': openSigns(plan).map(({ sign }) => `sign ${sign.id}`),
    // Nothing is asked about a pause once care has ended.
    'resume-due': (document === null ? plan.pauses : [])
      .filter(({ pause, isSignOpen }) => !isSignOpen && (pause.until ?? day) <= day)
      .map(({ pause }) => `pause ${pause.id}`),
    'dose-stopped': plan.items.filter(isStopped).map(({ itemId }) => itemId),
  };
  return Object.entries(expected).flatMap(([kind, keys]) =>
    keysOf(worklist, kind, kind === 'dose-stopped') === [...new Set(keys)].sort().join('; ')
      ? []
      : [`the worklist: ${kind}`],
  );
};

const suspendedBy = ({ reasons }: PlanItem, plan: Plan): DocumentItem['suspended'] => {
  const causes = reasons.filter(({ code }) => code !== 'care-closed');
  const everything = causes.some(
    (reason) =>
      reason.code === 'warning-sign' ||
      (reason.code === 'paused' &&
        plan.pauses.some(({ pause }) => pause.id === reason.pauseId && pause.joint === null)),
  );
  if (everything) return 'everything-rests';
  if (causes.some(({ today }) => stops.has(today))) return 'joint-rests';
  return causes.length > 0 ? 'easier-only' : null;
};

const ofDocument = ({ document }: Surfaces, before: Plan): readonly string[] => {
  if (document === null) return [];
  const said = document.map(({ itemId, suspended }) => `${itemId} ${suspended}`).sort();
  const expected = before.items.map((item) => `${item.itemId} ${suspendedBy(item, before)}`).sort();
  return said.join('; ') === expected.join('; ') ? [] : ['the document: what is suspended'];
};

/** What differs, in words; empty where every surface says the same. `atEnd` is the plan before care ended. */
export const disagreements = (
  surfaces: Surfaces,
  plan: Plan,
  day: string,
  atEnd: Plan = plan,
): readonly string[] => [
  ...ofToday(surfaces, plan),
  ...(byItem(surfaces.review.items) === byItem(plan.items) ? [] : ['the review']),
  ...(byItem(surfaces.handover.plan.items) === byItem(plan.items) ? [] : ['the handover']),
  ...(surfaces.handover.dangers.filter(({ kind }) => kind === 'red-flag').length === openSigns(plan).length
    ? []
    : ['the handover: open signs']),
  ...ofWorklist(surfaces, plan, day),
  ...ofDocument(surfaces, atEnd),
];
