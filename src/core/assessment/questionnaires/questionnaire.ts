/**
 * A short questionnaire that a clinic wrote itself. Each question stands for itself: no sum, mean or score is ever
 * made of them, and nothing is decided from them.
 */
import type { Field, InputOf } from '../../calculations/describe.ts';
import type { Refusal } from '../../outcome.ts';

export const questionKinds = ['score', 'yes-no', 'words'] as const;

export const mostQuestions = 12;
/** Of an answer in own words. */
export const mostLetters = 500;

const word = <const N extends string>(name: N, about: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength: 60, nullable: true, about }) as const;

export const questionnaireFields = [
  { name: 'title', kind: 'text', minLength: 1, maxLength: 80, about: 'Title, as the patient reads it' },
  {
    name: 'questions',
    kind: 'list',
    minItems: 1,
    maxItems: mostQuestions,
    of: {
      name: 'question',
      kind: 'record',
      fields: [
        { name: 'kind', kind: 'enum', values: questionKinds, about: 'Answered by' },
        { name: 'text', kind: 'text', minLength: 1, maxLength: 200, about: 'Question' },
        word('low', 'What 0 means'),
        word('high', 'What 10 means'),
      ],
    },
  },
  { name: 'isPermitted', kind: 'flag', about: 'We wrote these questions, or are allowed to use them' },
] as const satisfies readonly Field[];

type Written = InputOf<typeof questionnaireFields>;
export type OwnQuestion = Written['questions'][number];
export type Questionnaire = Pick<Written, 'title' | 'questions'>;

const inconsistent = (field: string, reason: string): Refusal => ({ field, code: 'inconsistent', reason });

const questionRefusals = ({ kind, low, high }: OwnQuestion, place: number): readonly Refusal[] => {
  const at = `input.questions[${place}]`;
  if (kind !== 'score')
    return low === null && high === null
      ? []
      : [inconsistent(at, `Question ${place + 1} has no ends: leave out what 0 and 10 mean.`)];
  return [
    ...(low === null
      ? [inconsistent(`${at}.low`, `Write what 0 means in question ${place + 1}, such as “none”.`)]
      : []),
    ...(high === null
      ? [inconsistent(`${at}.high`, `Write what 10 means in question ${place + 1}, such as “the worst”.`)]
      : []),
  ];
};

export const questionnaireConsistent = ({ questions, isPermitted }: Written): readonly Refusal[] => {
  const texts = questions.map(({ text }) => text.trim().toLowerCase());
  const twice = texts.findIndex((text, place) => texts.indexOf(text) !== place);
  return [
    ...questions.flatMap(questionRefusals),
    ...(twice < 0
      ? []
      : [
          inconsistent(
            `input.questions[${twice}].text`,
            `Question ${twice + 1} stands there twice: change one.`,
          ),
        ]),
    ...(isPermitted
      ? []
      : [
          inconsistent(
            'input.isPermitted',
            'Tick that you wrote these questions, or are allowed to use them. Others may not be entered.',
          ),
        ]),
  ];
};

/** null: asked, and the patient did not know. It is no zero and no “no”. */
export type OwnAnswer = number | boolean | string | null;

export const answerFits = (kind: OwnQuestion['kind'], answer: OwnAnswer): boolean => {
  if (answer === null) return true;
  switch (kind) {
    case 'score':
      return typeof answer === 'number' && Number.isInteger(answer) && answer >= 0 && answer <= 10;
    case 'yes-no':
      return typeof answer === 'boolean';
    case 'words':
      return typeof answer === 'string' && answer.trim() !== '' && answer.length <= mostLetters;
  }
};

/** For the clinic, as it was given. */
export const ownAnswerInWords = (answer: OwnAnswer): string => {
  if (answer === null) return 'Not known';
  if (typeof answer === 'boolean') return answer ? 'Yes' : 'No';
  return typeof answer === 'number' ? `${answer} of 10` : `“${answer}”`;
};
