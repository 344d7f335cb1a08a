'use client';
/** Where the patient usually comes; the worklist can be narrowed to it. */
import { useRouter } from 'next/navigation';
import type { Field } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/record.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { setSite } from '../forms/sent/record.ts';

export interface SiteFormProps {
  readonly patientId: string;
  readonly sites: readonly { readonly id: string; readonly name: string }[];
  readonly siteId: string | null;
}

export const SiteForm = ({ patientId, sites, siteId }: SiteFormProps) => {
  const router = useRouter();
  const field: Field = {
    name: 'siteId',
    kind: 'enum',
    values: sites.map(({ id }) => id),
    about: 'Site',
  };
  const known = sites.find(({ id }) => id === siteId);
  return sites.length === 0 ? null : (
    <section className="stack-close">
      <h2>{say('usual-site')}</h2>
      <p>{known ? say('attends', { name: known.name }) : say('no-site')}</p>
      <SentFrame
        sent={setSite}
        about={{ patientId }}
        fields={[field]}
        start={siteId === null ? {} : { siteId }}
        choices={{ siteId: sites.map(({ id, name }) => ({ value: id, label: name })) }}
        label={say('site-save')}
        onTaken={router.refresh}
      />
    </section>
  );
};
