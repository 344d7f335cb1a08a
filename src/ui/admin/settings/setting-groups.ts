/** Groups of settings by name, and what a search finds in them and on the other pages of the administration. */
import type { SettingGroupId } from '#api/admin/setting-groups.ts';
import { hasWords } from '#core/word-search.ts';
import { say } from '#messages/en/staff/administration/settings.ts';
import { sameMeaning } from '#messages/search/same-meaning.ts';
import type { Setting } from './setting.ts';

export interface SettingGroup {
  readonly id: SettingGroupId;
  readonly settings: readonly Setting[];
}

export const groupTitle = (id: SettingGroupId): string => say(`group.${id}`);

const placeHrefs = {
  name: '/administration/care#clinic',
  phone: '/administration/care#clinic',
  'urgent-number': '/administration/care#clinic',
  'emergency-number': '/administration/care#clinic',
  'monitoring-hours': '/administration/care#hours',
  covering: '/administration/care#covering',
  consent: '/administration/care#consents',
  questionnaires: '/administration/care#questionnaires',
  'short-signs': '/administration/settings?group=phone#short-signs',
  staff: '/administration#staff',
  sites: '/administration#sites',
} as const;

export interface Place {
  readonly href: string;
  readonly title: string;
}

const places: readonly Place[] = (Object.keys(placeHrefs) as (keyof typeof placeHrefs)[]).map((id) => ({
  href: placeHrefs[id],
  title: say(`place.${id}`),
}));

/** A way to each of the other pages, for whoever looks through the groups. */
const shownBeside: readonly (keyof typeof placeHrefs)[] = [
  'staff',
  'name',
  'monitoring-hours',
  'covering',
  'consent',
  'questionnaires',
];
export const placesBeside: readonly Place[] = shownBeside.map((id) => ({
  href: placeHrefs[id],
  title: say(`place.${id}`),
}));

export interface Found {
  readonly groups: readonly SettingGroup[];
  readonly places: readonly Place[];
  readonly count: number;
}

/** Over label, explanation and the name of the group; groups without a hit are left out, and pages that the reader may not open. */
export const findSettings = (groups: readonly SettingGroup[], words: string, administers: boolean): Found => {
  const found = groups
    .map((group) => ({
      ...group,
      settings: group.settings.filter(({ title, why }) =>
        hasWords(`${title} ${why} ${groupTitle(group.id)}`, words, sameMeaning),
      ),
    }))
    .filter(({ settings }) => settings.length > 0);
  const foundPlaces = places.filter(
    ({ href, title }) =>
      (administers || href.startsWith('/administration/settings')) && hasWords(title, words, sameMeaning),
  );
  const count = found.reduce((sum, { settings }) => sum + settings.length, 0) + foundPlaces.length;
  return { groups: found, places: foundPlaces, count };
};
