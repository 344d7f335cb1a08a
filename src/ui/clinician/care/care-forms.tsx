'use client';
/** Small forms of the care page, each drawn from its descriptor. */
import { useRouter } from 'next/navigation';
import type { Field } from '#core/calculations/describe.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/care.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { careForms } from '../forms/sent/care.ts';
import type { Typed } from '../forms/typed.ts';

interface CareFormProps {
  readonly patientId: string;
  readonly day: Day;
}

const usual = (fields: readonly Field[], day: Day): Typed =>
  fields.some((field) => field.name === 'day') ? { day } : {};

const labels = {
  watch: say('record-the-session'),
  check: say('record-the-check'),
  limit: say('record-the-limit'),
  event: say('record-what-happened'),
} as const;

export type CareFormName = keyof typeof careForms;

export const CareForm = ({ name, patientId, day }: CareFormProps & { readonly name: CareFormName }) => {
  const router = useRouter();
  const about = { patientId };
  const start = usual(careForms[name].fields(about), day);
  return (
    <SentFrame
      sent={careForms[name]}
      about={about}
      start={start}
      clearsTo={start}
      label={labels[name]}
      hints={{
        to: say('date-or-until-lifted'),
        fromDegrees: say('degrees-from-neutral'),
      }}
      onTaken={router.refresh}
    />
  );
};
