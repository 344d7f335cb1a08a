'use client';
/** The short way: everything but the pain, as statements to be agreed with as a whole or asked one by one. */
import { Button } from '#ui/design-system/button.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { flagOptions } from '../questions/flag-list.ts';
import { t } from '../words.ts';
import { usualStatements } from './joint-questions.ts';
import type { MorningEvent } from './morning.ts';
import type { LastMorning, MorningDraft } from './morning-draft.ts';

export interface UsualPageProps {
  readonly draft: MorningDraft;
  readonly last: LastMorning;
  readonly hasCuff: boolean;
  readonly send: (event: MorningEvent) => void;
}

export const UsualPage = ({ draft, last, hasCuff, send }: UsualPageProps) => (
  <div className="stack">
    <PageHeading caption={t('morning.caption')}>{t('morning.usual-title')}</PageHeading>
    <ul className="statements">
      {usualStatements(draft, last).map((text) => (
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
