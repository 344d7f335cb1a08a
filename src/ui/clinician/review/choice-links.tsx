/** What the chart shows, chosen by links, so that it works without a script and can be sent on. */

import { measureTitles } from '#core/review/load-of-session.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { reviewWindows } from '#core/review/settings.ts';
import { say } from '#messages/en/staff/review.ts';
import { doseTitle } from '../dose-words.ts';
import { hrefWith, type ReviewChoice } from './review-choice.ts';

interface Option {
  readonly key: string;
  readonly text: string;
  readonly href: string;
  readonly isChosen: boolean;
}

const Options = ({ name, options }: { readonly name: string; readonly options: readonly Option[] }) => {
  // An id holds no space, or the list would have no name.
  const id = `choice-${name.toLowerCase().replaceAll(' ', '-')}`;
  return options.length === 0 ? null : (
    <div className="choice-links">
      <span className="choice-name" id={id}>
        {name}
      </span>
      <ul aria-labelledby={id}>
        {options.map((option) => (
          <li key={option.key}>
            <a href={option.href} aria-current={option.isChosen ? 'true' : undefined}>
              {option.text}
            </a>
          </li>
        ))}
      </ul>
    </div>
  );
};

export const ChoiceLinks = ({
  patientId,
  choice,
}: {
  readonly patientId: string;
  readonly choice: ReviewChoice;
}) => {
  const option = (key: string, text: string, isChosen: boolean, more: Record<string, string>): Option => ({
    key,
    text,
    isChosen,
    href: hrefWith(patientId, choice, more),
  });
  return (
    <nav aria-label={say('choice.title')} className="chart-options screen-only">
      <Options
        name="Joint"
        options={choice.joints.map((joint) =>
          option(joint, jointInWords(joint), joint === choice.joint, { joint }),
        )}
      />
      <Options
        name="Exercise"
        options={choice.versions.map((row) =>
          option(
            row.itemId,
            row.endedAt === null ? doseTitle(row.dose) : say('choice.ended', { title: doseTitle(row.dose) }),
            row.itemId === choice.version?.itemId,
            { line: row.itemId },
          ),
        )}
      />
      <Options
        name={say('choice.measure')}
        options={choice.measures.map((measure) =>
          option(measure, measureTitles[measure].title, measure === choice.measure, { measure }),
        )}
      />
      <Options
        name="Time"
        options={reviewWindows.map(({ days, title }) =>
          option(String(days), title, days === choice.days, { days: String(days) }),
        )}
      />
    </nav>
  );
};
