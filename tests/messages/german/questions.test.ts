/** Questions before a visit with what can be ticked, and what each agreement says, are told in German. */
import { describe, expect, it } from 'vitest';
import { proposedWordings } from '#core/episode/consent-wording.ts';
import { joints } from '#core/exercises/joints.ts';
import { screeningItems } from '#core/screening/items.ts';
import { translateToGerman } from '#ui/language/bridge/german.ts';
import { consentSentences } from '#ui/language/bridge/sentences/consents.ts';
import { jointSentences } from '#ui/language/bridge/sentences/joints.ts';
import { questionSentences } from '#ui/language/bridge/sentences/questions.ts';
import { readySentences } from '#ui/language/ready.ts';
import { limbChoices } from '#ui/patient/pre-visit/visit-answers.ts';
import { wrongWith } from './left-in-english.ts';

const asked = screeningItems.flatMap(({ question, asks }) => [
  question,
  ...(asks.details ?? []).map(({ label }) => label),
]);

const wrong = (texts: readonly string[]) =>
  texts.map((text) => wrongWith(text, translateToGerman(text))).filter(Boolean);

describe('before a visit', () => {
  it('every question and everything that can be ticked is told in German, and nothing else is in the file', () => {
    expect(asked.length).toBeGreaterThan(55);
    expect(wrong(asked)).toEqual([]);
    expect(Object.keys(questionSentences).sort()).toEqual([...new Set(asked)].sort());
  });

  it('a question stays a question', () => {
    const questions = Object.entries(questionSentences);
    expect(questions.filter(([text, word]) => text.endsWith('?') !== word.endsWith('?'))).toEqual([]);
  });

  it('every joint, arm and leg has its name', () => {
    const named = [...joints.map((joint) => joint.replace('-', ' ')), ...limbChoices];
    expect(Object.keys(jointSentences).sort()).toEqual([...named].sort());
    for (const name of named) expect(translateToGerman(name)).not.toBe(name);
  });

  it('every proposed agreement says the same in German, and a clinic’s own words stay', () => {
    expect(Object.keys(consentSentences).sort()).toEqual(Object.values(proposedWordings).sort());
    expect(wrong(Object.values(proposedWordings))).toEqual([]);
    const own = 'The clinic in Ward Street may ring my sister about my knee.';
    expect(translateToGerman(own)).toBe(own);
  });

  it('has as many sentences in an agreement as in English', () => {
    const sentences = (text: string) => text.split(/(?<=\.)\s/).length;
    for (const [text, word] of Object.entries(consentSentences))
      expect(sentences(word)).toBe(sentences(text));
  });
});

describe('a ready sentence that was sent in English', () => {
  it('is read in German as the ready list has it, changed words stay', () => {
    for (const { en, de } of readySentences) expect(translateToGerman(en)).toBe(de);
    expect(translateToGerman(`${readySentences[0]!.en} Ring me, Ana.`)).toBe(
      `${readySentences[0]!.en} Ring me, Ana.`,
    );
  });
});
