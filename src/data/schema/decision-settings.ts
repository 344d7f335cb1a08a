/** Settings that decisions rest on, apart from the decisions. */
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { kit } from './kit.ts';
import { clinic } from './people.ts';

/**
 * The settings that decisions were made under, each set once for a clinic: thousands of decisions rest on the same.
 * Its id is a digest of what it holds, so that equal settings are one row.
 */
export const decisionSettings = kit.appendOnly(
  'decision_settings',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    settings: kit.sharedJson<SettingValues>('settings'),
  },
  (t) => [kit.index('decision_settings_by_clinic').on(t.clinicId)],
);
