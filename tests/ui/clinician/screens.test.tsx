/** The clinic's screens say what was found and what was checked, in order, and never more. */

import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { AskedItem } from '#api/clinician/question-in-english.ts';
import { isNamedLike } from '#core/record/name-search.ts';
import type { Version, WorklistAnswer, WorklistGroups } from '#ui/clinician/answers.ts';
import { askedFields, requestFrom, withScheme } from '#ui/clinician/prescribing/request-fields.ts';
import { dayCountInWords } from '#ui/clinician/programme/planner-words.ts';
import { markersWithRoom } from '#ui/clinician/review/chart/chart-scale.ts';
import { linesOf } from '#ui/clinician/review/review-choice.ts';
import { groupedReasons } from '#ui/clinician/screening/outcome-table.tsx';
import {
  answerInWords,
  answersFrom,
  itemGroups,
  unanswered,
} from '#ui/clinician/screening/screening-form-state.ts';
import { agoInWords, momentInWords } from '#ui/clinician/when.ts';
import { GroupCounts, groupInWords } from '#ui/clinician/worklist/group-counts.tsx';
import { hrefOf } from '#ui/clinician/worklist/item-place.ts';
import { inputFrom } from '#ui/clinician/worklist/worklist-query.ts';
import { WorklistScreen } from '#ui/clinician/worklist/worklist-screen.tsx';

const clock = { zone: 'Europe/Lisbon', now: Date.parse('2026-04-20T08:30:00+01:00') };

describe('time on the clinic’s wall', () => {
  it.each([
    ['2026-04-20T07:40:00+01:00', 'today at 07:40'],
    ['2026-04-20T00:05:00+01:00', 'today at 00:05'],
    ['2026-04-19T23:55:00+01:00', 'yesterday'],
    ['2026-04-14T12:00:00+01:00', '6 days ago'],
    ['2026-02-20T12:00:00Z', '59 days ago'],
    ['2026-02-19T12:00:00Z', '8 weeks ago'],
  ])('%s was %s', (at, words) => {
    expect(agoInWords(Date.parse(at), clock)).toBe(words);
  });

  it('tells moments on both sides of the change of clocks by the wall', () => {
    expect(momentInWords(Date.parse('2026-03-29T00:30:00Z'), clock)).toBe('29 Mar, 00:30');
    expect(momentInWords(Date.parse('2026-03-29T01:30:00Z'), clock)).toBe('29 Mar, 02:30');
    expect(momentInWords(Date.parse('2025-12-31T23:30:00Z'), clock)).toBe('31 Dec 2025, 23:30');
  });
});

const list = (count: number, patients: number): WorklistAnswer =>
  ({
    day: '2026-04-20',
    patients,
    closed: 0,
    listed: count,
    next: null,
    lines: Array.from({ length: count }, (_, place) => ({
      patientId: `p${place}`,
      givenName: 'A',
      familyName: `B${place}`,
      item: {
        key: `k${place}`,
        kind: 'awaiting-signature',
        sentence: 'A prescription needs a signature.',
        since: clock.now - 86_400_000,
        joint: null,
        decisionId: null,
      },
      others: [],
    })),
  }) as unknown as WorklistAnswer;

const everything = { kind: null, isMine: false, clinician: null, site: null, group: null };
const filters = { clinicians: [], sites: [] };
const groups: WorklistGroups = { counts: [], lines: [] };

