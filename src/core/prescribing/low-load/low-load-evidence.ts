/**
 * What the low-load method rests on. Muscle grows as much at 30–50 % of the maximum as at heavy loads
 * when sets end near failure; strength grows less. At 20 % growth was about half. All studies were in
 * healthy adults, mostly young; none in painful joints.
 */

import { reserveCitations } from '#core/assessment/strength/reserve-confidence.ts';
import type { Note } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';

export const lowLoadCitations: readonly Citation[] = [
  {
    source: 'lasevicius-2018',
    locator: 'abstract',
    mark: 'seen',
    remark:
      '30 men, 12 weeks: thigh +8.9 / 20.5 / 20.4 / 19.5 %, arm +11.4 / 25.3 / 25.1 / 25.0 % at 20 / 40 / 60 / 80 % of the maximum. The reason for the floor.',
  },
  {
    source: 'mitchell-2012',
    locator: 'abstract',
    mark: 'seen',
    remark:
      '18 men, to failure: thigh +6.8 % at 30 % × 3 sets, +7.2 % at 80 % × 3 sets, +3.2 % at 80 % × 1 set.',
  },
  {
    source: 'morton-2016',
    locator: 'abstract',
    mark: 'seen',
    remark:
      '49 trained men: 30–50 % × 20–25 against 75–90 % × 8–12, all to failure; load did not decide growth.',
  },
  {
    source: 'schoenfeld-2017-load',
    locator: 'abstract',
    mark: 'seen',
    remark: '21 studies, up to 60 % against above: growth alike, maximal strength better with heavy loads.',
  },
  {
    source: 'older-leg-press-2017',
    locator: 'abstract',
    mark: 'seen',
    remark: 'Nine older men did fewer repetitions than nine young at 30 %, not at 80 %.',
  },
  {
    source: 'refalo-2023',
    locator: 'abstract',
    mark: 'seen',
    remark: '15 studies: failure against stopping short, effect 0.19 (95 % interval 0.00–0.37).',
  },
  {
    source: 'robinson-2024',
    locator: 'secondary summary; design on the abstract',
    mark: 'second-hand',
    remark: 'Growth rises as sets end nearer to failure; strength is alike over a wide range of reserve.',
  },
  {
    source: 'singer-2024',
    locator: 'abstract',
    mark: 'seen',
    remark: 'Nine studies: short rest 0.48 (0.19–0.81), longer 0.56 (0.24–0.86).',
  },
  {
    source: 'acsm-2009',
    locator: 'abstract',
    mark: 'seen',
    remark: 'Novices 2–3 days a week; 1–2 s each way; steps of 2–10 %.',
  },
  ...reserveCitations,
];

export const evidenceLimits: Note = {
  code: 'evidence-limits',
  text: 'The low-load studies were in healthy, mostly young adults. They show muscle growth alike and maximal strength growing less than with heavy loads. None was done in painful joints.',
};

export const floorReason: Note = {
  code: 'why-a-floor',
  text: 'Work under 30 % of the maximum without occlusion grew about half as much muscle in the one trial that compared (20 against 40–80 %), so it is not proposed.',
};

export const defersToClinician: Note = {
  code: 'clinician-decides',
  text: 'A proposal from arithmetic on the figures given. The licensed clinician and local rules decide; the joint has not been asked.',
};
