/** Care around the dose: consents, home eligibility for a cuff, limits on a joint, what happened. */

import { degreesAllowed } from '#core/episode/limit-degrees.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { CareAnswer, Consents, HomeEligibility } from '../answers.ts';
import { optionInWords } from '../forms/field-words.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { CareForm, type CareFormName } from './care-forms.tsx';
import { ConsentForm } from './consent-form.tsx';

export interface CareProps {
  readonly patientId: string;
  readonly consents: Consents;
  readonly homeEligibility: HomeEligibility;
  readonly care: CareAnswer;
  readonly clock: ClinicClock;
  readonly day: Day;
}

const consentStates = {
  given: 'Given',
  refused: 'Refused',
  withdrawn: 'Withdrawn',
  'not-asked': 'Not asked',
} as const;

const wordingInWords = ({ wordingSource, wordingVersion }: Consents['rows'][number]): string =>
  `${wordingSource === 'clinic' ? 'your clinic’s' : 'the proposed'} wording ${wordingVersion}`;

const ConsentList = ({ patientId, consents, clock }: CareProps) => (
  <ul className="plain-list stack">
    {consents.kinds.map((consent) => {
      const last = consents.rows.findLast((row) => row.kind === consent.kind);
      return (
        <li key={consent.kind} className="consent stack-close">
          <h3>
            {consent.title}{' '}
            <StatusTag
              shape={consent.state === 'given' ? 'done' : 'unknown'}
              tone={consent.state === 'given' ? 'accent' : 'plain'}
            >
              {consentStates[consent.state]}
            </StatusTag>
          </h3>
          <p>“{consent.text}”</p>
          <p className="soft">
            {consent.isProposal ? 'Proposed wording; your clinic has not reviewed it. ' : ''}
            {last
              ? `${consentStates[last.act]} ${momentInWords(last.at, clock)}, recorded by ${last.by}, to ${wordingInWords(last)}${last.reason ? `: ${last.reason}` : ''}.`
              : 'Consent has not been asked for.'}
          </p>
          <ConsentForm patientId={patientId} consent={consent} />
        </li>
      );
    })}
  </ul>
);

const PainLookup = ({ homeEligibility }: Pick<CareProps, 'homeEligibility'>) => (
  <DataTable
    caption="Home eligibility for each limb"
    columns={[
      { key: 'limb', title: 'Limb' },
      { key: 'cuff', title: 'Cuff with a gauge' },
      { key: 'wrap', title: 'Elastic wrap' },
    ]}
    rows={homeEligibility.limbs.map((row) => ({
      key: `${row.side} ${row.limb}`,
      cells: [
        `${optionInWords(row.side)} ${row.limb}`,
        row.cuff.length === 0 ? 'Eligible: every condition is recorded' : row.cuff.join(' '),
        row.wrap.length === 0 ? 'Eligible: every condition is recorded' : row.wrap.join(' '),
      ],
    }))}
  />
);

const Add = (
  props: { readonly summary: string; readonly name: CareFormName } & Pick<CareProps, 'patientId' | 'day'>,
) => (
  <div className="screen-only">
    <Disclosure summary={props.summary}>
      <CareForm name={props.name} patientId={props.patientId} day={props.day} />
    </Disclosure>
  </div>
);

/** An entry in error that counts beside the one in its place. */
const stillCounts = (row: { readonly correctedPending?: true }): string =>
  row.correctedPending ? ' (entered in error; counts until the new plan is seen)' : '';

const Limits = ({ care, day }: Pick<CareProps, 'care' | 'day'>) => (
  <DataTable
    caption="Limits on a joint"
    columns={[
      { key: 'joint', title: 'Joint' },
      { key: 'kind', title: 'Limit' },
      { key: 'days', title: 'Days' },
      { key: 'author', title: 'Set by' },
    ]}
    rows={care.limits.map((limit) => ({
      key: limit.id,
      cells: [
        optionInWords(limit.joint),
        `${optionInWords(limit.kind)}${limit.limitKg === null ? '' : `, ${limit.limitKg} kg`}${degreesAllowed(limit)}${stillCounts(limit)}`,
        `${dayInWords(limit.from, day)} ${limit.to === null ? 'until lifted' : `to ${dayInWords(limit.to, day)}`}`,
        limit.author,
      ],
    }))}
    empty="No limit is recorded."
  />
);

const Events = ({ care, day }: Pick<CareProps, 'care' | 'day'>) => (
  <DataTable
    caption="Events"
    columns={[
      { key: 'day', title: 'Day' },
      { key: 'kind', title: 'Event' },
      { key: 'joint', title: 'Joint' },
    ]}
    rows={care.events.map((event) => ({
      key: event.id,
      cells: [
        dayInWords(event.day, day),
        `${optionInWords(event.kind)}${stillCounts(event)}`,
        event.joint === null ? 'none named' : jointInWords(event.joint),
      ],
    }))}
    empty="No change of medicine, injection, operation, fall or illness is recorded."
  />
);

export const CareScreen = (props: CareProps) => (
  <div className="stack-wide">
    <section className="stack-close">
      <h2>Consents</h2>
      {props.consents.monitoringHours ? (
        <p className="soft">Monitoring hours: {props.consents.monitoringHours}</p>
      ) : null}
      <ConsentList {...props} />
    </section>
    <section className="stack-close">
      <h2>Cuff work at home</h2>
      <PainLookup {...props} />
      <Add {...props} summary="Record a supervised session" name="watch" />
      <Add {...props} summary="Record what the patient can do alone" name="check" />
    </section>
    <section className="stack-close">
      <h2>Limits and events</h2>
      <Limits {...props} />
      <Add {...props} summary="Record a limit" name="limit" />
      <Events {...props} />
      <Add {...props} summary="Record an event" name="event" />
    </section>
  </div>
);
