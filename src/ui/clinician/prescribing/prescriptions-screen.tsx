/** Prescriptions: what waits for a signature, what is in force, what came before. */
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import { say as sayOfDocuments } from '#messages/en/staff/documents.ts';
import { say as sayTemplate } from '#messages/en/staff/prescribing/templates.ts';
import { say } from '#messages/en/staff/prescribing.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { Mark } from '#ui/design-system/mark.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import type { ApprovedAhead, Consents, DangerAnswer, Prescriptions, Proposal, Version } from '../answers.ts';
import { StandsNow } from '../danger/plan-view.tsx';
import { PrintPlan } from '../documents/print-plan.tsx';
import { doseInWords, doseTitle } from '../dose-words.ts';
import { daysApartInWords } from '../programme/days-apart-words.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { ApproveAhead } from './approve-ahead.tsx';
import { EndForm } from './end-form.tsx';
import { SignButton } from './sign-button.tsx';
import { SaveTemplate } from './templates/save-template.tsx';
import { stateInWords, VersionView } from './version-view.tsx';

export interface PrescriptionsProps {
  readonly patientId: string;
  readonly prescriptions: Prescriptions;
  readonly plan: DangerAnswer['plan'];
  readonly proposals: readonly Proposal[];
  readonly approvals: readonly ApprovedAhead[];
  readonly signer: string;
  readonly consents: Consents;
  readonly clock: ClinicClock;
}

/** What an unsigned increase changes, from the proposal of the same decision and exercise. */
const changesOf = (version: Version, proposals: readonly Proposal[]): readonly string[] =>
  proposals.find((one) => one.itemId === version.itemId && one.decisionId === version.decisionId)?.changes ??
  [];

const withoutTreatmentConsent = {
  'not-asked': say('consent.not-asked'),
  refused: say('consent.refused'),
  withdrawn: say('consent.withdrawn'),
} as const;

const TreatmentConsent = ({ consents }: Pick<PrescriptionsProps, 'consents'>) => {
  const state = consents.kinds.find(({ kind }) => kind === 'treatment')?.state ?? 'not-asked';
  return state === 'given' ? null : (
    <Notice tone={state === 'not-asked' ? 'plain' : 'care'} title={withoutTreatmentConsent[state]} />
  );
};

/** Said where it is signed and where it stands. */
const DaysApart = ({ version }: { readonly version: Version }) => {
  const text = daysApartInWords(version.dose, version.plannedDays);
  return text === null ? null : (
    <p className="card-line card-care">
      <Mark shape="care" />
      <span>{text}</span>
    </p>
  );
};

const Unsigned = (props: PrescriptionsProps) => (
  <section className="stack" id="unsigned">
    <h2>{say('to-sign')}</h2>
    <TreatmentConsent {...props} />
    {props.prescriptions.unsigned.length === 0 ? <p className="soft">{say('nothing-to-sign')}</p> : null}
    {props.prescriptions.unsigned.map((version) => (
      <VersionView
        key={version.id}
        version={version}
        clock={props.clock}
        said={
          <>
            {changesOf(version, props.proposals).map((change) => (
              <p key={change}>{change}</p>
            ))}
            <DaysApart version={version} />
          </>
        }
      >
        <SignButton
          patientId={props.patientId}
          prescriptionId={version.id}
          signer={props.signer}
          title={doseTitle(version.dose)}
          readAt={props.clock.now}
        />
      </VersionView>
    ))}
  </section>
);

/** Whether steps of an exercise are approved ahead, as the heading of its box. */
const aheadInWords = (approvals: readonly ApprovedAhead[], itemId: string): string =>
  approvals.some((row) => row.itemId === itemId && row.withdrawnAt === null)
    ? say('ahead.approved')
    : say('ahead.approve');

const InForce = (props: PrescriptionsProps) => (
  <section className="stack">
    <h2>{say('in-force')}</h2>
    {props.prescriptions.inForce.length === 0 ? <p className="soft">{say('none-in-force')}</p> : null}
    {props.prescriptions.inForce.map((version) => (
      <VersionView
        key={version.id}
        version={version}
        clock={props.clock}
        said={
          <>
            <StandsNow plan={props.plan} itemId={version.itemId} />
            <DaysApart version={version} />
          </>
        }
      >
        <p className="screen-only">
          <a
            href={`/patients/${props.patientId}/prescribe?method=${version.dose.method}&line=${version.itemId}`}
          >
            {say('write-version')}
          </a>
        </p>
        <div className="screen-only">
          <Disclosure summary={aheadInWords(props.approvals, version.itemId)}>
            <ApproveAhead
              patientId={props.patientId}
              itemId={version.itemId}
              approvals={props.approvals.filter((row) => row.itemId === version.itemId)}
              signedOn={Object.fromEntries(
                props.approvals.map((row) => [row.id, momentInWords(row.signedAt, props.clock)]),
              )}
            />
          </Disclosure>
          <Disclosure summary={say('end.summary')}>
            <EndForm patientId={props.patientId} prescriptionId={version.id} />
          </Disclosure>
        </div>
      </VersionView>
    ))}
  </section>
);

const earlierOf = ({ versions, inForce, unsigned }: Prescriptions): readonly Version[] => {
  const shown = new Set([...inForce, ...unsigned].map((version) => version.id));
  return versions.filter((version) => !shown.has(version.id)).reverse();
};

export const PrescriptionsScreen = (props: PrescriptionsProps) => (
  <div className="stack-wide">
    <Unsigned {...props} />
    <InForce {...props} />
    <div className="screen-only">
      <Disclosure summary={sayOfDocuments('plan-title')}>
        <PrintPlan patientId={props.patientId} />
      </Disclosure>
      {props.prescriptions.inForce.length > 0 ? (
        <Disclosure summary={sayTemplate('save.summary')}>
          <SaveTemplate
            patientId={props.patientId}
            doses={props.prescriptions.inForce.map(({ id, dose }) => ({
              id,
              title: `${doseTitle(dose)}, ${doseInShort(dose)}`,
            }))}
          />
        </Disclosure>
      ) : null}
    </div>
    <Disclosure summary={say('earlier.count', { count: earlierOf(props.prescriptions).length })}>
      <DataTable
        caption={say('earlier')}
        hidesCaption
        columns={[
          { key: 'exercise', title: 'Exercise' },
          { key: 'dose', title: 'Dose' },
          { key: 'state', title: 'State' },
        ]}
        rows={earlierOf(props.prescriptions).map((version) => ({
          key: version.id,
          cells: [doseTitle(version.dose), doseInWords(version.dose), stateInWords(version, props.clock)],
        }))}
        empty={say('earlier.none')}
      />
    </Disclosure>
    <p className="print-only">
      {props.consents.monitoringHours ? `${say('hours', { hours: props.consents.monitoringHours })} ` : ''}
      {say('not-around-the-clock')}
    </p>
    <p className="print-only">{say('judgement')}</p>
  </div>
);
