/**
 * The sentences beside the picture. They state what the picture draws, from the same rows, and
 * nothing it does not: a description of what was logged, never a prediction or a cause.
 */
import { decisions } from '../decision/answers.ts';
import { type Day, daysBetween } from '../time/day.ts';
import { type Answered, hasMissing, highestPain } from './joint-answers.ts';
import { measuredInWords, measureTitles } from './load-of-session.ts';
import { counted, dayInWords, figure, jointInWords, listed } from './plain-words.ts';
import { overUsualOn, type ReviewSeries, topOn } from './series.ts';

const range = (values: readonly number[]): string => {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return low === high ? figure(low) : `${figure(low)} to ${figure(high)}`;
};

/** The lower of the two middle values of an even count, so that the figure is one that was given. */
const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor((values.length - 1) / 2)]!;

const daysOf = (days: readonly Day[], today: Day): string =>
  listed(days.map((day) => dayInWords(day, today)));

const sessionsSentence = ({ loads, since, today }: ReviewSeries): string => {
  const span = `From ${dayInWords(since, today)} to ${dayInWords(today)}`;
  if (loads.length === 0) return `${span}: no session of this exercise was logged.`;
  const easier = loads.filter((load) => load.kind === 'bad-day').length;
  const tests = loads.filter((load) => load.kind === 'test').length;
  const parts = [
    easier > 0 ? `${easier} of them the easier session` : '',
    tests > 0 ? `${tests} a test` : '',
  ].filter(Boolean);
  return `${span}: ${[`${counted(loads.length, 'session')} of this exercise`, ...parts].join(', ')}.`;
};

/** Steps between neighbouring sessions as planned: an easier session is not a change of the plan. */
const stepsOf = (values: readonly number[]) => ({
  up: values.filter((value, place) => place > 0 && value > values[place - 1]!).length,
  down: values.filter((value, place) => place > 0 && value < values[place - 1]!).length,
});

const loadSentences = ({ loads, measure, today }: ReviewSeries): readonly string[] => {
  if (loads.length === 0) return [];
  const { title, against } = measureTitles[measure];
  const name = against ? `${title} (${against})` : title;
  const said = (value: number) => measuredInWords(value, measure);
  const known = loads.flatMap((load) =>
    load.value === null || load.kind !== 'full' ? [] : [{ day: load.day, value: load.value }],
  );
  const unknown = loads.filter((load) => load.value === null);
  const sentences: string[] = [];
  const [first, last] = [known[0], known.at(-1)];
  if (!first || !last) sentences.push(`${name} is not known for any full session.`);
  else if (known.length === 1) {
    sentences.push(
      `${name} is known for one full session: ${said(first.value)} on ${dayInWords(first.day, today)}.`,
    );
  } else {
    const steps = stepsOf(known.map((load) => load.value));
    const where = `${said(first.value)} on ${dayInWords(first.day, today)}`;
    const end = `${said(last.value)} on ${dayInWords(last.day, today)}`;
    sentences.push(
      steps.up + steps.down === 0
        ? `${name} stayed at ${said(first.value)} in full sessions.`
        : `${name} in full sessions went from ${where} to ${end}: ${counted(steps.up, 'step')} up, ${steps.down} down.`,
    );
  }
  if (unknown.length > 0) {
    sentences.push(
      `${name} cannot be told for ${counted(unknown.length, 'session')} (${daysOf(
        unknown.map((load) => load.day),
        today,
      )}): ${measureTitles[measure].unknown ?? 'a count or a load was not given'}.`,
    );
  }
  return sentences;
};

const gapSentence = ({ gaps, today }: ReviewSeries): readonly string[] => {
  if (gaps.length === 0) return [];
  const spans = gaps.map((gap) =>
    gap.to === today
      ? `${gap.days} days since ${dayInWords(gap.from, today)}`
      : `${gap.days} days from ${dayInWords(gap.from, today)} to ${dayInWords(gap.to, today)}`,
  );
  return [`Gaps between sessions: ${listed(spans, 3)}.`];
};

const given = (values: readonly Answered[]): readonly number[] =>
  values.filter((value): value is number => typeof value === 'number');

