/** When the answers after the pain may be given as yesterday’s. Clinic choices, no source. */
import { describe, expect, it } from 'vitest';
import { type AsYesterday, asYesterday } from '#core/record/as-yesterday.ts';
import type { MorningVia } from '#core/record/entry-words.ts';
import type { Baseline, JointMorningAnswers, MorningRecord } from '#core/record/record.ts';

const quiet: JointMorningAnswers = {
  joint: 'right-knee',
  pain: 2,
  stiffnessMinutes: 10,
  swelling: 'none',
  swellingQuestion: 'more-than-usual',
  flare: false,
};

const morning = (day: string, more: Partial<MorningRecord> = {}): MorningRecord => ({
  id: day,
  day,
  recordedAt: 0,
  joints: [quiet],
  redFlags: [],
  extraPainRelief: false,
  fatigue: 'not-applicable',
  clockDoubtful: false,
  ...more,
});

const usual = (usualPain: number | null) => ({ joint: 'right-knee', usualPain }) as Baseline;

const offered = (mornings: readonly MorningRecord[], usualPain: number | null = 2): AsYesterday =>
  asYesterday({
    day: '2026-04-20',
    followed: ['right-knee'],
    mornings,
    baselines: [usual(usualPain)],
  });

describe('“as yesterday”', () => {
  it('brings yesterday’s values, and is for a pain under 5 and under 2 over usual', () => {
    const row = { joint: 'right-knee', stiffnessMinutes: 10 };
    expect(offered([morning('2026-04-19')])).toEqual({ joints: [{ ...row, underPain: 4 }] });
    expect(offered([morning('2026-04-19')], 3)).toEqual({ joints: [{ ...row, underPain: 5 }] });
    expect(offered([morning('2026-04-19')], 4)).toEqual({ joints: [{ ...row, underPain: 5 }] });
  });

  it.each<[string, readonly MorningRecord[]]>([
    ['nothing is known', []],
    ['the last morning was the day before yesterday', [morning('2026-04-18')]],
    ['only this morning is known', [morning('2026-04-20')]],
    ['the clock was doubtful', [morning('2026-04-19', { clockDoubtful: true })]],
    ['extra pain relief was taken', [morning('2026-04-19', { extraPainRelief: true })]],
    ['pain relief was left open', [morning('2026-04-19', { extraPainRelief: null })]],
    ['a warning sign was told', [morning('2026-04-19', { redFlags: ['fainting'] })]],
    ['it was a flare', [morning('2026-04-19', { joints: [{ ...quiet, flare: true }] })]],
    ['the flare was left open', [morning('2026-04-19', { joints: [{ ...quiet, flare: null }] })]],
    ['it was more swollen', [morning('2026-04-19', { joints: [{ ...quiet, swelling: 'slight' }] })]],
    ['the swelling was left open', [morning('2026-04-19', { joints: [{ ...quiet, swelling: null }] })]],
    [
      'the stiffness was left open',
      [morning('2026-04-19', { joints: [{ ...quiet, stiffnessMinutes: null }] })],
    ],
    ['the joint was not asked about', [morning('2026-04-19', { joints: [] })]],
  ])('is not offered where %s', (_why, mornings) => {
    expect(offered(mornings)).toBeNull();
  });

  it('is not offered without a usual pain to compare with', () => {
    expect(offered([morning('2026-04-19')], null)).toBeNull();
  });

  it('a question that was not asked of the joint is no gap', () => {
    const notAsked = { ...quiet, swelling: 'not-applicable', stiffnessMinutes: 'not-applicable' } as const;
    expect(offered([morning('2026-04-19', { joints: [notAsked] })])).toEqual({
      joints: [{ joint: 'right-knee', stiffnessMinutes: null, underPain: 4 }],
    });
  });

  const run = (vias: readonly (MorningVia | undefined)[]) =>
    vias.map((via, place) =>
      morning(`2026-04-${String(20 - vias.length + place).padStart(2, '0')}`, via ? { via } : {}),
    );
  const yes = (count: number) => Array.from({ length: count }, () => 'as-yesterday' as const);

  it.each([
    [5, false],
    [6, true],
    [7, true],
  ])('after %i mornings in a row answered so, the next is asked singly: %s', (count, isSingly) => {
    expect(offered(run(yes(count))) === 'singly').toBe(isSingly);
  });

  it('a morning asked singly begins the count anew', () => {
    expect(offered(run([...yes(6), 'singly']))).not.toBe('singly');
    expect(offered(run(['singly', ...yes(6)]))).toBe('singly');
  });

  it.each([
    [3, { fatigue: 3 }],
    [4, {}],
    [null, {}],
    ['not-applicable', {}],
  ] as const)('tiredness of %j beside a usual one of 2 brings %j', (fatigue, brought) => {
    const given = asYesterday({
      day: '2026-04-20',
      followed: ['right-knee'],
      mornings: [morning('2026-04-19', { fatigue })],
      baselines: [{ ...usual(2), usualFatigue: 2 }],
    });
    expect(given).toEqual({
      joints: [{ joint: 'right-knee', stiffnessMinutes: 10, underPain: 4 }],
      ...brought,
    });
  });

  it.each([
    ['not-worse', true],
    ['worse', undefined],
    ['not-answered', undefined],
    [undefined, undefined],
  ] as const)('another joint said to be %s yesterday brings %s', (otherJoint, noOtherJoint) => {
    const more = otherJoint === undefined ? {} : { otherJoint };
    expect(offered([morning('2026-04-19', more)])).toEqual({
      joints: [{ joint: 'right-knee', stiffnessMinutes: 10, underPain: 4 }],
      ...(noOtherJoint ? { noOtherJoint } : {}),
    });
  });

  it.each([
    [['right-knee', 'left-knee'], null],
    [['right-knee', 'left-knee', 'left-hip'], ['right-knee']],
  ] as const)('of %j, one of them quiet, it brings %j', (followed, brought) => {
    const given = asYesterday({
      day: '2026-04-20',
      followed,
      mornings: [
        morning('2026-04-19', {
          joints: followed.map((joint) => ({ ...quiet, joint, flare: joint !== 'right-knee' })),
        }),
      ],
      baselines: followed.map((joint) => ({ ...usual(2), joint })),
    });
    expect(given && given !== 'singly' ? given.joints.map(({ joint }) => joint) : given).toEqual(brought);
  });
});
