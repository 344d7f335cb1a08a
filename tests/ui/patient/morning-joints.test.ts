/** Several joints in the morning check, and what “as yesterday” answers of each. */
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import '#ui/patient/asked-words.ts';
import type { LastOfJoint } from '#core/record/as-yesterday.ts';
import { morningQuestions } from '#core/record/morning-questions.ts';
import { usualStatements } from '#ui/patient/morning/joint-questions.ts';
import { beginMorning, type MorningEvent, morningReducer } from '#ui/patient/morning/morning.ts';
import type { MorningDraft } from '#ui/patient/morning/morning-draft.ts';
import { morningEntryOf } from '#ui/patient/morning/morning-entry.ts';
import { morningRows } from '#ui/patient/morning/morning-rows.ts';
import { offered } from '#ui/patient/morning/morning-steps.ts';
import { UsualPage } from '#ui/patient/morning/usual-page.tsx';

const begin = (): MorningDraft =>
  beginMorning({
    entryId: 'morning-1',
    ownerId: 'p',
    day: '2026-03-09',
    zone: 'Europe/Dublin',
    asksStiffness: true,
    asksSwelling: true,
    joints: ['right-knee'],
  });

const play = (draft: MorningDraft, ...events: readonly MorningEvent[]) =>
  events.reduce(morningReducer, draft);

const lastOf = (joint: LastOfJoint['joint'], more: Partial<LastOfJoint> = {}): LastOfJoint => ({
  joint,
  stiffnessMinutes: 15,
  underPain: 4,
  ...more,
});
/** As the day brings it: yesterday was quiet, and usual pain is 2. */
const known = (more: Partial<MorningDraft> = {}): MorningDraft => ({
  ...begin(),
  asYesterday: { joints: [lastOf('right-knee')] },
  ...more,
});

const scored = (pain: number | 'unknown', joint: LastOfJoint['joint'] = 'right-knee') =>
  [{ type: 'answer', joint, answer: { pain } }, { type: 'next' }] as const satisfies readonly MorningEvent[];
const noSigns: MorningEvent = { type: 'flags', flags: [], now: 9 };

describe('a joint that is not asked about swelling', () => {
  const hip = (): MorningDraft => ({
    ...begin(),
    joints: ['left-hip', 'right-knee'],
    step: 'pain:left-hip',
    swellingNotAsked: ['left-hip'],
  });

  it('has no page, no line to check and no statement for it, and is sent as not asked', () => {
    const draft: MorningDraft = {
      ...hip(),
      asYesterday: { joints: [lastOf('left-hip'), lastOf('right-knee')] },
    };
    const asked = play(draft, ...scored(2, 'left-hip'), ...scored(2));
    expect(asked.step).toBe('usual');
    const each = play(asked, { type: 'not-usual' });
    expect(play(each, { type: 'go', step: 'swelling:left-hip' }).step).not.toBe('swelling:left-hip');
    expect(play(each, { type: 'go', step: 'swelling:right-knee' }).step).toBe('swelling:right-knee');
    const swellingRows = morningRows(each).filter(({ key }) => key?.startsWith('swelling:'));
    expect(swellingRows.map(({ key }) => key)).toEqual(['swelling:right-knee']);
    const statements = usualStatements(asked, offered(asked) ?? []).join(' ');
    expect(statements).not.toMatch(/left hip: Not more swollen/i);
    expect(statements).toMatch(/right knee: Not more swollen/i);
    const [left, right] = morningEntryOf(play(asked, { type: 'usual' }), 9).joints;
    expect(left).toMatchObject({ swelling: null, swellingState: 'not-applicable' });
    expect(right).toMatchObject({ swelling: 'none', swellingState: 'asked' });
  });
});

