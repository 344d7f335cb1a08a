'use client';
/** The private address of the own calendar: made, shown once, and ended by its owner. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import type { CalendarFeed } from '#api/papers/exports.ts';
import { Asked, type AskedProps } from '#ui/account/asked.tsx';
import { change } from '#ui/account/call.ts';
import { systemMoment } from '#ui/account/system-moment.ts';
import { type Asking, useAsking } from '#ui/account/use-asking.ts';
import { Button, LinkButton } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import './access-log-words.ts';
import { spokenLanguage, t } from '#ui/language/words.ts';

export interface CalendarAddressProps {
  readonly feed: CalendarFeed | null;
  /** The clinic's, whose wall clock these instants go by. */
  readonly zone: string;
  readonly provenBy: NonNullable<AskedProps['by']>;
}

const readInWords = ({ lastReadAt }: CalendarFeed, zone: string): string =>
  lastReadAt === null
    ? t('opened.feed-never-read')
    : t('opened.feed-read', { when: systemMoment(lastReadAt, zone) });

const Stands = ({ feed, zone }: { readonly feed: CalendarFeed; readonly zone: string }) => (
  <p suppressHydrationWarning>
    {t('opened.feed-made', { when: systemMoment(feed.madeAt, zone) })}. {readInWords(feed, zone)}.{' '}
    {feed.ended ? t(`opened.feed-ended-${feed.ended.by}`, { when: systemMoment(feed.ended.at, zone) }) : null}
  </p>
);

/** Shown while the page is open; a path is of this server. */
export const MadeAddress = ({ origin, path }: { readonly origin: string; readonly path: string }) => (
  <Notice isAnnounced title={t('opened.feed-address')}>
    <p>
      <code>{`${origin}${path}`}</code>
    </p>
    <p>{t('opened.feed-once')}</p>
    <p>
      <LinkButton tone="plain" href={`${origin.replace(/^https?:/, 'webcal:')}${path}`}>
        {t('opened.feed-open')}
      </LinkButton>
    </p>
  </Notice>
);

interface EndAddressProps {
  readonly asking: Asking;
  readonly onEnded: () => void;
}

const EndAddress = ({ asking, onEnded }: EndAddressProps) => {
  const [isAsked, setAsked] = useState(false);
  const end = () => {
    setAsked(false);
    void asking.ask(() => change('patient.exports.endFeed', {}), onEnded);
  };
  return isAsked ? (
    <ConfirmQuestion
      question={t('opened.feed-end-sure')}
      yes={t('opened.feed-end-yes')}
      no={t('opened.feed-end-no')}
      onYes={end}
      onNo={() => setAsked(false)}
    />
  ) : (
    <Button tone="plain" aria-disabled={asking.isBusy || undefined} onClick={() => setAsked(true)}>
      {t('opened.feed-end')}
    </Button>
  );
};

const makeId = 'make-calendar-address';

export const CalendarAddress = ({ feed, zone, provenBy }: CalendarAddressProps) => {
  const router = useRouter();
  const asking = useAsking(makeId);
  const [made, setMade] = useState<string | null>(null);
  const [isEnded, setEnded] = useState(false);
  const isInUse = feed !== null && feed.ended === null;
  const after = (path: string | null) => {
    setMade(path);
    setEnded(path === null);
    router.refresh();
  };
  const make = () =>
    void asking.ask(
      () => change<{ path: string }>('patient.exports.makeFeed', { language: spokenLanguage().tag }),
      ({ path }) => after(path),
    );
  return (
    <section className="stack-close">
      <h2>{t('opened.feed-title')}</h2>
      <p>{t('opened.feed-what')}</p>
      <p>{t('opened.feed-who')}</p>
      {feed ? <Stands feed={feed} zone={zone} /> : null}
      <Asked asking={asking} by={provenBy} />
      {made ? <MadeAddress origin={window.location.origin} path={made} /> : null}
      {isEnded ? <Notice isAnnounced title={t('opened.feed-ended-now')} /> : null}
      <Button id={makeId} tone="plain" aria-disabled={asking.isBusy || undefined} onClick={make}>
        {t(isInUse ? 'opened.feed-make-anew' : 'opened.feed-make')}
      </Button>
      {isInUse ? <EndAddress asking={asking} onEnded={() => after(null)} /> : null}
    </section>
  );
};
