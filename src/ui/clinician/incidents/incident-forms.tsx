'use client';
/** Writing an incident down, correcting it, closing it and opening it again. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/administration/incidents.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { IncidentAnswer } from '../answers.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import {
  closeIncident,
  correctIncident,
  orSame,
  reopenIncident,
  writeIncident,
} from '../forms/sent/incidents.ts';
import { orNone } from '../forms/sent/sent-form.ts';
import type { Typed } from '../forms/typed.ts';

export const WriteForm = ({ patientId }: { readonly patientId: string | null }) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={writeIncident}
      about={{ patientId: orNone(patientId) }}
      label={say('save')}
      clearsTo={{}}
      onTaken={router.refresh}
    />
  );
};

const typedOf = ({ entry }: IncidentAnswer): Typed => ({
  when: entry.when,
  kind: entry.kind,
  happened: entry.happened,
  doneAtOnce: entry.doneAtOnce ?? '',
  wouldPrevent: entry.wouldPrevent ?? '',
  told: entry.told ?? '',
});

interface CorrectFormProps {
  readonly incident: IncidentAnswer;
  /** null = nobody; left out = whom it was about before. */
  readonly patientId: string | null | undefined;
}

export const CorrectForm = ({ incident, patientId }: CorrectFormProps) => {
  const router = useRouter();
  const about = {
    incidentId: incident.id,
    seen: String(incident.entry.version),
    patientId: patientId === null ? orNone(null) : orSame(patientId),
  };
  return (
    <SentFrame
      sent={correctIncident}
      about={about}
      start={typedOf(incident)}
      label={say('correct.save')}
      onTaken={() => {
        router.push('/incidents');
        router.refresh();
      }}
    />
  );
};

export const StateForm = ({ incident: { id, isOpen } }: { readonly incident: IncidentAnswer }) => {
  const router = useRouter();
  const label = say(isOpen ? 'close' : 'reopen');
  return (
    <Disclosure summary={label}>
      <SentFrame
        sent={isOpen ? closeIncident : reopenIncident}
        about={{ incidentId: id }}
        label={label}
        tone="plain"
        onTaken={router.refresh}
      />
    </Disclosure>
  );
};
