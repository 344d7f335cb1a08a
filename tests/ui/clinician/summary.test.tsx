/** The summary's picture and plan: what they draw, and what they say in place of what is not known. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { Prescriptions, SummaryAnswer } from '#ui/clinician/answers.ts';
import { CoursePicture } from '#ui/clinician/summary/course-picture.tsx';
import { LimitsInShort } from '#ui/clinician/summary/person-section.tsx';
import { PlanInForce } from '#ui/clinician/summary/plan-in-force.tsx';
import type { SummaryProps } from '#ui/clinician/summary/summary-props.ts';

type Picture = NonNullable<SummaryAnswer['picture']>;

const step = (from: string, to: string | null, share: number | null, inShort: string) => ({
  from,
  to,
  share,
  inShort,
});
const picture: Picture = {
  since: '2026-02-01',
  today: '2026-04-26',
  steps: [step('2026-02-01', '2026-03-01', 1, '3 × 12, 4 kg'), step('2026-03-01', null, 1.25, '× 15')],
  mornings: [{ day: '2026-02-02', pain: 2, over: null, isFlare: false }],
  thresholds: [
    {
      from: '2026-02-01',
      to: '2026-04-26',
      usualPainTop: 3,
      painCeiling: 5,
      setBy: 'Nuala',
      setOn: '2026-02-01',
    },
  ],
  waitingShare: null,
};
const draw = (over: Partial<Picture> = {}) =>
  renderToStaticMarkup(<CoursePicture picture={{ ...picture, ...over }} />);
const pathOf = (html: string, name: string): string =>
  new RegExp(`<path class="${name}" d="([^"]*)"`).exec(html)?.[1] ?? 'not drawn';

describe('the picture of a course', () => {
  it('draws a staircase with its steps named, and where the dose stands now', () => {
    const html = draw();
    expect(pathOf(html, 'course-dose').match(/[MV]/g)).toEqual(['M', 'V']);
    expect(html).toContain('>3 × 12, 4 kg<');
    expect(html).toContain('>× 15<');
    expect(html).toContain('>now 1.25<');
  });

  it('draws no line for a step whose load is not known, and joins none across it', () => {
    const steps = [
      step('2026-02-01', '2026-02-20', 1, '3 × 12'),
      step('2026-02-20', '2026-03-10', null, 'unknown'),
      step('2026-03-10', null, 1.1, '× 13'),
    ];
    const html = draw({ steps });
    expect(pathOf(html, 'course-dose').match(/[MV]/g)).toEqual(['M', 'M']);
    expect(html).not.toContain('unknown');
  });

  it('puts the dose to sign beside the one in force, and only where one waits', () => {
    expect(draw({ waitingShare: 1.3 })).toContain('>to sign 1.30<');
    expect(draw()).not.toContain('to sign');
  });

  it('marks a morning without an answer by a cross and never as a dot at nought', () => {
    const html = draw({ mornings: [{ day: '2026-02-02', pain: null, over: null, isFlare: false }] });
    expect(pathOf(html, 'course-within')).toBe('');
    expect(pathOf(html, 'course-over')).toBe('');
    expect(pathOf(html, 'course-missing')).not.toBe('');
  });

  it('hangs a morning over the usual from the edge of the usual', () => {
    const html = draw({ mornings: [{ day: '2026-02-02', pain: 6, over: 3, isFlare: false }] });
    const [, from, to] = /M[\d.]+ ([\d.]+)V([\d.]+)/.exec(pathOf(html, 'course-stem'))!;
    // Six points below the axis, of which three are over: the stem is half of the way.
    expect((Number(to) - Number(from)) * 2).toBeCloseTo(Number(to) - 124, 6);
  });

  it('says nothing of a usual pain that was not set', () => {
    const [span] = picture.thresholds;
    const html = draw({ thresholds: [{ ...span!, usualPainTop: null }] });
    expect(html).toContain('>limit 5<');
    expect(html).not.toContain('usual');
  });
});

describe('the plan in a summary', () => {
  const dose = {
    method: 'low-load',
    exerciseId: 'knee-extension-seated',
    side: 'right',
    sets: 3,
    repetitions: { low: 23, high: 25 },
    reserve: 2,
    loadKg: 4,
    oneRepMaxKg: 12,
    restSeconds: 90,
    secondsPerRepetition: 4,
    sessionsPerWeek: 3,
  };
  const version = (id: string, itemId: string, over: object = {}) => ({
    id,
    itemId,
    signedAt: Date.parse('2026-04-06T09:00:00Z'),
    dose: { ...dose, ...over },
  });
  const plan = (inForce: object[], unsigned: object[], items: object[] = []) =>
    renderToStaticMarkup(
      <PlanInForce
        {...({
          patient: { id: 'p' },
          prescriptions: { inForce, unsigned } as unknown as Prescriptions,
          plan: { items, joints: new Map() },
          clock: { zone: 'UTC', now: 0 },
          day: '2026-04-20',
        } as unknown as SummaryProps)}
      />,
    );

  it('says beside a dose in force that it is not done now, and why', () => {
    const reasons = [
      { code: 'contraindicated', today: 'none', findings: [{ code: 'c', text: 'Recent clot.' }] },
    ];
    const stopped = [{ itemId: 'one', today: 'none', reasons }];
    expect(plan([version('a', 'one')], [], stopped)).toMatch(/No session today[\s\S]*Recent clot\./i);
    expect(plan([version('a', 'one')], [])).not.toMatch(/No session today/i);
  });

  it('puts a waiting dose directly under the one it takes the place of', () => {
    const html = plan(
      [version('a', 'one'), version('b', 'two', { sets: 2 })],
      [{ ...version('c', 'one', { repetitions: { low: 25, high: 25 } }), signedAt: null }],
    );
    expect([...html.matchAll(/plan-dose">([^<]+)/g)].map(([, text]) => text)).toEqual([
      '3 × 23–25',
      '3 × 25',
      '2 × 23–25',
    ]);
    expect(html).toContain('23–25 → 25');
  });

  it('names an exercise that is new and only waits', () => {
    expect(plan([], [{ ...version('c', 'one'), signedAt: null }])).toMatch(/To sign.*3 × 23–25/s);
  });

  it('says so where nothing is in force', () => {
    expect(plan([], [])).toContain('No prescription is in force.');
  });
});

describe('the limits in short', () => {
  const limit = (id: string, over: object) => ({
    id,
    joint: 'right-knee',
    kind: 'load-limit',
    limitKg: 4,
    from: '2026-03-01',
    to: null,
    author: 'A surgeon',
    ...over,
  });
  const told = (...limits: readonly object[]) =>
    renderToStaticMarkup(
      <LimitsInShort
        {...({
          patient: { id: 'p', profile: null },
          summary: { baselines: [] },
          care: { limits },
          day: '2026-04-20',
        } as unknown as SummaryProps)}
      />,
    );

  it('leave out what a later phase took the place of, from the day it did', () => {
    const of = (liftedOn: string) =>
      told(limit('1', { limitKg: 2, liftedOn }), limit('2', { ofPhase: true }));
    expect(of('2026-04-20')).not.toContain('2 kg');
    expect(of('2026-04-21')).toContain('2 kg');
    expect(of('2026-04-20')).toContain('4 kg');
  });

  it('go on with one past its last day, and say that it still applies', () => {
    expect(told(limit('1', { to: '2026-04-19' }))).toContain('ended 19 Apr; still applies until reviewed');
    expect(told(limit('1', { to: '2026-04-20' }))).toContain('to 20 Apr');
  });

  it('name the day of one still to come', () => {
    expect(told(limit('1', { from: '2026-04-21' }))).toContain('from 21 Apr, until lifted');
  });
});
