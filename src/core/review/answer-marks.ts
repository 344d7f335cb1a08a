/** Sessions and answers of a joint as marks on one axis of days. */
import type { Day } from '../time/day.ts';
import { hasMissing, highestPain } from './joint-answers.ts';
import type { SessionLoad } from './load-of-session.ts';
import { overUsualOn, type ReviewRow, type ReviewSeries, topOn } from './series.ts';

export interface LoadMark {
  readonly day: Day;
  readonly value: number | null;
  readonly kind: SessionLoad['kind'];
  /** The entry was corrected after it was sent. */
  readonly amended?: true;
}

/** What does not hold is left out: a year of marks is sent with the page. */
export interface PainMark {
  readonly day: Day;
  readonly of: 'morning' | 'session';
  /** null = due and not given. */
  readonly value: number | null;
  /** Of a morning: points over the top of usual. Of a session: points over the limit. Left out = not over it. */
  readonly over?: number;
  readonly flare?: true;
  readonly amended?: true;
}

const amendedIf = (isAmended: boolean): { readonly amended?: true } => (isAmended ? { amended: true } : {});

const overBy = (over: number | null): Pick<PainMark, 'over'> => (over === null ? {} : { over });

export const loadMark = ({ day, value, kind, amended }: SessionLoad): LoadMark => ({
  day,
  value,
  kind,
  ...amendedIf(amended),
});

export const painMarks = (series: ReviewSeries, { day, pains, morning }: ReviewRow): readonly PainMark[] => [
  ...pains.flatMap((pain): readonly PainMark[] => {
    const value = highestPain(pain);
    const mark = { day, of: 'session', ...amendedIf(pain.amended) } as const;
    const limit = topOn(series, day)?.painCeiling ?? null;
    const over = value !== null && limit !== null && value > limit ? value - limit : null;
    const given: readonly PainMark[] = value === null ? [] : [{ ...mark, value, ...overBy(over) }];
    return hasMissing(pain) ? [...given, { ...mark, value: null }] : given;
  }),
  ...(morning && morning.pain !== 'not-asked'
    ? [
        {
          day,
          of: 'morning' as const,
          value: morning.pain === 'missing' ? null : morning.pain,
          ...overBy(overUsualOn(series, day, morning.pain)),
          ...(morning.flare === true ? { flare: true as const } : {}),
          ...amendedIf(morning.amended),
        },
      ]
    : []),
];
