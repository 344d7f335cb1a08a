/** Every episode of care of a patient with its changes, and what may follow. */

import { dayInWords, jointInWords, listed } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/episode.ts';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { PapersToday } from '../documents/papers-today.tsx';
import { addressOfStep } from '../first-visit/step-address.ts';
import type { EpisodeAnswer, EpisodesAnswer } from './answers.ts';
import { ChangeForm } from './change-form.tsx';
import { EpisodeForm } from './episode-form.tsx';
import { breakInWords, stateInWords, stateStatus } from './episode-words.ts';

interface EpisodeProps {
  readonly patientId: string;
  readonly course: EpisodesAnswer;
  readonly day: Day;
}

const none = say('not-recorded');

const Facts = ({ episode }: { readonly episode: EpisodeAnswer }) => (
  <DefinitionList
    rows={[
      { key: 'joints', name: say('joints-affected'), value: listed(episode.joints.map(jointInWords)) },
      {
        key: 'followed',
        name: say('asked-about-daily'),
        value: listed(episode.followedJoints.map(jointInWords)),
      },
      {
        key: 'goals',
        name: say('in-the-patients-words'),
        value: episode.goals.length > 0 ? episode.goals.map((goal) => `“${goal}”`).join(' ') : none,
      },
      { key: 'referrer', name: say('referred-by'), value: episode.referrer ?? none },
      {
        key: 'contacts',
        name: say('other-contacts'),
        value:
          episode.contacts.length > 0
            ? episode.contacts
                .map(({ role, name, phone }) => `${role}: ${name}${phone ? `, ${phone}` : ''}`)
                .join('; ')
            : none,
      },
    ]}
  />
);

const Changes = ({ episode, day }: { readonly episode: EpisodeAnswer; readonly day: Day }) => (
  <ol className="course" aria-label={say('changes-newest-first')}>
    {episode.changes.toReversed().map((change) => (
      <li key={`${change.recordedAt} ${change.to}`}>
        <strong>{stateInWords[change.to]}</strong>
        {change.breakKind ? ` (${breakInWords[change.breakKind]})` : ''}{' '}
        {say('changed-on', { on: dayInWords(change.on, day), reason: change.reason })}{' '}
        <span className="soft">
          {change.expectedBack
            ? `${say('expected-back-on', { on: dayInWords(change.expectedBack, day) })} `
            : ''}
          {say('recorded-by', { by: change.by })}
        </span>
      </li>
    ))}
  </ol>
);

/** What is proposed at the end: who is handed to others gets the exercises from there. */
const Documents = ({
  patientId,
  episode,
  state,
}: {
  readonly patientId: string;
  readonly episode: EpisodeAnswer;
  readonly state: EpisodeAnswer['changes'][number]['to'];
}) => {
  if (state !== 'discharged' && state !== 'transferred') return null;
  const asked = `?episode=${encodeURIComponent(episode.id)}`;
  return (
    <p className="row screen-only">
      <a href={`/patients/${patientId}/letter${asked}`}>Letter</a>
      {state === 'discharged' ? (
        <a href={`/patients/${patientId}/self-management${asked}`}>{say('self-management-handout')}</a>
      ) : null}
    </p>
  );
};

const EpisodeOfCare = ({
  episode,
  course,
  patientId,
  day,
}: EpisodeProps & { readonly episode: EpisodeAnswer }) => {
  const state = episode.changes.at(-1)?.to ?? 'open';
  const { shape, tone } = stateStatus[state];
  const may = Object.entries(course.transitions[state])
    .filter(([, barred]) => barred === null)
    .map(([to]) => to as EpisodeAnswer['changes'][number]['to']);
  return (
    <section className="episode stack">
      <h3>
        {episode.diagnoses.join('; ')}{' '}
        <StatusTag shape={shape} tone={tone}>
          {stateInWords[state]}
        </StatusTag>
      </h3>
      <Facts episode={episode} />
      {may.length > 0 ? (
        <p className="screen-only">
          <a href={addressOfStep(patientId, 'reason')}>{say('put-right')}</a>
        </p>
      ) : null}
      <Changes episode={episode} day={day} />
      <Documents patientId={patientId} episode={episode} state={state} />
      {may.length > 0 ? (
        <div className="screen-only">
          <Disclosure summary={say('record-a-change')}>
            <ChangeForm patientId={patientId} episodeId={episode.id} may={may} from={state} day={day} />
          </Disclosure>
        </div>
      ) : (
        <p className="soft">{say('closed')}</p>
      )}
    </section>
  );
};

export const EpisodeScreen = (props: EpisodeProps & { readonly mayTellOthers: boolean }) => (
  <div className="stack-wide">
    <p className="soft">{say('break-and-end')}</p>
    <PapersToday patientId={props.patientId} mayTellOthers={props.mayTellOthers} />
    {props.course.episodes.length === 0 ? <p>{say('no-episode-of-care')}</p> : null}
    {props.course.episodes.toReversed().map((episode) => (
      <EpisodeOfCare key={episode.id} {...props} episode={episode} />
    ))}
    <div className="screen-only">
      {props.course.episodes.length === 0 ? (
        <p>
          <a href={addressOfStep(props.patientId, 'reason')}>{say('opens-with-the-first-visit')}</a>
        </p>
      ) : (
        <Disclosure summary={say('open-another-episode-of-care')}>
          <EpisodeForm patientId={props.patientId} />
        </Disclosure>
      )}
    </div>
  </div>
);
