'use client';
/** Small forms of the care page, each drawn from its descriptor. */
import { useRouter } from 'next/navigation';
import type { Field } from '#core/calculations/describe.ts';
import { eventFields, limitFields } from '#core/episode/care-fields.ts';
import { homeCheckFields, observedSessionFields } from '#core/episode/visit-fields.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/care.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';
import type { Typed } from '../forms/typed.ts';

interface CareFormProps {
  readonly patientId: string;
  readonly day: Day;
}

const usual = (fields: readonly Field[], day: Day): Typed =>
  fields.some((field) => field.name === 'day') ? { day } : {};

const careForms = {
  watch: {
    fields: observedSessionFields,
    label: say('record-the-session'),
    call: (patientId: string, session: unknown) =>
      client.clinician.visits.watch.mutate({ patientId, session }),
  },
  check: {
    fields: homeCheckFields,
    label: say('record-the-check'),
    call: (patientId: string, check: unknown) =>
      client.clinician.visits.checkHome.mutate({ patientId, check }),
  },
  limit: {
    fields: limitFields,
    label: say('record-the-limit'),
    call: (patientId: string, limit: unknown) => client.clinician.care.addLimit.mutate({ patientId, limit }),
  },
  event: {
    fields: eventFields,
    label: say('record-what-happened'),
    call: (patientId: string, event: unknown) => client.clinician.care.addEvent.mutate({ patientId, event }),
  },
} as const;

export type CareFormName = keyof typeof careForms;

export const CareForm = ({ name, patientId, day }: CareFormProps & { readonly name: CareFormName }) => {
  const router = useRouter();
  const { fields, label, call } = careForms[name];
  const start = usual(fields, day);
  return (
    <FormFrame
      prefix={`${name}-`}
      fields={fields}
      start={start}
      clearsTo={start}
      label={label}
      taken="Recorded."
      hints={{
        to: say('date-or-until-lifted'),
        fromDegrees: say('degrees-from-neutral'),
      }}
      send={async (value) => {
        await call(patientId, value);
        router.refresh();
      }}
    />
  );
};
