/** Cautions that name numbers, and that go to those they are meant for. */
import { describe, expect, it } from 'vitest';
import { exercises, jointsLoaded } from '#core/exercises/catalogue.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import { cautionText } from '#messages/cautions.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { languages } from '#messages/languages.ts';
import { everyRow, sentenceRows } from '#messages/sentence-rows.ts';
import { screeningWith } from '#tests/core/screening/answers.ts';
import { spokenIn } from '#tests/messages/spoken.ts';
import { cautions, cuff, ids, lowLoad } from './doses.ts';

type Answer = ScreeningItemAnswer['answer'];
/** Nothing but these was asked. */
const screened = (...answers: readonly ScreeningItemAnswer[]) => ({ ...screeningWith(), answers });

describe('the caution about high blood pressure', () => {
  const told = (settings = {}) =>
    cautions({ screening: screened({ item: 'high-blood-pressure', answer: 'yes' }), settings }).find(
      ({ id }) => id === 'screening-high-blood-pressure',
    )!;

  // 160/100 relative and 180/110 absolute contraindication (table 1, blood-pressure-exercise-2024, seen).
  it('names 160/100 and 180/110, to the clinician and in both languages', () => {
    const caution = told();
    expect(caution.text).toMatch(/From 160\/100 .*from 180\/110 no session/);
    const { en, de } = cautionText(caution.patient);
    expect(en).toMatch(/From 160 over 100, ring us first\. From 180 over 110, do not exercise/);
    expect(de).toMatch(/Ab 160 zu 100 rufen Sie uns zuerst an\. Ab 180 zu 110 trainieren Sie nicht/);
  });

  it('names the numbers a clinic has set', () => {
    const { patient, text } = told({ 'hold-occlusion-systolic': 150, 'hold-all-diastolic': 105 });
    expect(text).toMatch(/150\/100 .*180\/105/);
    expect(cautionText(patient).en).toMatch(/150 over 100.*180 over 105/);
  });

  it('of a prescription stored before has its sentence still', () => {
    expect(cautionText({ key: 'screening-high-blood-pressure' }).en).toMatch(/^Measure your blood pressure/);
  });
});

describe('the caution about sugar', () => {
  const asksSugar = (...answers: readonly ScreeningItemAnswer[]) =>
    ids(cautions({ screening: screened(...answers) })).includes('medicine-insulin-or-sulfonylurea');
  const diabetes = (answer: Answer): ScreeningItemAnswer => ({ item: 'diabetes', answer });
  const medicines = (answer: Answer, details?: readonly string[]): ScreeningItemAnswer => ({
    item: 'medicines',
    answer,
    ...(details ? { details } : {}),
  });

  it.each([
    [
      'insulin or a sulfonylurea is named',
      true,
      [diabetes('yes'), medicines('yes', ['insulin-or-sulfonylurea'])],
    ],
    ['diabetes with other medicines named', false, [diabetes('yes'), medicines('yes', ['blood-thinner'])]],
    ['diabetes with other medicines and none of the list', false, [diabetes('yes'), medicines('yes', [])]],
    ['diabetes and no medicine', false, [diabetes('yes'), medicines('no')]],
    ['diabetes, medicines not known', true, [diabetes('yes'), medicines('not-known')]],
    ['diabetes, medicines not asked', true, [diabetes('yes')]],
    ['diabetes not known, medicines not named', true, [diabetes('not-known'), medicines('yes')]],
    ['no diabetes, medicines not named', false, [diabetes('no'), medicines('yes')]],
    ['neither asked', false, []],
  ] as const)('%s: %s', (_name, isTold, answers) => {
    expect(asksSugar(...answers)).toBe(isTold);
  });

  it('is in no other caution of a person with diabetes', () => {
    const list = cautions({ screening: screened(diabetes('yes'), medicines('no')) });
    for (const { patient } of list) {
      const { en, de } = cautionText(patient);
      expect(en).not.toMatch(/sugar/i);
      expect(de).not.toMatch(/zucker/i);
    }
  });
});

describe('cautions about the back', () => {
  const fragile = screened({ item: 'osteoporosis', answer: 'yes' });
  const backIds = ['screening-osteoporosis', 'joint-low-back', 'low-back-bend', 'low-back-arch'];

  it.each([
    ['a knee', ['right-knee'], []],
    ['the back', ['low-back'], ['joint-low-back', 'screening-osteoporosis']],
  ] as const)('go with work that loads %s', (_name, joints, told) => {
    const list = ids(cautions({ dose: lowLoad, screening: fragile, joints }));
    expect(list.filter((id) => backIds.includes(id))).toEqual(told);
  });

  it('of the catalogue stand only at exercises that load the back', () => {
    const marked = exercises.filter(({ cautions: own }) =>
      own.some((id) => id === 'low-back-bend' || id === 'low-back-arch'),
    );
    expect(marked.length).toBeGreaterThan(5);
    for (const { id } of marked) expect(jointsLoaded(id, 'both'), id).toContain('low-back');
  });

  it('have no word that frightens: nothing is forbidden to a back, and none is called weak or damaged', () => {
    for (const { tag } of languages) {
      const rows = sentenceRows(everyLanguage[tag]).filter(
        ({ area, key }) => area === 'cautions' && backIds.includes(key),
      );
      expect(rows).toHaveLength(4);
      for (const { text } of rows) expect(text).not.toMatch(spokenIn[tag].frightening);
    }
  });
});

describe('the colour of a hand or foot', () => {
  it('is compared with the other side by nails and palm or sole, and no skin is asked to turn pink or white', () => {
    const spoken = languages.flatMap(({ tag }) =>
      everyRow(everyLanguage[tag])
        .filter(
          ({ area, key }) =>
            ['cautions', 'occlusion-checks', 'consents'].includes(area) || /^(cuff|limb|flag)\./.test(key),
        )
        .map(({ key, text }) => ({ key, text, tag })),
    );
    expect(spoken.filter(({ key }) => key === 'flag.persistent-limb-change-after-release')).toHaveLength(
      languages.length,
    );
    expect(spoken.filter(({ key }) => key === 'cuff.colour')).toHaveLength(2 * languages.length);
    expect(spoken.filter(({ tag, text }) => spokenIn[tag].skinColours.test(text))).toEqual([]);
    const { cautions: list } = everyLanguage.en.sentences;
    expect(list['occlusion-pulse-and-colour']).toMatch(
      /nails and palm, or toenails and sole, with the other side/,
    );
    expect(ids(cautions({ dose: cuff }))).toContain('occlusion-pulse-and-colour');
  });
});
