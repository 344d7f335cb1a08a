/** What a decision changes in a dose is told in every language with the same figures. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { todays } from '#core/decision/answers.ts';
import type { DoseProposal } from '#core/decision/dose/proposal.ts';
import { changesBetween } from '#core/decision/dose/volume.ts';
import { doseChangeForPatient } from '#core/prescribing/dose-change-for-patient.ts';
import { doseChangeText } from '#messages/dose-changes.ts';
import { exerciseName } from '#messages/exercises.ts';
import { anyDose } from '#tests/messages/german/any-dose.ts';
import { figuresOf, otherTags } from './pairs.ts';

const proposal = fc
  .record({
    from: anyDose,
    to: anyDose,
    isSame: fc.boolean(),
    kind: fc.constantFrom<DoseProposal['kind']>('same', 'step', 'ease-back', 'return', 'stop'),
    effect: fc.constantFrom<DoseProposal['effect']>('acts-at-once', 'awaits-signature', 'repeat'),
  })
  .map(({ from, to, isSame, kind, effect }) => ({
    exerciseId: from.exerciseId,
    proposal: { kind, effect, changes: changesBetween(from, isSame ? from : to) },
  }));

describe('a change of a dose', () => {
  it('is told for whatever doses in each language, with every figure of the English and no slot left', () => {
    fc.assert(
      fc.property(proposal, fc.constantFrom(...todays), ({ exerciseId, proposal: one }, today) => {
        const text = doseChangeText(doseChangeForPatient(one, exerciseId), today);
        for (const tag of otherTags) {
          expect(text[tag]).not.toBe(text.en);
          expect(figuresOf(text[tag])).toEqual(figuresOf(text.en));
          expect(text[tag]).not.toMatch(/[{}]|undefined/);
        }
      }),
      { seed: 20260131, numRuns: 500 },
    );
  });

  it('puts the new dose before the old one, and says a band of one number as that number', () => {
    const name = exerciseName('bridge-one-leg');
    const text = doseChangeText({
      exerciseId: 'bridge-one-leg',
      kind: 'changed',
      changes: [
        { variable: 'load', from: 4, to: 2.5 },
        { variable: 'sets', from: 2, to: 3 },
        { variable: 'repetitions', from: '8–12', to: '12–12' },
      ],
    });
    expect(text.en).toBe(
      `${name.en}: 2.5 kg instead of 4 kg; 3 sets instead of 2; 12 repetitions instead of 8–12.`,
    );
    expect(text.de).toBe(`${name.de}: 2,5 kg statt 4 kg; 3 statt 2 Sätze; 12 statt 8–12 Wiederholungen.`);
  });

  it('is for afterwards while only the easier session is done, and nothing is then to be done as before', () => {
    const exerciseId = 'bridge-one-leg';
    const { en, de } = exerciseName(exerciseId);
    const changes = [{ variable: 'repetitions', from: '19–25', to: '14–18' }] as const;
    const changed = doseChangeText({ exerciseId, kind: 'changed', changes }, 'bad-day');
    expect(changed.en).toBe(
      `${en}: do the easier session for now. After that 14–18 repetitions instead of 19–25.`,
    );
    expect(changed.de).toBe(
      `${de}: vorerst das leichtere Training. Danach 14–18 statt 19–25 Wiederholungen.`,
    );
    for (const kind of ['same', 'awaits-signature'] as const)
      expect(doseChangeText({ exerciseId, kind }, 'bad-day').en).toBe(
        `${en}: do the easier session for now.`,
      );
    const stop = { exerciseId, kind: 'stop' } as const;
    expect(doseChangeText(stop, 'bad-day')).toEqual(doseChangeText(stop));
  });

  it('is for afterwards, and nothing to be done, while the exercise rests', () => {
    const exerciseId = 'bridge-one-leg';
    const { en, de } = exerciseName(exerciseId);
    for (const today of ['rest-this-joint', 'none'] as const) {
      expect(doseChangeText({ exerciseId, kind: 'same' }, today)).toMatchObject({
        en: `${en}: leave it out for now.`,
        de: `${de}: vorerst auslassen.`,
      });
      const changes = [{ variable: 'sets', from: 3, to: 2 }] as const;
      expect(doseChangeText({ exerciseId, kind: 'changed', changes }, today).en).toBe(
        `${en}: leave it out for now. After that 2 sets instead of 3.`,
      );
    }
  });

  it('names the exercise that takes the place of another', () => {
    const [from, to] = ['bridge-two-legs', 'bridge-one-leg'];
    const text = doseChangeText({
      exerciseId: from,
      kind: 'changed',
      changes: [{ variable: 'rung', from, to }],
    });
    for (const tag of otherTags) {
      expect(text[tag]).toContain(exerciseName(from)[tag]);
      expect(text[tag]).toContain(exerciseName(to)[tag]);
    }
  });
});
