/** The bar over a record: who it is, where the person stands, the dates that stop work, places, what is next. */
import { dayInWords } from '#core/review/plain-words.ts';
import { ageYears, type Day } from '#core/time/day.ts';
import { say as sayNext } from '#messages/en/staff/record/next-step.ts';
import { say } from '#messages/en/staff/record.ts';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { Patient, PatientBarAnswer } from '../answers.ts';
import { TelephoneLink } from '../telephone-link.tsx';
import { type ClinicClock, dayAt } from '../when.ts';
import { nextStepInWords } from './next-step.ts';
import { placeOf, places, type RecordPath } from './places.ts';
import { stateInWords } from './state-words.ts';

export const fullName = (person: { readonly givenName: string; readonly familyName: string }): string =>
  `${person.givenName} ${person.familyName}`;

export interface PatientBarProps {
  readonly patient: Patient;
  readonly bar: PatientBarAnswer;
  readonly clock: ClinicClock;
  readonly day: Day;
  readonly section: RecordPath;
}

const State = (props: PatientBarProps) => {
  const [shape, tone, text] = stateInWords(props.bar.state, props.clock, props.day);
  const tag = (
    <StatusTag shape={shape} tone={tone}>
      {text}
    </StatusTag>
  );
  return shape === 'stop' ? <a href={`/patients/${props.patient.id}/warning-signs`}>{tag}</a> : tag;
};

const Who = ({ patient, day }: PatientBarProps) => (
  <>
    <span>{say('born', { date: dayInWords(patient.birthDay), years: ageYears(patient.birthDay, day) })}</span>
    {patient.patientNumber ? <span>{say('patient-number', { number: patient.patientNumber })}</span> : null}
    <span>{patient.profile ? patient.profile.diagnosis : say('no-profile')}</span>
    {patient.phone ? <TelephoneLink phone={patient.phone} /> : <span>{say('no-telephone')}</span>}
  </>
);

type Consent = PatientBarAnswer['consents'][number];

const kindsInWords = (consents: readonly Consent[]): string =>
  consents.map(({ kind }) => say(`consent.${kind}`)).join(', ');

const consentsInWords = ({ bar, clock, day }: PatientBarProps): readonly (readonly [string, boolean])[] => {
  const of = (act: Consent['act']) => bar.consents.filter((consent) => consent.act === act);
  const given = of('given');
  const newest = Math.max(...given.map(({ at }) => at ?? 0));
  const others = (['refused', 'withdrawn', 'not-asked'] as const).flatMap((act) => {
    const kinds = of(act);
    return kinds.length > 0 ? [[say(`consent.${act}`, { kinds: kindsInWords(kinds) }), true] as const] : [];
  });
  const date = given.length > 0 ? dayInWords(dayAt(newest, clock.zone), day) : '';
  return given.length > 0
    ? [[say('consents.given', { kinds: kindsInWords(given), date }), false], ...others]
    : others.map(([text]) => [say('consents.none', { what: text }), true]);
};

const screeningInWords = ({ bar: { screening }, day }: PatientBarProps): readonly [string, boolean] => {
  if (!screening) return [say('screened.never'), true];
  const until = dayInWords(screening.until, day);
  return screening.isOver
    ? [say('screened.over', { until }), true]
    : [say('screened.valid', { date: dayInWords(screening.on, day), until }), false];
};

/** What lapsed or was not given is set in ink; the rest is pale. */
const Dates = (props: PatientBarProps) => (
  <p className="bar-dates">
    {[screeningInWords(props), ...consentsInWords(props)].map(([text, isLoud]) =>
      isLoud ? <strong key={text}>{text}</strong> : <span key={text}>{text}</span>,
    )}
  </p>
);

const Next = ({ bar: { next }, patient, section }: PatientBarProps) => {
  const step = next ? nextStepInWords(patient.id, next) : null;
  const isHere = step?.href.split(/[?#]/)[0] === `/patients/${patient.id}${section}`;
  return (
    <p className="bar-next screen-only">
      <span className="soft">{sayNext('next')}</span>{' '}
      {step === null ? (
        <span>{sayNext('nothing')}</span>
      ) : isHere ? (
        <span>
          <strong>{step.text}</strong> <span className="soft">{sayNext('here')}</span>
        </span>
      ) : (
        <a href={step.href}>{step.text}</a>
      )}
    </p>
  );
};

const Places = ({ patient, section }: PatientBarProps) => (
  <nav aria-label={say('record-of', { name: fullName(patient) })} className="bar-places screen-only">
    <ul>
      {places.map((place) => (
        <li key={place.name}>
          <a
            href={`/patients/${patient.id}${place.pages[0].path}`}
            aria-current={place === placeOf(section) ? 'page' : undefined}
          >
            {place.name}
          </a>
        </li>
      ))}
    </ul>
  </nav>
);

export const PatientBar = (props: PatientBarProps) => {
  const { patient, section } = props;
  const page = placeOf(section).pages.find(({ path }) => path === section);
  return (
    <header className="patient-bar">
      <div className="bar-line">
        <PageHeading>
          {fullName(patient)}
          <span className="visually-hidden">, {page?.text}</span>
        </PageHeading>
        <p className="bar-who">
          <Who {...props} />
          <State {...props} />
          <span className="print-only">{say('as-of', { date: dayInWords(props.day) })}</span>
        </p>
      </div>
      <div className="bar-line">
        <Places {...props} />
        <div className="bar-end">
          <Dates {...props} />
          <Next {...props} />
        </div>
      </div>
    </header>
  );
};
