/** The first question of the morning stands on today's page; its answer goes on to the next. */
import type { TodayView } from '#api/patient/today-view.ts';
import { Scores } from '../questions/scores.tsx';
import type { Score } from '../session/draft.ts';
import { t } from '../words.ts';

export interface MorningQuestionProps {
  readonly view: Pick<TodayView, 'followedJoints'>;
  readonly isReady: boolean;
  readonly onPain: (pain: Score) => void;
}

export const MorningQuestion = ({ view, isReady, onPain }: MorningQuestionProps) => {
  const [joint] = view.followedJoints;
  return joint === undefined ? null : (
    <section className="first stack-close">
      <h2 id="question">{t('morning.pain', { joint })}</h2>
      <Scores low={t('scale.pain-low')} high={t('scale.pain-high')} isDisabled={!isReady} onAnswer={onPain} />
    </section>
  );
};
