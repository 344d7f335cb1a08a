import { describe, expect, it } from 'vitest';
import {
  answerFits,
  mostLetters,
  ownAnswerInWords,
  questionnaireConsistent,
} from '#core/assessment/questionnaires/questionnaire.ts';

const score = { kind: 'score', text: 'How was the night?', low: 'calm', high: 'awful' } as const;
const yesNo = { kind: 'yes-no', text: 'Did you go out?', low: null, high: null } as const;
const fieldsOf = (
  questions: Parameters<typeof questionnaireConsistent>[0]['questions'],
  isPermitted = true,
) => questionnaireConsistent({ title: 'Nights', questions, isPermitted }).map(({ field }) => field);

describe('a questionnaire of a clinic’s own', () => {
  it('is taken with both ends of a score in words, and none for the other kinds', () => {
    expect(fieldsOf([score, yesNo])).toEqual([]);
    expect(fieldsOf([{ ...score, low: null }])).toEqual(['input.questions[0].low']);
    expect(fieldsOf([score, { ...score, text: 'And the day?', high: null }])).toEqual([
      'input.questions[1].high',
    ]);
    expect(fieldsOf([{ ...yesNo, low: 'never' }])).toEqual(['input.questions[0]']);
  });

  it('is refused until the clinic says that it wrote the questions or may use them', () => {
    expect(fieldsOf([score], false)).toEqual(['input.isPermitted']);
  });

  it('asks nothing twice: its answers are told apart by the words of the question', () => {
    expect(fieldsOf([score, { ...yesNo, text: ' how was the NIGHT? ' }])).toEqual([
      'input.questions[1].text',
    ]);
  });
});

describe('an answer', () => {
  it.each([
    ['score', -1, false],
    ['score', 0, true],
    ['score', 10, true],
    ['score', 11, false],
    ['score', 3.5, false],
    ['score', true, false],
    ['yes-no', false, true],
    ['yes-no', 0, false],
    ['words', 'x'.repeat(mostLetters), true],
    ['words', 'x'.repeat(mostLetters + 1), false],
    ['words', '  ', false],
  ] as const)('to a question of the kind %s: %j fits: %s', (kind, answer, fits) => {
    expect(answerFits(kind, answer)).toBe(fits);
  });

  it('that is not known fits every kind, and reads as that: no zero and no "no"', () => {
    for (const kind of ['score', 'yes-no', 'words'] as const) expect(answerFits(kind, null)).toBe(true);
    expect(ownAnswerInWords(null)).toBe('Not known');
    expect([ownAnswerInWords(0), ownAnswerInWords(false)]).toEqual(['0 of 10', 'No']);
  });
});
