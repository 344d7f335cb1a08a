'use client';
/**
 * What today's page says on days out of the usual: another day on the phone than at the clinic, a morning
 * check outside its hours, answers from two phones. Its scripts come when they are wanted.
 */
import { type ReactNode, useState } from 'react';
import './seldom-words.ts';
import type { MorningTold } from '#api/patient/today-view.ts';
import { Button } from '#ui/design-system/button.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { dayText, timeText } from '#ui/language/text-of-time.ts';
import { t } from '#ui/language/words.ts';
import { callPatient } from '../call.ts';
import { scoreText } from '../questions/answers-in-words.ts';
import { phoneDay } from '../view-on-day.ts';
import { toldFromMs, type Unusual } from './out-of-the-usual.ts';

export interface ExceptionsProps extends Unusual {
  readonly now: number;
  readonly isReady: boolean;
  readonly onMorning: () => void;
  /** Something was sent that changes the clinic's page. */
  readonly onChanged: () => void;
}

const WrongClock = ({ view, lacksMs, now }: ExceptionsProps) => {
  const shown = now - lacksMs;
  const [phone, right] = [shown, now].map((at) => ({ date: dayText(phoneDay(at)), time: timeText(at) }));
  return (
    <Notice tone="care" title={t('clock.wrong', phone!)}>
      <p>{t('clock.right', { ...right!, clinic: view.clinic.name })}</p>
      <p>{t('clock.put-right')}</p>
    </Notice>
  );
};

const OtherDay = ({ view }: ExceptionsProps) => {
  const [date, there] = [dayText(view.day), dayText(view.clinicDay)];
  return (
    <Notice title={t('clock.other-day', { date, there, clinic: view.clinic.name })}>
      <p>{t('clock.counts-for', { date })}</p>
      <p>{t('clock.other-zone')}</p>
    </Notice>
  );
};

const hourText = (hour: number): string => timeText(new Date(2026, 0, 1, hour).getTime());

const Outside = ({ view, state, isReady, onMorning }: ExceptionsProps) => {
  if (state.morningOutside === null) return null;
  const { now, isKept } = state.morningOutside;
  const [from, to] = [hourText(view.morning.fromHour ?? 0), hourText(view.morning.toHour ?? 0)];
  if (now === 'early')
    return <p>{t(isKept ? 'morning-hours.early-kept' : 'morning-hours.early', { from })}</p>;
  if (isKept) return <p>{t('morning-hours.over-kept')}</p>;
  return (
    <section className="stack-close">
      <p>{t('morning-hours.over', { to })}</p>
      <Button tone="quiet" disabled={!isReady} onClick={onMorning}>
        {t('morning-hours.tell')}
      </Button>
    </section>
  );
};

const painsText = ({ pains }: MorningTold): string =>
  pains.map(({ joint, pain }) => t('twice.pain', { joint, score: scoreText(pain) })).join('; ');

const Twice = ({ view, onChanged }: ExceptionsProps) => {
  const [told, setTold] = useState<'no' | 'failed' | 'done'>('no');
  const { twice } = view.morning;
  if (!twice || told === 'done') return null;
  const choose = async (keep: MorningTold, instead: MorningTold) => {
    const input = { keep: keep.entryId, instead: instead.entryId };
    const isTaken = await callPatient('entries.keepMorning', input);
    setTold(isTaken ? 'done' : 'failed');
    if (isTaken) onChanged();
  };
  const { first, last } = twice;
  return (
    <Notice tone="care" title={t('twice.title')}>
      <p>{t('twice.both', { first: painsText(first), last: painsText(last) })}</p>
      <div className="stack-close">
        <Button tone="plain" onClick={() => void choose(last, first)}>
          {t('twice.use-last')}
        </Button>
        <Button tone="plain" onClick={() => void choose(first, last)}>
          {t('twice.keep-first')}
        </Button>
      </div>
      <p role="status">{told === 'failed' ? t('frame.no-answer') : ''}</p>
    </Notice>
  );
};

export const Exceptions = (props: ExceptionsProps): ReactNode => (
  <>
    {Math.abs(props.lacksMs) >= toldFromMs ? <WrongClock {...props} /> : null}
    {props.view.clinicDay === props.view.day ? null : <OtherDay {...props} />}
    <Twice {...props} />
    <Outside {...props} />
  </>
);
