/** The one open question: which comes first, and what "nothing" was looked at for. */
import { describe, expect, it } from 'vitest';
import { type OpenWanted, openFact } from '#core/review/summary/open-question.ts';
import { summaryInWords } from '#core/review/summary/words.ts';
import { addDays, type Day } from '#core/time/day.ts';
import { always, dangers, type WorklistItemKind, worklistItemKinds } from '#core/worklist/item.ts';
import { kneeDose } from '../../decision/small-record.ts';

const today = '2026-04-20';

type Item = OpenWanted['due'][number] & OpenWanted['kept'][number];

const item = (kind: WorklistItemKind, more: Partial<Item> = {}): Item => ({
  key: kind,
  kind,
  since: 0,
  showsFrom: always,
  snoozedUntil: null,
  joint: null,
  decisionId: null,
  facts: {},
  ...more,
});

const asked = (medicinesAskedOn: Day | null) => ({ medicinesAskedOn });

const open = (more: Partial<OpenWanted> = {}) =>
  openFact({ due: [], kept: [], waiting: [], screening: asked(addDays(today, -3)), today, ...more });

const said = (more: Partial<OpenWanted> = {}): string =>
  summaryInWords({ atUsual: { is: 'no-dose' }, lastStep: { is: 'no-dose' }, open: open(more) }, today).open;

const kindOf = (...due: OpenWanted['due']) => {
  const fact = open({ due });
  return fact.is === 'item' ? fact.kind : fact.is;
};

describe('the open question', () => {
  it('is danger before a dose to sign, and a dose to sign before any other item', () => {
    const sign = item('awaiting-signature');
    for (const kind of worklistItemKinds.filter((one) => one !== 'awaiting-signature'))
      expect(kindOf(sign, item(kind))).toBe(dangers.includes(kind) ? kind : 'awaiting-signature');
  });

  it('is otherwise the most pressing item of the worklist, then the oldest, and says how many more there are', () => {
    expect(kindOf(item('screening-due'), item('ease-back'))).toBe('ease-back');
    expect(
      open({ due: [item('message', { key: 'b', since: 2 }), item('message', { key: 'a', since: 1 })] }),
    ).toMatchObject({ key: 'a', others: 1 });
    const joint = { joint: 'left-knee' } as const;
    expect(said({ due: [item('ease-back', joint)] })).toBe('Eased back for the left knee.');
    expect(said({ due: [item('ease-back', joint), item('message')] })).toBe(
      'Eased back for the left knee. 1 more item is open.',
    );
    expect(said({ due: [item('ease-back', joint), item('message'), item('screening-due')] })).toMatch(
      / 2 more items are open\.$/,
    );
  });

  it('asks for a signature with the dose in full', () => {
    expect(said({ due: [item('awaiting-signature')], waiting: [kneeDose] })).toBe(
      'Sign 3 × 15–20, 10 kg (seated-leg-straightening, left)?',
    );
  });

  it('is what comes due within 14 days: 13, 14 and 15 days ahead, the first of them', () => {
    const ahead = (days: number) =>
      open({ kept: [item('screening-due', { showsFrom: addDays(today, days) })] }).is;
    expect([13, 14, 15].map(ahead)).toEqual(['coming', 'coming', 'nothing']);
    const kept = [
      item('screening-due', { showsFrom: addDays(today, 9) }),
      item('baseline-due', { showsFrom: addDays(today, 8), joint: 'left-knee' }),
    ];
    expect(said({ kept })).toBe('The baseline for the left knee is due again on 28 Apr.');
    expect(said({ kept: kept.slice(0, 1) })).toBe('Screening is due again on 29 Apr.');
  });

  it('is what was snoozed by the day on which it comes back, however long it was due', () => {
    const off = (days: number) =>
      said({ kept: [item('screening-due', { snoozedUntil: addDays(today, days) })] });
    expect([12, 13].map(off)).toEqual([
      'Screening is due again on 3 May.',
      'Screening is due again on 4 May.',
    ]);
    expect(open({ kept: [item('screening-due', { snoozedUntil: addDays(today, 14) })] }).is).toBe('nothing');
  });

  it('is what was not asked for more than 28 days: 28 and 29, and what never was', () => {
    const since = (days: number) => open({ screening: asked(addDays(today, -days)) }).is;
    expect([28, 29].map(since)).toEqual(['nothing', 'not-asked']);
    expect(said({ screening: asked('2026-03-09') })).toBe('Medicines were last asked about on 9 Mar.');
    expect(said({ screening: asked(null) })).toBe('Medicines have not been asked about.');
    expect(said({ screening: null })).toBe('No screening is on record.');
  });

  it('is none only with the word what was looked at, and what was not', () => {
    expect(said()).toBe(
      'Nothing is open in what was looked at: the worklist, what comes due by 4 May, and when medicines were last asked about (17 Apr). What was not entered was not looked at.',
    );
  });
});
