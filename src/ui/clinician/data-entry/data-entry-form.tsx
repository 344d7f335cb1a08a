'use client';
/** A session or a morning typed by the clinic from paper or from a call; marked so for everybody who reads it. */
import { type FormEvent, useRef, useState } from 'react';
import { heldSeconds } from '#core/decision/dose/volume.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { newsKinds } from '#core/record/entry-words.ts';
import { stopReasons } from '#core/record/record.ts';
import { say } from '#messages/en/staff/data-entry.ts';
import { client } from '#ui/clinician/client.ts';
import { type Submit, useSubmit } from '#ui/clinician/forms/use-submit.ts';
import { boundField } from '#ui/design-system/bound-field.ts';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { sessionAnswers, type Typed, type TypedExercise, unreadable, unreadableMorning } from './answers.ts';
import { Head, type Kind, missing, type Way } from './data-entry-head.tsx';
import { Choice, type FieldsProps, MorningJoint, SessionJoint, scores } from './joint-fields.tsx';
import { type AskedMornings, morningAnswers } from './morning-answers.ts';

export interface DataEntryFormProps extends AskedMornings {
  readonly patientId: string;
  readonly exercises: readonly TypedExercise[];
  readonly joints: readonly Joint[];
  /** Of these, those that a session asks about. */
  readonly sessionJoints: readonly Joint[];
}

const worded = (value: string) => ({ value, label: value.replaceAll('-', ' ') });
const reasons = stopReasons.filter((reason) => reason !== 'none' && reason !== 'unknown').map(worded);
const newsOptions = [{ value: 'none', label: say('asked-none') }, ...newsKinds.map(worded)];

const ExerciseFields = ({ exercise, ...props }: FieldsProps & { readonly exercise: TypedExercise }) => {
  const { itemId } = exercise;
  return (
    <fieldset className="field stack-close">
      <legend className="field-legend">{exercise.title}</legend>
      <TextField
        {...boundField(props, `counts-${itemId}`)}
        label={say(heldSeconds(exercise.dose) === null ? 'repetitions-of-each-set' : 'holds-of-each-set')}
        hint={say('separate-sets-by-commas')}
        isOptional
      />
      <NumberField {...boundField(props, `load-${itemId}`)} label={say('weight-used')} unit="kg" isOptional />
      <TextField
        {...boundField(props, `reserve-${itemId}`)}
        label={say('reserve-of-each-set')}
        hint={say('reserve-meaning')}
        isOptional
      />
      <Choice {...props} name={`stop-${itemId}`} label={say('why-a-set-fell-short')} options={reasons} />
    </fieldset>
  );
};

const SessionFields = ({
  exercises,
  joints,
  ...props
}: FieldsProps & Pick<DataEntryFormProps, 'exercises' | 'joints'>) => (
  <>
    <Choice
      {...props}
      name="kind"
      label={say('the-session')}
      options={[
        { value: 'full', label: say('as-planned') },
        { value: 'bad-day', label: say('the-easier-session') },
      ]}
    />
    {exercises.map((exercise) => (
      <ExerciseFields key={exercise.itemId} {...props} exercise={exercise} />
    ))}
    {joints.map((joint) => (
      <SessionJoint key={joint} {...props} joint={joint} />
    ))}
    <Choice {...props} name="extra" label={say('did-more-than-planned')} />
    <Choice {...props} name="news" label={say('new-since-the-last-session')} options={newsOptions} />
    <Choice {...props} name="other-joint" label={say('another-joint-was-worse')} />
  </>
);

const MorningFields = ({ asked, ...props }: FieldsProps & { readonly asked: DataEntryFormProps }) => (
  <>
    {asked.joints.map((joint) => (
      <MorningJoint key={joint} {...props} joint={joint} swellingNotAsked={asked.swellingNotAsked} />
    ))}
    {asked.asksFatigue ? (
      <Choice {...props} name="fatigue" label={say('tiredness')} options={scores} />
    ) : null}
    {asked.asksOtherJoint ? (
      <Choice {...props} name="other-joint-morning" label={say('another-joint-is-worse')} />
    ) : null}
  </>
);

