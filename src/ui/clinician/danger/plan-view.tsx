/** What stands for each exercise now and why, as every other page has it. */
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import type { Plan, PlanItem, PlanReason } from '#core/plan/plan.ts';
import { jointInWords, listed } from '#core/review/plain-words.ts';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { decisionStatus, todayInWords } from '../words.ts';

type Joints = Plan['joints'];

const careInWords = {
  'care-closed': 'care has ended',
  'on-break': 'on a break',
  returned: 'back from a break and not screened again',
  'after-event': 'not screened again since an event',
  'no-consent': 'a consent is missing',
} as const;

const reasonInWords = (reason: PlanReason, joints: Joints): string => {
  switch (reason.code) {
    case 'warning-sign':
      return 'a warning sign is open';
    case 'paused':
      return 'it is paused';
    case 'decision': {
      const found = joints.get(reason.joint);
      const word = found ? decisionStatus[found.decision].word.toLowerCase() : 'decided';
      return `${word} for the ${jointInWords(reason.joint)}`;
    }
    case 'contraindicated':
    case 'needs-clearance':
      return reason.findings.map(({ text }) => text).join(' ');
    case 'limit-closes':
      return reason.text;
    case 'limit-load':
      return `over the limit of ${reason.limitKg} kg set by ${reason.author}`;
    case 'news-today':
      return 'something new was reported today';
    default:
      return careInWords[reason.code];
  }
};

const Line = ({ item, joints }: { readonly item: PlanItem; readonly joints: Joints }) => {
  const isStopped = item.today === 'none' || item.today === 'rest-this-joint';
  const tone = isStopped ? 'danger' : item.today === 'bad-day' ? 'care' : 'accent';
  return (
    <li>
      <StatusTag shape={isStopped ? 'stop' : item.today === 'bad-day' ? 'back' : 'done'} tone={tone}>
        {todayInWords[item.today]}
      </StatusTag>{' '}
      <strong>{exerciseTitle(item.exerciseId)}</strong>
      {item.reasons.length > 0 ? (
        <span className="soft">
          : {listed([...new Set(item.reasons.map((reason) => reasonInWords(reason, joints)))])}
        </span>
      ) : null}
    </li>
  );
};

export const PlanView = ({ plan }: { readonly plan: Pick<Plan, 'items' | 'joints'> }) => (
  <section className="stack-close" aria-labelledby="plan-today">
    <h2 id="plan-today">What the patient may do today</h2>
    {plan.items.length === 0 ? <p className="soft">No prescription is in force.</p> : null}
    <ul className="plain-list">
      {plan.items.map((item) => (
        <Line key={item.itemId} item={item} joints={plan.joints} />
      ))}
    </ul>
  </section>
);
