/** Questions and answers: the screening, what was answered before a visit, and at home. */
import type {
  QuestionnaireResponse,
  QuestionnaireResponseItem,
  QuestionnaireResponseItemAnswer,
} from 'fhir/r4';
import { screeningItem } from '#core/screening/items.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import type { PersonRecord } from '../../person-record.ts';
import { base } from '../names.ts';
import { idOf, instantOf, ownCoding, struckOut, subjectOf, writerOf } from './parts.ts';

const words = (
  linkId: string,
  asked: string,
  said: readonly string[] | undefined,
): QuestionnaireResponseItem[] =>
  said && said.length > 0 ? [{ linkId, text: asked, answer: said.map((one) => ({ valueString: one })) }] : [];

/** What was said beside yes or no stands under the answer. */
const besides = (given: ScreeningItemAnswer): QuestionnaireResponseItem[] => {
  const { item, limbs, joints, details, day, note, askedOn } = given;
  const dated = (linkId: string, asked: string, on: string | undefined): QuestionnaireResponseItem[] =>
    on ? [{ linkId: `${item}.${linkId}`, text: asked, answer: [{ valueDate: on }] }] : [];
  return [
    ...words(
      `${item}.limbs`,
      'Limbs',
      limbs?.map(({ limb, side }) => `${side} ${limb}`),
    ),
    ...words(`${item}.joints`, 'Joints', joints),
    ...words(`${item}.details`, 'Details', details),
    ...dated('day', 'Day it last happened', day),
    ...words(`${item}.note`, 'Note', note ? [note] : undefined),
    ...dated('askedOn', 'Day it was asked', askedOn),
  ];
};

const itemOf = (given: ScreeningItemAnswer): QuestionnaireResponseItem => {
  const coding = ownCoding(`answer.${given.answer}`);
  const below = besides(given);
  const answer: QuestionnaireResponseItemAnswer = {
    ...(coding ? { valueCoding: coding } : { valueString: given.answer }),
    ...(below.length > 0 ? { item: below } : {}),
  };
  return {
    linkId: given.item,
    text: screeningItem(given.item)?.clinicianLabel ?? given.item,
    answer: [answer],
  };
};

interface Sheet {
  readonly id: string;
  readonly sheetVersion: string;
  readonly answers: readonly ScreeningItemAnswer[];
  readonly recordedAt: number;
  readonly recordedBy: string;
}

const ofSheet = (record: PersonRecord, row: Sheet, wrong: ReadonlySet<string>): QuestionnaireResponse => ({
  resourceType: 'QuestionnaireResponse',
  id: idOf(row.id),
  questionnaire: `${base}/Questionnaire/screening|${row.sheetVersion}`,
  status: wrong.has(row.id) ? 'entered-in-error' : 'completed',
  subject: subjectOf(record),
  authored: instantOf(row.recordedAt),
  author: writerOf(record, row.recordedBy),
  source: subjectOf(record),
  ...(row.answers.length > 0 ? { item: row.answers.map(itemOf) } : {}),
});

type Given = PersonRecord['rows']['home_answers'][number]['answers'][number];

const homeItem = ({ question, answer }: Given, place: number): QuestionnaireResponseItem => {
  const value: QuestionnaireResponseItemAnswer | null =
    answer === null
      ? null
      : typeof answer === 'number'
        ? { valueDecimal: answer }
        : typeof answer === 'boolean'
          ? { valueBoolean: answer }
          : { valueString: answer };
  // Asked and not known: the question stands without an answer.
  return { linkId: `${place + 1}`, text: question, ...(value ? { answer: [value] } : {}) };
};

export const questionnaireResponses = (record: PersonRecord): readonly QuestionnaireResponse[] => {
  const wrong = struckOut(record);
  return [
    ...record.rows.screening.map((row) => ofSheet(record, row, wrong)),
    ...record.rows.pre_visit.map((row) => ofSheet(record, row, wrong)),
    ...record.rows.home_answers.map(
      (row): QuestionnaireResponse => ({
        resourceType: 'QuestionnaireResponse',
        id: idOf(row.id),
        status: wrong.has(row.id) ? 'entered-in-error' : 'completed',
        subject: subjectOf(record),
        authored: instantOf(row.recordedAt),
        author: writerOf(record, row.recordedBy),
        source: subjectOf(record),
        ...(row.answers.length > 0 ? { item: row.answers.map(homeItem) } : {}),
      }),
    ),
  ];
};
