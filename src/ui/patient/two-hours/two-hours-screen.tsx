'use client';
/** Two hours after a session: the pain of each followed joint, one page each, sent one by one. */
import { useState } from 'react';
import type { Joint } from '#core/exercises/joints.ts';
import { entryFormat, type TwoHoursEntry } from '#core/record/entries.ts';
import type { Carer } from '#core/record/entry-words.ts';
import { Button } from '#ui/design-system/button.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { ScoreQuestion } from '../questions/score-question.tsx';
import type { Score } from '../session/draft.ts';
import { known } from '../session/entry.ts';
import '../asked-words.ts';
import { t } from '../words.ts';

export interface TwoHoursScreenProps {
  readonly joints: readonly Joint[];
  readonly sessionEntryId: string;
  /** Joints answered before this page was opened. */
  readonly answered: number;
  readonly day: string;
  readonly zone: string;
  readonly enteredAs: Carer | null;
  readonly clock: () => number;
  readonly onAnswer: (entry: TwoHoursEntry) => void;
  readonly onHome: () => void;
}

const Thanks = ({ onHome }: Pick<TwoHoursScreenProps, 'onHome'>) => (
  <div className="stack">
    <PageHeading caption={t('two-hours.caption')}>{t('two-hours.done')}</PageHeading>
    <Button isLarge isWide onClick={onHome}>
      {t('frame.home')}
    </Button>
  </div>
);

export const TwoHoursScreen = (props: TwoHoursScreenProps) => {
  const [at, setAt] = useState(props.answered);
  const joint = props.joints[at];
  if (!joint) return <Thanks onHome={props.onHome} />;
  const answer = (score: Score) => {
    const { day, zone, sessionEntryId, enteredAs } = props;
    props.onAnswer({
      format: entryFormat,
      entryId: crypto.randomUUID(),
      day,
      zone,
      sentAt: props.clock(),
      ...(enteredAs ? { enteredAs } : {}),
      redFlags: null,
      extraPainRelief: null,
      sessionEntryId,
      joint,
      pain: known(score),
    });
    setAt(at + 1);
  };
  return (
    <div className="step">
      <ScoreQuestion
        key={joint}
        question={t('two-hours.pain', { joint })}
        low={t('scale.pain-low')}
        high={t('scale.pain-high')}
        onAnswer={answer}
      />
    </div>
  );
};
