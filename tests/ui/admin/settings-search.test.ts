/** The search over the clinic's settings: plain words in English and German, over label and explanation. */
import { describe, expect, it } from 'vitest';
import { settingGroups } from '#api/admin/setting-groups.ts';
import { findSettings } from '#ui/admin/settings/setting-groups.ts';

const groups = settingGroups.map((group) => ({
  ...group,
  settings: group.settings.map((one) => ({
    ...one,
    value: one.default,
    isOfDecisions: false,
    history: [],
  })),
}));
const idsFor = (words: string): readonly string[] =>
  findSettings(groups, words, true).groups.flatMap(({ settings }) => settings.map(({ id }) => id));
const placesFor = (words: string, administers = true): readonly string[] =>
  findSettings(groups, words, administers).places.map(({ title }) => title);

describe('the search over the clinic settings', () => {
  it.each([
    ['severe pain', 'urgent-rise'],
    ['starker Schmerz', 'severe-pain'],
    ['Schmerzgrenze', 'ceiling-over-usual'],
    ['Steifigkeit', 'stiffness-hold-offset'],
    ['Morgen', 'morning-from-hour'],
    ['Blutdruck', 'hold-all-systolic'],
    ['Manschette', 'occlusion-pressure-valid-days'],
    ['BFR', 'occlusion-pressure-valid-days'],
    ['Wiederholungen', 'repetition-step'],
    ['Warnzeichen', 'same-day-contact-hours'],
    ['Vertretung', 'covering-clinician-after-hours'],
    ['Einladung', 'invitation-days'],
    ['Schub', 'flare-easier-days'],
    ['Eiweiß', 'lean-protein-low'],
    ['RIR', 'low-load-reserve'],
    ['password', 'staff-two-factor'],
  ])('finds by “%s” the setting %s', (words, id) => {
    expect(idsFor(words)).toContain(id);
  });

  it('finds by the explanation what the label does not say', () => {
    expect(idsFor('common practice no source')).toContain('ceiling-over-usual');
  });

  it('narrows: each further word has to be found as well', () => {
    expect(idsFor('Schmerz').length).toBeGreaterThan(idsFor('Schmerz Morgen').length);
    expect(idsFor('Schmerz Morgen').length).toBeGreaterThan(0);
  });

  it.each([
    ['clinic name', 'Clinic name, as on phones and papers'],
    ['Telefon', 'Telephone of the clinic'],
    ['Notruf', 'Emergency number'],
    ['Einwilligung', 'Consent wording'],
    ['Fragebogen', 'Your own questionnaires'],
    ['Mitarbeiter', 'Staff: people, roles, passphrases'],
  ])('leads by “%s” to what is entered on another page', (words, title) => {
    expect(placesFor(words)).toContain(title);
  });

  it('leads nobody to a page of the administration who may not open it', () => {
    expect(placesFor('Einwilligung', false)).toEqual([]);
    expect(placesFor('Warnzeichen', false)).toEqual(['Wording of the short question about warning signs']);
  });

  it('says nothing found where nothing is', () => {
    expect(findSettings(groups, 'Bagger', true).count).toBe(0);
  });
});
