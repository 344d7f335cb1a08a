'use client';
/** A patient's own phones. One that was lost is ended from here; the one in the hand signs out instead. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import type { EndedPhone, OwnPhone } from '#api/patient/phones.ts';
import { systemMoment } from '#ui/account/system-moment.ts';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import './own-phones-words.ts';
import { t } from '#ui/language/words.ts';
import { LostPhone, type LostPhoneProps } from './lost-phone.tsx';

export interface OwnPhonesProps extends Pick<LostPhoneProps, 'provenBy'> {
  readonly phones: readonly OwnPhone[];
  /** The phone that shows the page; null in a browser that is none. */
  readonly hereId: string | null;
  /** The clinic's, whose wall clock signing in goes by. */
  readonly zone: string;
}

const endedBy = { patient: 'phones.ended-by-you', clinic: 'phones.ended-by-clinic' } as const;

const stateInWords = ({ lastUsedAt, state, ended }: OwnPhone, zone: string): string => {
  if (ended) return t(endedBy[ended.by], { when: systemMoment(ended.at, zone) });
  if (lastUsedAt === null) return t('phones.no-pin');
  const opened = t('phones.opened', { when: systemMoment(lastUsedAt, zone) });
  return state === 'too-many-tries' ? `${opened}. ${t('phones.locked')}.` : opened;
};

export const OwnPhones = ({ phones, hereId, zone, provenBy }: OwnPhonesProps) => {
  const router = useRouter();
  const [ended, setEnded] = useState<EndedPhone | null>(null);
  const onEnded = (answer: EndedPhone) => {
    setEnded(answer);
    router.refresh();
  };
  return (
    <section className="stack">
      <h2>{t('phones.title')}</h2>
      {ended ? (
        <Notice isAnnounced title={t(ended === 'ended' ? 'phones.ended-now' : 'phones.ended-before')} />
      ) : null}
      {phones.length === 0 ? <p>{t('phones.none')}</p> : null}
      <DefinitionList
        rows={phones.map((phone) => {
          const isHere = phone.id === hereId;
          const name = t('phones.set-up', { when: systemMoment(phone.enrolledAt, zone) });
          return {
            key: phone.id,
            name: <span suppressHydrationWarning>{isHere ? t('phones.this', { which: name }) : name}</span>,
            value: <span suppressHydrationWarning>{stateInWords(phone, zone)}</span>,
            action:
              isHere || phone.ended ? null : (
                <LostPhone phoneId={phone.id} about={name} provenBy={provenBy} onEnded={onEnded} />
              ),
          };
        })}
      />
      {phones.length > 1 ? <p className="soft">{t('phones.each-time')}</p> : null}
    </section>
  );
};