const Asked = (props: FieldsProps) => (
  <>
    <Choice {...props} name="relief" label={say('extra-pain-relief')} />
    <Choice
      {...props}
      name="flags"
      label={say('warning-signs')}
      options={[{ value: 'none', label: say('asked-one-by-one-none') }]}
    />
    <Notice tone="care" title={say('no-warning-sign-here')}>
      {say('call-the-patient')}
    </Notice>
  </>
);

const storedText: Readonly<Record<string, string>> = {
  stored: say('saved'),
  known: say('already-saved'),
};

const answersOf = (kind: Kind, entryId: string, props: DataEntryFormProps, typed: Typed) =>
  kind === 'session'
    ? sessionAnswers(entryId, props.exercises, props.sessionJoints, typed)
    : morningAnswers(entryId, props.joints, props, typed);

/** What is typed, and the one id it is kept under however often the button is pressed. */
const useTyped = () => {
  const [typed, setTyped] = useState<Typed>({});
  const [said, setSaid] = useState('');
  const entryId = useRef('');
  const onType = (name: string, value: string) => {
    setSaid('');
    setTyped((before) => ({ ...before, [name]: value }));
  };
  const takenAs = (stored: string) => {
    setSaid(storedText[stored] ?? say('differs-from-saved'));
    entryId.current = '';
    setTyped({});
  };
  const idOfThis = () => {
    entryId.current ||= crypto.randomUUID();
    return entryId.current;
  };
  return { typed, said, onType, takenAs, idOfThis };
};

const settling =
  <V extends string>(submit: Submit, name: string, take: (value: V) => void) =>
  (value: V) => {
    submit.answered(name, value);
    take(value);
  };

export const DataEntryForm = (props: DataEntryFormProps) => {
  const { patientId, exercises, joints } = props;
  const [kind, setKind] = useState<Kind | null>(null);
  const [way, setWay] = useState<Way | null>(null);
  const { typed, said, onType, takenAs, idOfThis } = useTyped();
  const submit = useSubmit('', 'save-entry');
  const fields: FieldsProps = {
    typed,
    onType: (name, value) => settling(submit, name, (text: string) => onType(name, text))(value),
    errorOf: submit.errorOf,
  };
  const save = (event: FormEvent) => {
    event.preventDefault();
    const problems = [
      ...missing(kind, way, typed),
      ...(kind === 'session' ? unreadable(exercises, typed) : unreadableMorning(joints, typed)),
    ];
    void submit.send(problems, async () => {
      if (kind === null || way === null || !typed.day) return;
      const answers = answersOf(kind, idOfThis(), props, typed);
      const sent = { patientId, kind, enteredAs: way, day: typed.day, answers };
      takenAs((await client.clinician.entries.send.mutate(sent)).stored);
    });
  };
  return (
    <ScriptedForm className="stack" onSubmit={save}>
      <ErrorSummary problems={submit.problems} />
      <Head
        {...fields}
        kind={kind}
        way={way}
        onKind={settling<Kind>(submit, 'kind-of-entry', setKind)}
        onWay={settling<Way>(submit, 'way', setWay)}
      />
      {kind === 'session' ? (
        <SessionFields {...fields} exercises={exercises} joints={props.sessionJoints} />
      ) : null}
      {kind === 'morning' ? <MorningFields {...fields} asked={props} /> : null}
      {kind === null ? null : <Asked {...fields} />}
      <div className="row">
        <SendButton id="save-entry" aria-disabled={submit.isBusy || undefined}>
          {say('save-these-answers')}
        </SendButton>
        <span role="status">{said}</span>
      </div>
    </ScriptedForm>
  );
};
