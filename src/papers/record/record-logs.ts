/** What the patient logged and what was decided from it, as tables. */
import type {
  JointMorningAnswers,
  JointSessionAnswers,
  SessionRecord,
  SetRecord,
} from '#core/record/record.ts';
import { decisionText } from '#messages/decisions.ts';
import { exerciseName } from '#messages/exercises.ts';
import { pageWord } from '#messages/page-words.ts';
import type { SheetPaper } from '../sheet/sheet-paper.ts';
import type { RecordPaper } from './record-paper.ts';
import type { RecordWords } from './record-words.ts';

type Part = SheetPaper['parts'][number];

const tablePart = (
  title: string,
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  none: string,
  widths: readonly number[],
): Part =>
  rows.length > 0 ? { title, lines: [], table: { heads, rows, widths } } : { title, lines: [none] };

/** "not-applicable" was never asked; null was asked and not answered. */
const answered = <A>(
  answer: A | 'not-applicable' | null,
  { say }: RecordWords,
  inWords: (given: A) => string,
): string => {
  if (answer === 'not-applicable') return say('not-asked');
  return answer === null ? say('not-answered') : inWords(answer as A);
};

const sessionKinds = {
  full: 'history.session',
  'bad-day': 'history.easier-session',
  test: 'history.test',
} as const;

/** "17, 16, 15 with 4.5 kg": sets in a row with one weight name it once. */
const setsInWords = (sets: readonly SetRecord[], { say, tag, speech }: RecordWords): string => {
  const runs: { loadKg: number | null; counts: string[] }[] = [];
  for (const { repetitions, loadKg } of sets) {
    const count = repetitions === null ? pageWord(tag, 'history.not-counted') : String(repetitions);
    const run = runs.at(-1);
    if (run && run.loadKg === loadKg) run.counts.push(count);
    else runs.push({ loadKg, counts: [count] });
  }
  return runs
    .map(({ loadKg, counts }) =>
      loadKg === null || loadKg === 0
        ? counts.join(', ')
        : say('set-with', { repetitions: counts.join(', '), weight: speech.weight(loadKg) }),
    )
    .join(', ');
};

/** By exercise, each with its sets in order. */
const setsText = (session: SessionRecord, paper: RecordPaper, words: RecordWords): string => {
  const byExercise = new Map<string, SetRecord[]>();
  for (const set of session.sets) {
    const version = paper.versions.find(({ id }) => id === set.prescriptionId);
    const name = version ? exerciseName(version.dose.exerciseId)[words.tag] : '';
    byExercise.set(name, [...(byExercise.get(name) ?? []), set]);
  }
  return [...byExercise]
    .map(([name, sets]) => `${name ? `${name}: ` : ''}${setsInWords(sets, words)}`)
    .join('; ');
};

const noJoint = { joint: null } as const;

const sessionRow = (
  session: SessionRecord,
  told: JointSessionAnswers | typeof noJoint,
  paper: RecordPaper,
  words: RecordWords,
): readonly string[] => {
  const pain = (value: number | null | 'not-applicable') => answered<number>(value, words, String);
  const answers =
    told.joint === null
      ? ['', '', '', '', '']
      : [
          words.say('joint', { joint: told.joint }),
          pain(told.painBefore),
          pain(told.painDuring),
          pain(told.painAfter),
          pain(told.painTwoHours),
        ];
  return [
    words.shortDay(session.day),
    pageWord(words.tag, sessionKinds[session.kind]),
    setsText(session, paper, words),
    ...answers,
  ];
};

const sessionPart = (paper: RecordPaper, words: RecordWords): Part => {
  const { say, tag } = words;
  const heads = [
    say('day'),
    say('what'),
    say('sets'),
    say('joint-head'),
    pageWord(tag, 'history.pain-before'),
    pageWord(tag, 'history.pain-during'),
    pageWord(tag, 'history.pain-after'),
    say('two-hours'),
  ];
  const rows = paper.sessions.flatMap((session) =>
    (session.joints.length > 0 ? session.joints : [noJoint]).map((told) =>
      sessionRow(session, told, paper, words),
    ),
  );
  return tablePart(say('sessions'), heads, rows, say('none'), [2.5, 1.7, 6, 2.2, 1.8, 1.9, 1.8, 1.9]);
};

const swellingText = (answers: JointMorningAnswers, words: RecordWords): string => {
  const asked = answers.swellingQuestion === 'more-than-usual' ? 'more' : 'absolute';
  return answered(answers.swelling, words, (swelling) =>
    pageWord(words.tag, `history.swelling-${asked}-${swelling}`),
  );
};

const morningPart = ({ mornings }: RecordPaper, words: RecordWords): Part => {
  const { say, tag } = words;
  const heads = [
    say('day'),
    say('joint-head'),
    pageWord(tag, 'history.pain-morning'),
    pageWord(tag, 'history.stiffness'),
    pageWord(tag, 'history.swelling'),
    pageWord(tag, 'history.flare'),
  ];
  const rows = mornings.flatMap(({ day, joints }) =>
    joints.map((told) => [
      words.shortDay(day),
      say('joint', { joint: told.joint }),
      answered<number>(told.pain, words, String),
      answered<number>(told.stiffnessMinutes, words, (count) => say('minutes', { count })),
      swellingText(told, words),
      answered<boolean>(told.flare, words, (isFlare) => pageWord(tag, isFlare ? 'ask.yes' : 'ask.no')),
    ]),
  );
  return tablePart(say('mornings'), heads, rows, say('none'), [2, 2, 2, 2, 3, 2]);
};

const decisionPart = ({ decisions }: RecordPaper, { say, tag, shortDay }: RecordWords): Part =>
  tablePart(
    say('decisions'),
    [say('day'), say('joint-head'), say('decision')],
    decisions.map(({ day, joint, decision }) => [
      shortDay(day),
      say('joint', { joint }),
      decisionText(decision)[tag],
    ]),
    say('none'),
    [1, 1, 3],
  );

export const logParts = (paper: RecordPaper, words: RecordWords): readonly Part[] => [
  sessionPart(paper, words),
  morningPart(paper, words),
  decisionPart(paper, words),
];
