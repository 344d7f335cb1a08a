/** What a patient's page is sent of an exercise: its words in every language, found by what the row holds. */
import { describe, expect, it } from 'vitest';
import { exercisesByPlace } from '#api/patient/today-exercise.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { Access } from '#data/access.ts';
import type { Prescription } from '#data/prescribing/prescriptions.ts';
import { languages } from '#messages/languages.ts';
import { asTyped } from '#messages/text.ts';
import { cautions, wrap } from '#tests/core/prescribing/cautions/doses.ts';
import { asSigned } from '#tests/support/plan-as-signed.ts';
import { weightDose } from '#tests/ui/patient/views.ts';

const sent = (dose: Dose) => {
  const version: Prescription = {
    id: 'version',
    itemId: 'item',
    version: 1,
    dose,
    badDay: dose,
    joints: [],
    cautions: cautions({ dose: wrap, screening: null }),
    working: [],
    origin: 'clinician',
    decisionId: null,
    recordedAt: 0,
    signedAt: 0,
    signedName: 'N. Derravane',
    endedAt: null,
    endReason: null,
    withdrawnAt: null,
    handedAt: null,
  };
  const [exercise] = exercisesByPlace('home', [version], {
    access: { day: '2026-03-09' } as Access,
    zone: 'Europe/London',
    isQuiet: false,
    programmes: [],
    plan: asSigned([version]),
    record: null,
  }).exercises;
  return exercise!;
};

describe('an exercise on the patient’s page', () => {
  const exercise = sent({ ...weightDose, exerciseId: 'wall-push-up' });

  it('has its name, each step and each caution in every language', () => {
    expect(exercise.title).toMatchObject({
      en: 'Push-up against the wall',
      de: expect.stringContaining('Wand'),
    });
    expect(exercise.instructions.length).toBeGreaterThan(2);
    const texts = [...exercise.instructions, ...exercise.cautions.map(({ text }) => text)];
    for (const { tag } of languages) expect(texts.filter((text) => !text[tag])).toEqual([]);
    expect(texts.filter(({ en, de }) => en === de)).toEqual([]);
  });

  it('names in its caution what nobody checked, all of it', () => {
    const text = exercise.cautions.find(({ id }) => id === 'not-checked')?.text;
    expect(text?.en).toMatch(
      /your answers about your health; your blood pressure;.*how hard the wrap presses/,
    );
    expect(text?.de).toMatch(/^Das hat niemand geprüft: .*; wie stark die elastische Binde drückt\./);
  });

  it('is named by its id once it has left the catalogue', () => {
    const gone = sent({ ...weightDose, exerciseId: 'gone-long-ago' });
    expect(gone.title).toEqual(asTyped('gone-long-ago'));
    expect(gone.instructions).toEqual([]);
  });
});
