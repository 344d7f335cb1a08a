import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import { addedUp, byWeek, daysIn, type TwiceDecided, whatIf } from '#core/decision/what-if/what-if.ts';
import { facts } from '../base-facts.ts';

type Change = Parameters<typeof facts>[0];

const look = (day: string, before: Change, after: Change): TwiceDecided => ({
  joint: 'right-knee',
  day,
  before: decide(facts(before)),
  after: decide(facts(after)),
});

const sore = { painDuring: 6 };
const quiet = {};
const redFlag: Change = { redFlags: ['chest-pain'] };

describe('what other settings would have said', () => {
  it('counts days by the word they would have had, bolder and more cautious apart', () => {
    const found = whatIf([
      look('2026-03-02', quiet, sore),
      look('2026-03-03', sore, quiet),
      look('2026-03-04', quiet, quiet),
      look('2026-03-05', sore, redFlag),
    ]);
    expect(found.looked).toBe(4);
    expect(found.moreCautious).toEqual({ pause: 1, 'ease-back': 1, hold: 0, progress: 0 });
    expect(found.bolder).toEqual({ pause: 0, 'ease-back': 0, hold: 0, progress: 1 });
    expect(found.days.map(({ day, way, rules }) => [day, way, rules])).toEqual([
      ['2026-03-02', 'more-cautious', ['P2', 'P4']],
      ['2026-03-03', 'bolder', ['P2', 'P4']],
      ['2026-03-05', 'more-cautious', ['P2', 'P4', 'R1']],
    ]);
  });

  it('a day with several looks is one day, told by the last that differs', () => {
    const found = whatIf([look('2026-03-02', quiet, sore), look('2026-03-02', quiet, quiet)]);
    expect([found.looked, found.days.length, daysIn(found.moreCautious)]).toEqual([1, 1, 1]);
  });

  it('the same decision with another contact is bolder or more cautious by that', () => {
    const calls = look('2026-03-02', { painDuring: 8 }, { painDuring: 7 });
    expect([calls.before.decision, calls.after.decision]).toEqual(['ease-back', 'ease-back']);
    expect([calls.before.contact, calls.after.contact]).not.toEqual(['none', 'none']);
    const bolder = whatIf([calls]);
    expect([bolder.other, bolder.bolder['ease-back'], daysIn(bolder.moreCautious)]).toEqual([0, 1, 0]);
    const back = whatIf([{ ...calls, before: calls.after, after: calls.before }]);
    expect([back.other, daysIn(back.bolder), back.moreCautious['ease-back']]).toEqual([0, 0, 1]);
  });

  it('the same decision with one answer bolder and another more cautious is neither', () => {
    const base = decide(facts({ painDuring: 8 }));
    const mixed = { ...base, today: 'none', contact: 'none' } as const;
    const found = whatIf([{ joint: 'right-knee', day: '2026-03-02', before: base, after: mixed }]);
    expect([found.other, daysIn(found.bolder), daysIn(found.moreCautious)]).toEqual([1, 0, 0]);
  });

  it('two people are added up', () => {
    const one = whatIf([look('2026-03-02', quiet, sore)]);
    const other = whatIf([look('2026-03-03', sore, quiet), look('2026-03-04', quiet, quiet)]);
    const both = addedUp(one, other);
    expect([both.looked, daysIn(both.bolder), daysIn(both.moreCautious)]).toEqual([3, 1, 1]);
    expect(both.days).toHaveLength(2);
  });

  it('a day falls into its week; the last week takes in today', () => {
    const { days } = whatIf([
      look('2026-03-08', quiet, sore),
      look('2026-03-09', quiet, sore),
      look('2026-03-16', sore, quiet),
    ]);
    expect(byWeek('2026-03-02', 2, days)).toEqual([
      { from: '2026-03-02', bolder: 0, moreCautious: 1 },
      { from: '2026-03-09', bolder: 1, moreCautious: 1 },
    ]);
  });
});
