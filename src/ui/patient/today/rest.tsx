/** Days on which there is less to do than planned, or nothing. */
import type { ReactNode } from 'react';
import type { TodayView } from '#api/patient/today-view.ts';
import { isRest } from '#core/decision/left-of-today.ts';
import { Notice } from '#ui/design-system/notice.tsx';
import type { DayState } from '../day-state.ts';
import { doableToday } from '../session/doable.ts';
import { t } from '../words.ts';
import { RingNotice } from './contact-first.tsx';

interface OfDay {
  readonly view: TodayView;
  readonly state: DayState;
}

/** Less than planned, by answers that the clinic's page does not count yet. */
export const LessTold = ({ state, view }: OfDay) => {
  const { leftUntilCounted: left, session } = state;
  if (left === null || left === 'none' || session !== 'open') return null;
  if (left === 'bad-day')
    return doableToday(view).length === 0 ? null : <Notice tone="care" title={t('today.less-told')} />;
  const { name, phone } = view.clinic;
  const text = t('today.rest-told', { clinic: name, phone });
  return <RingNotice clinic={view.clinic} text={text} isUrgent={false} />;
};

/** Nothing of today is left to do because of how a joint answered; said on a day off as well. */
const isRestDay = (view: TodayView): boolean =>
  doableToday(view).length === 0 && view.exercises.some(({ today }) => isRest(today));

const RestToday = ({ view }: { readonly view: TodayView }) =>
  view.danger.length > 0 ? null : (
    <Notice tone="care" title={t('today.rest-title')}>
      {t('today.rest')}
    </Notice>
  );

export const Nothing = ({ view }: { readonly view: TodayView }) => {
  if (isRestDay(view)) return <RestToday view={view} />;
  return view.danger.length > 0 ? null : (
    <Notice title={t('today.nothing-title')}>
      {t(view.exercises.length === 0 && !view.atClinic ? 'today.none-yet' : 'today.nothing')}
    </Notice>
  );
};

/** Beside a session that is not gone on with, or was sent. */
export const RestBeside = ({ view, state, ended }: OfDay & { readonly ended?: ReactNode }) =>
  (ended || state.session !== 'open') && !view.isStopped && !state.hasReportedFlag && isRestDay(view) ? (
    <RestToday view={view} />
  ) : null;
