/** The review: picture, words and table of the same rows; then the decisions with their reasons. */

import { signsInWords } from '#core/danger/sign-words.ts';
import { proposeBaseline } from '#core/decision/baseline/propose-baseline.ts';
import { painLimitOver } from '#core/decision/baseline/propose-pain-limit.ts';
import { engineSettingValues } from '#core/decision/settings.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { openSigns } from '#core/plan/plan.ts';
import { settledDecisions } from '#core/review/decision-markers.ts';
import { findingsOf } from '#core/review/findings/all.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { reviewSeries } from '#core/review/series.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/review.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import type { Decision, ReviewAnswer } from '../answers.ts';
import { PlanView } from '../danger/plan-view.tsx';
import { doseTitle } from '../dose-words.ts';
import { BaselineForm } from './baseline-form.tsx';
import { chartNames } from './chart-names.ts';
import { ChoiceLinks } from './choice-links.tsx';
import { Correspondence, NextReview } from './correspondence.tsx';
import { type DecisionContext, DecisionView } from './decision-view.tsx';
import { FindingsView } from './findings-view.tsx';
import { LimbView } from './limb-view.tsx';
import { hrefWith, rangeOf } from './review-choice.ts';
import type { ReviewProps } from './review-props.ts';
import { SeriesView } from './series-view.tsx';

/** The dose itself is changed and approved ahead on pages of its own. */
const DoseLinks = ({ at, line }: { readonly at: DecisionContext; readonly line: string | null }) => {
  const record = `/patients/${at.patientId}`;
  return line === null ? null : (
    <p className="row screen-only">
      <a href={`${record}/prescribe?line=${encodeURIComponent(line)}`}>{say('change-dose')}</a>
      <a href={`${record}/prescriptions`}>{say('approve-ahead')}</a>
    </p>
  );
};

const shownWhole = 3;

const Decisions = ({
  decisions,
  joint,
  at,
  line,
}: {
  readonly decisions: readonly Decision[];
  readonly joint: Joint;
  readonly at: DecisionContext;
  /** The exercise shown. */
  readonly line: string | null;
}) => {
  const settled = [...settledDecisions(decisions, joint)].reverse();
  const kept = new Set(settled.map((decision) => decision.id));
  const interim = decisions
    .filter((decision) => decision.joint === joint && !kept.has(decision.id))
    .reverse();
  const view = (decision: Decision) => <DecisionView key={decision.id} decision={decision} at={at} />;
  return (
    <section className="stack">
      <h2>{say('decisions', { 'joint-name': jointInWords(joint) })}</h2>
      <DoseLinks at={at} line={line} />
      {settled.length === 0 ? <p className="soft">{say('no-decision')}</p> : null}
      {settled.slice(0, shownWhole).map(view)}
      {settled.length > shownWhole ? (
        <Disclosure summary={say('earlier', { count: settled.length - shownWhole })}>
          {settled.slice(shownWhole).map(view)}
        </Disclosure>
      ) : null}
      {interim.length > 0 ? (
        <Disclosure summary={say('replaced', { count: interim.length })}>{interim.map(view)}</Disclosure>
      ) : null}
    </section>
  );
};

const proposalInWords = (review: ReviewAnswer, joint: Joint, day: Day): string => {
  const answer = proposeBaseline(review.record, joint, day);
  if (!answer.ready) return say('no-baseline', { mornings: answer.mornings, needed: answer.needed });
  const { usualPain, widestUsualPainTop, usualStiffnessMinutes, mornings } = answer.proposal;
  const over = engineSettingValues(review.settings)['ceiling-over-usual'];
  return say('proposed', {
    mornings,
    pain: usualPain,
    top: widestUsualPainTop,
    limit: painLimitOver(usualPain, over),
    over,
    stiffness: usualStiffnessMinutes ?? say('stiffness-not-known'),
  });
};

const Usual = ({ patient, review, joint, day }: ReviewProps & { readonly joint: Joint }) => (
  <section className="stack-close screen-only">
    <h2>{say('baseline', { 'joint-name': jointInWords(joint) })}</h2>
    <p>{proposalInWords(review, joint, day)}</p>
    <Disclosure summary={say('baseline.set')}>
      <BaselineForm
        patientId={patient.id}
        joint={joint}
        overUsual={engineSettingValues(review.settings)['ceiling-over-usual']}
        known={review.record.baselines.findLast((row) => row.joint === joint) ?? null}
        seen={review.record.baselines.filter((row) => row.joint === joint).length}
      />
    </Disclosure>
  </section>
);

const seriesFor = ({ choice, review }: ReviewProps, joint: Joint) =>
  reviewSeries({
    record: review.record,
    decisions: review.decisions,
    joint,
    itemId: choice.version?.itemId ?? null,
    measure: choice.measure,
    ...rangeOf(choice, review),
    settings: review.settings,
  });

/** A warning sign stands before the chart: nothing below it is to be decided first. */
const OpenSigns = ({ patient, review }: ReviewProps) => {
  const open = openSigns(review.plan);
  return open.length === 0 ? null : (
    <Notice
      tone="danger"
      title={say('warning', { signs: open.map(({ sign }) => signsInWords(sign.flags)).join('; ') })}
    >
      {say('paused')} <a href={`/patients/${patient.id}/warning-signs`}>{say('record-contact')}</a>
    </Notice>
  );
};

const chartTitle = (version: ReviewProps['choice']['version'], joint: Joint): string =>
  say('chart-of', {
    exercise: version ? doseTitle(version.dose) : say('no-exercise'),
    'joint-name': jointInWords(joint),
  });

export const ReviewScreen = (props: ReviewProps) => {
  const { patient, choice } = props;
  if (!choice.joint) {
    return (
      <p>
        {say('no-joint')} <a href={`/patients/${patient.id}`}>{say('care-profile')}</a>{' '}
        {say('no-joint-first')}
      </p>
    );
  }
  const series = seriesFor(props, choice.joint);
  return (
    <div className="stack-wide">
      <OpenSigns {...props} />
      <ChoiceLinks patientId={patient.id} choice={choice} />
      <SeriesView
        series={series}
        title={chartTitle(choice.version, choice.joint)}
        names={chartNames(props)}
        address={hrefWith(patient.id, choice, {})}
      />
      <LimbView
        checks={props.review.limbChecks}
        prescriptions={props.review.prescriptions}
        clock={props.clock}
      />
      <PlanView plan={props.review.plan} clock={props.clock} />
      <FindingsView findings={findingsOf(series, props.review.record, props.review.settings)} />
      <Decisions
        decisions={props.review.decisions}
        joint={choice.joint}
        line={choice.version?.endedAt === null ? choice.version.itemId : null}
        at={{
          patientId: patient.id,
          responses: props.review.responses,
          proposals: props.review.proposals,
          prescriptions: props.prescriptions,
          signer: props.signer,
          clock: props.clock,
        }}
      />
      <Usual {...props} joint={choice.joint} />
      <NextReview {...props} />
      <Correspondence {...props} />
    </div>
  );
};
