/** The baseline of a joint: what is proposed from the diary, and a form to set it. */
import { proposeBaseline } from '#core/decision/baseline/propose-baseline.ts';
import { painLimitOver } from '#core/decision/baseline/propose-pain-limit.ts';
import { engineSettingValues } from '#core/decision/settings.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/review.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { ReviewAnswer } from '../answers.ts';
import { BaselineForm } from './baseline-form.tsx';
import type { ReviewProps } from './review-props.ts';

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

export const BaselineSection = ({ patient, review, joint, day }: ReviewProps & { readonly joint: Joint }) => (
  <section className="stack-close screen-only">
    <h2>{say('baseline', { 'joint-name': jointInWords(joint) })}</h2>
    <p>{proposalInWords(review, joint, day)}</p>
    <p>
      <a href={`/patients/${patient.id}/review/what-if?joint=${joint}`}>{say('what-if')}</a>
    </p>
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
