/** The decision that needs an answer, whole; the earlier ones a line each, without a live button. */
import { Fragment } from 'react';
import type { Joint } from '#core/exercises/joints.ts';
import { openSigns } from '#core/plan/plan.ts';
import { settledDecisions } from '#core/review/decision-markers.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review/decisions.ts';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { Decision, Response } from '../answers.ts';
import { decisionStatus } from '../words.ts';
import { DecisionCard, type DecisionContext } from './decision-card.tsx';
import { hrefWith } from './review-choice.ts';
import type { ReviewProps } from './review-props.ts';

const answerInWords = (response: Response | undefined): string => {
  if (!response) return say('earlier.open');
  const { kind, answeredName: name } = response;
  return kind === 'accept' ? say('earlier.agreed', { name }) : say('earlier.overridden', { name });
};

interface EarlierProps {
  readonly decisions: readonly Decision[];
  /** Replaced on the same day by what came after. */
  readonly replaced: ReadonlySet<string>;
  readonly review: ReviewProps;
}

const Earlier = ({ decisions, replaced, review }: EarlierProps) => (
  <ul className="plain-list lined earlier">
    {decisions.map((decision) => {
      const { word, shape, tone } = decisionStatus[decision.decision];
      const date = dayInWords(decision.day, review.day);
      const response = review.review.responses.find((one) => one.decisionId === decision.id);
      const href = hrefWith(review.patient.id, review.choice, { decision: decision.id });
      return (
        <li key={decision.id}>
          <a href={`${href}#decision-${decision.id}`} aria-label={say('earlier.read', { date })}>
            {date}
          </a>
          <StatusTag shape={shape} tone={tone}>
            {word}
          </StatusTag>
          <span className="soft">
            {replaced.has(decision.id) ? say('earlier.of-day') : answerInWords(response)}
          </span>
        </li>
      );
    })}
  </ul>
);

/** Other joints whose decision nobody has answered: one press away, never unsaid. */
const OtherJoints = ({ review, joint }: { readonly review: ReviewProps; readonly joint: Joint }) => {
  const asks = review.review.plan.asks.filter(
    (ask) => ask.settled === null && ask.joint !== joint && ask.contact !== 'none',
  );
  return asks.length === 0 ? null : (
    <p>
      {say('others')}{' '}
      {asks.map((ask, place) => (
        <Fragment key={ask.id}>
          {place > 0 ? ', ' : ''}
          <a href={hrefWith(review.patient.id, review.choice, { joint: ask.joint })}>
            {jointInWords(ask.joint)}
          </a>
        </Fragment>
      ))}
    </p>
  );
};

/** The dose itself is changed and approved ahead on pages of its own. */
const DoseLinks = ({ patient, choice: { version }, review }: ReviewProps) =>
  version?.endedAt === null ? (
    <p className="row screen-only">
      <a href={`/patients/${patient.id}/prescribe?line=${encodeURIComponent(version.itemId)}`}>
        {say('change-dose')}
      </a>
      {/* Nothing is signed ahead for somebody whose warning sign nobody has looked at. */}
      {openSigns(review.plan).length > 0 ? null : (
        <a href={`/patients/${patient.id}/prescriptions`}>{say('approve-ahead')}</a>
      )}
    </p>
  ) : null;

const listedAtOnce = 3;

/** Those that stood at the end of their day first; every one, replaced or not, by address. */
const EarlierDecisions = (props: EarlierProps) => {
  const { decisions, replaced, review } = props;
  const listed = review.choice.isEveryDecision
    ? decisions
    : decisions.filter(({ id }) => !replaced.has(id)).slice(0, listedAtOnce);
  const rest = decisions.length - listed.length;
  return (
    <section className="stack-close">
      <div className="side-head">
        <h2>{say('earlier')}</h2>
      </div>
      {decisions.length === 0 ? <p className="soft">{say('earlier.none')}</p> : null}
      <Earlier {...props} decisions={listed} />
      {rest > 0 ? (
        <p className="screen-only">
          <a href={hrefWith(review.patient.id, review.choice, { earlier: 'all' })}>
            {say('earlier.more', { count: rest })}
          </a>
        </p>
      ) : null}
    </section>
  );
};

export const Decisions = ({ review, joint }: { readonly review: ReviewProps; readonly joint: Joint }) => {
  const { decisions } = review.review;
  const own = decisions.filter((decision) => decision.joint === joint);
  const settled = [...settledDecisions(decisions, joint)].reverse();
  const kept = new Set(settled.map(({ id }) => id));
  const [newest] = settled;
  const asked = own.find(({ id }) => id === review.choice.decisionId);
  const shown = asked ?? newest;
  const replaced = new Set(own.filter(({ id }) => !kept.has(id)).map(({ id }) => id));
  const others = own.filter(({ id }) => id !== shown?.id).sort((a, b) => b.evaluatedAt - a.evaluatedAt);
  const at: DecisionContext = {
    patientId: review.patient.id,
    responses: review.review.responses,
    proposals: review.review.proposals,
    prescriptions: review.prescriptions,
    signer: review.signer,
    clock: review.clock,
    isSignOpen: openSigns(review.review.plan).length > 0,
    replaced,
  };
  // What still asks for the clinic is answered wherever it is read: a pause that later answers do not lift.
  const asks = new Set(review.review.plan.asks.map(({ id }) => id));
  return (
    <>
      {shown ? (
        <DecisionCard decision={shown} at={at} isLive={shown.id === newest?.id || asks.has(shown.id)} />
      ) : (
        <p className="soft">{say('no-decision')}</p>
      )}
      {shown && newest && shown.id !== newest.id ? (
        <p>
          <a href={hrefWith(review.patient.id, review.choice, {})}>{say('newest')}</a>
        </p>
      ) : null}
      <OtherJoints review={review} joint={joint} />
      <DoseLinks {...review} />
      <EarlierDecisions decisions={others} replaced={replaced} review={review} />
    </>
  );
};
