/** The one plan: whatever takes something away, and that nothing added makes an exercise bolder. */
import { describe, expect, it } from 'vitest';
import { decisionRank, todayRank } from '#core/decision/decide.ts';
import type { MadeDecision } from '#core/decision/decisions-in-force.ts';
import type { Plan } from '#core/plan/plan.ts';
import { planFor } from '#core/plan/plan-for.ts';
import { causes, decided, drawn, drawnInputs, limit, screenedWith, sign } from './drawn-plans.ts';
import { curl, day, hoursAfter, inputs, noon, version } from './plan-inputs.ts';

const todayOf = (plan: Plan, itemId: string) => plan.items.find((one) => one.itemId === itemId)?.today;
const item = (plan: Plan, itemId: string) => plan.items.find((one) => one.itemId === itemId)!;

describe('the plan', () => {
  it('leaves every exercise as signed where nothing is against it', () => {
    const plan = planFor(inputs());
    expect(plan.items.map(({ today, reasons }) => [today, reasons])).toEqual([
      ['as-planned', []],
      ['as-planned', []],
      ['as-planned', []],
    ]);
    expect(item(plan, 'curl').dose).toEqual(curl);
  });

  it('has one answer of caution over the joints an exercise loads, and leaves the others alone', () => {
    const plan = planFor(inputs({ decisions: [decided({ decision: 'ease-back', today: 'bad-day' })] }));
    expect(['curl', 'chair', 'cuff'].map((id) => todayOf(plan, id))).toEqual([
      'as-planned',
      'bad-day',
      'bad-day',
    ]);
  });

  it('stops everything while a warning sign is open, whatever a clinician has overruled or the engine found since', () => {
    const bold = decided({ decision: 'progress', largestStep: 'load', evaluatedAt: noon });
    const answers = [
      {
        decisionId: 'decision',
        kind: 'override' as const,
        decision: 'progress' as const,
        until: '2026-03-30',
        answeredAt: noon,
      },
    ];
    const plan = planFor(inputs({ danger: sign, decisions: [bold], answers }));
    expect(plan.items.map(({ today, decision }) => [today, decision])).toEqual([
      ['none', 'pause'],
      ['none', 'pause'],
      ['none', 'pause'],
    ]);
    expect(plan.contact).toBe('emergency');
  });

  it.each([
    ['under', 2.5, 'as-planned', 2],
    ['at', 2, 'as-planned', 2],
    ['over', 1.5, 'bad-day', null],
  ] as const)('a dose %s a limit on load: %f kg leaves it %s', (_place, limitKg, today, loadKg) => {
    const plan = planFor(inputs({ limits: [limit({ limitKg })] }));
    const found = item(plan, 'curl');
    expect([found.today, found.dose && 'loadKg' in found.dose ? found.dose.loadKg : null]).toEqual([
      today,
      loadKg,
    ]);
  });

  it('lowers the signed easier session to a load the patient owns within the limit, and stops where she owns none', () => {
    const easier = item(planFor(inputs({ limits: [limit({ limitKg: 1.5 })] })), 'curl').easierSession;
    expect(easier).toMatchObject({ loadKg: 1, sets: 1 });
    const none = item(planFor(inputs({ limits: [limit({ limitKg: 0.4 })] })), 'curl');
    expect([none.today, none.dose, none.easierSession]).toEqual(['rest-this-joint', null, null]);
  });

  it('rests an exercise whose easier session alone is over a limit: pain would have nothing to fall to', () => {
    const heavier = version('curl', { ...curl, loadKg: 1 }, ['right-elbow'], { ...curl, sets: 1, loadKg: 2 });
    const found = item(
      planFor(inputs({ versions: [heavier], limits: [limit({ limitKg: 1.5 })], ownedLoadsKg: [2] })),
      'curl',
    );
    expect([found.today, found.dose, found.easierSession]).toEqual(['rest-this-joint', null, null]);
  });

  it('asks for the pause that holds a joint back, also where a newer one was overruled and good answers came since', () => {
    const first = decided({ id: 'first', decision: 'pause', today: 'none', evaluatedAt: noon - 5000 });
    const second = decided({ id: 'second', decision: 'pause', today: 'none', evaluatedAt: noon - 4000 });
    const good = decided({ id: 'good', evaluatedAt: noon - 10 });
    const answers = [
      {
        decisionId: 'second',
        kind: 'override' as const,
        decision: 'hold' as const,
        until: '2026-03-08',
        answeredAt: noon - 3000,
      },
    ];
    const plan = planFor(inputs({ decisions: [first, second, good], answers }));
    expect(todayOf(plan, 'chair')).toBe('none');
    expect(plan.asks.map(({ id, settled }) => [id, settled])).toEqual([['first', null]]);
  });

  it('goes on asking for a call the same day although the decision was overruled, until somebody was reached', () => {
    const decision = decided({ decision: 'ease-back', today: 'bad-day', contact: 'same-day' });
    const answers = [
      {
        decisionId: 'decision',
        kind: 'override' as const,
        decision: 'hold' as const,
        until: '2026-03-20',
        answeredAt: noon,
      },
    ];
    expect(planFor(inputs({ decisions: [decision], answers })).asks[0]?.settled).toBeNull();
  });

  it('never raises a dose to a limit, and lets a limit of tomorrow bind tomorrow', () => {
    const free = item(planFor(inputs({ limits: [limit({ limitKg: 40 })] })), 'curl');
    expect(free.dose).toEqual(curl);
    const coming = limit({ limitKg: 1, from: '2026-03-10' });
    expect(todayOf(planFor(inputs({ limits: [coming] })), 'curl')).toBe('as-planned');
    const at = { instant: hoursAfter(24), day: '2026-03-10' };
    expect(todayOf(planFor(inputs({ limits: [coming], at })), 'curl')).toBe('bad-day');
  });

  it('lists what was signed over a limit and eased back since, and nothing that was signed at it', () => {
    const written = version('curl', curl, ['right-elbow', 'right-wrist']);
    const eased = {
      ...written,
      id: 'eased',
      version: 2,
      dose: { ...curl, loadKg: 0.5 },
      origin: 'ease-back',
    } as const;
    const loweredBy = (limitKg: number) =>
      planFor(inputs({ versions: [eased], written: [written], limits: [limit({ limitKg })] })).lowered;
    const signedKg = curl.loadKg;
    expect(loweredBy(signedKg - 0.01)).toEqual([
      expect.objectContaining({
        itemId: 'curl',
        reasons: [expect.objectContaining({ code: 'limit-load', limitKg: signedKg - 0.01 })],
      }),
    ]);
    expect(loweredBy(signedKg)).toEqual([]);
    expect(loweredBy(signedKg + 0.01)).toEqual([]);
  });

  it('stops what a weight-bearing limit closes, named with who set it', () => {
    const limits = [limit({ joint: 'left-knee', kind: 'weight-bearing', limitKg: null })];
    const found = item(planFor(inputs({ limits })), 'chair');
    expect(found.today).toBe('rest-this-joint');
    expect(found.reasons).toEqual([
      expect.objectContaining({ code: 'limit-closes', text: expect.stringContaining('Dr Vance') }),
    ]);
  });

  it('rests what a screening answer recorded since has contraindicated, and says which finding', () => {
    const plan = planFor(
      inputs(screenedWith([{ item: 'lymph', answer: 'yes', limbs: [{ limb: 'leg', side: 'right' }] }], day)),
    );
    expect(todayOf(plan, 'cuff')).toBe('rest-this-joint');
    expect(todayOf(plan, 'curl')).toBe('as-planned');
    expect(item(plan, 'cuff').reasons[0]).toMatchObject({
      findings: expect.arrayContaining([expect.objectContaining({ code: expect.stringMatching(/lymph/) })]),
    });
  });

  it('stops no signed exercise because a screening has grown old: that is due, and found nothing', () => {
    const plan = planFor(inputs(screenedWith([], '2025-01-01')));
    expect(['curl', 'chair'].map((id) => todayOf(plan, id))).toEqual(['as-planned', 'as-planned']);
  });

  it('keeps the cuff off for a day on which something new was told', () => {
    const plan = planFor(inputs({ newsToday: true }));
    expect(['curl', 'chair', 'cuff'].map((id) => todayOf(plan, id))).toEqual([
      'as-planned',
      'as-planned',
      'none',
    ]);
  });

  it('of an answer corrected since keeps the more cautious word until a clinician has acknowledged it', () => {
    const before = decided({ id: 'before', decision: 'ease-back', today: 'bad-day' });
    const after = decided({ id: 'after', evaluatedAt: noon - 1, cause: 'amendment' });
    const corrected = inputs({ decisions: [before, after] });
    expect(todayOf(planFor(corrected), 'chair')).toBe('bad-day');
    const answers = [
      { decisionId: 'after', kind: 'accept' as const, decision: null, until: null, answeredAt: noon },
    ];
    expect(todayOf(planFor({ ...corrected, answers }), 'chair')).toBe('as-planned');
  });

  it('goes on asking for a pause and for a call the same day that were merely accepted', () => {
    const answers = [
      { decisionId: 'decision', kind: 'accept' as const, decision: null, until: null, answeredAt: noon },
    ];
    const settledOf = (more: Partial<MadeDecision>) =>
      planFor(inputs({ decisions: [decided(more)], answers })).asks[0]?.settled;
    expect(settledOf({ decision: 'pause', today: 'none' })).toBeNull();
    expect(settledOf({ decision: 'ease-back', contact: 'same-day' })).toBeNull();
    expect(settledOf({ decision: 'ease-back', contact: 'routine' })).toBe('for-good');
  });
});

