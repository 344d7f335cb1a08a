'use client';
/** What the patient answered at home: only yes, not known and changed are looked at, corrected, and confirmed. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useCallback, useState } from 'react';
import { dayInWords } from '#core/review/plain-words.ts';
import { isSameAnswer } from '#core/screening/pre-visit.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/pre-visit.ts';
import { client } from '#ui/clinician/client.ts';
import { useSubmit } from '#ui/clinician/forms/use-submit.ts';
import {
  answerInWords,
  answersFrom,
  type ItemState,
  type ScreeningFormState,
  stateFromAnswer,
  unanswered,
} from '#ui/clinician/screening/screening-form-state.ts';
import { ScreeningItemField } from '#ui/clinician/screening/screening-item-field.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import type { PreVisitAnswer } from '../episode/answers.ts';

type Row = PreVisitAnswer['toLookAt'][number];

const stateFrom = ({ now }: Row): ItemState => (now ? stateFromAnswer(now) : unanswered);

/** "no, since 3 Feb"; the question is whether it is still so. */
const beforeWords = ({ item, before, since }: Row, day: Day): string | null => {
  if (!before) return null;
  const answer = answerInWords(item, before);
  return since ? say('still-true', { answer, date: dayInWords(since, day) }) : answer;
};

/** What the clinician put differently from what the patient said. */
const correctionsFrom = (rows: readonly Row[], state: ScreeningFormState) =>
  answersFrom(
    rows.map((row) => row.item),
    state,
  ).filter((answer) => {
    const told = rows.find((row) => row.item.id === answer.item)?.now;
    return !told || !isSameAnswer(answer, told);
  });

export const ConfirmForm = (props: {
  readonly patientId: string;
  readonly preVisit: PreVisitAnswer;
  readonly day: Day;
}) => {
  const router = useRouter();
  const { patientId, preVisit, day } = props;
  const rows = preVisit.toLookAt;
  const [state, setState] = useState<ScreeningFormState>(() =>
    Object.fromEntries(rows.map((row) => [row.item.id, stateFrom(row)])),
  );
  const submit = useSubmit('', 'confirm-answers');
  const change = useCallback(
    (id: string, item: ItemState) => setState((known) => ({ ...known, [id]: item })),
    [],
  );
  const onSubmit = async (event: FormEvent) => {
    event.preventDefault();
    const corrections = correctionsFrom(rows, state);
    const taken = await submit.send([], async () => {
      await client.clinician.preVisits.confirm.mutate({ patientId, preVisitId: preVisit.id, corrections });
    });
    if (taken) router.push(`/patients/${patientId}/screening`);
  };
  return (
    <ScriptedForm className="stack" onSubmit={(event) => void onSubmit(event)}>
      <ErrorSummary problems={submit.problems} />
      {rows.map((row) => (
        <ScreeningItemField
          key={row.item.id}
          item={row.item}
          state={state[row.item.id] ?? unanswered}
          previous={beforeWords(row, day)}
          onChange={change}
        />
      ))}
      <div className="row screening-foot">
        <SendButton id="confirm-answers" aria-disabled={submit.isBusy || undefined}>
          {say('confirm')}
        </SendButton>
        <span role="status">{say('to-review', { count: rows.length, plain: preVisit.plainNo })}</span>
      </div>
    </ScriptedForm>
  );
};
