'use client';
/** One question about two joints at once: the one, the other, both or neither. */
import type { Joint } from '#core/exercises/joints.ts';
import { AnswerPage } from '../questions/answer-page.tsx';
import { t } from '../words.ts';
import { hintOf } from './joint-questions.ts';
import type { MorningEvent } from './morning.ts';
import { jointMorning, type MorningDraft } from './morning-draft.ts';

export interface WhichJointsProps {
  readonly draft: MorningDraft;
  readonly about: 'swollen' | 'flares';
  readonly send: (event: MorningEvent) => void;
}

type Which = Joint | 'both' | 'neither' | 'unknown';

/** What was said before, where it was said of both. */
const givenOf = ({ draft, about }: Pick<WhichJointsProps, 'draft' | 'about'>): Which | null => {
  const said = draft.joints.map((joint) => {
    const { flare, swelling } = jointMorning(draft, joint);
    if (about === 'flares') return flare;
    return draft.swollen == null || swelling === 'unknown' ? swelling : draft.swollen.includes(joint);
  });
  if (said.some((one) => one === null)) return null;
  if (said.includes('unknown')) return 'unknown';
  const named = draft.joints.filter((_, place) => said[place] === true);
  return named.length === 0 ? 'neither' : named.length > 1 ? 'both' : (named[0] ?? null);
};

export const WhichJointsPage = ({ draft, about, send }: WhichJointsProps) => (
  <AnswerPage<Which>
    question={t(`morning.${about}`)}
    hint={about === 'flares' ? hintOf('flare') : undefined}
    answers={[
      { value: 'neither', label: t('morning.neither') },
      ...draft.joints.map((joint) => ({ value: joint, label: t('morning.the-joint', { joint }) })),
      { value: 'both', label: t('morning.both') },
      { value: 'unknown', label: t('ask.unknown'), isApart: true },
    ]}
    given={givenOf({ draft, about })}
    onAnswer={(which) =>
      send({
        type: about,
        joints:
          which === 'unknown' ? which : which === 'both' ? draft.joints : which === 'neither' ? [] : [which],
      })
    }
  />
);
