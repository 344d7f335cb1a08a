'use client';
/** Work with a cuff or wrap: who is there, on, off. */
import { useState } from 'react';
import type { OcclusionDose } from '#core/prescribing/dose.ts';
import { Button } from '#ui/design-system/button.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { lengthText } from '#ui/language/text-of-time.ts';
import { AlarmBefore } from '#ui/patient/cuff-alarm/alarm-told.tsx';
import { alarmFor } from '#ui/patient/cuff-alarm/use-cuff-alarm.ts';
import { useBuzz, useNow } from '#ui/patient/phone/use-now.ts';
import { t, translate } from '#ui/patient/words.ts';
import type { ItemDraft } from '../draft.ts';
import { isCuffOn, isTimeUp } from '../restriction.ts';
import type { PageProps } from './page-props.ts';

const occlusionOf = (item: ItemDraft): OcclusionDose | null =>
  item.dose.method === 'occlusion' ? item.dose : null;

/** Signed only for work under a clinician's eyes: asked each time, and not gone on with alone. */
const BesidePage = (props: {
  readonly title: string;
  readonly onYes: () => void;
  readonly onNo: () => void;
}) => (
  <div className="stack">
    <PageHeading caption={props.title}>{t('cuff.beside')}</PageHeading>
    <p>{t('cuff.beside-hint')}</p>
    <div className="actions">
      <Button tone="plain" isLarge isWide onClick={props.onYes}>
        {t('cuff.beside-yes')}
      </Button>
      <Button tone="plain" isLarge isWide onClick={props.onNo}>
        {t('cuff.beside-no')}
      </Button>
    </div>
  </div>
);

/** Where, how tight, how long, and what the limb may look and feel like. */
const HowOn = ({ dose: { cuff, limb, side, capSeconds, pulseShown } }: { readonly dose: OcclusionDose }) => (
  <ul className="cuff-how">
    <li>{t(`cuff.where-${limb}`, { side })}</li>
    <li>
      {cuff.kind === 'pneumatic'
        ? t('cuff.pressure', { mmhg: cuff.pressureMmhg })
        : t('cuff.tightness', { tightness: cuff.tightness })}
    </li>
    <li>{t('cuff.longest', { time: lengthText(capSeconds) })}</li>
    <li>{t('cuff.colour', { where: limb })}</li>
    {pulseShown ? <li>{t('cuff.pulse', { where: limb })}</li> : null}
    <li>
      <strong>{t('cuff.alone')}</strong>
    </li>
  </ul>
);

export const CuffOnPage = ({ draft, item: index, send, clock }: PageProps) => {
  const item = draft.items[index]!;
  const dose = occlusionOf(item);
  const [isBeside, setBeside] = useState(false);
  if (!dose) return null;
  const leaveOut = () => send({ type: 'leave-out', item: index });
  const isBegun = isCuffOn(item) || item.sets.length > 0;
  if (dose.supervised && !isBeside && !isBegun)
    return <BesidePage title={translate(item.title)} onYes={() => setBeside(true)} onNo={leaveOut} />;
  const start = () => {
    alarmFor(item, clock());
    send({ type: 'cuff-on', item: index, now: clock() });
    send({ type: 'next' });
  };
  return (
    <div className="stack">
      <PageHeading caption={translate(item.title)}>
        {t(dose.cuff.kind === 'pneumatic' ? 'cuff.title' : 'cuff.wrap-title')}
      </PageHeading>
      <HowOn dose={dose} />
      {isCuffOn(item) ? (
        <Button isLarge isWide onClick={() => send({ type: 'next' })}>
          {t('ask.continue')}
        </Button>
      ) : (
        <AlarmBefore seconds={dose.capSeconds}>
          <Button isLarge isWide onClick={start}>
            {t('cuff.on')}
          </Button>
        </AlarmBefore>
      )}
      {isBegun ? null : (
        <Button tone="quiet" onClick={leaveOut}>
          {t('cuff.not-now')}
        </Button>
      )}
    </div>
  );
};

/** Also shown over any other page once the time is up. */
export const CuffOffPage = ({ draft, item: index, send, clock }: PageProps) => {
  const item = draft.items[index]!;
  const now = useNow(clock);
  const isUp = isTimeUp(item, now);
  useBuzz(isUp);
  const isEarly = item.leftAt !== null;
  const text = isUp ? 'cuff.off-time-up' : isEarly ? 'cuff.off-early' : 'cuff.off-finished';
  return (
    <div className="stack" role={isUp ? 'alert' : undefined}>
      <PageHeading caption={translate(item.title)}>{t('cuff.off-title')}</PageHeading>
      <p className="large">{t(text)}</p>
      <Button
        tone={isCuffOn(item) ? 'stop' : 'primary'}
        isLarge
        isWide
        onClick={() => send({ type: 'cuff-off', item: index, now: clock() })}
      >
        {t('cuff.off')}
      </Button>
    </div>
  );
};
