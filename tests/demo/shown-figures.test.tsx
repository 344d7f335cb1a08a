/**
 * Every number of the review and of the outcomes page against the calculation desk, for every story of
 * the demo clinic: each sentence's working is asked again at the desk, and the figures on the page must
 * be the ones it answers.
 */
import { renderToStaticMarkup } from 'react-dom/server';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { answerLine } from '#api/batch/answer-line.ts';
import { outcomeLines } from '#core/assessment/course/lines.ts';
import { personMeasured } from '#core/assessment/course/measured.ts';
import { calculationById } from '#core/calculations/registry.ts';
import type { Working } from '#core/calculations/working.ts';
import { findingsOf } from '#core/review/findings/all.ts';
import { measuresOf } from '#core/review/load-of-session.ts';
import { reviewSeries } from '#core/review/series.ts';
import type { Store } from '#data/database/store.ts';
import { loadDemoClinic } from '#demo/load.ts';
import { stories } from '#demo/patients.ts';
import { asClinician } from '#tests/support/callers.ts';
import { freshStore } from '#tests/support/store.ts';
import { OutcomesScreen } from '#ui/clinician/outcomes/outcomes-screen.tsx';
import { FindingsView } from '#ui/clinician/review/findings-view.tsx';
import { accessTo, target } from './told.ts';

// A page hands its forms to the framework's router, which is not there outside a request.
vi.mock('next/navigation', () => ({ useRouter: () => ({ refresh: () => undefined }) }));

let store: Store;
beforeAll(async () => {
  store = freshStore();
  await loadDemoClinic(target(store));
}, 240_000);
afterAll(() => store.close());

