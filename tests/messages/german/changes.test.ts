/** What a decision changes in a dose is told in German with the same figures. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DoseProposal } from '#core/decision/dose/proposal.ts';
import { changesBetween } from '#core/decision/dose/volume.ts';
import { exercises } from '#core/exercises/catalogue.ts';
import { changesForPatient } from '#core/prescribing/changes-in-words.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { translateToGerman } from '#ui/language/bridge/german.ts';
import { changeSentences } from '#ui/language/bridge/sentences/changes.ts';
import { says } from '../german-sentences.ts';
import { anyDose } from './any-dose.ts';
import { wrongWith } from './left-in-english.ts';

const told = fc.record({
  from: anyDose,
  to: anyDose,
  isSame: fc.boolean(),
  kind: fc.constantFrom<DoseProposal['kind']>('same', 'step', 'ease-back', 'return', 'stop'),
  effect: fc.constantFrom<DoseProposal['effect']>('acts-at-once', 'awaits-signature', 'repeat'),
});

const proposalOf = (from: Dose, to: Dose, kind: DoseProposal['kind'], effect: DoseProposal['effect']) =>
  ({ kind, effect, changes: changesBetween(from, to) }) as unknown as DoseProposal;

const titleOf = ({ exerciseId }: Dose): string =>
  exercises.find((exercise) => exercise.id === exerciseId)?.title ?? exerciseId;

describe('a change of a dose', () => {
  it('is told in German for whatever doses, with every figure of the English, and uses the whole file', () => {
    const texts = new Set<string>();
    fc.assert(
      fc.property(told, ({ from, to, isSame, kind, effect }) => {
        const proposal = proposalOf(from, isSame ? from : to, kind, effect);
        const text = changesForPatient(proposal, titleOf(from));
        expect(wrongWith(text, translateToGerman(text))).toBeNull();
        texts.add(text);
      }),
      { seed: 20260131, numRuns: 1500 },
    );
    const said = [...texts].flatMap((text) => [text, ...text.replace(/^.*: |\.$/g, '').split('; ')]);
    const unused = Object.keys(changeSentences).filter((one) => !said.some((text) => says(one, text)));
    expect(unused).toEqual([]);
  });

  it('puts the new dose before the old one, as the English does', () => {
    const [first] = exercises;
    expect(translateToGerman(`${first!.title}: 2.5 kg instead of 4 kg; 3 sets instead of 2.`)).toBe(
      `${translateToGerman(first!.title)}: 2,5 kg statt 4 kg; 3 statt 2 Sätze.`,
    );
  });

  it('of an exercise nobody translated stays whole in English', () => {
    const text = 'An exercise of our own: 3 sets instead of 2.';
    expect(translateToGerman(text)).toBe(text);
  });
});
