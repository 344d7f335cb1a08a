'use client';
/** One kind of measurement. Unlikely values are asked about before they are kept. */
import { useRouter } from 'next/navigation';
import { exercises } from '#core/catalogue/catalogue.ts';
import type { Day } from '#core/day.ts';
import type { MeasurementForm as Descriptor } from '#core/model/measurement-fields.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';

const exerciseChoices = exercises.map(({ id, title }) => ({ value: id, label: title }));

export const MeasurementForm = (props: {
  readonly patientId: string;
  readonly form: Descriptor;
  readonly day: Day;
}) => {
  const router = useRouter();
  const { form, patientId } = props;
  const start = { day: props.day };
  return (
    <FormFrame
      prefix={`${form.kind}-`}
      fields={form.fields}
      start={start}
      clearsTo={start}
      label={`Record ${form.title.toLowerCase()}`}
      taken="Recorded."
      choices={{ exerciseId: exerciseChoices }}
      hints={
        form.kind === 'limb-occlusion-pressure'
          ? { secondMmhg: 'At least a minute after the first. The lower of the two is used.' }
          : undefined
      }
      send={async (measurement, confirmed) => {
        await client.staff.measurements.record.mutate({ patientId, measurement, confirmed });
        router.refresh();
      }}
    />
  );
};
