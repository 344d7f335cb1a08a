/** What a step of the first visit sends, what stands in its way, and what the phone says at once before a visit. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { householdEquipment } from '#core/exercises/equipment.ts';
import { screeningItems } from '#core/screening/items.ts';
import { minimumSet } from '#core/screening/pre-visit.ts';
import { asked as inWords, limbChoices } from '#messages/screening.ts';
import type { FirstVisitPage, SavedVisit } from '#ui/clinician/episode/answers.ts';
import {
  answered,
  beside,
  notAsked,
  recordedIn,
  restNo,
  stateOf,
  thingsOf,
  withItem,
} from '#ui/clinician/first-visit/first-visit-state.ts';
import { stepFields } from '#ui/clinician/first-visit/step-fields.ts';
import { requireAllSaved, visitFrom } from '#ui/clinician/first-visit/visit-to-send.ts';
import { refusedBy } from '#ui/clinician/forms/submit-problems.ts';
import { unanswered } from '#ui/clinician/screening/screening-form-state.ts';
import { answersToSend, type Given, notGiven } from '#ui/patient/pre-visit/visit-answers.ts';
import { VisitQuestion } from '#ui/patient/pre-visit/visit-question.tsx';

const items = minimumSet('low-load', 61);
const page = {
  items,
  profile: null,
  screening: null,
  baselines: [],
  consents: [
    { kind: 'treatment', state: 'not-asked', wordingSource: 'proposed', wordingVersion: 2 },
    { kind: 'record-keeping', state: 'given', wordingSource: 'proposed', wordingVersion: 2 },
  ],
  states: [{ step: 'screening', state: 'open', because: [] }],
} as unknown as FirstVisitPage;
const reason = {
  'reason.diagnosis': 'Knee osteoarthritis',
  'reason.inflammatoryArthritis': 'no',
  'reason.followedJoints': 'right-knee',
};
const fieldsWrong = (...of: Parameters<typeof visitFrom>) =>
  visitFrom(...of).problems.map(({ field }) => field);

describe('a step of the first visit', () => {
  it('preselects nothing and sends nothing of what nobody has touched', () => {
    for (const step of ['consents', 'reason', 'screening', 'measurements', 'home', 'exercise'] as const) {
      const start = step === 'consents' ? {} : recordedIn(step, page);
      expect([step, start, visitFrom(step, start, page)]).toEqual([step, {}, { visit: {}, problems: [] }]);
    }
  });

  it('shows a consent on record and sends only what was said otherwise; a given one refused is withdrawn', () => {
    expect(recordedIn('consents', page)).toEqual({ 'consents.record-keeping': 'given' });
    const said = { 'consents.treatment': 'given', 'consents.record-keeping': 'refused' };
    const sent = visitFrom('consents', said, page).visit.consents as readonly { kind: string; act: string }[];
    expect(sent.map(({ kind, act }) => [kind, act])).toEqual([
      ['treatment', 'given'],
      ['record-keeping', 'withdrawn'],
    ]);
    const again = { 'consents.record-keeping': 'given' };
    expect(visitFrom('consents', again, page).visit.consents).toEqual([]);
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
    const merged = beside(here, items, home);
    expect(stateOf(merged, 'diabetes').answer).toBe('no');
    expect(stateOf(merged, 'swollen-calf').answer).toBe('not-known');
  });

  it('sends of a sheet on record only the answers that are other ones now', () => {
    const before = items.map(({ id }) => ({ item: id, answer: 'no' as const, askedOn: '2026-04-02' }));
    const known = {
      ...page,
      screening: { answers: before },
      states: [{ step: 'screening', state: 'done', because: [] }],
    } as unknown as FirstVisitPage;
    const start = recordedIn('screening', known);
    expect(visitFrom('screening', start, known).visit).toEqual({});
    const changed = withItem(start, 'diabetes', { ...unanswered, answer: 'yes' });
    expect(visitFrom('screening', changed, known).visit.screening).toMatchObject({
      answers: [{ item: 'diabetes', answer: 'yes' }],
    });
  });

  it('saves why they come where the usual values of a joint cannot be read, and names what is missing', () => {
    const typed = { ...reason, 'joints.right-knee.usualPain': '4' };
    const { visit } = visitFrom('reason', typed, page);
    expect(visit).toMatchObject({ reason: { diagnosis: 'Knee osteoarthritis' }, joints: [] });
    expect(fieldsWrong('reason', typed, page)).toEqual([
      'joints.right-knee.usualStiffnessMinutes',
      'joints.right-knee.usualSwelling',
    ]);
    expect(fieldsWrong('reason', reason, page)).toEqual([]);
  });

  it('keeps a swelling that is not asked apart from one that is none', () => {
    const usual = {
      'joints.right-knee.usualStiffnessMinutes': '0',
      'joints.right-knee.usualSwelling': notAsked,
    };
    const { visit } = visitFrom('reason', { ...reason, ...usual }, page);
    expect(visit).toMatchObject({
      reason: { swellingNotAsked: ['right-knee'] },
      joints: [{ joint: 'right-knee', usualPain: null, usualSwelling: 'none' }],
    });
  });

  it('says nothing of the blood pressure that was not measured, rather than zero', () => {
    const weighed = { 'mass.massKg': '71,5' };
    expect(visitFrom('measurements', weighed, page)).toEqual({
      visit: { mass: { massKg: 71.5 } },
      problems: [],
    });
  });

  it('sends whose error of measuring holds, and that nobody’s does where the choice is emptied', () => {
    const groupOf = (typed: object) =>
      (visitFrom('reason', { ...reason, ...typed }, page).visit.reason as { errorGroup: unknown }).errorGroup;
    expect(groupOf({ 'reason.errorGroup': 'hip-arthroplasty-awaited' })).toBe('hip-arthroplasty-awaited');
    expect(groupOf({ 'reason.errorGroup': '' })).toBeNull();
    expect(groupOf({})).toBeNull();
  });

  it('has an ordinary household only once it was ticked, and no loads only once that was said', () => {
    const things = { 'home.ownedEquipment': 'household\nband' };
    expect(fieldsWrong('home', things, page)).toEqual(['home.ownedLoadsKg']);
    const { visit } = visitFrom('home', { ...things, 'home.noLoads': 'none' }, page);
    expect(visit.home).toEqual({ ownedLoadsKg: [], ownedEquipment: [...householdEquipment, 'band'] });
    expect(thingsOf([...householdEquipment, 'band'])).toEqual(['household', 'band']);
    expect(thingsOf(['wall', 'band'])).toEqual(['wall', 'band']);
  });

  it.each([
    [
      'reason',
      'a joint',
      { 'reason.diagnosis': 'x', 'reason.inflammatoryArthritis': 'no' },
      'reason.followedJoints',
    ],
    ['measurements', 'half a pressure', { 'pressure.systolicMmhg': '128' }, 'pressure.diastolicMmhg'],
    ['measurements', 'a number', { 'mass.massKg': 'much' }, 'mass.massKg'],
    ['home', 'things', { 'home.ownedLoadsKg': '1 2,5' }, 'home.ownedEquipment'],
    ['home', 'numbers', { 'home.ownedLoadsKg': '1 two', 'home.ownedEquipment': 'band' }, 'home.ownedLoadsKg'],
    [
      'home',
      'one of two that contradict each other',
      { 'home.ownedLoadsKg': '1', 'home.noLoads': 'none', 'home.ownedEquipment': 'band' },
      'home.ownedLoadsKg',
    ],
    ['exercise', 'half a test', { 'test.loadKg': '8' }, 'test.repetitions'],
  ] as const)('%s asks for %s', (step, _what, typed, field) => {
    expect(fieldsWrong(step, typed, page)).toEqual([field]);
  });

  it('goes on only when every part was saved, and shows each refusal at its field', () => {
    const part = { part: 'pressure', title: 'Blood pressure', refused: [], questions: [] };
    const answer = (over: object) =>
      ({ sentence: '', outcomes: [], parts: [{ ...part, outcome: 'saved', ...over }] }) as SavedVisit;
    expect(() => requireAllSaved(answer({}), [])).not.toThrow();
    expect(() => requireAllSaved(null, [])).not.toThrow();
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
      { field: 'joints.left-knee.usualPain', text: 'At most 10.' },
    ]);
    expect(thrown({ outcome: 'asked', questions: ['Is it right?'] })?.questions).toEqual(['Is it right?']);
    expect(thrown({}, [{ field: 'way', text: 'Choose.' }])?.problems).toHaveLength(1);
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

describe('a figure of the first visit that is not taken', () => {
  it.each([
    ['24', 1],
    ['25', 0],
    ['350', 0],
    ['351', 1],
    ['heavy', 1],
  ])('a weight of "%s": %i problems, said by its label and bound', (text, count) => {
    const { problems } = visitFrom('measurements', { 'mass.massKg': text }, page);
    expect(problems).toHaveLength(count);
    for (const one of problems) expect(one.text).toMatch(/“Weight”/);
    if (/^\d+$/.test(text)) for (const one of problems) expect(one.text).toContain('25 to 350');
  });

  it('is said with all others, and the parts that can be read are saved', () => {
    const typed = { 'mass.massKg': '3', 'stature.statureCm': '16', 'pressure.systolicMmhg': '301' };
    const { problems, visit } = visitFrom(
      'measurements',
      { ...typed, 'pressure.diastolicMmhg': '80', formulaSex: 'female' },
      page,
    );
    expect(problems.map(({ field }) => field).toSorted()).toEqual(Object.keys(typed).toSorted());
    expect(visit).toEqual({ formulaSex: 'female' });
  });

  it('is told by its label where the server refuses it', () => {
    const parts = [
      {
        part: 'mass',
        title: 'Weight',
        outcome: 'refused',
        refused: [{ field: 'input.mass.massKg', code: 'too-high', reason: 'massKg is at most 350 kg.' }],
        questions: [],
      },
    ];
    let thrown: unknown;
    try {
      requireAllSaved({ parts } as unknown as SavedVisit, []);
    } catch (error) {
      thrown = error;
    }
    const [problem] = refusedBy(thrown, '', 'go-on', stepFields).problems;
    expect(problem).toEqual({ field: 'mass.massKg', text: expect.stringMatching(/^“Weight”: .*25 to 350/) });
  });
});

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
