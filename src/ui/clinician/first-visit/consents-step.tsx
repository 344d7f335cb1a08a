'use client';
/** Who it is, and what the patient consents to once each wording was read aloud. */
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/first-visit.ts';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import type { Patient } from '../answers.ts';
import { fullName } from '../record/patient-bar.tsx';
import { SavedStep, type StepProps, useStep } from './step-frame.tsx';

export const ConsentsStep = (props: StepProps & { readonly patient: Patient }) => {
  const at = useStep(props);
  const { patient, page } = props;
  return (
    <SavedStep {...props} at={at}>
      <p>
        <strong>{fullName(patient)}</strong>, {say('born', { date: dayInWords(patient.birthDay) })}.{' '}
        {patient.phone ? say('telephone', { phone: patient.phone }) : say('no-telephone')}{' '}
        <a href={`/patients/${patient.id}#person`}>{say('put-right')}</a>
      </p>
      <p className="soft">{say('read-aloud')}</p>
      {page.consents.map(({ kind, title, text, isProposal }) => (
        <RadioGroup
          key={kind}
          name={`consents.${kind}`}
          legend={title}
          hint={
            <>
              “{text}”{isProposal ? ` ${say('proposed-wording')}` : ''}
            </>
          }
          isWrapped
          error={at.submit.errorOf(`consents.${kind}`)}
          options={[
            { value: 'given', label: say('consents') },
            { value: 'refused', label: say('refuses') },
          ]}
          chosen={at.typed[`consents.${kind}`] as 'given' | 'refused' | undefined}
          onChoose={(said) => at.onType(`consents.${kind}`, said)}
        />
      ))}
      <p className="soft">{say('cuff-consents-later')}</p>
    </SavedStep>
  );
};
