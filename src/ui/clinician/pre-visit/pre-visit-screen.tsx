/** Answers from before a visit, for the clinician. */

import { dayInWords, listed } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import type { PreVisitAnswer } from '../episode/answers.ts';
import { ConfirmForm } from './confirm-form.tsx';

const missingWords = (preVisit: PreVisitAnswer): string => {
  const left = preVisit.stillToAsk['low-load'] ?? [];
  return left.length === 0
    ? 'Every question needed for low load is answered.'
    : `Not answered, and needed for low load: ${listed(left.map(({ clinicianLabel }) => clinicianLabel))}.`;
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
        The patient has not answered any pre-visit questions. On the phone they are under “Questions before
        your visit”.
      </p>
    );
  }
  if (preVisit.isConfirmed) {
    return <p>Answered on {dayInWords(preVisit.day, day)}; a screening was recorded afterwards.</p>;
  }
  return (
    <div className="stack">
      <p className="lead">Answered on {dayInWords(preVisit.day, day)}; no screening recorded yet.</p>
      <p className="soft">{missingWords(preVisit)}</p>
      <ConfirmForm patientId={props.patientId} preVisit={preVisit} day={day} />
    </div>
  );
};
