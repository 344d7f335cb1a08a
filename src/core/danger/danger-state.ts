/** Where each warning sign and each pause stands at an instant. Order of entry is irrelevant. */
import type { Joint } from '../exercises/joints.ts';
import type { SettingValues } from '../sources/clinic-setting.ts';
import { defaultsOf } from '../sources/clinic-setting.ts';
import type { Acknowledgement, ContactAttempt, DangerRecord, Pause, WarningSign } from './danger.ts';
import { dangerSettings } from './settings.ts';

export interface SignState {
  readonly sign: WarningSign;
  readonly state: 'reported' | 'acknowledged' | 'attempted' | 'ended';
  readonly acknowledged: Acknowledgement | null;
  /** Contacts that reached nobody. */
  readonly failedAttempts: number;
  readonly lastAttempt: ContactAttempt | null;
  /** The contact that ended it; null while it is open. */
  readonly endedBy: ContactAttempt | null;
  /** When somebody is to speak with the patient; null once it has ended. */
  readonly contactDueAt: number | null;
}

const hour = 3_600_000;

const oldestFirst = <R extends { readonly at: number }>(rows: readonly R[]): readonly R[] =>
  rows.toSorted((a, b) => a.at - b.at);

const firstContactDue = (sign: WarningSign, values: SettingValues): number => {
  if (sign.urgency === 'emergency') return sign.reportedAt;
  const setting = sign.urgency === 'same-day' ? 'same-day-contact-hours' : 'routine-contact-hours';
  return sign.reportedAt + values[setting]! * hour;
};

const stateOf = (
  sign: WarningSign,
  record: DangerRecord,
  instant: number,
  values: SettingValues,
): SignState => {
  const about = oldestFirst(
    record.contacts.filter(
      (one) => one.signIds.includes(sign.id) && one.at >= sign.reportedAt && one.at <= instant,
    ),
  );
  const endedBy = about.find((one) => one.reached !== 'nobody') ?? null;
  const failed = about.filter((one) => one.reached === 'nobody');
  const acknowledged =
    oldestFirst(record.acknowledgements.filter((one) => one.signId === sign.id && one.at <= instant))[0] ??
    null;
  const lastAttempt = failed.at(-1) ?? null;
  return {
    sign,
    state: endedBy ? 'ended' : lastAttempt ? 'attempted' : acknowledged ? 'acknowledged' : 'reported',
    acknowledged,
    failedAttempts: failed.length,
    lastAttempt,
    endedBy,
    contactDueAt: endedBy ? null : (lastAttempt?.nextAt ?? firstContactDue(sign, values)),
  };
};

/** Every sign reported by then, oldest first. */
export const signStatesAt = (
  record: DangerRecord,
  instant: number,
  settings: SettingValues = {},
): readonly SignState[] => {
  const values = { ...defaultsOf(dangerSettings), ...settings };
  return record.signs
    .filter((sign) => sign.reportedAt <= instant)
    .toSorted((a, b) => a.reportedAt - b.reportedAt || (a.id < b.id ? -1 : 1))
    .map((sign) => stateOf(sign, record, instant, values));
};

export interface PauseState {
  readonly pause: Pause;
  /** The sign it was made for is still open: nothing of it can be resumed. */
  readonly isSignOpen: boolean;
  /** Exercises resumed one by one. */
  readonly resumedItemIds: ReadonlySet<string>;
}

/** Pauses in force. What was resumed before its sign had ended was not resumed. */
export const pausesAt = (
  record: DangerRecord,
  states: readonly SignState[],
  instant: number,
): readonly PauseState[] =>
  record.pauses
    .filter((pause) => pause.at <= instant)
    .flatMap((pause): PauseState[] => {
      const sign = states.find((one) => one.sign.id === pause.signId);
      const from = Math.max(pause.at, sign ? (sign.endedBy?.at ?? Number.POSITIVE_INFINITY) : pause.at);
      const resumed = record.resumptions.filter(
        (one) => one.pauseId === pause.id && one.at >= from && one.at <= instant,
      );
      if (resumed.some((one) => one.itemId === null)) return [];
      return [
        {
          pause,
          isSignOpen: sign !== undefined && sign.endedBy === null,
          resumedItemIds: new Set(resumed.flatMap(({ itemId }) => (itemId === null ? [] : [itemId]))),
        },
      ];
    });

/** Whether a pause holds an exercise back. */
export const holdsBack = (
  { pause, resumedItemIds }: PauseState,
  item: { readonly itemId: string; readonly joints: readonly Joint[] },
): boolean => (pause.joint === null || item.joints.includes(pause.joint)) && !resumedItemIds.has(item.itemId);
