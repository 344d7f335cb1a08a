/** What the answers and measurements so far leave of each method: what is closed and why, and what is still possible. */
import { methodsOpen, methodsWaiting } from '#core/episode/first-visit/first-visit-steps.ts';
import { eligibilities, type Method, methods } from '#core/prescribing/methods.ts';
import { listed } from '#core/review/plain-words.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';
import { say } from '#messages/en/staff/first-visit.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { capital } from '../capital.ts';
import { eligibilityInWords, eligibilityOf } from '../prescribing/method-choice.tsx';
import { type GroupedReason, groupedReasons } from '../screening/outcome-table.tsx';
import { eligibilityStatus, methodInWords } from '../words.ts';

const isUnasked = ({ code }: GroupedReason): boolean => code.startsWith('not-asked-');

const ReasonLine = ({ reason }: { readonly reason: GroupedReason }) => (
  <li>
    {reason.text}
    {reason.limbs.length === 4 ? '' : ` (${listed(reason.limbs)})`}
    {reason.clearedBy && reason.eligibility.startsWith('closed') ? (
      <span className="soft"> {say(`may-clear.${reason.clearedBy}`)}</span>
    ) : null}
  </li>
);

const keyOf = ({ code, eligibility, text }: GroupedReason): string => `${code} ${eligibility} ${text}`;

/** What was found stands in full; what nobody has asked yet is counted. */
const MethodMeans = ({ outcomes }: { readonly outcomes: readonly MethodOutcome[] }) => {
  const reasons = groupedReasons(outcomes);
  const { word, shape, tone } = eligibilityStatus(eligibilityOf(outcomes), reasons);
  const unasked = reasons.filter(isUnasked);
  const found = reasons
    .filter((reason) => !isUnasked(reason))
    .toSorted((a, b) => eligibilities.indexOf(b.eligibility) - eligibilities.indexOf(a.eligibility));
  return (
    <dd>
      <StatusTag shape={shape} tone={tone}>
        {eligibilityInWords(word, outcomes)}
      </StatusTag>
      {found.length > 0 ? (
        <ul>
          {found.map((reason) => (
            <ReasonLine key={keyOf(reason)} reason={reason} />
          ))}
        </ul>
      ) : null}
      {unasked.length > 0 ? (
        <Disclosure summary={say('not-asked-yet', { count: unasked.length })}>
          <ul>
            {unasked.map((reason) => (
              <ReasonLine key={keyOf(reason)} reason={reason} />
            ))}
          </ul>
        </Disclosure>
      ) : null}
    </dd>
  );
};

/** What is still possible, in one sentence; a question not asked and a pressure not measured are no findings. */
export const meansInOneSentence = (outcomes: readonly MethodOutcome[]): string => {
  const named = (list: readonly Method[]) =>
    listed(list.map((method) => methodInWords[method].toLowerCase()));
  const open = methodsOpen(outcomes);
  if (open.length > 0) return say('still-possible', { methods: named(open) });
  const waiting = methodsWaiting(outcomes);
  return waiting.length > 0
    ? say('possible-once-asked', { methods: named(waiting) })
    : say('nothing-possible');
};

interface Same {
  readonly methods: readonly Method[];
  readonly outcomes: readonly MethodOutcome[];
}

/** Methods that stand the same with the same reasons are said together. */
const together = (outcomes: readonly MethodOutcome[]): readonly Same[] => {
  const groups = new Map<string, Same>();
  for (const method of methods) {
    const own = outcomes.filter((row) => row.method === method);
    const key = JSON.stringify(own.map(({ method: _, ...row }) => row));
    groups.set(key, { outcomes: own, methods: [...(groups.get(key)?.methods ?? []), method] });
  }
  return [...groups.values()];
};

export const Means = ({ outcomes }: { readonly outcomes: readonly MethodOutcome[] }) => (
  <aside className="visit-means stack-close" aria-labelledby="means-heading">
    <h2 id="means-heading">{say('what-this-means')}</h2>
    <p>
      <strong>{meansInOneSentence(outcomes)}</strong>
    </p>
    <dl className="means">
      {together(outcomes).map((same) => (
        <div key={same.methods.join()}>
          <dt>{capital(listed(same.methods.map((method) => methodInWords[method].toLowerCase())))}</dt>
          <MethodMeans outcomes={same.outcomes} />
        </div>
      ))}
    </dl>
  </aside>
);
