/** What screening leaves of each method on each limb, and every reason with who may clear it. */

import { listed } from '#core/review/plain-words.ts';
import type { MethodOutcome, MethodReason } from '#core/screening/screening.ts';
import { say } from '#messages/en/staff/screening.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { optionInWords } from '../forms/field-words.ts';
import { supportInWords } from '../support-note.tsx';
import { eligibilityStatus, methodInWords } from '../words.ts';
import { limbOptions } from './screening-form-state.ts';

const limbColumns = limbOptions.map((key) => ({ key, title: optionInWords(key) }));

const limbOf = (outcome: MethodOutcome): string => `${outcome.side} ${outcome.limb}`;

const methodsOf = (outcomes: readonly MethodOutcome[]) => [...new Set(outcomes.map((row) => row.method))];

const methodsWithReasons = (outcomes: readonly MethodOutcome[]) =>
  methodsOf(outcomes.filter((row) => row.reasons.length > 0));

export interface GroupedReason extends MethodReason {
  readonly limbs: readonly string[];
}

/** One line for each reason of a method, with the limbs it reaches. */
export const groupedReasons = (outcomes: readonly MethodOutcome[]): readonly GroupedReason[] => {
  const groups = new Map<string, GroupedReason>();
  for (const outcome of outcomes) {
    for (const reason of outcome.reasons) {
      const key = `${reason.code} ${reason.eligibility} ${reason.text}`;
      const known = groups.get(key);
      groups.set(key, { ...reason, limbs: [...(known?.limbs ?? []), limbOf(outcome)] });
    }
  }
  return [...groups.values()];
};

const clearedBy = { clinician: say('may-clear.clinician'), physician: say('may-clear.physician') } as const;

const reasonInWords = ({ limbs, eligibility, clearedBy: by, support }: GroupedReason): string => {
  const where = limbs.length === 4 ? say('every-limb') : `${listed(limbs)}.`;
  const supported = say('support', { support: supportInWords(support) });
  if (!eligibility.startsWith('closed')) return `${where} ${supported}`;
  return `${where} ${by ? clearedBy[by] : say('may-clear.nobody')} ${supported}`;
};

const Reasons = ({ outcomes }: { readonly outcomes: readonly MethodOutcome[] }) => {
  const reasons = groupedReasons(outcomes);
  return (
    <ul className="plain-list stack-close">
      {reasons.map((reason) => {
        const { word, shape, tone } = eligibilityStatus(reason.eligibility, [reason]);
        return (
          <li key={`${reason.code} ${reason.eligibility} ${reason.text}`}>
            <StatusTag shape={shape} tone={tone}>
              {word}
            </StatusTag>{' '}
            {reason.text} <span className="soft">{reasonInWords(reason)}</span>
          </li>
        );
      })}
    </ul>
  );
};

export const OutcomeTable = ({ outcomes }: { readonly outcomes: readonly MethodOutcome[] }) => (
  <div className="stack">
    <DataTable
      caption={say('table')}
      columns={[{ key: 'method', title: 'Method' }, ...limbColumns]}
      rows={methodsOf(outcomes).map((method) => ({
        key: method,
        cells: [
          methodInWords[method],
          ...limbColumns.map(({ key }) => {
            const found = outcomes.find((row) => row.method === method && limbOf(row) === key);
            if (!found) return say('not-assessed');
            const { word, shape, tone } = eligibilityStatus(found.eligibility, found.reasons);
            return (
              <StatusTag key={key} shape={shape} tone={tone}>
                {word}
              </StatusTag>
            );
          }),
        ],
      }))}
    />
    {outcomes.every((row) => row.reasons.length === 0) ? <p>{say('found-nothing')}</p> : null}
    {methodsWithReasons(outcomes).map((method) => (
      <section key={method} className="stack-close">
        <h3>{say('reasons-of', { method: methodInWords[method] })}</h3>
        <Reasons outcomes={outcomes.filter((row) => row.method === method)} />
      </section>
    ))}
    <p className="soft">{say('eligible-note')}</p>
  </div>
);
