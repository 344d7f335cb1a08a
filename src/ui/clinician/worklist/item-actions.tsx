'use client';
/** What can be done about an item without settling it: seen, taken on, snoozed with a reason. Danger is never snoozed. */
import { useRouter } from 'next/navigation';
import type { Field } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/worklist.ts';
import { Button } from '#ui/design-system/button.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import type { WorklistFilters } from '../answers.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';
import { useSubmit } from '../forms/use-submit.ts';

const fields: readonly Field[] = [
  { name: 'until', kind: 'text', maxLength: 10, about: 'Until' },
  { name: 'reason', kind: 'text', minLength: 1, maxLength: 200, about: 'Reason' },
];

interface OneItem {
  readonly patientId: string;
  readonly itemKey: string;
  /** The item in words, for those who hear the buttons. */
  readonly about: string;
}

const Snooze = ({ patientId, itemKey: key, about }: OneItem) => {
  const router = useRouter();
  return (
    <Disclosure
      summary={
        <>
          Snooze<span className="visually-hidden">: {about}</span>
        </>
      }
    >
      <FormFrame
        prefix={`later-${patientId}-`}
        fields={fields}
        label="Snooze"
        taken="Snoozed."
        hints={{ until: say('snooze-until') }}
        send={async ({ until, reason }) => {
          await client.clinician.worklist.snooze.mutate({
            patientId,
            key,
            until: String(until),
            reason: String(reason),
          });
          router.refresh();
        }}
      />
    </Disclosure>
  );
};

const Assign = (props: OneItem & { readonly colleagues: WorklistFilters['clinicians'] }) => {
  const { patientId, itemKey: key, about, colleagues } = props;
  const router = useRouter();
  return (
    <Disclosure
      summary={
        <>
          Assign<span className="visually-hidden">: {about}</span>
        </>
      }
    >
      <FormFrame
        prefix={`give-${patientId}-`}
        fields={[
          { name: 'userId', kind: 'enum', values: colleagues.map((one) => one.userId), about: 'Colleague' },
        ]}
        choices={{ userId: colleagues.map(({ userId, name }) => ({ value: userId, label: name })) }}
        label="Assign"
        taken="Assigned."
        send={async ({ userId }) => {
          await client.clinician.worklist.assign.mutate({ patientId, key, userId: String(userId) });
          router.refresh();
        }}
      />
    </Disclosure>
  );
};

interface ActionsProps extends OneItem {
  readonly canSnooze: boolean;
  readonly colleagues: WorklistFilters['clinicians'];
}

export const ItemActions = (props: ActionsProps) => {
  const { patientId, itemKey: key, about } = props;
  const router = useRouter();
  const id = `handle-${patientId}`;
  const submit = useSubmit('', id);
  const act = (call: () => Promise<unknown>) =>
    submit.send([], async () => {
      await call();
      router.refresh();
    });
  return (
    <div className="screen-only worklist-actions">
      <ErrorSummary problems={submit.problems} />
      <div className="row">
        <Button
          tone="quiet"
          id={id}
          onClick={() => void act(() => client.clinician.worklist.acknowledge.mutate({ patientId, key }))}
        >
          Acknowledge<span className="visually-hidden">: {about}</span>
        </Button>
        <Button
          tone="quiet"
          onClick={() => void act(() => client.clinician.worklist.take.mutate({ patientId, key }))}
        >
          Take<span className="visually-hidden">: {about}</span>
        </Button>
        {props.colleagues.length > 1 ? <Assign {...props} /> : null}
        {props.canSnooze ? <Snooze patientId={patientId} itemKey={key} about={about} /> : null}
      </div>
    </div>
  );
};