describe('the plan of a person with two records', () => {
  const { decisions, answers, danger, limits, screened, care, newsToday, lastLoadedAt } = inputs();
  const told = { newsToday, lastLoadedAt, lastSessionOn: null };
  const other = { decisions, answers, danger, limits, screened, care, ...told };
  const pausedThere = decided({ id: 'there', joint: 'left-knee', decision: 'pause', today: 'none' });
  const boldThere = decided({ id: 'there', joint: 'left-knee', decision: 'progress', largestStep: 'load' });
  const easedHere = decided({ joint: 'left-knee', decision: 'ease-back', today: 'bad-day' });

  it.each([
    ['a decision', { decisions: [pausedThere] }, 'chair', 'none'],
    ['a warning sign', { danger: sign }, 'curl', 'none'],
    ['a limit', { limits: [limit({ limitKg: 1 })] }, 'curl', 'bad-day'],
    ['something new told today', { newsToday: true }, 'cuff', 'none'],
    ['a consent that is missing', { care: { ...care, consents: [] } }, 'cuff', 'rest-this-joint'],
    [
      'a finding',
      screenedWith([{ item: 'lymph', answer: 'yes', limbs: [{ limb: 'leg', side: 'right' }] }], day),
      'cuff',
      'rest-this-joint',
    ],
  ] as const)('is the stricter of both: %s of the other record binds', (_name, more, itemId, today) => {
    expect(todayOf(planFor(inputs({ beside: [{ ...other, ...more }] })), itemId)).toBe(today);
  });

  it('is loosened by nothing in the other record', () => {
    const here = inputs({ decisions: [easedHere] });
    const both = planFor({ ...here, beside: [{ ...other, decisions: [boldThere] }] });
    expect(todayOf(both, 'chair')).toBe('bad-day');
  });
});

describe('the plan, with one cause more', () => {
  it('is never bolder for any exercise (2,000 drawn records)', () => {
    const draw = drawn(20_260_309);
    for (let round = 0; round < 2_000; round++) {
      const before = drawnInputs(draw);
      const after = causes[draw(causes.length)]!(before, draw);
      const [was, is] = [planFor(before), planFor(after)];
      for (const [place, one] of is.items.entries()) {
        const earlier = was.items[place]!;
        expect(todayRank[one.today]).toBeLessThanOrEqual(todayRank[earlier.today]);
        expect(decisionRank[one.decision]).toBeLessThanOrEqual(decisionRank[earlier.decision]);
      }
    }
  });
});
