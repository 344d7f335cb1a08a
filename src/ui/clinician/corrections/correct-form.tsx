'use client';
/** Marking one entry as entered in error: struck out, or replaced on the form it was entered with. */
import { useRouter } from 'next/navigation';
import { measurementForm } from '#core/assessment/measurements/measurement-fields.ts';
import type { Field } from '#core/calculations/describe.ts';
import type { CorrectionSubject } from '#core/corrections/correction.ts';
import { contactFields } from '#core/danger/danger-fields.ts';
import { limitFields } from '#core/episode/care-fields.ts';
import { eventFields } from '#core/episode/event-fields.ts';
import { goalFields, goalStateWords } from '#core/episode/goals.ts';
import { observedSessionFields, visitFields } from '#core/episode/visit-fields.ts';
import { visitNoteFields } from '#core/episode/visit-note.ts';
import { exercises } from '#core/exercises/catalogue.ts';
import { baselineFields, clearanceFields, effusionFields } from '#core/record/staff-fields.ts';
import { screeningItem } from '#core/screening/items.ts';
import { type ScreeningItemAnswer, screeningAnswers } from '#core/screening/screening.ts';
import { say } from '#messages/en/staff/corrections.ts';
import type { EnteredRow } from '../answers.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';
import { typedFrom } from '../forms/typed.ts';

type Entered = EnteredRow['entered'];

const why: Field = {
  name: 'whyWrong',
  kind: 'text',
  minLength: 1,
  maxLength: 300,
  about: say('what-was-wrong'),
};

/** Of a screening one answer is put right; the others stay as they were given. */
const oneAnswer: readonly Field[] = [
  { name: 'item', kind: 'text', minLength: 1, maxLength: 60, about: 'Question' },
  { name: 'answer', kind: 'enum', values: screeningAnswers, about: say('right-answer') },
  {
    name: 'note',
    kind: 'text',
    minLength: 1,
    maxLength: 200,
    nullable: true,
    about: say('which-when-where'),
  },
];

/** What it was about stays; what was said of it is put right. */
const about: readonly string[] = ['signIds', 'decisionIds'];
const saidOfContact = contactFields.filter(({ name }) => !about.includes(name));

const fieldsOf = (subject: CorrectionSubject, entered: Entered): readonly Field[] => {
  switch (subject) {
    case 'measurement':
      return measurementForm(String(entered.kind))?.fields ?? [];
    case 'screening':
      return oneAnswer;
    case 'event':
      return eventFields;
    case 'limit':
      return limitFields;
    case 'goal':
      return goalFields;
    case 'baseline':
      return baselineFields;
    case 'effusion-test':
      return effusionFields;
    case 'clearance':
      return clearanceFields;
    case 'supervised-session':
      return observedSessionFields;
    case 'home-answers':
      return [];
    case 'contact':
      return saidOfContact;
    case 'note':
      return visitNoteFields;
    case 'visit':
      return visitFields;
  }
};

const answersIn = (entered: Entered) => entered.answers as readonly ScreeningItemAnswer[];

const replacementOf = (subject: CorrectionSubject, entered: Entered, value: Entered): Entered => {
  if (subject === 'contact') return { signIds: entered.signIds, decisionIds: entered.decisionIds, ...value };
  if (subject !== 'screening') return value;
  const { item, answer, note } = value;
  const others = answersIn(entered).filter((one) => one.item !== item);
  // What stands beside an answer (limb, joint, medicine, day) goes with it and not with another answer.
  const before = answersIn(entered).find((one) => one.item === item && one.answer === answer);
  const right = { ...before, item, answer, ...(note ? { note } : {}) };
  return { sheetVersion: entered.sheetVersion, answers: [...others, right] };
};

const choicesOf = (subject: CorrectionSubject, entered: Entered) => ({
  exerciseId: exercises.map(({ id, title }) => ({ value: id, label: title })),
  ...(subject === 'goal'
    ? { state: Object.entries(goalStateWords).map(([value, label]) => ({ value, label })) }
    : {}),
  ...(subject === 'screening'
    ? {
        item: answersIn(entered).map(({ item, answer }) => ({
          value: item,
          label: `${screeningItem(item)?.clinicianLabel ?? item} (${answer})`,
        })),
      }
    : {}),
});

export interface CorrectFormProps {
  readonly patientId: string;
  readonly subject: CorrectionSubject;
  readonly row: EnteredRow;
  readonly act: 'strike-out' | 'replace';
}

export const CorrectForm = ({ patientId, subject, row, act }: CorrectFormProps) => {
  const router = useRouter();
  const isReplaced = act === 'replace';
  const { entered } = row;
  return (
    <FormFrame
      prefix={`${act}-${row.id}-`}
      fields={isReplaced ? [...fieldsOf(subject, entered), why] : [why]}
      start={isReplaced && subject !== 'screening' ? typedFrom(entered) : {}}
      label={isReplaced ? say('replace-the-entry') : say('strike-out-the-entry')}
      taken={say('marked-as-entered-in-error')}
      choices={choicesOf(subject, entered)}
      send={async ({ whyWrong, ...value }, confirmed) => {
        await client.clinician.corrections.enterInError.mutate({
          patientId,
          subject,
          subjectId: row.id,
          reason: String(whyWrong ?? ''),
          confirmed,
          ...(isReplaced ? { replacement: replacementOf(subject, entered, value) } : {}),
        });
        router.refresh();
      }}
    />
  );
};
