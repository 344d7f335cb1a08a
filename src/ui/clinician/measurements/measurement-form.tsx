'use client';
/** One kind of measurement. Unlikely values are asked about before they are kept. */
import { useRouter } from 'next/navigation';
import type { MeasurementForm as Descriptor } from '#core/assessment/measurements/measurement-fields.ts';
import { exercises } from '#core/exercises/catalogue.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/measurements.ts';
import type { Recorded } from '../answers.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { recordMeasurement } from '../forms/sent/measurements.ts';
import { subjectOf } from './measurement-words.ts';

const exerciseChoices = exercises.map(({ id, title }) => ({ value: id, label: title }));

/** Beside each number what it was last time, with its day; the bounds stand after it. */
const hintsOf = (form: Descriptor, previous: Recorded | null, day: Day): Readonly<Record<string, string>> => {
  const known = previous as unknown as Readonly<Record<string, unknown>> | null;
  const last = form.fields.flatMap((field) => {
    const value = known?.[field.name];
    if (typeof value !== 'number' || (field.kind !== 'number' && field.kind !== 'integer')) return [];
    const subject = previous ? subjectOf(previous) : '';
    const [min, max] = [String(field.min), String(field.max)];
    const date = dayInWords(previous!.day, day);
    const hint = subject
      ? say('last-of', { value, date, subject, min, max })
      : say('last', { value, date, min, max });
    return [[field.name, hint]];
  });
  const hints: Record<string, string> = Object.fromEntries(last);
  for (const [name, hint] of Object.entries(form.hints))
    hints[name] = [hint, hints[name]].filter(Boolean).join(' ');
  return hints;
};

export const MeasurementForm = (props: {
  readonly patientId: string;
  readonly form: Descriptor;
  readonly day: Day;
  /** The newest of this kind; its values stand beside the fields. */
  readonly previous: Recorded | null;
}) => {
  const router = useRouter();
  const { form, patientId } = props;
  const start = { day: props.day };
  return (
    <SentFrame
      sent={recordMeasurement}
      about={{ patientId, kind: form.kind }}
      start={start}
      clearsTo={start}
      label={say('record-kind', { kind: form.title.toLowerCase() })}
      choices={{ exerciseId: exerciseChoices }}
      hints={hintsOf(form, props.previous, props.day)}
      onTaken={router.refresh}
    />
  );
};
