/** What one reads before an appointment: three sentences, the picture, the plan, goals, outcomes and limits. */
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/record/summary.ts';
import { capital } from '../capital.ts';
import { agoInWords } from '../when.ts';
import { CoursePicture } from './course-picture.tsx';
import { GoalsInShort, OutcomesInShort } from './outcomes-in-short.tsx';
import { LimitsInShort, PersonSection } from './person-section.tsx';
import { PlanInForce } from './plan-in-force.tsx';
import type { SummaryProps } from './summary-props.ts';
import { TreatmentInShort } from './treatment-in-short.tsx';

const Sentences = ({ summary: { sentences } }: SummaryProps) => (
  <dl className="summary-sentences">
    <div>
      <dt>{say('at-usual')}</dt>
      <dd>{sentences.atUsual}</dd>
    </div>
    <div>
      <dt>{say('last-step')}</dt>
      <dd>{sentences.lastStep}</dd>
    </div>
    <div>
      <dt>Open</dt>
      <dd>{sentences.open}</dd>
    </div>
  </dl>
);

/** The first is the open sentence; the rest stand in the order of the worklist. */
const AlsoOpen = ({ bar: { items }, clock }: SummaryProps) =>
  items.length < 2 ? null : (
    <section className="stack-close">
      <h2>{say('more')}</h2>
      <ul className="plain-list lined">
        {items.map((item) => (
          <li key={`${item.key} ${item.since}`}>
            {item.sentence} <span className="soft">{agoInWords(item.since, clock)}</span>
          </li>
        ))}
      </ul>
    </section>
  );

const Course = ({ patient, summary: { picture, joint, itemId } }: SummaryProps) => (
  <section className="stack-close">
    <div className="side-head">
      <h2>{joint ? say('course', { 'joint-name': capital(jointInWords(joint)) }) : 'Dose'}</h2>
      <p className="soft">{picture ? say('course.note') : ''}</p>
      <a
        href={`/patients/${patient.id}/review${joint && itemId ? `?joint=${joint}&line=${encodeURIComponent(itemId)}` : ''}`}
      >
        Review
      </a>
    </div>
    {picture ? (
      <>
        <CoursePicture picture={picture} />
        {picture.steps.some(({ share }) => share === null) ? <p>{say('course.no-height')}</p> : null}
        <p className="soft">{say('key')}</p>
      </>
    ) : (
      <p className="soft">{say('course.none')}</p>
    )}
  </section>
);

export const SummaryScreen = (props: SummaryProps) => (
  <div className="stack-wide">
    <div className="work-answer">
      <div className="stack">
        <Sentences {...props} />
        <AlsoOpen {...props} />
        <Course {...props} />
        <GoalsInShort {...props} />
      </div>
      <div className="stack">
        <PlanInForce {...props} />
        <TreatmentInShort {...props} />
        <OutcomesInShort {...props} />
        <LimitsInShort {...props} />
      </div>
    </div>
    <PersonSection {...props} />
  </div>
);
