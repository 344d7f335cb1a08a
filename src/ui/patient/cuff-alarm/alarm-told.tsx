'use client';
/** Before a cuff goes on: whether this phone plays the alarm at its end, and what to do where it does not. */
import { type ReactNode, useEffect, useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { lengthText } from '#ui/language/text-of-time.ts';
import { t } from '#ui/language/words.ts';
import { chosenSound } from '../preferences/chosen.ts';
import { hearAlarm, tryAlarm } from './cuff-alarm.ts';

/** `silent`: it was chosen that the end is only shown. */
export type AlarmState = 'trying' | 'can' | 'cannot' | 'silent';

export interface AlarmToldProps {
  readonly state: AlarmState;
  /** The longest time the cuff may stay on. */
  readonly seconds: number;
}

export const AlarmTold = ({ state, seconds }: AlarmToldProps) => {
  if (state === 'trying') return null;
  if (state === 'can') return <p>{t('cuff.alarm-can')}</p>;
  return (
    <Notice tone="care" title={t('cuff.timer-first', { time: lengthText(seconds) })}>
      <p>{t(state === 'silent' ? 'cuff.alarm-silent' : 'cuff.alarm-cannot')}</p>
    </Notice>
  );
};

export interface AlarmBeforeProps extends Pick<AlarmToldProps, 'seconds'> {
  /** The press that the cuff is on, after what is told. */
  readonly children: ReactNode;
}

const stateOf = (can: boolean): AlarmState => (can ? 'can' : 'cannot');

export const AlarmBefore = ({ seconds, children }: AlarmBeforeProps) => {
  const [state, setState] = useState<AlarmState>('trying');
  useEffect(() => {
    if (chosenSound() === 'none') setState('silent');
    else void tryAlarm().then((can) => setState(stateOf(can)));
  }, []);
  return (
    <>
      <AlarmTold state={state} seconds={seconds} />
      {children}
      {state === 'silent' ? null : (
        <Button tone="quiet" onClick={() => void hearAlarm().then((can) => setState(stateOf(can)))}>
          {t('cuff.alarm-hear')}
        </Button>
      )}
    </>
  );
};
