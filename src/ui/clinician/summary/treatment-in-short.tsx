/** What was done about the disease in the last eight weeks; nothing where nothing was recorded. */
import { flareNoteDays } from '#core/episode/documents/flare-course.ts';
import { treatmentLines, treatmentOf } from '#core/episode/treatment/treatment-timeline.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { addDays } from '#core/time/day.ts';
import { say } from '#messages/en/staff/episode/treatment.ts';
import type { SummaryProps } from './summary-props.ts';

export const TreatmentInShort = ({ patient, care, day }: SummaryProps) => {
  const lines = treatmentOf(treatmentLines(care.events), null, addDays(day, 1 - flareNoteDays), day);
  if (lines.length === 0) return null;
  return (
    <section className="stack-close">
      <div className="side-head">
        <h2>{say('lately')}</h2>
        <a href={`/patients/${patient.id}/care`}>Care</a>
      </div>
      <ul className="plain-list lined">
        {lines.toReversed().map((line) => (
          <li key={line.id} className="outcome-line">
            <span>{line.what}</span>
            <strong>{dayInWords(line.day, day)}</strong>
            {line.joint ? <span className="soft">{jointInWords(line.joint)}</span> : null}
          </li>
        ))}
      </ul>
    </section>
  );
};
