/**
 * Tests to failure are sessions: the same gate before, a check the morning after, and enough hours since
 * the last session that loaded the joints. The hours are a clinic choice.
 */
import { engineSettingValues } from '#core/decision/settings.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';

const hourMs = 3_600_000;

/** `lastLoadedAt`: instant at which the last session that loaded one of the joints began; null = none lately. */
export const testFrom = (lastLoadedAt: number | null, settings: SettingValues): number | null =>
  lastLoadedAt === null
    ? null
    : lastLoadedAt + engineSettingValues(settings)['rest-before-test-hours'] * hourMs;
