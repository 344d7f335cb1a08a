/** What the clinic sets for the care around a dose: who covers, the words patients consent to, and its own questionnaires. */
import type { ConsentKind } from '#core/episode/consent.ts';
import { type ClinicNumbers, urgentNumberInWords } from '#core/episode/urgent-number.ts';
import { say } from '#messages/en/staff/administration.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { CoveringClinicianForm } from './covering-clinician-form.tsx';
import { type OwnQuestionnaire, Questionnaires } from './questionnaires.tsx';
import { UrgentNumberForm } from './urgent-number-form.tsx';
import { WordingForm } from './wording-form.tsx';

interface Named {
  readonly id: string;
  readonly name: string;
}

export interface CareSettingsProps {
  readonly numbers: ClinicNumbers;
  readonly coveringClinician: Named | null;
  readonly clinicians: readonly Named[];
  readonly questionnaires: readonly OwnQuestionnaire[];
  readonly wordings: readonly {
    readonly kind: ConsentKind;
    readonly title: string;
    readonly wordingVersion: number;
    readonly text: string;
    readonly isProposal: boolean;
  }[];
}

const UrgentNumber = ({ numbers }: Pick<CareSettingsProps, 'numbers'>) => (
  <section className="stack">
    <h2>{say('urgent-number')}</h2>
    <p>{urgentNumberInWords(numbers)}</p>
    <UrgentNumberForm current={numbers.urgentNumber ?? ''} />
  </section>
);

const Covering = ({
  coveringClinician,
  clinicians,
}: Pick<CareSettingsProps, 'coveringClinician' | 'clinicians'>) => (
  <section className="stack">
    <h2>{say('covering')}</h2>
    <p>
      {coveringClinician ? say('covering.passes', { name: coveringClinician.name }) : say('covering.nobody')}
    </p>
    <CoveringClinicianForm clinicians={clinicians} current={coveringClinician?.id ?? ''} />
  </section>
);

export const CareSettingsScreen = ({
  numbers,
  coveringClinician,
  clinicians,
  wordings,
  questionnaires,
}: CareSettingsProps) => (
  <div className="stack-wide">
    <PageHeading>{say('care-settings')}</PageHeading>
    <Covering coveringClinician={coveringClinician} clinicians={clinicians} />
    <UrgentNumber numbers={numbers} />
    <section className="stack">
      <h2>{say('consent.wording')}</h2>
      <p className="soft">{say('consent.note')}</p>
      {wordings.map((wording) => (
        <article key={wording.kind} className="stack-close">
          <h3>{wording.title}</h3>
          <p>
            <StatusTag
              shape={wording.isProposal ? 'unknown' : 'done'}
              tone={wording.isProposal ? 'care' : 'accent'}
            >
              {wording.isProposal
                ? say('wording.proposed', { version: wording.wordingVersion })
                : say('wording.own', { version: wording.wordingVersion })}
            </StatusTag>{' '}
            {wording.isProposal ? <span className="soft">{say('wording.unapproved')}</span> : null}
          </p>
          <p>{wording.text}</p>
          <Disclosure summary={say('wording.write', { title: wording.title })}>
            <WordingForm
              key={`${wording.isProposal} ${wording.wordingVersion}`}
              kind={wording.kind}
              text={wording.text}
            />
          </Disclosure>
        </article>
      ))}
    </section>
    <Questionnaires questionnaires={questionnaires} />
  </div>
);