const morningSentences = (series: ReviewSeries): readonly string[] => {
  const joint = jointInWords(series.joint);
  const rows = series.rows.flatMap(({ day, morning }) => (morning ? [{ day, morning }] : []));
  if (rows.length === 0) return [`No morning answer for the ${joint} was due or given.`];
  const pains = given(rows.map((row) => row.morning.pain));
  const mornings = (some: readonly { readonly day: Day }[]): string =>
    `on ${counted(some.length, 'morning')} (${daysOf(
      some.map((row) => row.day),
      series.today,
    )})`;
  const missing = rows.filter((row) => row.morning.pain === 'missing');
  const over = rows.filter(({ day, morning }) => overUsualOn(series, day, morning.pain) !== null);
  const flares = rows.filter((row) => row.morning.flare === true);
  const sentences = [
    pains.length === 0
      ? `Morning pain of the ${joint} was never given.`
      : `Morning pain of the ${joint} was given on ${counted(pains.length, 'morning')}: ${range(pains)}, middle value ${middle(pains)}.`,
  ];
  if (missing.length > 0) sentences.push(`It is missing ${mornings(missing)}.`);
  if (over.length > 0) sentences.push(`It lay over the top of usual pain ${mornings(over)}.`);
  if (flares.length > 0) sentences.push(`A flare was reported ${mornings(flares)}.`);
  return sentences;
};

const sessionPainSentences = (series: ReviewSeries): readonly string[] => {
  const rows = series.rows.flatMap(({ day, pains }) => pains.map((pain) => ({ day, pain })));
  if (rows.length === 0) return [];
  const highestPains = rows.flatMap(({ day, pain }) => {
    const value = highestPain(pain);
    return value === null ? [] : [{ day, value }];
  });
  const open = rows.filter(({ pain }) => hasMissing(pain));
  const sentences: string[] = [];
  if (highestPains.length > 0) {
    const over = highestPains.filter(({ day, value }) => value > (topOn(series, day)?.painCeiling ?? 10));
    const tail =
      over.length > 0
        ? `; over the acceptable pain limit in ${over.length} (${daysOf(
            over.map((peak) => peak.day),
            series.today,
          )})`
        : '';
    sentences.push(
      `Highest pain reported in a session was ${range(highestPains.map((peak) => peak.value))} over ${counted(highestPains.length, 'session')}${tail}.`,
    );
  }
  if (open.length > 0) {
    sentences.push(`At least one pain answer is missing in ${counted(open.length, 'session')}.`);
  }
  return sentences;
};

const thresholdSentence = ({ thresholds, joint }: ReviewSeries): string => {
  const last = thresholds.at(-1);
  if (!last) return `No baseline is set for the ${jointInWords(joint)}.`;
  const top = last.usualPainTop === null ? 'usual pain not set' : `top of usual pain ${last.usualPainTop}`;
  const changes =
    thresholds.length > 1
      ? `; changed ${thresholds.length === 2 ? 'once' : `${thresholds.length - 1} times`} in this time`
      : '';
  return `Thresholds in force: ${top}, acceptable pain limit ${last.painCeiling}, set by ${last.setBy}${changes}.`;
};

const decisionSentence = ({ rows, today }: ReviewSeries): string => {
  const settled = rows.flatMap((row) => (row.decision ? [row.decision] : []));
  const newest = settled.at(-1);
  if (!newest) return 'No decision was made.';
  const counts = [...decisions]
    .reverse()
    .map((word) => ({ word, count: settled.filter((row) => row.decision === word).length }))
    .filter(({ count }) => count > 0)
    .map(({ word, count }) => `${word} ${count}`);
  const age = daysBetween(newest.day, today);
  const when = age === 0 ? 'today' : `on ${dayInWords(newest.day, today)}`;
  return `Decisions: ${counts.join(', ')}. The newest, ${when}, is ${newest.decision}.`;
};

export const reviewWords = (series: ReviewSeries): readonly string[] => [
  sessionsSentence(series),
  ...loadSentences(series),
  ...gapSentence(series),
  ...morningSentences(series),
  ...sessionPainSentences(series),
  thresholdSentence(series),
  decisionSentence(series),
];
