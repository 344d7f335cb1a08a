/** Sentences a clinician may begin a message from: plain, without words of the trade, in both languages. */
import { expect, it } from 'vitest';
import { readySentences } from '#ui/language/ready.ts';

const sentencesOf = (text: string) => text.split(/(?<=[.!?])\s+/);

it('have at most 20 words a sentence in either language', () => {
  const long = readySentences.flatMap(({ en, de }) =>
    [en, de].flatMap(sentencesOf).filter((sentence) => sentence.split(/\s+/).length > 20),
  );
  expect(long).toEqual([]);
});

it('carry no word of the trade and none of reassurance', () => {
  const unwanted = /\b(rung|level|gate|cap|safe|sicher|dose reduction|occlusion|restriction|1RM|goal)\b/i;
  expect(readySentences.filter(({ en, de }) => unwanted.test(`${en} ${de}`))).toEqual([]);
});

it('stand in both languages, each under a key of its own, reviewed by nobody yet', () => {
  expect(new Set(readySentences.map(({ key }) => key)).size).toBe(readySentences.length);
  for (const { en, de, reviewer } of readySentences) {
    expect([en === '', de === '', en === de, reviewer]).toEqual([false, false, false, null]);
  }
});
