'use client';
/** Forms that open under a row: the contact, a reply, putting off, giving away. */
import type { Field } from '#core/calculations/describe.ts';
import { mostHoursOf } from '#core/danger/contact-again.ts';
import { say } from '#messages/en/staff/worklist.ts';
import { client } from '../client.ts';
import { ContactForm } from '../danger/contact-form.tsx';
import { FormFrame } from '../forms/form-frame.tsx';
import type { RowProps } from './row-state.ts';
import { undoOf } from './undo-handling.ts';

type FormProps = RowProps & { readonly close: () => void };

/** By the corrections: what it had ended is open again, and the contact stays on record as entered in error. */
const strikeOut = async (patientId: string, contactId: string): Promise<void> => {
  await client.clinician.corrections.enterInError.mutate({
    patientId,
    subject: 'contact',
    subjectId: contactId,
    reason: say('contact-undone'),
  });
};

export const RowContact = ({ row, againHours, mostAgainHours, onDone, close }: FormProps) => {
  if (row.primary.act !== 'contact') return null;
  const { urgencies, ...about } = row.primary.about;
  return (
    <>
      <ContactForm
        patientId={row.patientId}
        {...about}
        againHours={againHours}
        mostHours={mostHoursOf(urgencies, mostAgainHours)}
        onRecorded={(contactId, hours) => {
          onDone({
            id: contactId,
            text: hours === null ? say('contact-recorded') : say('contact-missed', { count: hours }),
            note: say('contact-note'),
            undo: () => strikeOut(row.patientId, contactId),
          });
          close();
        }}
      />
      <p className="soft">{say('stays-stopped')}</p>
    </>
  );
};

const replyFields: readonly Field[] = [
  { name: 'text', kind: 'text', minLength: 1, maxLength: 2000, about: 'Message' },
];

export const ReplyForm = ({ row, onDone, close }: FormProps) => (
  <FormFrame
    prefix={`reply-${row.patientId}-`}
    fields={replyFields}
    label={say('send')}
    taken={say('sent')}
    send={async ({ text }) => {
      const { patientId } = row;
      const id = await client.clinician.review.write.mutate({ patientId, text: String(text ?? '') });
      onDone({ id, text: say('sent'), note: say('sent-stays'), undo: null });
      close();
    }}
  />
);

const snoozeFields: readonly Field[] = [
  { name: 'until', kind: 'day', about: 'Until' },
  { name: 'reason', kind: 'text', minLength: 1, maxLength: 200, about: 'Reason' },
];

export const SnoozeForm = ({ row, onDone, close }: FormProps) => (
  <FormFrame
    prefix={`later-${row.patientId}-`}
    fields={snoozeFields}
    label={say('snooze')}
    taken={say('snoozed')}
    hints={{ until: say('snooze-until') }}
    send={async ({ until, reason }) => {
      const { patientId } = row;
      const { key } = row.item;
      await client.clinician.worklist.snooze.mutate({
        patientId,
        key,
        until: String(until),
        reason: String(reason),
      });
      onDone({
        id: `snooze:${patientId}:${key}`,
        text: say('snoozed-to', { until: String(until) }),
        note: '',
        undo: () => client.clinician.worklist.unsnooze.mutate({ patientId, keys: [key] }),
      });
      close();
    }}
  />
);

export const AssignForm = ({ row, colleagues, onDone, close }: FormProps) => (
  <FormFrame
    prefix={`give-${row.patientId}-`}
    fields={[
      { name: 'userId', kind: 'enum', values: colleagues.map((one) => one.userId), about: 'Colleague' },
    ]}
    choices={{ userId: colleagues.map(({ userId, name }) => ({ value: userId, label: name })) }}
    label={say('assign')}
    taken={say('assigned-done')}
    send={async ({ userId }) => {
      const { patientId } = row;
      await client.clinician.worklist.assign.mutate({
        patientId,
        key: row.item.key,
        userId: String(userId),
      });
      const name = colleagues.find((one) => one.userId === userId)?.name ?? '';
      onDone({
        id: `assign:${patientId}:${row.item.key}`,
        text: say('given', { name }),
        ...undoOf(row, 'assign'),
      });
      close();
    }}
  />
);