describe('two joints in a flare', () => {
  const both = (): MorningDraft => ({
    ...begin(),
    joints: ['left-knee', 'right-knee'],
    step: 'pain:left-knee',
  });

  it('are asked about together where one press can answer for both', () => {
    const asked = play(both(), ...scored(6, 'left-knee'), ...scored(5));
    expect(asked.step).toBe('stiffness:left-knee');
    const stiff = play(
      asked,
      { type: 'answer', joint: 'left-knee', answer: { stiffnessMinutes: 60 } },
      { type: 'next' },
      { type: 'answer', joint: 'right-knee', answer: { stiffnessMinutes: 45 } },
      { type: 'next' },
    );
    expect(stiff.step).toBe('swollen');
    const named = play(stiff, { type: 'swollen', joints: ['left-knee'] });
    expect(named.step).toBe('swelling:left-knee');
    const flaring = play(
      named,
      { type: 'answer', joint: 'left-knee', answer: { swelling: 'slight' } },
      { type: 'next' },
      { type: 'flares', joints: ['left-knee', 'right-knee'] },
      { type: 'relief', relief: false },
      { type: 'next' },
      noSigns,
    );
    expect(morningEntryOf(flaring, 9).joints).toMatchObject([
      { joint: 'left-knee', pain: 6, stiffnessMinutes: 60, swelling: 'slight', flare: true },
      { joint: 'right-knee', pain: 5, stiffnessMinutes: 45, swelling: 'none', flare: true },
    ]);
  });

  it('not known of both is sent as missing, never as no', () => {
    const draft = play(both(), { type: 'swollen', joints: 'unknown' }, { type: 'flares', joints: 'unknown' });
    expect(morningEntryOf(draft, 9).joints).toMatchObject([
      { swelling: null, flare: null },
      { swelling: null, flare: null },
    ]);
  });

  it('nothing is sent while a question was passed over', () => {
    const passed = play(
      both(),
      ...scored(6, 'left-knee'),
      ...scored(5),
      { type: 'go', step: 'flags' },
      noSigns,
    );
    expect(passed).toMatchObject({ step: 'stiffness:left-knee', endedAt: null });
  });
});

describe('“as yesterday”', () => {
  const lasts = [lastOf('right-knee'), lastOf('left-hip', { stiffnessMinutes: 0 })];
  /** What the page must state for each answer it may give; an answer without a row here fails. */
  const statedAs = new Map<string, string>([
    ['right-knee stiffnessMinutes 15', 'Stiff for 15 minutes'],
    ['left-hip stiffnessMinutes 0', 'Left hip: Not stiff'],
    ['right-knee swelling none', 'Not more swollen than usual'],
    ['left-hip swelling none', 'Left hip: Not more swollen than usual'],
    ['right-knee flare false', 'Not a flare'],
    ['left-hip flare false', 'Left hip: Not a flare'],
    ['relief false', 'No extra pain relief'],
  ]);
  const answersOf = (entry: ReturnType<typeof morningEntryOf>) => [
    ...entry.joints.flatMap((row) =>
      morningQuestions.flatMap(({ id, answer: { name } }) =>
        id === 'pain' || row[name] === null ? [] : [`${row.joint} ${name} ${row[name]}`],
      ),
    ),
    ...(entry.extraPainRelief === null ? [] : [`relief ${entry.extraPainRelief}`]),
    ...(entry.redFlags === null ? [] : [`flags ${entry.redFlags.join()}`]),
  ];

  it.each([
    ['one joint', {}],
    ['two joints', { joints: ['right-knee', 'left-hip'] }],
    [
      'a joint not asked about swelling',
      { joints: ['right-knee', 'left-hip'], swellingNotAsked: ['left-hip'] },
    ],
    ['stiffness not asked', { asksStiffness: false }],
  ] as const)('answers nothing that the page did not state, and no warning sign: %s', (_name, over) => {
    const begun: MorningDraft = { ...begin(), asYesterday: { joints: lasts }, ...over };
    const draft = play(begun, ...begun.joints.flatMap((joint) => scored(2, joint)));
    const page = renderToStaticMarkup(createElement(UsualPage, { draft, send: () => undefined }));
    const answers = answersOf(morningEntryOf(play(draft, { type: 'usual' }), 9));
    expect(answers.length).toBeGreaterThan(2);
    for (const answer of answers)
      expect(page).toContain(statedAs.get(answer) ?? `no statement is known for ${answer}`);
  });

  it('is not offered where a question that is asked has no value of yesterday', () => {
    const gap = play(
      known({ asYesterday: { joints: [lastOf('right-knee', { stiffnessMinutes: null })] } }),
      ...scored(2),
    );
    expect(gap.step).toBe('stiffness:right-knee');
  });
});
