/** What stands for each exercise now and why, as every other page has it. */
import type { DecisionInForce } from '#core/decision/decisions-in-force.ts';
import { isRest } from '#core/decision/left-of-today.ts';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Plan, PlanItem, PlanReason } from '#core/plan/plan.ts';
import { dayInWords, jointInWords, listed } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/danger.ts';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { type ClinicClock, momentInWords } from '../when.ts';
import { decisionStatus, todayInWords } from '../words.ts';

/** What was decided of each joint. */
type Joints = ReadonlyMap<Joint, Pick<DecisionInForce, 'decision'>>;

const careInWords = {
  'care-closed': say('care-has-ended'),
  'on-break': say('on-a-break'),
  returned: say('back-from-a-break'),
  'after-event': say('not-screened-again-since'),
  'no-consent': say('a-consent-is-missing'),
} as const;

const reasonInWords = (reason: PlanReason, joints: Joints): string => {
  switch (reason.code) {
    case 'warning-sign':
      return say('a-warning-sign-is-open');
    case 'paused':
      return say('it-is-paused');
    case 'decision': {
      const found = joints.get(reason.joint);
      const word = found ? decisionStatus[found.decision].word.toLowerCase() : 'decided';
      return say('decided-for', { word, 'joint-name': jointInWords(reason.joint) });
    }
    case 'contraindicated':
    case 'needs-clearance':
      return reason.findings.map(({ text }) => text).join(' ');
    case 'limit-closes':
      return reason.text;
    case 'limit-load':
      return say('over-the-limit', { 'limit-kg': reason.limitKg, author: reason.author });
    case 'machine-gone':
    case 'machine-load-gone':
      return say(reason.code, { machine: reason.machine });
    case 'news-today':
      return say('something-new-was-reported');
    case 'injection-easier':
      return say('injected-until', {
        'joint-name': reason.joint ? jointInWords(reason.joint) : say('a-joint'),
        on: dayInWords(reason.injectedOn),
        until: dayInWords(reason.until),
      });
    case 'gap-easier':
    case 'gap-ring-first':
      return say('first-after-a-break', { last: reason.lastOn });
    default:
      return careInWords[reason.code];
  }
};

export const TodayTag = ({ today }: Pick<PlanItem, 'today'>) => {
  const isStopped = isRest(today);
  const tone = isStopped ? 'danger' : today === 'bad-day' ? 'care' : 'accent';
  return (
    <StatusTag shape={isStopped ? 'stop' : today === 'bad-day' ? 'back' : 'done'} tone={tone}>
      {todayInWords[today]}
    </StatusTag>
  );
};

export const whyInWords = ({ reasons }: Pick<PlanItem, 'reasons'>, joints: Joints): string =>
  listed([...new Set(reasons.map((reason) => reasonInWords(reason, joints)))]);

/** Of an exercise that is not done as signed: what is done of it now, and why; nothing where it is. */
export const StandsNow = ({
  plan,
  itemId,
}: {
  readonly plan: Pick<Plan, 'items' | 'joints'>;
  readonly itemId: string;
}) => {
  const item = plan.items.find((one) => one.itemId === itemId);
  if (!item || item.today === 'as-planned') return null;
  return (
    <p>
      <TodayTag today={item.today} /> {whyInWords(item, plan.joints)}
    </p>
  );
};

interface LineProps {
  /** Of which the same stands for the same reasons. */
  readonly items: readonly [PlanItem, ...PlanItem[]];
  readonly joints: Joints;
  readonly clock: ClinicClock;
}

const Line = ({ items, joints, clock }: LineProps) => {
  const [{ today, reasons, testFrom }] = items;
  return (
    <li>
      <TodayTag today={today} />{' '}
      <strong>{items.map(({ exerciseId }) => exerciseTitle(exerciseId)).join('; ')}</strong>
      {reasons.length > 0 ? <span className="soft">: {whyInWords(items[0], joints)}</span> : null}
      {testFrom !== null && testFrom > clock.now ? (
        <span className="soft"> {say('no-test-before', { at: momentInWords(testFrom, clock) })}</span>
      ) : null}
    </li>
  );
};

/** Exercises of which nothing else is to be said share a line; the others have one each. */
const linesOf = (items: readonly PlanItem[], { now }: ClinicClock): readonly LineProps['items'][] => {
  const lines = new Map<string, [PlanItem, ...PlanItem[]]>();
  for (const item of items) {
    const isPlain = item.reasons.length === 0 && (item.testFrom === null || item.testFrom <= now);
    const key = isPlain ? item.today : item.itemId;
    const known = lines.get(key);
    if (known) known.push(item);
    else lines.set(key, [item]);
  }
  return [...lines.values()];
};

interface PlanViewProps {
  readonly plan: Pick<Plan, 'items' | 'joints'>;
  readonly clock: ClinicClock;
}

export const PlanView = ({ plan, clock }: PlanViewProps) => (
  <section className="stack-close" aria-labelledby="plan-today">
    <h2 id="plan-today">{say('what-the-patient-may-do')}</h2>
    {plan.items.length === 0 ? <p className="soft">{say('no-prescription-is-in-force')}</p> : null}
    <ul className="plain-list">
      {linesOf(plan.items, clock).map((items) => (
        <Line key={items[0].itemId} items={items} joints={plan.joints} clock={clock} />
      ))}
    </ul>
  </section>
);
