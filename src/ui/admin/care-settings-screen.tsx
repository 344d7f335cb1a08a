/** What the clinic sets for the care around a dose: who covers, and the words patients consent to. */
import type { ConsentKind } from '#core/episode/consent.ts';
import { type ClinicNumbers, urgentNumberInWords } from '#core/episode/urgent-number.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { CoveringClinicianForm } from './covering-clinician-form.tsx';
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
    <h2>Urgent number</h2>
    <p>{urgentNumberInWords(numbers)}</p>
    <UrgentNumberForm current={numbers.urgentNumber ?? ''} />
  </section>
);

const Covering = ({
  coveringClinician,
  clinicians,
}: Pick<CareSettingsProps, 'coveringClinician' | 'clinicians'>) => (
  <section className="stack">
    <h2>Covering clinician</h2>
    <p>
      {coveringClinician
        ? `Urgent items not acknowledged in time pass to ${coveringClinician.name}.`
        : 'No covering clinician is named. Urgent items not acknowledged in time pass to nobody.'}
    </p>
    <CoveringClinicianForm clinicians={clinicians} current={coveringClinician?.id ?? ''} />
  </section>
);

export const CareSettingsScreen = ({
  numbers,
  coveringClinician,
  clinicians,
  wordings,
}: CareSettingsProps) => (
  <div className="stack-wide">
    <PageHeading>Covering clinician, urgent number and consents</PageHeading>
    <Covering coveringClinician={coveringClinician} clinicians={clinicians} />
    <UrgentNumber numbers={numbers} />
    <section className="stack">
      <h2>Consent wording</h2>
      <p className="soft">
        New wording applies to consents given from then on. Each recorded consent keeps the version the
        patient answered.
      </p>
      {wordings.map((wording) => (
        <article key={wording.kind} className="stack-close">
          <h3>{wording.title}</h3>
          <p>
            <StatusTag
              shape={wording.isProposal ? 'unknown' : 'done'}
              tone={wording.isProposal ? 'care' : 'accent'}
            >
              {wording.isProposal
                ? `Proposed wording ${wording.wordingVersion}`
                : `Your clinic’s wording, version ${wording.wordingVersion}`}
            </StatusTag>{' '}
            {wording.isProposal ? (
              <span className="soft">Nobody at your clinic has written or approved it.</span>
            ) : null}
          </p>
          <p>{wording.text}</p>
          <Disclosure summary={`Write new wording: ${wording.title}`}>
            <WordingForm
              key={`${wording.isProposal} ${wording.wordingVersion}`}
              kind={wording.kind}
              text={wording.text}
            />
          </Disclosure>
        </article>
      ))}
    </section>
  </div>
);
