'use client';
/** Keeps the doses shown above, all or none; each waits to be signed with the others. */
import { useRouter } from 'next/navigation';
import type { TemplateSide } from '#core/prescribing/clinic-template.ts';
import { say } from '#messages/en/staff/prescribing/templates.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { client } from '../../client.ts';
import { useSubmit } from '../../forms/use-submit.ts';

export const AddTemplate = (props: {
  readonly patientId: string;
  readonly templateId: string;
  readonly on: TemplateSide;
  /** As the page shows them. */
  readonly shown: { readonly place: number; readonly dose: unknown }[];
}) => {
  const { patientId, templateId, on, shown } = props;
  const router = useRouter();
  const submit = useSubmit('', 'add-template');
  const add = () =>
    submit.send([], async () => {
      await client.clinician.templates.add.mutate({ patientId, templateId, on, shown });
      router.push(`/patients/${patientId}/prescribe#together-heading`);
    });
  return (
    <div className="stack-close screen-only">
      <ErrorSummary problems={submit.problems} />
      <div>
        <Button id="add-template" onClick={() => void add()} aria-disabled={submit.isBusy || undefined}>
          {submit.isBusy ? say('use.adding') : say('use.add', { count: shown.length })}
        </Button>
      </div>
    </div>
  );
};
