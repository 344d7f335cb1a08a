/** What stands on one day of the picture, in words: everything its marks stand for, and by whose hand. */
import { type TreatmentLine, treatmentOf } from '../episode/treatment/treatment-timeline.ts';
import type { Day } from '../time/day.ts';
import { hasMissing, highestPain, type SessionPain } from './joint-answers.ts';
import { measuredInWords, measureTitles, type SessionLoad } from './load-of-session.ts';
import { dayInWords } from './plain-words.ts';
import { type ReviewRow, type ReviewSeries, topOn } from './series.ts';
import { swellingText } from './table.ts';

/** What a day would have been under values looked back with, beside what it was. */
export interface OtherAnswer {
  readonly way: 'more-cautious' | 'bolder' | 'other';
  /** Both answers and the rules that differ, as a sentence. */
  readonly text: string;
}

/** Names the series does not hold. */
export interface ChartNames {
  /** Who signed a version of the exercise, by its number. */
  readonly signers?: ReadonlyMap<number, string>;
  /** What a clinician answered to a decision, by its id. */
  readonly answers?: ReadonlyMap<string, string>;
  /** What was done about the disease, oldest first. */
  readonly treatments?: readonly TreatmentLine[];
  /** What a patient put right, by day. */
  readonly corrections?: ReadonlyMap<Day, readonly string[]>;
  /** Who stood beside the work, by day. */
  readonly supervised?: ReadonlyMap<Day, readonly string[]>;
  /** Days that would have been others under values looked back with. */
  readonly others?: ReadonlyMap<Day, OtherAnswer>;
}

export interface DayDetail {
  readonly day: Day;
  /** One line for the day. */
  readonly text: string;
  /** Each mark in full, one line each. */
  readonly lines: readonly string[];
  readonly decisionId: string | null;
}

const corrected = (amended: boolean): string => (amended ? ', corrected later' : '');

const kinds = { full: '', 'bad-day': ' (easier session)', test: ' (a test)' } as const;

const loadText = (load: SessionLoad, { measure }: ReviewSeries): string => {
  const name = measureTitles[measure].title.toLowerCase();
  const figure = load.value === null ? 'not known' : measuredInWords(load.value, measure);
  return `${name} ${figure}${kinds[load.kind]}${corrected(load.amended)}`;
};

const painText = (pain: SessionPain): string =>
  `highest pain in the session ${highestPain(pain) ?? 'not given'}${hasMissing(pain) ? ', an answer missing' : ''}${corrected(pain.amended)}`;

const shortText = (row: ReviewRow, series: ReviewSeries): string => {
  const parts = [
    ...row.loads.map((load) => loadText(load, series)),
    ...row.pains.map(painText),
    row.morning ? `morning pain ${row.morning.pain}${corrected(row.morning.amended)}` : '',
    row.morning?.flare === true ? 'flare' : '',
    row.decision ? `decision ${row.decision.decision}` : '',
  ];
  return `${dayInWords(row.day, series.today)}: ${parts.filter(Boolean).join('; ')}`;
};

const versionLine = ({ loads }: ReviewRow, { signers }: ChartNames): readonly string[] =>
  loads.flatMap(({ version }) =>
    version === null
      ? []
      : [
          `Version ${version} of the prescription${signers?.has(version) ? `, signed by ${signers.get(version)}` : ''}.`,
        ],
  );

const painLine = ({ pains }: ReviewRow): readonly string[] =>
  pains.map(
    ({ before, during, after, twoHours }) =>
      `Pain before ${before}, during ${during}, after ${after}, two hours later ${twoHours}.`,
  );

const otherJointWords = {
  worse: 'Another joint was worse than usual.',
  'not-worse': 'No other joint was worse than usual.',
  'not-answered': 'Whether another joint was worse was not answered.',
} as const;

const morningLine = ({ morning }: ReviewRow): readonly string[] =>
  morning
    ? [
        `Morning: pain ${morning.pain}, stiffness ${morning.stiffnessMinutes} min, swelling ${swellingText(morning)}.`,
        ...(morning.isAsYesterday
          ? ['Stiffness, swelling, flare and pain relief by one press: as yesterday.']
          : []),
        ...(morning.fatigue === undefined ? [] : [`Tiredness ${morning.fatigue}.`]),
        ...(morning.otherJoint === undefined ? [] : [otherJointWords[morning.otherJoint]]),
        ...(morning.alsoPain
          ? [`Answered more than once that morning; pain before that: ${morning.alsoPain.join(', ')}.`]
          : []),
      ]
    : [];

const thresholdLine = (day: Day, series: ReviewSeries): readonly string[] => {
  const span = topOn(series, day);
  return span
    ? [
        `Thresholds that day: top of usual pain ${span.usualPainTop ?? 'not set'}, acceptable pain limit ${span.painCeiling}, set by ${span.setBy} on ${dayInWords(span.setOn, series.today)}.`,
      ]
    : ['No baseline was set on that day.'];
};

const treatmentLine = (
  day: Day,
  { joint }: ReviewSeries,
  { treatments = [] }: ChartNames,
): readonly string[] =>
  treatmentOf(treatments, joint, day, day).map(({ what, day: began }) =>
    began === day ? `Treatment: ${what}.` : `Treatment since ${dayInWords(began)}: ${what}.`,
  );

const unasked = (text: string): string => text.replaceAll('not-asked', 'not asked');

export const dayDetail = (row: ReviewRow, series: ReviewSeries, names: ChartNames): DayDetail => ({
  day: row.day,
  text: unasked(shortText(row, series)),
  lines: [
    ...painLine(row),
    ...morningLine(row),
    ...treatmentLine(row.day, series, names),
    ...(names.supervised?.get(row.day) ?? []),
    ...(names.corrections?.get(row.day) ?? []),
    ...[names.others?.get(row.day)?.text ?? []].flat(),
    ...thresholdLine(row.day, series),
    ...versionLine(row, names),
    ...(row.decision && names.answers?.has(row.decision.id) ? [names.answers.get(row.decision.id)!] : []),
  ].map(unasked),
  decisionId: row.decision?.id ?? null,
});
