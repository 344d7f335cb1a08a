'use client';
/** The short way: everything but the pain, as statements to be agreed with as a whole or asked one by one. */
import { Button } from '#ui/design-system/button.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { flagOptions } from '../questions/flag-list.ts';
import { t } from '../words.ts';
import type { LastMorning, MorningDraft, MorningEvent } from './morning.ts';

export interface UsualPageProps {
  readonly draft: MorningDraft;
  readonly last: LastMorning;
  readonly hasCuff: boolean;
  readonly send: (event: MorningEvent) => void;
}

const statements = (draft: MorningDraft, last: LastMorning): readonly string[] => [
  ...draft.joints.flatMap((joint) => {
    const named = { joint };
    const minutes = last[joint]?.stiffnessMinutes ?? 0;
    const stiff =
      minutes === 0 ? t('morning.usual-stiff-0', named) : t('morning.usual-stiff', { ...named, minutes });
    const swelling = t(`morning.usual-swelling-${last[joint]?.swelling ?? 'none'}`, named);
    return [...(draft.asksStiffness ? [stiff] : []), ...(draft.asksSwelling ? [swelling] : [])];
  }),
  t('morning.usual-flare'),
  t('morning.usual-relief'),
];

export const UsualPage = ({ draft, last, hasCuff, send }: UsualPageProps) => (
  <div className="stack">
    <PageHeading caption={t('morning.caption')}>{t('morning.usual-title')}</PageHeading>
    <ul className="statements">
      {statements(draft, last).map((text) => (
        <li key={text}>{text}</li>
      ))}
      <li>
        {t('morning.usual-flags')}
        <ul className="statements-signs">
          {flagOptions(hasCuff).map(({ value, label }) => (
            <li key={value}>{label}</li>
          ))}
        </ul>
      </li>
    </ul>
    <div className="actions">
      <Button isLarge isWide onClick={() => send({ type: 'usual', last })}>
        {t('morning.usual-yes')}
      </Button>
      <Button tone="plain" isLarge isWide onClick={() => send({ type: 'not-usual' })}>
        {t('morning.usual-no')}
      </Button>
    </div>
  </div>
);
