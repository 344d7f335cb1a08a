'use client';
/** The record as files for its owner, who need not ask anybody. */
import { LinkButton } from '#ui/design-system/button.tsx';
import './access-log-words.ts';
import { spokenLanguage, t } from '#ui/language/words.ts';

export const OwnCopies = () => (
  <section className="stack-close">
    <p>{t('opened.own-copy-hint')}</p>
    <p>
      <LinkButton tone="plain" href={`/papers/record?language=${spokenLanguage().tag}`}>
        {t('opened.own-copy')}
      </LinkButton>
    </p>
    {(['csv', 'fhir', 'json', 'calendar'] as const).map((format) => (
      <p key={format}>
        <LinkButton tone="plain" href={`/exports/${format}?language=${spokenLanguage().tag}`}>
          {t(`opened.own-copy-${format}`)}
        </LinkButton>
      </p>
    ))}
    <p className="soft">{t('opened.own-copy-calendar-hint')}</p>
    <p className="soft">{t('opened.own-copy-unlocked')}</p>
  </section>
);
