/** When warning signs may be asked by the short question. Clinic choices, no source: seven days, and what ends them. */
import { describe, expect, it } from 'vitest';
import { familiesAsked, type ListNeeds, shortSignsUntil } from '#core/danger/signs-asked.ts';

const needs: ListNeeds = {
  day: '2026-04-20',
  approvedWording: 1,
  isAlwaysWhole: false,
  hadSession: true,
  listAnswered: { at: 100, day: '2026-04-20' },
  signAt: null,
  methodChangedAt: null,
};

describe('the short question about warning signs', () => {
  it('may be asked until the sixth day after the whole list was answered with none', () => {
    expect(shortSignsUntil(needs)).toBe('2026-04-26');
  });

  it.each([
    ['2026-04-26', '2026-04-26'],
    ['2026-04-27', null],
    ['2026-04-28', null],
  ])('asked on %s, a list of 20 April lets it stand until: %s', (day, until) => {
    expect(shortSignsUntil({ ...needs, day })).toBe(until);
  });

  it.each<[string, Partial<ListNeeds>]>([
    ['no clinician of the clinic approved its words', { approvedWording: null }],
    ['another wording was approved', { approvedWording: 2 }],
    ['the clinic wants the whole list every time', { isAlwaysWhole: true }],
    ['no session was done yet', { hadSession: false }],
    ['the list was not answered', { listAnswered: null }],
    ['a sign was told since', { signAt: 101 }],
    ['a sign was told at that instant', { signAt: 100 }],
    ['the method changed since', { methodChangedAt: 101 }],
  ])('is never asked where %s', (_why, more) => {
    expect(shortSignsUntil({ ...needs, ...more })).toBeNull();
  });

  it('may be asked again once the list was answered after a sign and after a change of method', () => {
    expect(shortSignsUntil({ ...needs, signAt: 99, methodChangedAt: 99 })).toBe('2026-04-26');
  });

  it('names the sign after a cuff only where a cuff is prescribed', () => {
    expect(familiesAsked(true)).toContain('cuff');
    expect(familiesAsked(false)).not.toContain('cuff');
  });
});
