/** What the clinic sets for the care around a dose: who covers, the words patients consent to, and its own questionnaires. */
import type { ClinicDetail } from '#core/clinic/clinic-details.ts';
import type { ConsentKind } from '#core/episode/consent.ts';
import { say as clinic } from '#messages/en/staff/administration/clinic.ts';
import { say } from '#messages/en/staff/administration.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { ClinicTexts, type ClinicTextsProps } from './clinic/clinic-texts.tsx';
import { MonitoringHoursPart, type MonitoringHoursProps } from './clinic/monitoring-hours-form.tsx';
import { CoveringClinicianForm } from './covering-clinician-form.tsx';
import { type OwnQuestionnaire, Questionnaires } from './questionnaires.tsx';
import { WordingForm } from './wording-form.tsx';

interface Named {
  readonly id: string;
  readonly name: string;
}

export interface CareSettingsProps {
  readonly details: Pick<ClinicTextsProps, 'texts' | 'zone'> &
    Pick<MonitoringHoursProps, 'hours'> & {
      readonly history: Readonly<Record<ClinicDetail, MonitoringHoursProps['changes']>>;
    };
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

const Covering = ({
  coveringClinician,
  clinicians,
}: Pick<CareSettingsProps, 'coveringClinician' | 'clinicians'>) => (
  <section className="stack" id="covering">
    <h2>{say('covering')}</h2>
    <p>
      {coveringClinician ? say('covering.passes', { name: coveringClinician.name }) : say('covering.nobody')}
    </p>
    <CoveringClinicianForm clinicians={clinicians} current={coveringClinician?.id ?? ''} />
  </section>
);

export const CareSettingsScreen = ({
  details,
  coveringClinician,
  clinicians,
  wordings,
  questionnaires,
}: CareSettingsProps) => (
  <div className="stack-wide">
    <PageHeading>{clinic('page-title')}</PageHeading>
    <ClinicTexts {...details} />
    <MonitoringHoursPart
      hours={details.hours}
      changes={details.history['monitoring-hours']}
      zone={details.zone}
    />
    <Covering coveringClinician={coveringClinician} clinicians={clinicians} />
    <section className="stack" id="consents">
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
