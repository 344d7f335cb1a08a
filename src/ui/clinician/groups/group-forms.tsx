'use client';
/** Planning a group hour, correcting it, ending it, and who joins or leaves. */
import { useRouter } from 'next/navigation';
import { type GroupHourEntry, groupHourFields } from '#core/clinic/group-hour.ts';
import { say } from '#messages/en/staff/groups/hours.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { GroupHourAnswer, PatientLine } from '../answers.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import {
  cancelGroupHour,
  correctGroupHour,
  groupHourInError,
  joinGroup,
  leaveGroup,
  planGroupHour,
  planGroupHourAgain,
} from '../forms/sent/groups.ts';

export interface Clinician {
  readonly id: string;
  readonly name: string;
}

const fieldsOf = (clinicians: readonly Clinician[]) => ({
  fields: groupHourFields.map((field) =>
    field.name === 'clinicianId'
      ? {
          name: field.name,
          kind: 'enum' as const,
          values: clinicians.map(({ id }) => id),
          about: field.about,
        }
      : field,
  ),
  choices: { clinicianId: clinicians.map(({ id, name }) => ({ value: id, label: name })) },
  // The hour is the clinic's: erasing a patient does not reach its words.
  hints: { name: say('no-names') },
});

export const PlanForm = ({ clinicians }: { readonly clinicians: readonly Clinician[] }) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={planGroupHour}
      about={{}}
      {...fieldsOf(clinicians)}
      label={say('plan.save')}
      onTaken={(hourId) => router.push(`/groups/${String(hourId)}/roster`)}
    />
  );
};

const typedOf = (entry: GroupHourEntry) => ({
  name: entry.name,
  place: entry.place,
  when: entry.when,
  minutes: String(entry.minutes),
  clinicianId: entry.clinicianId,
});

interface OfHour {
  readonly hour: Pick<GroupHourAnswer, 'id' | 'entry' | 'ended'>;
}

export const CorrectForm = ({ hour, clinicians }: OfHour & { readonly clinicians: readonly Clinician[] }) => {
  const router = useRouter();
  return (
    <Disclosure summary={say('correct')}>
      <SentFrame
        sent={correctGroupHour}
        about={{ hourId: hour.id, seen: String(hour.entry.version) }}
        {...fieldsOf(clinicians)}
        start={typedOf(hour.entry)}
        label={say('correct.save')}
        onTaken={router.refresh}
      />
    </Disclosure>
  );
};

const endings = [
  { sent: cancelGroupHour, label: say('cancel') },
  { sent: groupHourInError, label: say('error') },
] as const;
const again = [{ sent: planGroupHourAgain, label: say('again') }] as const;

export const StateForms = ({ hour: { id, ended } }: OfHour) => {
  const router = useRouter();
  return (ended === null ? endings : again).map(({ sent, label }) => (
    <Disclosure key={sent.name} summary={label}>
      <SentFrame
        sent={sent}
        about={{ hourId: id }}
        hints={{ reason: say('no-names') }}
        label={label}
        tone="plain"
        onTaken={router.refresh}
      />
    </Disclosure>
  ));
};

interface JoinProps {
  readonly hourId: string;
  /** Of the clinic, who does not belong to it. */
  readonly people: readonly PatientLine[];
}

export const JoinForm = ({ hourId, people }: JoinProps) => {
  const router = useRouter();
  const values = people.map(({ id }) => id);
  return (
    <SentFrame
      sent={joinGroup}
      about={{ hourId }}
      fields={[{ name: 'person', kind: 'enum', values, about: say('add.who') }]}
      choices={{
        person: people.map(({ id, familyName, givenName }) => ({
          value: id,
          label: `${familyName}, ${givenName}`,
        })),
      }}
      label={say('add.save')}
      clearsTo={{}}
      onTaken={router.refresh}
    />
  );
};

export const LeaveForm = ({ hourId, patientId }: { readonly hourId: string; readonly patientId: string }) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={leaveGroup}
      about={{ hourId, patientId }}
      label={say('remove')}
      tone="plain"
      onTaken={router.refresh}
    />
  );
};
