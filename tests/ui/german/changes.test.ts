/** What a decision changes, and the limits that stand, are told in German with the same figures. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limitCautions } from '#core/care/limit-bounds.ts';
import { exercises, jointsLoaded } from '#core/catalogue/catalogue.ts';
import type { DoseProposal } from '#core/engine/dose/proposal.ts';
import { changesBetween } from '#core/engine/dose/volume.ts';
import { joints } from '#core/joints.ts';
import type { Dose } from '#core/model/dose.ts';
import type { Limit } from '#core/model/record.ts';
import { changesForPatient } from '#core/prescribing/changes-in-words.ts';
import { changeSentences } from '#ui/words/german/sentences/changes.ts';
import { tellGerman } from '#ui/words/german.ts';
import { anyDose } from './any-dose.ts';
import { wrongWith } from './left-in-english.ts';

const told = fc.record({
  from: anyDose,
  to: anyDose,
  kind: fc.constantFrom<DoseProposal['kind']>('same', 'step', 'ease-back', 'return', 'stop'),
  effect: fc.constantFrom<DoseProposal['effect']>('acts-at-once', 'awaits-signature', 'repeat'),
});

const proposalOf = (from: Dose, to: Dose, kind: DoseProposal['kind'], effect: DoseProposal['effect']) =>
  ({ kind, effect, changes: changesBetween(from, to) }) as unknown as DoseProposal;

const titleOf = ({ exerciseId }: Dose): string =>
  exercises.find((exercise) => exercise.id === exerciseId)?.title ?? exerciseId;

describe('a change of a dose', () => {
  it('is told in German for whatever doses, with every figure of the English', () => {
    const kinds = new Set<string>();
    fc.assert(
      fc.property(told, ({ from, to, kind, effect }) => {
        const text = changesForPatient(proposalOf(from, to, kind, effect), titleOf(from));
        kinds.add(text.replace(/\d[\d.,–\s]*/g, '#').replace(/^.*: /, ''));
        expect(wrongWith(text, tellGerman(text))).toBeNull();
      }),
      { seed: 20260131, numRuns: 1500 },
    );
    expect(kinds.size).toBeGreaterThan(20);
  });

  it('puts the new dose before the old one, as the English does', () => {
    const [first] = exercises;
    expect(tellGerman(`${first!.title}: 2.5 kg instead of 4 kg; 3 sets instead of 2.`)).toBe(
      `${tellGerman(first!.title)}: 2,5 kg statt 4 kg; 3 statt 2 Sätze.`,
    );
  });

  it('of an exercise nobody translated stays whole in English', () => {
    const text = 'An exercise of our own: 3 sets instead of 2.';
    expect(tellGerman(text)).toBe(text);
  });
});

const kinds: readonly Limit['kind'][] = ['weight-bearing', 'range', 'load-ceiling', 'no-impact', 'none'];

const limitTexts = exercises.flatMap(({ id }) =>
  jointsLoaded(id, 'both').flatMap((joint) =>
    kinds.flatMap((kind) =>
      limitCautions(
        [{ joint, kind, ceilingKg: 5, from: '2026-01-01', to: null, author: 'Dr. Okoro' }],
        { exerciseId: id, side: 'both' },
        '2026-03-01',
      ).map(({ patientText }) => patientText),
    ),
  ),
);

describe('a limit on a joint', () => {
  it('is told in German for every joint and kind, with the name of who set it', () => {
    const texts = [...new Set(limitTexts)];
    expect(texts.length).toBeGreaterThan(joints.length * 2);
    for (const text of texts) {
      expect(wrongWith(text, tellGerman(text))).toBeNull();
      expect(tellGerman(text)).toContain('Dr. Okoro');
    }
  });

  it('nothing else stands in the file than what changes and limits say', () => {
    expect(Object.keys(changeSentences)).toHaveLength(14);
  });
});
