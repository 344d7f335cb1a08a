/** Answers from before a visit, for the clinician. */

import { dayInWords, listed } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import type { PreVisitAnswer } from '../episode/answers.ts';
import { ConfirmForm } from './confirm-form.tsx';

const missingWords = (preVisit: PreVisitAnswer): string => {
  const left = preVisit.stillToAsk['low-load'] ?? [];
  return left.length === 0
    ? 'Everything low load needs is answered.'
    : `Left out, and needed before low load opens: ${listed(left.map(({ clinicianLabel }) => clinicianLabel))}.`;
};

export const PreVisitScreen = (props: {
  readonly patientId: string;
  readonly preVisit: PreVisitAnswer | null;
  readonly day: Day;
}) => {
  const { preVisit, day } = props;
  if (!preVisit) {
    return (
      <p>
        The patient has answered nothing before a visit. On the phone the questions stand under “Questions
        before your visit”.
      </p>
    );
  }
  if (preVisit.isConfirmed) {
    return <p>Answered on {dayInWords(preVisit.day, day)}; a screening has been recorded since.</p>;
  }
  return (
    <div className="stack">
      <p className="lead">Answered on {dayInWords(preVisit.day, day)}, and no screening yet.</p>
      <p className="soft">{missingWords(preVisit)}</p>
      <ConfirmForm patientId={props.patientId} preVisit={preVisit} day={day} />
    </div>
  );
};
