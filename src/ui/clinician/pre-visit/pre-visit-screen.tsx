/** Answers from before a visit, for the clinician. */

import { dayInWords, listed } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/pre-visit.ts';
import type { PreVisitAnswer } from '../episode/answers.ts';
import { ConfirmForm } from './confirm-form.tsx';

const missingWords = (preVisit: PreVisitAnswer): string => {
  const left = preVisit.stillToAsk['low-load'] ?? [];
  return left.length === 0
    ? say('all-answered')
    : say('missing', { questions: listed(left.map(({ clinicianLabel }) => clinicianLabel)) });
};

export const PreVisitScreen = (props: {
  readonly patientId: string;
  readonly preVisit: PreVisitAnswer | null;
  readonly day: Day;
}) => {
  const { preVisit, day } = props;
  if (!preVisit) {
    return <p>{say('none')}</p>;
  }
  if (preVisit.isConfirmed) {
    return <p>{say('confirmed', { date: dayInWords(preVisit.day, day) })}</p>;
  }
  return (
    <div className="stack">
      <p className="lead">{say('waiting', { date: dayInWords(preVisit.day, day) })}</p>
      <p className="soft">{missingWords(preVisit)}</p>
      <ConfirmForm patientId={props.patientId} preVisit={preVisit} day={day} />
    </div>
  );
};
