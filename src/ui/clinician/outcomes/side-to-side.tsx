/** One limb against the other, by the newest measurement of each side. */
import { type SideLine, sideLines } from '#core/assessment/course/side-to-side.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import type { CourseAnswer } from '../answers.ts';

interface Props {
  readonly measurements: CourseAnswer['measurements'];
  readonly operations: CourseAnswer['operations'];
  readonly day: Day;
}

const verdicts = {
  differ: say('sides.differ'),
  'within-error': say('sides.within-error'),
  'not-judged': say('sides.not-judged'),
} as const satisfies Record<SideLine['verdict'], string>;

/** Nothing where no thing was measured on both sides. */
export const SideToSide = ({ measurements, operations, day }: Props) => {
  const lines = sideLines(measurements, operations);
  return lines.length === 0 ? null : (
    <section className="stack-close">
      <h2>{say('sides.title')}</h2>
      <ul className="plain-list lined">
        {lines.map(({ key, title, left, right, verdict, sentence, operated }) => (
          <li key={key} className="keep-together">
            <h3>{title}</h3>
            <p>
              {say('sides.left', { value: left.text, date: dayInWords(left.day, day) })}
              {' · '}
              {say('sides.right', { value: right.text, date: dayInWords(right.day, day) })}
            </p>
            {operated ? (
              <p>
                {say('sides.operated', {
                  side: operated.side,
                  procedure: operated.procedure,
                  date: dayInWords(operated.on, day),
                })}
              </p>
            ) : null}
            <p>
              <strong>{verdicts[verdict]}</strong> {sentence}
            </p>
          </li>
        ))}
      </ul>
      <p className="soft">{say('sides.note')}</p>
    </section>
  );
};
