/** Treatment as it stands on Care, on the summary and in the picture of a review. */
import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { injectionReading } from '#core/episode/treatment/injection-evidence.ts';
import { reviewChartOf } from '#core/review/review-chart.ts';
import { zoomed } from '#core/review/zoom.ts';
import { addDays } from '#core/time/day.ts';
import { answeredSessions, series, since, today } from '#tests/core/review/builders.ts';
import type { CareAnswer } from '#ui/clinician/answers.ts';
import { TreatmentSection } from '#ui/clinician/care/treatment-section.tsx';
import { TreatmentList } from '#ui/clinician/review/chart/treatment-marks.tsx';
import type { SummaryProps } from '#ui/clinician/summary/summary-props.ts';
import { TreatmentInShort } from '#ui/clinician/summary/treatment-in-short.tsx';

const event = (id: string, over: object) => ({
  id,
  day: since,
  kind: 'joint-injection',
  joint: null,
  recordedAt: 0,
  remark: null,
  medicine: null,
  courseForm: null,
  ...over,
});
const biologic = event('biologic', {
  day: addDays(since, 3),
  kind: 'medicine-change',
  medicine: { act: 'start', medicineClass: 'biologic' },
});
const course = event('course', {
  day: addDays(since, -20),
  kind: 'steroid-course',
  lastDay: addDays(since, 5),
  courseForm: 'taper',
});
const injection = event('injection', {
  day: addDays(since, 9),
  joint: 'left-knee',
  remark: 'By the hospital',
});
const before = event('before', { day: addDays(since, -90) });

const careOf = (events: readonly object[], began: string | null = since) =>
  ({
    events,
    limits: [],
    preApprovals: [],
    episodeBeganOn: began,
    injectionEasierDays: 2,
  }) as unknown as CareAnswer;
const shown = (element: ReactElement) =>
  renderToStaticMarkup(element)
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');
const section = (events: readonly object[], began?: string | null) =>
  shown(<TreatmentSection care={careOf(events, began)} day={today} />);

it('Care lists the treatment of the episode, newest first, and what was before it apart', () => {
  const page = section([before, course, biologic, injection]);
  const at = (text: string) => page.indexOf(text);
  expect(at('A joint was injected')).toBeGreaterThan(0);
  expect(at('left knee By the hospital')).toBeGreaterThan(0);
  expect(at('A joint was injected')).toBeLessThan(at('Biologic: started'));
  expect(at('Biologic: started')).toBeLessThan(at('Course of steroid to'));
  expect(at('Course of steroid to')).toBeLessThan(at('1 entry before this episode of care'));
});

it('says how long the easier session lasts after an injection, and that the sources disagree', () => {
  const page = section([injection]);
  expect(page).toContain('the easier session for 2 more days (clinic setting)');
  expect(page).toContain(injectionReading);
  expect(section([biologic])).not.toContain('clinic setting');
});

it('says that nothing is recorded where nothing is, and calls no treatment an operation or a fall', () => {
  expect(section([event('fall', { kind: 'fall' })])).toContain('No change of medicine, missed dose');
});

it('the summary tells eight weeks of it, and has no part where there is none', () => {
  const summary = (events: readonly object[]) =>
    shown(
      <TreatmentInShort
        {...({ patient: { id: 'p' }, care: careOf(events), day: today } as unknown as SummaryProps)}
      />,
    );
  expect(summary([before, biologic])).toMatch(/Treatment in eight weeks.*Biologic: started/);
  expect(summary([before])).toBe('');
});

const lines = [
  {
    id: 'c',
    kind: 'steroid-course',
    day: addDays(since, -4),
    lastDay: addDays(since, 5),
    joint: null,
    what: 'A course',
    remark: null,
  },
  {
    id: 'i',
    kind: 'joint-injection',
    day: addDays(since, 9),
    lastDay: addDays(since, 9),
    joint: 'left-knee',
    what: 'An injection',
    remark: null,
  },
  {
    id: 'o',
    kind: 'joint-injection',
    day: addDays(since, 9),
    lastDay: addDays(since, 9),
    joint: 'right-hand',
    what: 'Elsewhere',
    remark: null,
  },
] as const;

it('the picture marks it for its joint, a course as long as it lasts, and each with its words', () => {
  const days = [addDays(since, 9)];
  const chart = reviewChartOf(series(answeredSessions(days, 2)), { treatments: lines });
  expect(chart.treatments).toEqual([
    { from: since, to: addDays(since, 5), text: '25 Feb: A course' },
    { from: addDays(since, 9), to: addDays(since, 9), text: '10 Mar: An injection' },
  ]);
  expect(chart.days.find(({ day }) => day === days[0])?.lines).toContain('Treatment: An injection.');
  expect(shown(<TreatmentList chart={chart} />)).toMatch(/A course.*An injection/);
  const later = zoomed(chart, { from: addDays(since, 6), to: today });
  expect(later.treatments.map(({ text }) => text)).toEqual(['10 Mar: An injection']);
});
