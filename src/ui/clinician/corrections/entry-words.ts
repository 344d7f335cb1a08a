/** An entry in one line, as it was entered. */
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { measurementForm } from '#core/assessment/measurements/measurement-fields.ts';
import { type OwnAnswer, ownAnswerInWords } from '#core/assessment/questionnaires/questionnaire.ts';
import type { CorrectionSubject } from '#core/corrections/correction.ts';
import { type GoalState, goalStateWords } from '#core/episode/goals.ts';
import { boundInWords } from '#core/episode/limit-degrees.ts';
import { noteParts } from '#core/episode/visit-note.ts';
import type { Limit } from '#core/record/limit.ts';
import { say } from '#messages/en/staff/corrections.ts';
import { optionInWords } from '../forms/field-words.ts';
import { measurementInWords, subjectOf } from '../measurements/measurement-words.ts';

type Entered = Readonly<Record<string, unknown>>;

const parts = (...words: readonly (string | null)[]): string => words.filter(Boolean).join(', ');
const option = (value: unknown): string => (typeof value === 'string' ? optionInWords(value) : '');
const given = (label: string, value: unknown, unit = ''): string =>
  value === null || value === undefined ? say('not-given', { label }) : `${label} ${value}${unit}`;

const measurementLine = (entered: Entered): string => {
  const row = entered as unknown as Measurement;
  const title = measurementForm(row.kind)?.title ?? row.kind;
  return parts(title, subjectOf(row), measurementInWords(row));
};

const screeningLine = ({ answers }: Entered): string => {
  const list = answers as readonly { readonly answer: string }[];
  const yes = list.filter(({ answer }) => answer === 'yes').length;
  const notKnown = list.filter(({ answer }) => answer === 'not-known').length;
  return say('answers', { count: list.length, yes, 'not-known': notKnown });
};

const longestBeginning = 60;

/** What a note begins with, to know it by. */
const beginning = (names: readonly string[], row: Entered): string => {
  const text = names.map((name) => row[name]).find((value) => typeof value === 'string');
  const said = typeof text === 'string' ? text : '';
  return said.length > longestBeginning ? `${said.slice(0, longestBeginning)}…` : said;
};

const lines: Readonly<Record<CorrectionSubject, (entered: Entered) => string>> = {
  measurement: measurementLine,
  screening: screeningLine,
  event: (row) =>
    parts(option(row.kind), option(row.joint), option(row.medicineClass), option(row.medicineAct)),
  limit: (row) =>
    parts(
      option(row.joint),
      option(row.kind),
      row.limitKg === null ? '' : say('kg', { load: String(row.limitKg) }),
      boundInWords(row as unknown as Limit).replace(/^, /, ''),
      row.to === null ? say('until-lifted') : say('to', { end: String(row.to) }),
      say('set-by', { name: String(row.author) }),
    ),
  goal: (row) => parts(`“${row.goal}”`, goalStateWords[row.state as GoalState]),
  baseline: (row) =>
    parts(
      option(row.joint),
      given(say('usual-pain'), row.usualPain),
      given(say('acceptable-pain-limit'), row.acceptablePainLimit),
      given('stiffness', row.usualStiffnessMinutes, ' min'),
    ),
  'effusion-test': (row) => parts(option(row.joint), String(row.grade)),
  clearance: (row) =>
    parts(
      option(row.method),
      option(row.side),
      option(row.limb),
      say('cleared', { reason: String(row.reason) }),
    ),
  'home-answers': ({ answers }) =>
    (answers as readonly { question: string; answer: OwnAnswer }[])
      .map(({ question, answer }) => `${question}: ${ownAnswerInWords(answer)}`)
      .join('; '),
  'supervised-session': (row) =>
    parts(
      `${option(row.side)} ${row.limb}`,
      row.supervisedThroughout ? say('supervised-throughout') : say('in-part'),
    ),
  visit: (row) =>
    parts(option(row.place), row.whereabouts as string | null, row.callBackPhone as string | null),
  note: (row) => parts(String(row.day), option(row.contact), `“${beginning(noteParts, row)}”`),
  contact: (row) =>
    row.reached === 'nobody'
      ? say('reached-nobody')
      : parts(
          say('reached', { whom: option(row.reached) }),
          `“${row.found}”`,
          `“${row.advised}”`,
          typeof row.referredTo === 'string' ? row.referredTo : null,
        ),
};

export const entryInWords = (subject: CorrectionSubject, entered: Entered): string => lines[subject](entered);
