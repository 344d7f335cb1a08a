/** Care around the dose: consents, home eligibility for a cuff, limits on a joint, what happened. */

import { isTreatment } from '#core/episode/care-event.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/care.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { CareAnswer, Consents, HomeEligibility } from '../answers.ts';
import { optionInWords } from '../forms/field-words.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { CareForm, type CareFormName } from './care-forms.tsx';
import { ConsentForm } from './consent-form.tsx';
import { Limits } from './limits-on-a-joint.tsx';
import { stillCounts } from './still-counts.ts';
import { TreatmentSection } from './treatment-section.tsx';

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
  'not-asked': say('not-asked'),
} as const;

const wordingInWords = ({ wordingSource, wordingVersion }: Consents['rows'][number]): string =>
  say(wordingSource === 'clinic' ? 'wording.clinic' : 'wording.proposed', { version: wordingVersion });

type Consent = Consents['kinds'][number];

/** Who recorded what was said, when and to which wording; empty where nobody has asked. */
const lastWordOf = (consent: Consent, { consents, clock }: Pick<CareProps, 'consents' | 'clock'>): string => {
  const last = consents.rows.findLast((row) => row.kind === consent.kind);
  return last
    ? `${say('consent-recorded', {
        state: consentStates[last.act],
        at: momentInWords(last.at, clock),
        by: last.by,
        wording: wordingInWords(last),
      })}${last.reason ? `: ${last.reason}` : ''}.`
    : '';
};

const Wording = ({ consent }: { readonly consent: Consent }) => (
  <>
    <p>“{consent.text}”</p>
    {consent.isProposal ? <p className="soft">{say('proposed-wording')}</p> : null}
  </>
);

/** What was said yes to is one line; what is still to be read aloud stands whole. */
const ConsentItem = (props: CareProps & { readonly consent: Consent }) => {
  const { consent, patientId } = props;
  const isGiven = consent.state === 'given';
  return (
    <li className="consent stack-close">
      <h3>
        {consent.title}{' '}
        <StatusTag shape={isGiven ? 'done' : 'unknown'} tone={isGiven ? 'accent' : 'plain'}>
          {consentStates[consent.state]}
        </StatusTag>
      </h3>
      {isGiven ? null : <Wording consent={consent} />}
      <p className="soft small">{lastWordOf(consent, props)}</p>
      {isGiven ? (
        <Disclosure summary={say('consent-more')}>
          <Wording consent={consent} />
          <ConsentForm patientId={patientId} consent={consent} />
        </Disclosure>
      ) : (
        <ConsentForm patientId={patientId} consent={consent} />
      )}
    </li>
  );
};

const ConsentList = (props: CareProps) => (
  <ul className="plain-list consents">
    {props.consents.kinds.map((consent) => (
      <ConsentItem key={consent.kind} {...props} consent={consent} />
    ))}
  </ul>
);

const PainLookup = ({ homeEligibility }: Pick<CareProps, 'homeEligibility'>) => (
  <DataTable
    caption={say('home-eligibility')}
    columns={[
      { key: 'limb', title: 'Limb' },
      { key: 'cuff', title: say('cuff-with-a-gauge') },
      { key: 'wrap', title: say('elastic-wrap') },
    ]}
    rows={homeEligibility.limbs.map((row) => ({
      key: `${row.side} ${row.limb}`,
      cells: [
        `${optionInWords(row.side)} ${row.limb}`,
        row.cuff.length === 0 ? say('eligible') : row.cuff.join(' '),
        row.wrap.length === 0 ? say('eligible') : row.wrap.join(' '),
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

const Events = ({ care, day }: Pick<CareProps, 'care' | 'day'>) => (
  <DataTable
    caption="Events"
    columns={[
      { key: 'day', title: 'Day' },
      { key: 'kind', title: 'Event' },
      { key: 'joint', title: 'Joint' },
    ]}
    rows={care.events
      .filter((event) => !isTreatment(event))
      .map((event) => ({
        key: event.id,
        cells: [
          dayInWords(event.day, day),
          `${optionInWords(event.kind)}${stillCounts(event)}`,
          event.joint === null ? say('none-named') : jointInWords(event.joint),
        ],
      }))}
    empty={say('no-event')}
  />
);

export const CareScreen = (props: CareProps) => (
  <div className="stack-wide">
    <section className="stack-close">
      <h2>Consents</h2>
      {props.consents.monitoringHours ? (
        <p className="soft">{say('monitoring-hours', { hours: props.consents.monitoringHours })}</p>
      ) : null}
      <ConsentList {...props} />
    </section>
    <section className="stack-close">
      <h2>{say('cuff-work-at-home')}</h2>
      <PainLookup {...props} />
      <Add {...props} summary={say('record-a-session')} name="watch" />
      <Add {...props} summary={say('record-what-is-done-alone')} name="check" />
    </section>
    <section className="stack-close">
      <h2>{say('treatment')}</h2>
      <TreatmentSection care={props.care} day={props.day} />
      <Add {...props} summary={say('record-an-event')} name="event" />
    </section>
    <section className="stack-close">
      <h2>{say('limits-and-events')}</h2>
      <Limits {...props} />
      <Add {...props} summary={say('record-a-limit')} name="limit" />
      <Events {...props} />
    </section>
  </div>
);
