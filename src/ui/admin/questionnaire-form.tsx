'use client';
/** Writes a questionnaire of the clinic's own, or its next version. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import {
  mostQuestions,
  type Questionnaire,
  questionKinds,
} from '#core/assessment/questionnaires/questionnaire.ts';
import { say } from '#messages/en/staff/administration.ts';
import { Button } from '#ui/design-system/button.tsx';
import { CheckField } from '#ui/design-system/checkbox-group.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { Asked } from '../account/asked.tsx';
import { change } from '../account/call.ts';
import { useAsking } from '../account/use-asking.ts';
import {
  fieldAt,
  missingIn,
  sentFrom,
  type TypedQuestion,
  typedFrom,
  withoutQuestion,
  withQuestion,
  withTyped,
} from './questionnaire-draft.ts';

const kinds = questionKinds.map((kind) => ({ value: kind, label: say(`questionnaire.kind-${kind}`) }));

interface QuestionFieldsProps {
  readonly place: number;
  readonly question: TypedQuestion;
  readonly errorOf: (field: string) => string | undefined;
  readonly onType: (more: Partial<TypedQuestion>) => void;
  /** Left out where it is the only one. */
  readonly onRemove?: (() => void) | undefined;
}

const QuestionFields = ({ place, question, errorOf, onType, onRemove }: QuestionFieldsProps) => {
  const wrong = (field: string) => {
    const error = errorOf(field);
    return error === undefined ? {} : { error };
  };
  const field = (name: 'text' | 'low' | 'high', maxLength: number) => (
    <TextField
      name={fieldAt(place, name)}
      label={say(`questionnaire.${name}`)}
      maxLength={maxLength}
      value={question[name]}
      {...wrong(fieldAt(place, name))}
      onChange={(event) => onType({ [name]: event.target.value })}
    />
  );
  return (
    <fieldset className="stack-close">
      <legend>{say('questionnaire.question', { number: place + 1 })}</legend>
      {field('text', 200)}
      <SelectField
        name={fieldAt(place, 'kind')}
        label={say('questionnaire.kind')}
        options={kinds}
        value={question.kind}
        {...wrong(fieldAt(place, 'kind'))}
        onChange={(event) => onType({ kind: event.target.value as TypedQuestion['kind'] })}
      />
      {question.kind === 'score' ? (
        <>
          {field('low', 60)}
          {field('high', 60)}
        </>
      ) : null}
      {onRemove ? (
        <Button tone="quiet" onClick={onRemove}>
          {say('questionnaire.remove', { number: place + 1 })}
        </Button>
      ) : null}
    </fieldset>
  );
};

interface FormProps {
  /** null = a new one. */
  readonly before: (Questionnaire & { readonly questionnaireId: string }) | null;
  readonly onDone: () => void;
}

const useQuestionnaire = ({ before, onDone }: FormProps) => {
  const router = useRouter();
  const asking = useAsking('title');
  const [typed, setTyped] = useState(() => typedFrom(before));
  const save = (event: FormEvent) => {
    event.preventDefault();
    const missing = missingIn(typed);
    if (missing.length > 0) return asking.t(missing);
    const input = { questionnaireId: before?.questionnaireId ?? null, questionnaire: sentFrom(typed) };
    void asking.ask(
      () => change('admin.questionnaires.write', input),
      () => {
        onDone();
        router.refresh();
      },
    );
  };
  return { asking, typed, setTyped, save };
};

const Questions = ({ asking, typed, setTyped }: ReturnType<typeof useQuestionnaire>) => (
  <>
    {typed.questions.map((question, place) => (
      <QuestionFields
        // biome-ignore lint/suspicious/noArrayIndexKey: a question has no name but its place.
        key={place}
        place={place}
        question={question}
        errorOf={asking.errorOf}
        onType={(more) => setTyped(withTyped(typed, place, more))}
        onRemove={typed.questions.length > 1 ? () => setTyped(withoutQuestion(typed, place)) : undefined}
      />
    ))}
    {typed.questions.length < mostQuestions ? (
      <Button tone="plain" onClick={() => setTyped(withQuestion(typed))}>
        {say('questionnaire.add-question')}
      </Button>
    ) : null}
  </>
);

export const QuestionnaireForm = (props: FormProps) => {
  const own = useQuestionnaire(props);
  const { asking, typed, setTyped, save } = own;
  const titleError = asking.errorOf('title');
  return (
    <ScriptedForm className="stack" onSubmit={save}>
      <Asked asking={asking} />
      <TextField
        name="title"
        label={say('questionnaire.title')}
        maxLength={80}
        value={typed.title}
        {...(titleError === undefined ? {} : { error: titleError })}
        onChange={(event) => setTyped({ ...typed, title: event.target.value })}
      />
      <Questions {...own} />
      <CheckField
        name="isPermitted"
        label={say('questionnaire.permitted')}
        isChecked={typed.isPermitted}
        onSwitch={(isPermitted) => setTyped({ ...typed, isPermitted })}
      />
      <div className="row">
        <SendButton disabled={asking.isBusy}>{say('questionnaire.save')}</SendButton>
        <Button tone="quiet" onClick={props.onDone}>
          {say('questionnaire.leave')}
        </Button>
      </div>
    </ScriptedForm>
  );
};
