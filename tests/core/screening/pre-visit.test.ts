/** Answers before a visit, the minimum set, templates, and the page for the colleague. */
import { describe, expect, it } from 'vitest';
import {
  ineligibleMethods,
  lastDecisions,
  overridesOf,
  pauseLines,
} from '#core/episode/documents/handover.ts';
import { exerciseById, jointsLoaded } from '#core/exercises/catalogue.ts';
import { planFor } from '#core/plan/plan-for.ts';
import { prescriptionTemplates } from '#core/prescribing/templates.ts';
import { screeningItems } from '#core/screening/items.ts';
import { methodOutcomes } from '#core/screening/outcomes.ts';
import {
  answeredSince,
  besideRecord,
  confirmed,
  minimumSet,
  stillToAsk,
  toLookAt,
} from '#core/screening/pre-visit.ts';
import type { Screening, ScreeningItemAnswer } from '#core/screening/screening.ts';
import { inputs } from '../plan/plan-inputs.ts';
import { outcomesInput, screeningWith } from './answers.ts';

const yes = (item: string, more: Partial<ScreeningItemAnswer> = {}): ScreeningItemAnswer => ({
  item,
  answer: 'yes',
  ...more,
});
const sent = (changed: readonly ScreeningItemAnswer[], left: readonly string[] = []) => ({
  day: '2026-03-20',
  answers: screeningWith(changed).answers.filter((answer) => !left.includes(answer.item)),
});
const lookedAt = (records: readonly Screening[], preVisit: Parameters<typeof besideRecord>[1]) =>
  toLookAt(besideRecord(records, preVisit)).map(({ item, change }) => [item.id, change]);

describe('what a clinician looks at', () => {
  it('nothing when all is no as before', () => {
    expect(lookedAt([screeningWith([])], sent([]))).toEqual([]);
  });

  it.each([
    ['a yes as before', [yes('diabetes')], [yes('diabetes')], [['diabetes', 'same']]],
    ['a new yes', [], [yes('diabetes')], [['diabetes', 'changed']]],
    ['not known', [], [{ item: 'cancer', answer: 'not-known' as const }], [['cancer', 'changed']]],
    ['a yes that became no', [yes('diabetes')], [], [['diabetes', 'changed']]],
    [
      'the same yes on another limb',
      [yes('lymph', { limbs: [{ limb: 'arm', side: 'left' }] })],
      [yes('lymph', { limbs: [{ limb: 'arm', side: 'right' }] })],
      [['lymph', 'changed']],
    ],
  ])('%s', (_name, before, now, expected) => {
    expect(lookedAt([screeningWith(before)], sent(now))).toEqual(expected);
  });

  it('an item left out that was yes before; never taken over as no', () => {
    expect(lookedAt([screeningWith([yes('diabetes')])], sent([], ['diabetes']))).toEqual([
      ['diabetes', 'not-answered'],
    ]);
    const kept = confirmed(sent([], ['diabetes']), []);
    expect(kept.some((answer) => answer.item === 'diabetes')).toBe(false);
  });

  it('the order in which limbs and details were ticked changes nothing', () => {
    const a = yes('medicines', { details: ['testosterone', 'blood-thinner'] });
    const b = yes('medicines', { details: ['blood-thinner', 'testosterone'] });
    expect(lookedAt([screeningWith([a])], sent([b]))).toEqual([['medicines', 'same']]);
  });
});

describe('still true since', () => {
  const day = (on: string, changed: readonly ScreeningItemAnswer[]) => screeningWith(changed, on);

  it('names the first day of the unbroken run', () => {
    const records = [
      day('2026-03-01', [yes('diabetes')]),
      day('2026-02-01', [yes('diabetes')]),
      day('2026-01-01', []),
      day('2025-12-01', [yes('diabetes')]),
    ];
    expect(answeredSince(records, 'diabetes')).toBe('2026-02-01');
    expect(answeredSince(records.slice(3), 'diabetes')).toBe('2025-12-01');
    expect(answeredSince([], 'diabetes')).toBeNull();
  });
});

describe('confirming', () => {
  it('puts the clinician’s words in place of the patient’s, and keeps the rest', () => {
    const answers = confirmed(sent([yes('diabetes')]), [{ item: 'diabetes', answer: 'no' }]);
    expect(answers.filter((answer) => answer.item === 'diabetes')).toEqual([
      { item: 'diabetes', answer: 'no' },
    ]);
    expect(answers).toHaveLength(screeningItems.length);
  });
});

