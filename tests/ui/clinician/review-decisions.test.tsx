/** The decision that is asked about, and those before it: what can be answered, and what is only read. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { kneeDose } from '#tests/core/decision/small-record.ts';
import { withRouter } from '#tests/support/with-router.tsx';
import { questionOf } from '#ui/clinician/review/decision-question.ts';
import { Decisions } from '#ui/clinician/review/decisions.tsx';
import type { ReviewProps } from '#ui/clinician/review/review-props.ts';
import { valueInWords } from '#ui/clinician/words.ts';

const noon = (day: string) => Date.parse(`${day}T12:00:00Z`);
const decision = (id: string, day: string, over: object = {}) => ({
  id,
  joint: 'left-knee',
  decision: 'hold',
  today: 'as-planned',
  contact: 'none',
  largestStep: null,
  day,
  evaluatedAt: noon(day),
  cause: 'morning',
  reasons: [],
  engineVersion: 2,
  correctedSince: false,
  ...over,
});
const days = Array.from({ length: 12 }, (_, place) => `2026-04-${String(place + 1).padStart(2, '0')}`);
const all = days.map((day, place) => decision(`d${place + 1}`, day));

const shown = (
  over: {
    decisionId?: string;
    isEveryDecision?: boolean;
    asks?: object[];
    signs?: object[];
    decisions?: object[];
    proposals?: object[];
  } = {},
) => {
  const props = {
    patient: { id: 'p' },
    choice: {
      joint: 'left-knee',
      version: null,
      days: 84,
      measure: 'dose',
      decisionId: over.decisionId ?? null,
      isEveryDecision: over.isEveryDecision ?? false,
    },
    review: {
      decisions: over.decisions ?? all,
      responses: [],
      proposals: over.proposals ?? [],
      plan: { asks: over.asks ?? [], signs: over.signs ?? [] },
    },
    prescriptions: { unsigned: [] },
    signer: 'Nuala Derravane',
    clock: { zone: 'UTC', now: noon('2026-04-12') },
    day: '2026-04-12',
  } as unknown as ReviewProps;
  return renderToStaticMarkup(withRouter(<Decisions review={props} joint="left-knee" />));
};
const accepts = (html: string): readonly string[] =>
  [...html.matchAll(/id="accept-([^"]+)"/g)].map(([, id = '']) => id);

describe('the decisions of a review', () => {
  it('give the newest an answer, and the earlier ones none', () => {
    expect(accepts(shown())).toEqual(['d12']);
    expect(accepts(shown({ isEveryDecision: true }))).toEqual(['d12']);
  });

  it('show an earlier one whole when it is asked for, without an answer, and the way back', () => {
    const html = shown({ decisionId: 'd3' });
    expect(html).toContain('id="decision-d3"');
    expect(accepts(html)).toEqual([]);
    expect(html).toContain('Back to the newest decision');
    expect(html).toContain('Nobody answered it.');
    expect(html).not.toContain('?</h2>');
    expect(shown()).not.toContain('Back to the newest decision');
  });

  it('let an earlier one be answered where it still asks the clinic', () => {
    const asks = [{ id: 'd3', joint: 'left-knee', settled: null, contact: 'none' }];
    expect(accepts(shown({ decisionId: 'd3', asks }))).toEqual(['d3']);
  });

  it('list three at once and count the rest, which the address opens', () => {
    expect(shown().match(/aria-label="Read the decision of/g)).toHaveLength(3);
    expect(shown()).toContain('8 more');
    expect(shown({ isEveryDecision: true }).match(/aria-label="Read the decision of/g)).toHaveLength(11);
  });

  it('name another joint that asks for a contact', () => {
    const ask = { id: 'x', joint: 'right-hip', settled: null, contact: 'same-day' };
    expect(shown({ asks: [ask] })).toMatch(/Also asked, on another joint:.*right hip/);
    expect(shown({ asks: [{ ...ask, settled: 'for-good' }] })).not.toContain('right hip');
  });

  it('of a warning sign offer the contact alone', () => {
    const sign = decision('d12', '2026-04-12', {
      decision: 'pause',
      contact: 'same-day',
      reasons: [
        {
          rule: 'R1',
          observed: {},
          threshold: '',
          effect: {},
          support: 'source',
        },
      ],
    });
    const decisions = [...all.slice(0, 11), sign];
    const open = shown({ decisions, signs: [{ endedBy: null }] });
    expect(open).toContain('only a contact ends');
    expect(accepts(open)).toEqual([]);
    const ended = shown({ decisions, signs: [{ endedBy: {} }] });
    expect(ended).toContain('which a contact has ended');
    expect(accepts(ended)).toEqual([]);
  });
});

describe('the question of a decision', () => {
  const dose = { method: 'low-load', sets: 3, repetitions: { low: 23, high: 25 }, loadKg: 4 };
  const proposal = (effect: string, over: object = {}) => ({ itemId: 'chair', dose, effect, ...over });
  const unsigned = [{ decisionId: 'd', itemId: 'chair' }];
  const asked = (word: string, proposals: readonly object[], waiting: readonly object[] = unsigned) =>
    questionOf(
      decision('d', '2026-04-01', { decision: word }) as never,
      proposals as never,
      waiting as never,
    );
  const of = (word: string, effect?: string) => asked(word, effect ? [proposal(effect)] : []);

  it('asks to sign what waits for a signature and nothing that is signed already', () => {
    const other = proposal('awaits-signature', { itemId: 'hand', dose: { ...dose, loadKg: 0.75 } });
    const both = [proposal('awaits-signature'), other];
    expect(asked('progress', both)).toBe('Sign 3 × 23–25, 4 kg?');
    expect(asked('progress', both, [])).toBe('Go on with 3 × 23–25, 4 kg and 3 × 23–25, 750 g?');
  });

  it('asks in the words of the dose, and of the joint where no dose is named', () => {
    expect(of('hold', 'repeat')).toBe('Keep 3 × 23–25, 4 kg for now?');
    expect(of('progress', 'awaits-signature')).toBe('Sign 3 × 23–25, 4 kg?');
    expect(of('progress', 'acts-at-once')).toBe('Go on with 3 × 23–25, 4 kg?');
    expect(of('ease-back', 'acts-at-once')).toBe('Leave 3 × 23–25, 4 kg eased back?');
    expect(of('hold')).toBe('Keep the dose for the left knee?');
    expect(of('progress')).toBe('Let the left knee go on?');
    expect(of('ease-back')).toBe('Leave the left knee eased back?');
    expect(of('pause')).toBe('Keep the left knee paused?');
  });
});

describe('what a decision proposes, in words', () => {
  const proposal = (over: object) => ({
    id: 'q',
    decisionId: 'd12',
    itemId: 'i',
    madeAt: 1,
    dose: kneeDose,
    kind: 'same',
    effect: 'repeat',
    changes: ['The same dose again.'],
    toPatient: 'x',
    ...over,
  });
  const said = (over: object) => shown({ proposals: [proposal(over)] }).match(/the same dose again/gi) ?? [];

  it('says once that the dose stays', () => {
    expect(said({})).toHaveLength(1);
  });

  it('says nothing of the same dose where there is no session', () => {
    expect(said({ kind: 'stop', changes: ['No session until a clinician reopens it.'] })).toHaveLength(0);
  });
});

it('names a sign in words where it was found, never by its code', () => {
  expect(valueInWords(['calf-pain-swelling', 'chest-pain'])).toBe(
    'painful, swollen or warm calf, chest pain or pressure',
  );
});