const textOf = (markup: string): string =>
  markup
    .replace(/<[^>]+>/g, ' ')
    .replace(/&#x27;/g, '’')
    .replace(/\s+/g, ' ');

interface Answered {
  readonly result: Record<string, unknown>;
}

const atDesk = ({ calculation, input }: Working): Answered => {
  const answer = JSON.parse(
    answerLine(JSON.stringify({ calculation: calculation.id, input }), 1, calculationById).text,
  );
  return { result: answer.result ?? { refused: answer.refused } };
};

const fixed = (value: number, digits: number) => value.toFixed(digits).replace('-', '−');
const two = (value: unknown) => (Math.abs(Number(value)) < 0.005 ? '0' : fixed(Number(value), 2));
const one = (value: unknown) => String(Number(Number(value).toFixed(1))).replace('-', '−');
const percent = (value: unknown) => `${Math.round(Number(value) * 100)} %`;
const better: Readonly<Record<string, string>> = {
  better: 'a change for the better',
  worse: 'a change for the worse',
  'within-error': 'not called a change',
};

/** The figures a page must show of a calculation, written here from the desk's answer alone. */
const figuresOf = (id: string, result: Record<string, unknown>): readonly string[] => {
  if (result.refused) return (result.refused as { reason: string }[]).map(({ reason }) => reason);
  const judged = () => [
    better[String(result.direction)]!,
    `error of measuring ${one(result.minimalDetectableChange)}`,
  ];
  const known: Readonly<Record<string, () => readonly string[]>> = {
    'lag-association': () =>
      (result.byLag as { lagDays: number; pairs: number; correlation: number | null; band: number | null }[])
        .filter((lag) => lag.lagDays === 1 || lag.lagDays === 2)
        .flatMap((lag) => [
          `${lag.pairs} pair`,
          ...(lag.correlation === null ? ['cannot be told'] : [`correlation ${two(lag.correlation)}`]),
          ...(lag.correlation !== null && lag.band !== null ? [`±${two(lag.band)}`] : []),
        ]),
    'sen-slope': () => [`middle slope was ${two(Number(result.slope) * 7)} points a week`],
    'mann-kendall': () => [
      `S ${String(result.s).replace('-', '−')}`,
      Number(result.pTwoSided) < 0.001 ? 'p under 0.001' : `p ${Number(result.pTwoSided).toFixed(3)}`,
    ],
    'nonoverlap-all-pairs': () => [
      `in ${percent(result.nap)} of pairs`,
      `${result.pairsUp} higher, ${result.pairsDown} lower, ${result.pairsTied} the same`,
    ],
    'cusum-chart': () => [`stands at ${one((result.high as number[]).at(-1))}`],
    'diary-false-alarms': () => [percent(result.falseH5Within28Days), percent(result.falseH5Within60Days)],
    'chair-stand-norm': () => [`Under ${result.threshold} stands`],
    'chair-stand-change': judged,
    'timed-up-and-go': () => [
      result.fallRisk ? (result.severelyLow ? 'severely low' : 'or over it') : 'under the fall-risk cut',
    ],
    'timed-up-and-go-change': judged,
    'grip-strength': () => [`Under ${result.thresholdKg} kg`],
    'patient-chosen-activities': () => [`Mean ${one(result.mean)} of 10`],
    'patient-chosen-activities-change': judged,
    'one-rep-max-range': () => [one(result.lowKg), one(result.highKg)],
    'girth-change': () => [`error of measuring ${one(result.minimalDetectableChange)} cm`],
    'knee-effusion-change': () => [`${Math.abs(Number(result.grades))} grade`],
    cdai: () => [`${one(result.score)} is ${result.band}`],
  };
  const of = known[id];
  if (!of) throw new Error(`Say here what a page must show of ${id}.`);
  return of();
};

const expectShown = (workings: readonly Working[], text: string): number => {
  for (const working of workings) {
    const { result } = atDesk(working);
    for (const figure of figuresOf(working.calculation.id, result)) expect(text).toContain(figure);
  }
  return workings.length;
};

const asked = new Map<string, number>();
const noted = (workings: readonly Working[]): void => {
  for (const { calculation } of workings) asked.set(calculation.id, (asked.get(calculation.id) ?? 0) + 1);
};

describe.each(stories.map((story) => [story.id]))('%s', (patientId) => {
  it('the review shows the desk’s figures, for each joint, exercise and measure', async () => {
    const staff = asClinician(accessTo(store)).clinician;
    const review = await staff.review.get({ patientId, days: 182 });
    const lines = [...new Map(review.prescriptions.map((row) => [row.itemId, row])).values()];
    for (const joint of review.record.followedJoints) {
      for (const line of lines) {
        for (const measure of measuresOf(line.dose)) {
          const series = reviewSeries({
            record: review.record,
            decisions: review.decisions,
            joint,
            itemId: line.itemId,
            measure,
            since: review.since,
            today: review.day,
          });
          for (const finding of findingsOf(series, review.record)) {
            noted(finding.workings);
            expectShown(
              finding.workings,
              textOf(renderToStaticMarkup(<FindingsView findings={[finding]} />)),
            );
          }
        }
      }
    }
  });

  it('the outcomes page shows the desk’s figures and every reading', async () => {
    const staff = asClinician(accessTo(store)).clinician;
    const patient = await staff.people.get({ patientId });
    const course = await staff.outcomes.get({ patientId });
    const doseDays = await staff.outcomes.doseDays({ patientId });
    const atHome = await staff.homeQuestions.get({ patientId });
    const clock = { zone: 'Europe/London', now: accessTo(store).now };
    const page = textOf(
      renderToStaticMarkup(
        <OutcomesScreen
          {...{ patient, course, doseDays, retests: [], cuffs: [], atHome, clock }}
          day={accessTo(store).day}
        />,
      ),
    );
    for (const line of outcomeLines(course.measurements, course.effusions, personMeasured(patient))) {
      const workings = [...line.norm.workings, ...line.change.workings];
      noted(workings);
      expectShown(workings, page);
      for (const reading of line.readings) expect(page).toContain(reading.text);
    }
  });
});

it('the stories bring up every calculation of the review, and the commonest of the outcomes', () => {
  expect([...asked.keys()]).toEqual(
    expect.arrayContaining([
      'lag-association',
      'sen-slope',
      'mann-kendall',
      'nonoverlap-all-pairs',
      'cusum-chart',
      'diary-false-alarms',
      'chair-stand-change',
      'timed-up-and-go-change',
      'patient-chosen-activities-change',
      'grip-strength',
      'one-rep-max-range',
      'cdai',
    ]),
  );
});