describe('the minimum for each method', () => {
  it('of low load is shorter than that of occlusion and part of it', () => {
    const [light, cuff] = [minimumSet('low-load', 61), minimumSet('occlusion', 61)].map((list) =>
      list.map(({ id }) => id),
    );
    expect(light!.length).toBe(16);
    expect(cuff!.length).toBeGreaterThan(light!.length);
    expect(light!.every((id) => cuff!.includes(id))).toBe(true);
  });

  it('answered no lets low load open with the rest told as not asked, while occlusion stays closed', () => {
    const asked: readonly string[] = minimumSet('low-load', 61).map(({ id }) => id);
    const screening = screeningWith([]);
    const answers = screening.answers.filter((answer) => asked.includes(answer.item));
    const outcomes = methodOutcomes(outcomesInput({ screening: { ...screening, answers } }));
    for (const { method, eligibility, reasons } of outcomes) {
      expect([method, eligibility]).toEqual([
        method,
        method === 'occlusion' ? 'closed' : 'open-with-precautions',
      ]);
      expect(reasons.some(({ code }) => code.startsWith('not-asked-'))).toBe(true);
    }
    expect(stillToAsk(answers, 61)['low-load']).toEqual([]);
    expect(stillToAsk(answers, 61).occlusion.length).toBe(minimumSet('occlusion', 61).length - asked.length);
  });

  it('with one of it missing keeps low load closed', () => {
    for (const { id } of minimumSet('low-load', 61)) {
      const screening = screeningWith([]);
      const answers = screening.answers.filter((answer) => answer.item !== id);
      const outcomes = methodOutcomes(outcomesInput({ screening: { ...screening, answers } }));
      expect([id, outcomes.every(({ eligibility }) => eligibility === 'closed')]).toEqual([id, true]);
    }
  });
});

describe('templates', () => {
  it.each(prescriptionTemplates.map((template) => [template.id, template] as const))(
    '%s names an exercise of the catalogue that is offered for its method and loads its joint',
    (_id, { request, joint }) => {
      const exercise = exerciseById(request.exerciseId);
      expect(exercise?.methods).toContain(request.method);
      const side = exercise?.limbsAtOnce === 'both' ? 'both' : 'right';
      expect(jointsLoaded(request.exerciseId, side).some((one) => one.endsWith(joint))).toBe(true);
    },
  );

  it('have names of their own', () => {
    const titles = prescriptionTemplates.map(({ title }) => title);
    expect(new Set(titles).size).toBe(titles.length);
  });
});

const decided = (id: string, at: number, decision: 'pause' | 'hold' = 'pause') => ({
  id,
  joint: 'right-knee' as const,
  decision,
  evaluatedAt: at,
  reasons: [],
});
const overruled = (decisionId: string, until: string, answeredAt = 1) => ({
  decisionId,
  kind: 'override' as const,
  decision: 'hold' as const,
  reason: 'Seen today',
  until,
  answeredName: 'Clinician',
  answeredAt,
});

describe('handing over', () => {
  const today = '2026-03-20';

  it('names each reason that closes a method once, with the limbs it closes', () => {
    const outcomes = methodOutcomes(
      outcomesInput({ screening: screeningWith([yes('lymph', { limbs: [{ limb: 'arm', side: 'left' }] })]) }),
    );
    const lines = ineligibleMethods(outcomes);
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatchObject({ method: 'occlusion', limbs: [{ limb: 'arm', side: 'left' }] });
  });

  it('gives the last three decisions, newest first', () => {
    const rows = [1, 4, 2, 3].map((at) => decided(`d${at}`, at));
    expect(lastDecisions(rows).map(({ id }) => id)).toEqual(['d4', 'd3', 'd2']);
  });

  const planWith = (answers: readonly ReturnType<typeof overruled>[], decision: 'pause' | 'hold' = 'pause') =>
    planFor(
      inputs({
        decisions: [
          {
            ...decided('d', 1, decision),
            largestStep: null,
            today: 'none',
            contact: 'none',
            cause: 'session',
            sessionId: null,
            morningId: null,
          },
        ],
        answers,
        at: { instant: 2, day: today },
      }),
    );
  const overridesFor = (rows: readonly ReturnType<typeof overruled>[]) =>
    overridesOf(planWith(rows), [decided('d', 1)], rows);

  it.each([
    ['its last day', today, 1],
    ['the day after', '2026-03-19', 0],
  ])('an override is told until %s', (_name, until, told) => {
    expect(overridesFor([overruled('d', until)])).toHaveLength(told);
  });

  it('of two answers to a decision the newest counts, whatever their order', () => {
    const accepted = { ...overruled('d', today, 2), kind: 'accept' as const, decision: null, until: null };
    const rows = [overruled('d', today, 1), accepted] as never;
    expect(overridesFor(rows)).toEqual([]);
    expect(overridesFor((rows as unknown[]).toReversed() as never)).toEqual([]);
  });

  it.each([
    ['nobody', [], null],
    [
      'somebody until today',
      [{ decisionId: 'd', ownerName: 'A', until: today }],
      { name: 'A', until: today, isOver: false },
    ],
    [
      'somebody until yesterday',
      [{ decisionId: 'd', ownerName: 'A', until: '2026-03-19' }],
      { name: 'A', until: '2026-03-19', isOver: true },
    ],
  ])('a pause is looked after by %s', (_name, owners, owner) => {
    expect(pauseLines(planWith([]), owners, today)[0]?.owner).toEqual(owner);
  });

  it('lists no pause that is overruled, and nothing that is no pause', () => {
    expect(pauseLines(planWith([overruled('d', today)]), [], today)).toEqual([]);
    expect(pauseLines(planWith([], 'hold'), [], today)).toEqual([]);
  });
});
