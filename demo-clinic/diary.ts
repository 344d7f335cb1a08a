/** The compact rows of a diary, read into what was answered on each day. */
import type { StopReason } from '#core/record/record.ts';
import { stopReasons } from '#core/record/record.ts';
import type { Remark, Week } from './story.ts';

export interface SessionDay {
  readonly before: number | null;
  readonly during: number | null;
  readonly after: number | null;
  readonly isEasierSession: boolean;
  readonly relief: boolean;
  readonly extra: boolean;
  readonly gaveWay: boolean;
  /** Repetitions of each set done; null = as asked. */
  readonly did: readonly number[] | null;
  readonly stop: StopReason;
}

export interface MorningDay {
  /** By place in the list of followed joints. */
  readonly pains: readonly (number | null)[];
  readonly stiffness: number | null;
  /** Of joints of which nothing was remarked. */
  readonly usualStiffness: number;
  readonly said: Omit<Remark, 'day'>;
}

export interface DiaryDay {
  readonly day: number;
  readonly morning: MorningDay | null;
  readonly session: SessionDay | null;
}

export const weekdayNames = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;

const scoreOf = (text: string | undefined): number | null => {
  if (text === '?') return null;
  if (!/^([0-9]|10)$/.test(text ?? '')) throw new TypeError(`Not a score: ${text}`);
  return Number(text);
};

const words = (text: string): readonly string[] => text.trim().split(/\s+/);

const sevenOf = (text: string): readonly string[] => {
  const seven = words(text);
  if (seven.length > 7) throw new TypeError(`More than seven mornings: ${text}`);
  return seven;
};

const flags = ['easier', 'relief', 'extra', 'gave-way'];

const isStop = (word: string): word is StopReason => (stopReasons as readonly string[]).includes(word);

const sessionOf = ([before, during, after, ...rest]: readonly string[]): SessionDay => {
  const at = rest.indexOf('did');
  const did = at < 0 ? null : rest[at + 1]!.split('/').map(Number);
  const known = rest.filter((_, place) => at < 0 || (place !== at && place !== at + 1));
  const strange = known.find((word) => !flags.includes(word) && !isStop(word));
  if (strange !== undefined) throw new TypeError(`A session does not say: ${strange}`);
  return {
    before: scoreOf(before),
    during: scoreOf(during),
    after: scoreOf(after),
    isEasierSession: known.includes('easier'),
    relief: known.includes('relief'),
    extra: known.includes('extra'),
    gaveWay: known.includes('gave-way'),
    did,
    stop: known.find(isStop) ?? 'none',
  };
};

const sessionsOf = (row: Week): ReadonlyMap<number, SessionDay> =>
  new Map(
    row.sessions
      .split(',')
      .filter((text) => text.trim() !== '')
      .map((text) => {
        const [name, ...rest] = words(text);
        const place = (weekdayNames as readonly string[]).indexOf(name!);
        if (place < 0) throw new TypeError(`Not a weekday: ${name}`);
        return [row.from + place, sessionOf(rest)] as const;
      }),
  );

const morningAt = (row: Week, place: number, said: Omit<Remark, 'day'>): MorningDay | null => {
  const first = sevenOf(row.mornings)[place];
  if (first === undefined || first === '.') return null;
  const further = typeof row.also === 'string' ? [row.also] : (row.also ?? []);
  const pains = [first, ...further.flatMap((text) => sevenOf(text)[place] ?? [])].map(scoreOf);
  const stiffness = said.stiffness === undefined ? row.stiffness : said.stiffness;
  const fatigue = said.fatigue === undefined ? (row.fatigue ?? null) : said.fatigue;
  return { pains, stiffness, usualStiffness: row.stiffness, said: { ...said, fatigue } };
};

/** Every day of the rows, in order. */
export const diaryDays = (weeks: readonly Week[], remarks: readonly Remark[]): readonly DiaryDay[] => {
  const saidOn = new Map(remarks.map(({ day, ...said }) => [day, said]));
  return weeks.flatMap((row) => {
    const sessions = sessionsOf(row);
    return weekdayNames.map((_, place) => {
      const day = row.from + place;
      return {
        day,
        morning: morningAt(row, place, saidOn.get(day) ?? {}),
        session: sessions.get(day) ?? null,
      };
    });
  });
};
