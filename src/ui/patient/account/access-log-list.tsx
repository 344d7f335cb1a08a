'use client';
import type { ReactNode } from 'react';
import type { Day } from '#core/time/day.ts';
/** Who opened the record, for its owner. */
import { dateFormat } from '#messages/formats.ts';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { localeOfDays } from '#ui/language/text-of-time.ts';
import './access-log-words.ts';
import { t } from '#ui/language/words.ts';
import { OwnCopies } from './own-copies.tsx';

interface AccessLogLine {
  readonly day: Day;
  readonly name: string | null;
  readonly isFeed: boolean;
  readonly isProgram: boolean;
  readonly reads: number;
  readonly writes: number;
  readonly reasons: readonly string[];
  readonly handedTo: readonly string[];
}

/** "3 February" of the year the reader is in, "3 February 2025" otherwise. */
const dayWithYear = (day: Day, today: Day): string =>
  dateFormat(localeOfDays(), {
    day: 'numeric',
    month: 'long',
    year: day.slice(0, 4) === today.slice(0, 4) ? undefined : 'numeric',
    timeZone: 'UTC',
  }).format(new Date(`${day}T12:00:00Z`));

/** "Looked 3 times, wrote once". */
const didInWords = ({ reads, writes }: AccessLogLine): string => {
  if (reads === 0) return writes === 0 ? '' : t('opened.wrote-only', { count: writes });
  const looked = t('opened.looked', { count: reads });
  return writes === 0 ? looked : `${looked}, ${t('opened.wrote', { count: writes })}`;
};

const whoInWords = ({ isFeed, isProgram, name }: AccessLogLine): string => {
  if (isFeed) return t('opened.feed');
  if (name === null) return t('opened.unknown');
  return isProgram ? t('opened.program', { name }) : name;
};

interface AccessLogListProps {
  readonly day: Day;
  readonly lines: readonly AccessLogLine[];
  readonly children?: ReactNode;
}

export const AccessLogList = ({ day, lines, children }: AccessLogListProps) => (
  <div className="stack">
    <PageHeading>{t('opened.title')}</PageHeading>
    <p>{t('opened.text')}</p>
    {lines.length === 0 ? <p>{t('opened.none')}</p> : null}
    <DefinitionList
      rows={lines.map((line) => ({
        key: `${line.day} ${whoInWords(line)}`,
        name: whoInWords(line),
        value: (
          <>
            <span suppressHydrationWarning>{dayWithYear(line.day, day)}</span>: {didInWords(line)}.
            {line.handedTo.length > 0 ? (
              <strong>
                {' '}
                {t('opened.handed-on')}: {line.handedTo.join('; ')}.
              </strong>
            ) : null}
            {line.reasons.length > 0 ? <strong> {t('opened.with-reason')}:</strong> : null}
            {line.reasons.map((reason) => (
              <span key={reason}>
                {' '}
                <q>{reason}</q>
              </span>
            ))}
          </>
        ),
      }))}
    />
    <p className="soft">{t('opened.ask')}</p>
    <OwnCopies />
    {children}
  </div>
);
