/** Every episode of care of a patient with its changes, and what may follow. */

import { dayInWords, jointInWords, listed } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { EpisodeAnswer, EpisodesAnswer } from './answers.ts';
import { ChangeForm } from './change-form.tsx';
import { EpisodeForm } from './episode-form.tsx';
import { breakInWords, stateInWords, stateStatus } from './episode-words.ts';

interface EpisodeProps {
  readonly patientId: string;
  readonly course: EpisodesAnswer;
  readonly day: Day;
}

const none = 'not recorded';

const Facts = ({ episode }: { readonly episode: EpisodeAnswer }) => (
  <DefinitionList
    rows={[
      { key: 'joints', name: 'Joints affected', value: listed(episode.joints.map(jointInWords)) },
      { key: 'followed', name: 'Asked about daily', value: listed(episode.followedJoints.map(jointInWords)) },
      {
        key: 'goals',
        name: 'In the patient’s words',
        value: episode.goals.length > 0 ? episode.goals.map((goal) => `“${goal}”`).join(' ') : none,
      },
      { key: 'referrer', name: 'Referred by', value: episode.referrer ?? none },
      {
        key: 'contacts',
        name: 'Other contacts',
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
  <ol className="course" aria-label="Changes, newest first">
    {episode.changes.toReversed().map((change) => (
      <li key={`${change.recordedAt} ${change.to}`}>
        <strong>{stateInWords[change.to]}</strong>
        {change.breakKind ? ` (${breakInWords[change.breakKind]})` : ''} from {dayInWords(change.on, day)}:{' '}
        {change.reason}{' '}
        <span className="soft">
          {change.expectedBack ? `Expected back ${dayInWords(change.expectedBack, day)}. ` : ''}
          Recorded by {change.by}.
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
        <a href={`/patients/${patientId}/self-management${asked}`}>Self-management handout</a>
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
      <Changes episode={episode} day={day} />
      <Documents patientId={patientId} episode={episode} state={state} />
      {may.length > 0 ? (
        <div className="screen-only">
          <Disclosure summary="Record a change">
            <ChangeForm patientId={patientId} episodeId={episode.id} may={may} from={state} day={day} />
          </Disclosure>
        </div>
      ) : (
        <p className="soft">
          Closed. You can still read everything. If the patient returns, open a new episode of care.
        </p>
      )}
    </section>
  );
};

export const EpisodeScreen = (props: EpisodeProps) => (
  <div className="stack-wide">
    <p className="soft">
      During a break nothing is planned or asked, and nothing counts as missed. When the patient returns,
      repeat the screening. Ending care ends all prescriptions and worklist items; the record stays readable.
    </p>
    {props.course.episodes.length === 0 ? <p>No episode of care is recorded yet.</p> : null}
    {props.course.episodes.toReversed().map((episode) => (
      <EpisodeOfCare key={episode.id} {...props} episode={episode} />
    ))}
    <div className="screen-only">
      <Disclosure
        summary={
          props.course.episodes.length === 0 ? 'Open an episode of care' : 'Open another episode of care'
        }
      >
        <EpisodeForm patientId={props.patientId} />
      </Disclosure>
    </div>
  </div>
);
