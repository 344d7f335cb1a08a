/** What rules found and what is urgent, in German: every one of the core's has its words, with the same figures. */
import { describe, expect, it } from 'vitest';
import { redFlags } from '#core/decision/facts/facts.ts';
import { rulesOf } from '#core/decision/rules/table.ts';
import { engineDefaults, engineVersions } from '#core/decision/settings.ts';
import type { OpenDanger } from '#core/episode/documents/handover.ts';
import { dangers } from '#core/worklist/item.ts';
import { phrases } from '#messages/de/colleagues/phrases.ts';
import { leftInEnglish } from '../german/left-in-english.ts';

const settings = [
  engineDefaults,
  // Once alone, and figures with a point, which German writes with a comma.
  { ...engineDefaults, 'swap-once': 1, 'signal-interval': 4.5 },
  { ...engineDefaults, 'swap-once': 0 },
];
const said = [
  ...new Set(
    engineVersions.flatMap((version) =>
      rulesOf(version).flatMap(({ threshold }) => settings.map((values) => threshold(values))),
    ),
  ),
];

const figuresIn = (text: string): readonly string[] => text.replaceAll(',', '.').match(/\d+(\.\d+)?/g) ?? [];

describe('what a rule found', () => {
  it('is there to be said', () => expect(said.length).toBeGreaterThan(45));

  it.each(said)('is said in German with its figures: %s', (threshold) => {
    const german = phrases.threshold(threshold);
    expect(german).not.toBe(threshold);
    expect(leftInEnglish(german)).toBeNull();
    expect(figuresIn(german)).toEqual(figuresIn(threshold));
  });
});

const danger = (over: Partial<OpenDanger>): OpenDanger => ({
  kind: 'red-flag',
  joint: 'right-knee',
  facts: { failedAttempts: 0, rule: 'S1', threshold: 'effusion 3+' },
  flags: [],
  sentence: 'English of the core.',
  ...over,
});

describe('an urgent item', () => {
  it.each(dangers)('of the kind %s is said in German', (kind) => {
    const german = phrases.danger(danger({ kind }));
    expect(german).not.toContain('English of the core');
    expect(leftInEnglish(german)).toBeNull();
  });

  it.each(redFlags)('says the sign %s in German', (flag) => {
    expect(leftInEnglish(phrases.danger(danger({ flags: [flag] })))).toBeNull();
  });

  it.each([
    [0, 'noch kein Kontakt erfasst'],
    [1, 'ein Kontaktversuch, niemand erreicht'],
    [2, '2 Kontaktversuche, niemand erreicht'],
  ])('says after %i tries whether anybody was reached', (failedAttempts, reached) => {
    expect(phrases.danger(danger({ facts: { failedAttempts } }))).toBe(
      `Warnzeichen (eigene Bedenken der Praxis): Alles ist ausgesetzt; ${reached}.`,
    );
  });

  it('names rule and finding, and to whom it passed', () => {
    expect(phrases.danger(danger({ kind: 'same-day-contact' }))).toBe(
      'Knie rechts: heute noch anrufen (S1: Erguss 3+).',
    );
    const facts = { coveringClinician: 'Rowan Example' };
    expect(phrases.danger(danger({ kind: 'danger-passed', joint: null, facts }))).toBe(
      'Dringendes nicht rechtzeitig bestätigt; übergegangen an Rowan Example.',
    );
  });
});
