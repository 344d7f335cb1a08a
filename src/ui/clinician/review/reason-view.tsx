/** One reason of a decision: rule, what was found, threshold, effect, and the source with how it was seen. */
import type { Reason } from '#core/decision/answers.ts';
import { ruleById } from '#core/decision/rules/table.ts';
import { say as sayDecision } from '#messages/en/staff/review/decisions.ts';
import { say } from '#messages/en/staff/review.ts';
import { CitationNote } from '../support-note.tsx';
import { contactInWords, decisionStatus, factInWords, todayInWords, valueInWords } from '../words.ts';

export const effectInWords = ({ decision, largestStep, today, contact }: Reason['effect']): string =>
  [
    decision ? say('no-more-than', { decision: decisionStatus[decision].word.toLowerCase() }) : '',
    largestStep ? (largestStep === 'repetitions' ? say('step-repetitions') : say('step-load')) : '',
    today ? todayInWords[today] : '',
    contact && contact !== 'none' ? contactInWords[contact] : '',
  ]
    .filter(Boolean)
    .join(', ');

const foundInWords = (observed: Reason['observed']): string =>
  Object.entries(observed)
    .filter(([, value]) => value !== 'not-applicable')
    .map(([name, value]) => `${factInWords(name)}: ${valueInWords(value)}`)
    .join('; ');

/** What the rule wanted to know and was not told. */
export const unknownIn = (observed: Reason['observed']): readonly string[] =>
  Object.entries(observed)
    .filter(([, value]) => value === null)
    .map(([name]) => factInWords(name));

/** What was found, and which rule says so; its source is a press away. */
export const ReasonInShort = ({ reason }: { readonly reason: Reason }) => (
  <li>
    <p>
      {ruleById.get(reason.rule)?.title ?? ''} <span className="soft">· {reason.rule}</span>
    </p>
    <p className="soft">
      {sayDecision('found-short', { found: foundInWords(reason.observed) || 'nothing' })}
    </p>
  </li>
);

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
        {say('found', {
          found: foundInWords(reason.observed) || 'nothing',
          threshold: reason.threshold,
          effect: effectInWords(reason.effect),
        })}
      </p>
      {reason.support === 'clinic-choice' ? (
        <p className="source-note">
          {rule && rule.citations.length > 0 ? say('own-setting-sourced') : say('own-setting')}
        </p>
      ) : null}
      {rule?.citations.map((citation) => (
        <CitationNote key={`${citation.source} ${citation.locator}`} citation={citation} />
      ))}
    </li>
  );
};
