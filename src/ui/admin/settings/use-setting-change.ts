'use client';
/** A change of settings on its way: looked at first, saved with a reason, what is wrong kept beside its field. */
import { useState } from 'react';
import { say } from '#messages/en/staff/administration/settings.ts';
import type { Problem } from '#ui/design-system/error-summary.tsx';
import type { WhatIfShown } from '#ui/design-system/what-if/what-if-view.tsx';
import { change } from '../../account/call.ts';
import { type Asking, useAsking } from '../../account/use-asking.ts';
import { changeOrConflict } from '../change-or-conflict.ts';
import { reasonOf } from './setting.ts';

export interface Preview extends WhatIfShown {
  /** Sent with what is saved, as proof of having looked. */
  readonly lookedAt: string;
}

type Values = Readonly<Record<string, number>>;

export interface Wanted {
  readonly values: Values;
  /** What stood on the page, by the same ids. */
  readonly seen: Values;
  /** What cannot be read, or is out of bounds. */
  readonly problems: readonly Problem[];
}

export interface SettingChanging {
  readonly asking: Asking;
  /** What these very values would have changed; null until it was looked at. */
  readonly preview: Preview | null;
  /** Under which the look is being worked out; null while nothing is. */
  readonly job: string | null;
  readonly look: () => void;
  /** Back to before it was looked at. */
  readonly forget: () => void;
  /** `onConflict`: a colleague changed it meanwhile, nothing was saved. */
  readonly save: (reason: string, onSaved: () => void, onConflict: () => void) => void;
}

/** `isReplayed` tells whether there is anything to look at before it is saved. */
export const useSettingChange = (id: string, wanted: Wanted, isReplayed: boolean): SettingChanging => {
  const asking = useAsking(reasonOf(id));
  const key = JSON.stringify(wanted.values);
  const [looked, setLooked] = useState<{ readonly key: string; readonly preview: Preview } | null>(null);
  const [job, setJob] = useState<string | null>(null);
  const preview = looked?.key === key ? looked.preview : null;
  const look = () => {
    if (wanted.problems.length > 0) return asking.t(wanted.problems);
    const name = crypto.randomUUID();
    setJob(name);
    void asking
      .ask(
        () => change<Preview>('admin.clinicSettings.preview', { values: wanted.values, job: name }),
        (answer) => setLooked({ key, preview: answer }),
      )
      .finally(() => setJob(null));
  };
  const save: SettingChanging['save'] = (reason, onSaved, onConflict) => {
    const noReason = reason.trim().length < 3 ? [{ field: reasonOf(id), text: say('no-reason') }] : [];
    const problems = [...wanted.problems, ...noReason];
    if (problems.length > 0) return asking.t(problems);
    if (isReplayed && !preview) return look();
    const { values, seen } = wanted;
    const saving = { values, seen, reason, ...(preview ? { lookedAt: preview.lookedAt } : {}) };
    // What was looked at no longer holds, so it is looked at again.
    const lookAgain = () => {
      setLooked(null);
      onConflict();
    };
    void asking.ask(() => changeOrConflict('admin.clinicSettings.save', saving, lookAgain), onSaved);
  };
  const forget = () => {
    setLooked(null);
    asking.forget();
  };
  return { asking, preview, job, look, forget, save };
};