describe('the worklist', () => {
  it('says who needs the reader, who was snoozed until when, who has whom, and who was never screened', () => {
    const counts: WorklistGroups['counts'] = [
      { group: 'needs-you', count: 4, until: null, names: [] },
      { group: 'assigned', count: 1, until: null, names: ['Piotr Wren'] },
      { group: 'snoozed', count: 1, until: '2026-04-22', names: [] },
      { group: 'not-screened', count: 2, until: null, names: [] },
      { group: 'nothing-found', count: 4, until: null, names: [] },
      { group: 'discharged', count: 0, until: null, names: [] },
    ];
    const words = counts.map((count) => groupInWords(count, '2026-04-20'));
    expect(words.slice(0, 5)).toEqual([
      '4 need you',
      '1 assigned to Piotr Wren',
      expect.stringMatching(/^1 snoozed until .*22/),
      '2 not yet screened',
      '4 nothing found in what was entered',
    ]);
    const markup = renderToStaticMarkup(<GroupCounts counts={counts} current={null} day="2026-04-20" />);
    expect(markup.match(/href="\/worklist[^"]*"/g)).toHaveLength(5);
  });

  it('says on an empty list what was checked and what was not', () => {
    const markup = renderToStaticMarkup(
      <WorklistScreen
        list={list(0, 3)}
        clock={clock}
        filter={everything}
        filters={filters}
        groups={groups}
        signer="A B"
      />,
    );
    expect(markup).toContain('Checked for each patient');
    expect(markup).toContain('Not checked');
    expect(markup).not.toContain('<ol');
  });

  it.each([
    ['awaiting-signature', null, '/patients/p0/prescriptions#unsigned'],
    ['screening-due', null, '/patients/p0/screening'],
    ['pressure-due', null, '/patients/p0/measurements?kind=limb-occlusion-pressure'],
    ['message', null, '/patients/p0/review#messages'],
    ['review-day', null, '/patients/p0/review#next-review'],
    ['pause', 'd1', '/patients/p0/review?joint=left-knee&decision=d1#decision-d1'],
  ] as const)('a matter “%s” leads to where it is dealt with', (kind, decisionId, href) => {
    const { item } = list(1, 1).lines[0]!;
    expect(hrefOf('p0', { ...item, kind, decisionId, joint: 'left-knee' })).toBe(href);
  });

  it.each([
    ['2~1700000000000~p1', { rank: 2, since: 1_700_000_000_000, patientId: 'p1' }],
    ['2~soon~p1', null],
    ['nonsense', null],
    [undefined, null],
  ])('takes up the list at %s', (after, cursor) => {
    expect(inputFrom({ after, kind: 'no-such-kind', site: '' })).toEqual({
      kind: null,
      mine: false,
      assignedTo: null,
      siteId: null,
      after: cursor,
    });
  });
});

describe('finding a patient', () => {
  const people = [
    { givenName: 'Zoë', familyName: 'Álvarez' },
    { givenName: 'Ann', familyName: 'Zola' },
  ];
  it.each([
    ['zo', 2],
    ['alvarez zoe', 1],
    ['ann', 1],
    ['', 2],
    ['x', 0],
  ])('“%s” finds %d', (typed, count) => {
    expect(people.filter((one) => isNamedLike(one, typed))).toHaveLength(count);
  });
});

const asksNothing = { limbs: false, joints: false, day: false, notApplicable: false };

const item = (id: string, more: Partial<AskedItem> = {}): AskedItem => ({
  id,
  question: 'Q?',
  clinicianLabel: 'L',
  asks: { ...asksNothing, details: [] },
  ifWhichNotSaid: null,
  minimumFor: [],
  mark: 'design',
  ...more,
});

describe('the screening sheet', () => {
  const items = [
    item('a', {
      asks: { ...asksNothing, limbs: true, details: [{ id: 'd', label: 'The detail' }] },
      minimumFor: ['occlusion'],
    }),
    item('b', { minimumFor: ['variation', 'low-load', 'occlusion'] }),
    item('c'),
  ];
  const ticked = { ...unanswered, details: ['d'], limbs: ['left leg'] };

  it('sends only what was answered', () => {
    expect(answersFrom(items, {})).toEqual([]);
  });

  it('sends details with “not known” too, and drops them when the answer became “no”', () => {
    const detailed = { details: ['d'], limbs: [{ limb: 'leg', side: 'left' }] };
    expect(answersFrom(items, { a: { ...ticked, answer: 'not-known' } })).toEqual([
      { item: 'a', answer: 'not-known', ...detailed },
    ]);
    expect(answersFrom(items, { a: { ...ticked, answer: 'no' } })).toEqual([{ item: 'a', answer: 'no' }]);
  });

  it('shows the previous answer with its details, or that there was none', () => {
    const before = {
      item: 'a',
      answer: 'yes',
      details: ['d'],
      limbs: [{ limb: 'leg', side: 'left' }],
    } as const;
    expect(answerInWords(items[0]!, before)).toBe('yes (The detail; left leg)');
    expect(answerInWords(items[0]!, undefined)).toBe('not answered');
  });

  it('puts every question into one group, those that open everything first', () => {
    expect(itemGroups(items).map((group) => group.items.map((one) => one.id))).toEqual([['b'], ['a'], ['c']]);
  });

  it('says one reason once with all the limbs it reaches', () => {
    const reason = {
      code: 'past-clot',
      from: 'past-clot',
      eligibility: 'closed' as const,
      text: 'Past clot.',
      clearedBy: null,
      support: 'clinic',
    };
    const outcome = (side: 'left' | 'right') =>
      ({ method: 'occlusion', limb: 'leg', side, eligibility: 'closed', reasons: [reason] }) as const;
    expect(groupedReasons([outcome('left'), outcome('right')]).map((row) => row.limbs)).toEqual([
      ['left leg', 'right leg'],
    ]);
  });
});

const names = (typed: Record<string, string>) =>
  askedFields('occlusion', typed).first.map((field) => field.name);

describe('asking for an occlusion dose', () => {
  it('a wrap is asked its tightness and never a pressure; a cuff the other way round', () => {
    expect(names({ cuffKind: 'elastic-wrap' })).toContain('tightness');
    expect(names({ cuffKind: 'elastic-wrap' })).not.toContain('percent');
    expect(names({ cuffKind: 'pneumatic' })).toContain('percent');
    expect(names({ cuffKind: 'pneumatic' })).not.toContain('tightness');
  });

  it('whether the pulse beyond the cuff was shown has to be answered, never left open', () => {
    const { first } = askedFields('occlusion', {});
    expect(first.find(({ name }) => name === 'pulseShown')).toMatchObject({ optional: false });
  });

  it('the limb is the exercise’s own and is not asked', () => {
    expect(names({})).not.toContain('limb');
    expect(requestFrom('occlusion', { exerciseId: 'knee-extension-seated' }).limb).toBe('leg');
  });

  it('a scheme fills in its usual rest, and never over what was typed', () => {
    expect(withScheme({}, 'schemeId', 'thirty-then-fifteens').restSeconds).toBe('30');
    expect(withScheme({ restSeconds: '45' }, 'schemeId', 'thirty-then-fifteens').restSeconds).toBe('45');
  });
});

describe('the review’s choices', () => {
  it('offers the newest signed version of each line, those in force first', () => {
    const version = (
      itemId: string,
      number: number,
      signedAt: number | null,
      endedAt: number | null = null,
    ) => ({ itemId, version: number, signedAt, endedAt }) as unknown as Version;
    const seen = linesOf([
      version('a', 1, 1, 5),
      version('b', 1, 1),
      version('b', 2, 2),
      version('b', 3, null),
    ]);
    expect(seen.map((row) => `${row.itemId}${row.version}`)).toEqual(['b2', 'a1']);
  });

  it('where gates stand too close the more cautious keeps its sign', () => {
    const gate = (id: string, day: string, word: 'hold' | 'pause' | 'progress') =>
      ({ id, day, lastDay: day, word, count: 1, reasons: [], answered: null }) as const;
    const markers = [
      gate('h', '2026-04-01', 'hold'),
      gate('p', '2026-04-02', 'pause'),
      gate('x', '2026-04-09', 'progress'),
    ];
    const shown = markersWithRoom(markers, (day) => Number(day.slice(-2)) * 10, 20);
    expect([...shown].sort()).toEqual(['p', 'x']);
  });

  it.each([
    [3, 3, '3 of 3 a week'],
    [2, 3, '2 chosen, 3 a week prescribed'],
  ])('says when the days ticked differ from what is prescribed: %d of %d', (ticked, perWeek, words) => {
    expect(dayCountInWords(ticked, perWeek)).toBe(words);
  });
});
