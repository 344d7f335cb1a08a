/** Fingers or toes after a cuff: colour, feeling and pulse stand apart, and each of them stops alike. */
import { describe, expect, it } from 'vitest';
import { redFlagContact } from '#core/decision/rules/red-flags.ts';
import { badDayOf } from '#core/prescribing/occlusion/bad-day.ts';
import {
  flagsWithLimb,
  type LimbCheck,
  limbSigns,
  signsAsked,
} from '#core/prescribing/occlusion/limb-check.ts';
import { sessionEntryConsistent } from '#core/record/entries.ts';
import { sessionEntry } from '#tests/support/clinic.ts';
import { proposed } from './request.ts';

const check = (over: Partial<LimbCheck> = {}): LimbCheck => ({
  itemId: 'line',
  moment: 'later',
  colour: 'usual',
  feeling: 'usual',
  pulse: 'usual',
  pulseState: 'asked',
  ...over,
});

describe('what is asked', () => {
  it.each([
    [true, ['colour', 'feeling', 'pulse']],
    [false, ['colour', 'feeling']],
    [undefined, ['colour', 'feeling']],
  ] as const)('pulse shown: %s asks for %j', (pulseShown, signs) => {
    expect(signsAsked(pulseShown === undefined ? {} : { pulseShown })).toEqual(signs);
  });

  it('that the pulse was shown is signed with the dose and with its easier session', () => {
    const { dose } = proposed({ pulseShown: true });
    expect([dose.pulseShown, badDayOf(dose).pulseShown]).toEqual([true, true]);
    expect(proposed().dose).not.toHaveProperty('pulseShown');
  });
});

describe('not as usual ten minutes after release', () => {
  it.each(limbSigns)('%s stops everything with the same warning sign and the same contact', (sign) => {
    const flags = flagsWithLimb([], [check({ [sign]: 'not-usual' })]);
    expect(flags).toEqual(['persistent-limb-change-after-release']);
    expect(redFlagContact(flags ?? [])).toBe('same-day');
  });

  it('is a warning sign also where the list of them was not answered, and is said once', () => {
    const changed = [check({ pulse: 'not-usual' })];
    expect(flagsWithLimb(null, changed)).toEqual(['persistent-limb-change-after-release']);
    expect(flagsWithLimb(['persistent-limb-change-after-release', 'fainting'], changed)).toEqual([
      'persistent-limb-change-after-release',
      'fainting',
    ]);
  });

  it.each([
    ['as usual', check()],
    ['not known', check({ colour: null, feeling: null, pulse: null })],
    ['never shown', check({ pulse: null, pulseState: 'not-shown' })],
    ['not as usual two minutes after release', check({ moment: 'after', colour: 'not-usual' })],
  ])('%s adds no sign and answers no list that was left open', (_, one) => {
    expect([flagsWithLimb([], [one]), flagsWithLimb(null, [one])]).toEqual([[], null]);
  });
});

describe('an entry', () => {
  const refusals = (limbChecks: LimbCheck[]) =>
    sessionEntryConsistent(sessionEntry({ entryId: 'e', limbChecks })).map(({ field }) => field);

  it('with a look after release and a second one later is taken', () => {
    expect(refusals([check({ moment: 'after' }), check()])).toEqual([]);
  });

  it('with the same look twice is refused', () => {
    expect(refusals([check(), check()])).toEqual(['input.limbChecks']);
  });

  it.each(['not-asked', 'not-shown'] as const)(
    'with a pulse that was %s and an answer to it is refused',
    (pulseState) => {
      expect(refusals([check({ pulseState })])).toEqual(['input.limbChecks']);
      expect(refusals([check({ pulseState, pulse: null })])).toEqual([]);
    },
  );
});
