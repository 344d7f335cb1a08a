/** One reason of a decision: rule, what was found, threshold, effect, and the source with how it was seen. */
import type { Reason } from '#core/decision/answers.ts';
import { ruleById } from '#core/decision/rules/table.ts';
import { CitationNote } from '../support-note.tsx';
import { contactInWords, decisionStatus, factInWords, todayInWords, valueInWords } from '../words.ts';

export const effectInWords = ({ decision, largestStep, today, contact }: Reason['effect']): string =>
  [
    decision ? `no more than ${decisionStatus[decision].word.toLowerCase()}` : '',
    largestStep ? (largestStep === 'repetitions' ? 'a step in repetitions only' : 'a step in load') : '',
    today ? todayInWords[today] : '',
    contact && contact !== 'none' ? contactInWords[contact] : '',
  ]
    .filter(Boolean)
    .join(', ');

const foundInWords = (observed: Reason['observed']): string =>
  Object.entries(observed)
    .map(([name, value]) => `${factInWords(name)} ${valueInWords(value)}`)
    .join(', ');

/** What the rule wanted to know and was not told. */
export const unknownIn = (observed: Reason['observed']): readonly string[] =>
  Object.entries(observed)
    .filter(([, value]) => value === null)
    .map(([name]) => factInWords(name));

export const ReasonView = ({ reason }: { readonly reason: Reason }) => {
  const rule = ruleById.get(reason.rule);
  return (
    <li className="reason keep-together">
      <p>
        <strong>
          {reason.rule} {rule?.title ?? ''}
        </strong>
      </p>
      <p>
        Found: {foundInWords(reason.observed) || 'nothing'}. Threshold: {reason.threshold}. So:{' '}
        {effectInWords(reason.effect)}.
      </p>
      {reason.support === 'clinic-choice' ? (
        <p className="source-note">
          Uses a clinic setting{rule && rule.citations.length > 0 ? '; related source:' : ', no source.'}
        </p>
      ) : null}
      {rule?.citations.map((citation) => (
        <CitationNote key={`${citation.source} ${citation.locator}`} citation={citation} />
      ))}
    </li>
  );
};
