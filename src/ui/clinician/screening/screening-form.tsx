'use client';
/** The screening sheet. Recording makes a new dated version; the earlier ones are kept. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useCallback, useState } from 'react';
import { dayInWords } from '#core/review/plain-words.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import { say } from '#messages/en/staff/screening.ts';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import type { ScreeningFormAnswer } from '../answers.ts';
import { client } from '../client.ts';
import { useSubmit } from '../forms/use-submit.ts';
import {
  answerInWords,
  answersFrom,
  type ItemState,
  itemGroups,
  type ScreeningFormState,
  unanswered,
} from './screening-form-state.ts';
import { ScreeningItemField } from './screening-item-field.tsx';

const ItemGroups = ({
  screening,
  state,
  onChange,
}: {
  readonly screening: ScreeningFormAnswer;
  readonly state: ScreeningFormState;
  readonly onChange: (id: string, item: ItemState) => void;
}) => (
  <>
    {itemGroups(screening.items)
      .filter(({ items }) => items.length > 0)
      .map((group) => (
        <section key={group.title} className="stack-close">
          <h3>{group.title}</h3>
          {group.items.map((item) => (
            <ScreeningItemField
              key={item.id}
              item={item}
              state={state[item.id] ?? unanswered}
              previous={
                screening.newest
                  ? answerInWords(
                      item,
                      screening.newest.answers.find((answer) => answer.item === item.id),
                    )
                  : null
              }
              onChange={onChange}
            />
          ))}
        </section>
      ))}
  </>
);

const progressInWords = (answered: number, all: number, taken: string): string =>
  taken !== '' && answered === 0 ? taken : say('progress', { answered, all });

const sendAnswers = async (
  patientId: string,
  screening: { readonly sheetVersion: string; readonly answers: readonly ScreeningItemAnswer[] },
  isAgain: boolean,
): Promise<string> => {
  const { screening: sheets } = client.clinician;
  if (!isAgain) return say('taken', { version: await sheets.record.mutate({ patientId, screening }) });
  const { left } = await sheets.askAgain.mutate({ patientId, screening });
  return left.length === 0 ? say('again.taken') : say('again.left', { count: left.length });
};

interface ScreeningFormProps {
  readonly patientId: string;
  readonly screening: ScreeningFormAnswer;
  /** Only what a change of treatment asks again; the other answers stay as they are. */
  readonly isAgain?: boolean;
}

export const ScreeningForm = ({ patientId, screening, isAgain = false }: ScreeningFormProps) => {
  const router = useRouter();
  const [state, setState] = useState<ScreeningFormState>({});
  const [taken, setTaken] = useState('');
  const submit = useSubmit('', 'record-screening');
  const change = useCallback(
    (id: string, item: ItemState) => setState((known) => ({ ...known, [id]: item })),
    [],
  );
  const answers = answersFrom(screening.items, state);
  const { newest } = screening;
  const send = async (event: FormEvent) => {
    event.preventDefault();
    const none = [{ field: screening.items[0]?.id ?? '', text: say('no-answer') }];
    const wasTaken = await submit.send(answers.length === 0 ? none : [], async () => {
      setTaken(await sendAnswers(patientId, { sheetVersion: screening.version, answers }, isAgain));
    });
    if (!wasTaken) return;
    setState({});
    router.refresh();
  };
  return (
    <ScriptedForm className="stack" onSubmit={(event) => void send(event)}>
      <ErrorSummary problems={submit.problems} />
      {newest && !isAgain ? (
        <p className="soft">{say('replaces', { version: newest.version, date: dayInWords(newest.day) })}</p>
      ) : null}
      <ItemGroups screening={screening} state={state} onChange={change} />
      <div className="row screening-foot">
        <SendButton id="record-screening" aria-disabled={submit.isBusy || undefined}>
          {submit.isBusy ? 'Recording…' : say(isAgain ? 'again.record' : 'record')}
        </SendButton>
        <span role="status">
          {isAgain ? taken : progressInWords(answers.length, screening.items.length, taken)}
        </span>
      </div>
    </ScriptedForm>
  );
};
