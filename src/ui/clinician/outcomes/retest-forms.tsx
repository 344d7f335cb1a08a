'use client';
/** Planning a measure to be taken again, changing when, and stopping it. */
import { useRouter } from 'next/navigation';
import { measureOf } from '#core/assessment/measures/registry.ts';
import { type RetestDue, retestKinds } from '#core/assessment/retest-plan.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { planRetest, stopRetest } from '../forms/sent/measurements.ts';

const measureChoices = retestKinds.map((kind) => ({ value: kind, label: measureOf(kind).title }));

/** What is planned of one measure already; null = a further one. */
type Planned = { readonly patientId: string; readonly planned: RetestDue | null };

export const RetestForm = ({ patientId, planned }: Planned) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={planRetest}
      about={{ patientId, of: planned?.measure ?? 'new' }}
      start={
        planned
          ? {
              measure: planned.measure,
              ...(planned.on ? { dueOn: planned.on } : {}),
              ...(planned.everyDays === null ? {} : { everyDays: String(planned.everyDays) }),
            }
          : {}
      }
      // What is changed stays as it was saved, so that it can be changed again.
      {...(planned ? {} : { clearsTo: {} })}
      label={say('retest.save')}
      choices={{ measure: measureChoices.filter(({ value }) => !planned || value === planned.measure) }}
      hints={{ everyDays: say('retest.every-hint') }}
      onTaken={router.refresh}
    />
  );
};

export const StopRetestForm = ({ patientId, measure }: { patientId: string; measure: string }) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={stopRetest}
      about={{ patientId, of: measure }}
      clearsTo={{}}
      label={say('retest.stop')}
      onTaken={router.refresh}
    />
  );
};
