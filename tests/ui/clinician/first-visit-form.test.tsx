/** What the first-visit page sends, what stands in its way, and what the phone says at once before a visit. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { prescriptionTemplates } from '#core/prescribing/templates.ts';
import { screeningItems } from '#core/screening/items.ts';
import { minimumSet } from '#core/screening/pre-visit.ts';
import { asked as inWords, limbChoices } from '#messages/screening.ts';
import type { FirstVisitPage, SavedVisit } from '#ui/clinician/episode/answers.ts';
import {
  answered,
  fromHome,
  restNo,
  stateOf,
  withItem,
} from '#ui/clinician/first-visit/first-visit-state.ts';
import { requireAllSaved, visitFrom } from '#ui/clinician/first-visit/visit-to-send.ts';
import { refusedBy } from '#ui/clinician/forms/submit-problems.ts';
import { unanswered } from '#ui/clinician/screening/screening-form-state.ts';
import { answersToSend, type Given, notGiven } from '#ui/patient/pre-visit/visit-answers.ts';
import { VisitQuestion } from '#ui/patient/pre-visit/visit-question.tsx';

const items = minimumSet('low-load', 61);
const page = {
  templates: prescriptionTemplates.map((template) => ({ ...template, exercise: '', limbsAtOnce: 'one' })),
  profile: null,
} as unknown as FirstVisitPage;
const typed = {
  'profile.diagnosis': 'Knee osteoarthritis',
  'profile.inflammatoryArthritis': 'no',
  'profile.followedJoints': 'right-knee',
  'profile.ownedLoadsKg': '1 2,5 4',
  exerciseId: 'knee-front',
  'request.side': 'right',
  'test.loadKg': '8',
  'test.repetitions': '10',
};
const problemsIn = (over: Readonly<Record<string, string>>) =>
  visitFrom(restNo({ ...typed, ...over }, items), items, page).problems.map(({ field }) => field);

describe('the first-visit page', () => {
  it('preselects nothing: an untouched page sends no answer', () => {
    expect(answered({}, items)).toEqual([]);
    expect(visitFrom({}, items, page).problems.length).toBeGreaterThan(5);
  });

  it('“the rest: asked, and no” leaves what was answered as it was', () => {
    const some = withItem({}, 'diabetes', { ...unanswered, answer: 'yes' });
    const all = answered(restNo(some, items), items);
    expect(all).toHaveLength(items.length);
    expect(all.filter(({ answer }) => answer === 'yes').map(({ item }) => item)).toEqual(['diabetes']);
  });

  it('answers from home never stand over what the clinician has answered', () => {
    const here = withItem({}, 'diabetes', { ...unanswered, answer: 'no' });
    const home = [
      { item: 'diabetes', answer: 'yes' as const },
      { item: 'swollen-calf', answer: 'not-known' as const },
    ];
    const merged = fromHome(here, items, home);
    expect(stateOf(merged, 'diabetes').answer).toBe('no');
    expect(stateOf(merged, 'swollen-calf').answer).toBe('not-known');
  });

  it('is complete without a blood pressure, and says nothing was measured rather than zero', () => {
    const { visit, problems } = visitFrom(restNo(typed, items), items, page);
    expect(problems).toEqual([]);
    expect(visit).not.toHaveProperty('pressure');
    expect(visit.profile?.ownedLoadsKg).toEqual([1, 2.5, 4]);
  });

  it('sends every part that can be read, whatever stands in the way of another', () => {
    const { visit, problems } = visitFrom(
      { ...typed, 'pressure.systolicMmhg': '1x', 'usual.usualPain': '4' },
      items,
      page,
    );
    expect(Object.keys(visit).sort()).toEqual(['joints', 'profile', 'test']);
    expect(visit.joints).toEqual([]);
    expect(problems.map(({ field }) => field)).toEqual([
      items[0]!.id,
      'usual.usualStiffnessMinutes',
      'usual.usualSwelling',
      'pressure.systolicMmhg',
      'pressure.diastolicMmhg',
    ]);
  });

  it('goes on to the proposal only when every part was saved, and shows each refusal at its field', () => {
    const part = { part: 'pressure', title: 'Blood pressure', refused: [], questions: [] };
    const answer = (over: object) =>
      ({ sentence: '', outcomes: [], parts: [{ ...part, outcome: 'saved', ...over }] }) as SavedVisit;
    expect(() => requireAllSaved(answer({}), [])).not.toThrow();
    const refused = [{ field: 'input.joints.left-knee.usualPain', code: 'too-high', reason: 'At most 10.' }];
    const thrown = (over: object, problems: Parameters<typeof requireAllSaved>[1] = []) => {
      try {
        requireAllSaved(answer(over), problems);
      } catch (error) {
        return refusedBy(error, '', 'fallback');
      }
      return null;
    };
    expect(thrown({ outcome: 'refused', refused })?.problems).toEqual([
      { field: 'usual.usualPain', text: 'At most 10.' },
    ]);
    expect(thrown({ outcome: 'asked', questions: ['Is it right?'] })?.questions).toEqual(['Is it right?']);
    expect(thrown({}, [{ field: 'exerciseId', text: 'Choose.' }])?.problems).toHaveLength(1);
  });

  it.each([
    ['half a blood pressure', { 'pressure.systolicMmhg': '128' }, ['pressure.diastolicMmhg']],
    ['half a test', { 'test.repetitions': '' }, ['test.repetitions']],
    ['neither test nor maximum', { 'test.loadKg': '', 'test.repetitions': '' }, ['test.loadKg']],
    ['no loads at home', { 'profile.ownedLoadsKg': '' }, ['profile.ownedLoadsKg']],
    ['a load that is no number', { 'profile.ownedLoadsKg': '1 two' }, ['profile.ownedLoadsKg']],
  ])('asks for %s', (_name, over, fields) => {
    expect(problemsIn(over)).toEqual(fields);
  });

  it('takes a maximum already known only where no test is given', () => {
    const known = { 'request.knownOneRepMaxKg': '12' };
    expect(visitFrom(restNo({ ...typed, ...known }, items), items, page).request).not.toHaveProperty(
      'knownOneRepMaxKg',
    );
    const alone = restNo({ ...typed, ...known, 'test.loadKg': '', 'test.repetitions': '' }, items);
    expect(visitFrom(alone, items, page)).toMatchObject({
      problems: [],
      request: { knownOneRepMaxKg: 12 },
    });
  });
});

const asked = (id: string, given: Partial<Given> = {}) => {
  const item = screeningItems.find((one) => one.id === id)!;
  return renderToStaticMarkup(
    <VisitQuestion
      question={inWords(item)}
      given={{ ...notGiven, ...given }}
      clinic={{
        name: 'Ward Street',
        phone: '020 913 0140',
        emergencyNumber: '112',
        urgentNumber: '116 117',
      }}
      limbs={limbChoices}
      number={1}
      all={33}
      onGive={() => undefined}
      onNext={() => undefined}
      onBack={null}
    />,
  );
};

describe('a question before a visit', () => {
  it('preselects nothing and offers “I don’t know”', () => {
    const html = asked('diabetes');
    expect(html).not.toMatch(/checked=""/);
    expect(html).toContain('I don’t know');
  });

  it.each([
    ['new-chest-faint-or-breath', '112'],
    ['swollen-calf', '020 913 0140'],
    ['hot-joint', '020 913 0140'],
  ])('%s answered yes or not known says at once whom to ring', (id, number) => {
    expect(asked(id, { answer: 'yes' })).toContain(number);
    expect(asked(id, { answer: 'not-known' })).toContain(number);
    expect(asked(id, { answer: 'no' })).not.toContain(number);
  });

  it('asks for the limb only where the answer may be so', () => {
    expect(asked('lymph', { answer: 'no' })).not.toContain('left arm');
    expect(asked('lymph', { answer: 'yes' })).toContain('left arm');
  });

  it('is sent with side and limb of what was ticked, and without them once the answer is no', () => {
    const questions = screeningItems.map(inWords);
    const given = { ...notGiven, limbs: ['left-arm', 'right-leg'] };
    expect(answersToSend(questions, { lymph: { ...given, answer: 'yes' } })).toEqual([
      {
        item: 'lymph',
        answer: 'yes',
        limbs: [
          { side: 'left', limb: 'arm' },
          { side: 'right', limb: 'leg' },
        ],
      },
    ]);
    expect(answersToSend(questions, { lymph: { ...given, answer: 'no' } })).toEqual([
      { item: 'lymph', answer: 'no' },
    ]);
  });
});
