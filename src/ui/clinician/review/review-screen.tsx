/** The review: the decision that needs an answer beside the picture; words, table and trends under it. */

import { signsInWords } from '#core/danger/sign-words.ts';
import { openSigns } from '#core/plan/plan.ts';
import { findingsOf } from '#core/review/findings/all.ts';
import { say } from '#messages/en/staff/review.ts';
import { Notice } from '#ui/design-system/notice.tsx';
import { PlanView } from '../danger/plan-view.tsx';
import { BaselineSection } from './baseline-section.tsx';
import { chartTitle, picturesOf, seriesFor } from './chart/pictures.ts';
import { ChoiceLinks } from './choice-links.tsx';
import { Correspondence, NextReview } from './correspondence.tsx';
import { Decisions } from './decisions.tsx';
import { FindingsView } from './findings-view.tsx';
import { JointPictures } from './joints/joint-pictures.tsx';
import { LimbView } from './limb-view.tsx';
import { hrefWith } from './review-choice.ts';
import type { ReviewProps } from './review-props.ts';
import { SeriesView } from './series-view.tsx';

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

export const ReviewScreen = (props: ReviewProps) => {
  const { patient, choice, review } = props;
  if (!choice.joint) {
    return (
      <p>
        {say('no-joint')} <a href={`/patients/${patient.id}`}>{say('care-profile')}</a>{' '}
        {say('no-joint-first')}
      </p>
    );
  }
  const series = seriesFor(props, choice.joint, choice.version?.itemId ?? null);
  const { chart, joints } = picturesOf(props, series);
  return (
    <div className="stack">
      <OpenSigns {...props} />
      <div className="work-answer answer-first">
        <div className="beside stack">
          <PlanView plan={review.plan} clock={props.clock} />
          <Decisions review={props} joint={choice.joint} />
          <BaselineSection {...props} joint={choice.joint} />
        </div>
        <div className="stack">
          <SeriesView
            series={series}
            chart={chart}
            title={chartTitle(choice.version, choice.joint)}
            dose={review.dose}
            address={hrefWith(patient.id, choice, {})}
            choices={<ChoiceLinks patientId={patient.id} choice={choice} />}
            joints={<JointPictures pictures={joints} />}
            isTable={choice.isTable}
          />
          <LimbView checks={review.limbChecks} prescriptions={review.prescriptions} clock={props.clock} />
          <FindingsView findings={findingsOf(series, review.record, review.settings)} />
          <div className="review-foot">
            <Correspondence {...props} />
            <NextReview {...props} />
          </div>
        </div>
      </div>
    </div>
  );
};
