/** What the chart shows, chosen by links in one line, so that it works without a script and can be sent on. */

import { measureTitles } from '#core/review/load-of-session.ts';
import { reviewWindows } from '#core/review/settings.ts';
import { say } from '#messages/en/staff/review/chart.ts';
import { doseTitle } from '../dose-words.ts';
import { hrefWith, type ReviewChoice } from './review-choice.ts';

interface Option {
  readonly key: string;
  readonly text: string;
  readonly href: string;
  readonly isChosen: boolean;
}

const Options = ({ name, options }: { readonly name: string; readonly options: readonly Option[] }) => (
  <ul aria-label={name}>
    {options.map((option) => (
      <li key={option.key}>
        <a href={option.href} aria-current={option.isChosen ? 'true' : undefined}>
          {option.text}
        </a>
      </li>
    ))}
  </ul>
);

/** The one that is chosen; the others open under it. */
const Folded = (props: {
  readonly name: string;
  readonly chosen: string;
  readonly options: readonly Option[];
}) =>
  props.options.length < 2 ? null : (
    <details className="choice-folded">
      <summary>
        {props.name} {props.chosen}
      </summary>
      <Options {...props} />
    </details>
  );

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
      <Folded
        // The heading names the one that is shown.
        name={say('choice.exercise')}
        chosen=""
        options={choice.versions.map((row) =>
          option(
            row.itemId,
            row.endedAt === null ? doseTitle(row.dose) : say('choice.ended', { title: doseTitle(row.dose) }),
            row.itemId === choice.version?.itemId,
            { line: row.itemId },
          ),
        )}
      />
      <Folded
        name={say('choice.measure')}
        chosen={measureTitles[choice.measure].title}
        options={choice.measures.map((measure) =>
          option(measure, measureTitles[measure].title, measure === choice.measure, { measure }),
        )}
      />
      <div className="choice-times">
        <Options
          name="Time"
          options={reviewWindows.map(({ days, title }) =>
            option(String(days), title, days === choice.days, { days: String(days) }),
          )}
        />
      </div>
    </nav>
  );
};
