/** One incident: the entry that counts, those it stands in the place of, and what became of it. */
import { dateTimeParts } from '#core/time/date-time.ts';
import { say } from '#messages/en/staff/administration/incidents.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { wholeDayText } from '../../language/text-of-time.ts';
import type { IncidentAnswer } from '../answers.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { StateForm } from './incident-forms.tsx';

type IncidentEntryAnswer = IncidentAnswer['entry'];

const parts = ['happened', 'doneAtOnce', 'wouldPrevent', 'told'] as const;

const whenInWords = (when: string): string => {
  const { day, time } = dateTimeParts(when)!;
  const words = wholeDayText(day);
  return time === null ? say('when.no-time', { when: words }) : say('when.time', { when: words, time });
};

const headingOf = ({ kind, when }: IncidentEntryAnswer): string =>
  `${say(`kind.${kind}`)}: ${whenInWords(when)}`;

const Whom = ({ about }: Pick<IncidentEntryAnswer, 'about'>) =>
  about.is === 'named' ? <a href={`/patients/${about.patientId}`}>{about.name}</a> : say(`about.${about.is}`);

interface EntryProps {
  readonly entry: IncidentEntryAnswer;
  readonly clock: ClinicClock;
}

const EntryWords = ({ entry, clock }: EntryProps) => (
  <>
    <p className="soft small">
      <Whom about={entry.about} />.{' '}
      {say(entry.version === 1 ? 'by.first' : 'by.later', {
        name: entry.writtenBy,
        at: momentInWords(entry.writtenAt, clock),
      })}
    </p>
    <dl className="stack-close">
      {parts.map((part) => (
        <div key={part}>
          <dt className="small">{say(`part.${part}`)}</dt>
          <dd className={entry[part] === null ? 'soft' : 'typed-text'}>{entry[part] ?? say('part.none')}</dd>
        </div>
      ))}
    </dl>
  </>
);

const Earlier = ({ earlier, clock }: Pick<IncidentAnswer, 'earlier'> & Pick<EntryProps, 'clock'>) =>
  earlier.length === 0 ? null : (
    <Disclosure summary={say('earlier', { count: earlier.length })}>
      {earlier.map((entry) => (
        <div key={entry.version} className="stack-close">
          <p>{headingOf(entry)}</p>
          <EntryWords entry={entry} clock={clock} />
        </div>
      ))}
    </Disclosure>
  );

interface IncidentProps {
  readonly incident: IncidentAnswer;
  readonly clock: ClinicClock;
  /** Of the record the page was opened from. */
  readonly patientId: string | null;
}

export const IncidentItem = ({ incident, clock, patientId }: IncidentProps) => {
  const { id, entry, earlier, changes } = incident;
  const address = `/incidents?correct=${id}${patientId ? `&patient=${patientId}` : ''}`;
  return (
    <li className="stack-close">
      <h3>{headingOf(entry)}</h3>
      <EntryWords entry={entry} clock={clock} />
      {changes.map(({ state, by, at, reason }) => (
        <p key={at} className="soft small">
          {say(`changed.${state}`, { name: by, at: momentInWords(at, clock), reason })}
        </p>
      ))}
      <Earlier earlier={earlier} clock={clock} />
      <div className="stack-close screen-only">
        <StateForm incident={incident} />
        {entry.about.is === 'named' ? (
          <a href={`/patients/${entry.about.patientId}/review/known-then?at=${entry.when}`}>
            {say('known-then')}
          </a>
        ) : null}
        <a href={address}>{say('correct')}</a>
      </div>
    </li>
  );
};
