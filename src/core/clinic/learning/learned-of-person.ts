/** What one person adds to the clinic’s figures. Nothing of it is shown of one alone. */
import type { DangerRecord, WarningSign } from '../../danger/danger.ts';
import { withShareOfFirst } from '../../decision/dose/volume.ts';
import { type Method, methods } from '../../prescribing/methods.ts';
import type { PatientRecord, PrescriptionVersion } from '../../record/record.ts';
import { addDays, type Day, daysBetween } from '../../time/day.ts';

export type Verdict = 'better' | 'worse' | 'within-error' | 'not-judged';

interface LearnedOfMethod {
  readonly method: Method;
  /** Newest dose of each exercise as a share of its first, four weeks after that or later. */
  readonly shares: readonly number[];
  readonly outcome: Verdict;
}

export interface LearnedOfPerson {
  readonly signs: readonly { readonly urgency: WarningSign['urgency']; readonly hours: number | null }[];
  readonly mornings: { readonly asked: number; readonly answered: number };
  /** Null where no week was planned. */
  readonly sessions: { readonly planned: number; readonly done: number } | null;
  /** With a dose in force. */
  readonly weeks: number;
  readonly signatures: number;
  readonly contacts: number;
  readonly methods: readonly LearnedOfMethod[];
}

export interface PersonOnRecord {
  readonly record: PatientRecord;
  readonly danger: Pick<DangerRecord, 'signs' | 'contacts'>;
  /** Days of a break or after the end of care. */
  readonly off: ReadonlySet<Day>;
  /** Instants at which a clinician signed a dose; what acted by itself is not among them. */
  readonly signedAt: readonly number[];
  /** Verdict on what was measured from a day on. */
  readonly outcomeSince: (day: Day) => readonly Verdict[];
}

export interface Period {
  readonly since: Day;
  /** Not over yet, so that it counts for nothing. */
  readonly today: Day;
  readonly from: number;
  readonly dayOf: (instant: number) => Day;
}

const hour = 3_600_000;
/** A dose is compared with the first once four weeks lie between. */
const settledDays = 28;
/** What was measured shortly before the first dose is where the person began. */
const measuredBefore = 28;

const signsOf = ({ signs, contacts }: PersonOnRecord['danger'], { from }: Period) =>
  signs
    .filter(({ reportedAt }) => reportedAt >= from)
    .map(({ id, urgency, reportedAt }) => {
      const reached = contacts
        .filter((one) => one.reached !== 'nobody' && one.signIds.includes(id) && one.at >= reportedAt)
        .map(({ at }) => at);
      return { urgency, hours: reached.length === 0 ? null : (Math.min(...reached) - reportedAt) / hour };
    });

interface InForce {
  readonly from: Day;
  readonly until: Day | null;
}

const inForceOn = (versions: readonly InForce[], day: Day): boolean =>
  versions.some(({ from, until }) => from <= day && (until === null || day < until));

const datesOf = ({ signedAt, endedAt }: PrescriptionVersion, { dayOf }: Period): InForce => ({
  from: dayOf(signedAt),
  until: endedAt === null ? null : dayOf(endedAt),
});

/** Days of the period that are over, oldest first. */
const daysOf = ({ since, today }: Period): readonly Day[] =>
  Array.from({ length: Math.max(0, daysBetween(since, today)) }, (_, place) => addDays(since, place));

/** An entry whose time nobody has confirmed counts as missing, as it does to the rules. */
const answeredOn = ({ mornings }: PatientRecord): ReadonlySet<Day> =>
  new Set(
    mornings
      .filter(({ clockDoubtful, joints }) => !clockDoubtful && joints.some(({ pain }) => pain !== null))
      .map(({ day }) => day),
  );

/** A session made up later in the same week counts; one more than planned makes up for no other week. */
const sessionsOf = ({ planned, sessions }: PatientRecord, days: readonly Day[]) => {
  const [plannedOn, doneOn] = [planned, sessions].map((rows) => new Set(rows.map(({ day }) => day)));
  const weeks = Array.from({ length: Math.ceil(days.length / 7) }, (_, week) =>
    days.slice(week * 7, week * 7 + 7),
  );
  const counts = weeks.map((week) => {
    const due = week.filter((day) => plannedOn!.has(day)).length;
    return { due, done: Math.min(due, week.filter((day) => doneOn!.has(day)).length) };
  });
  const sum = (of: 'due' | 'done') => counts.reduce((all, one) => all + one[of], 0);
  return sum('due') === 0 ? null : { planned: sum('due'), done: sum('done') };
};

const newestShares = (versions: readonly PrescriptionVersion[], period: Period): readonly number[] => {
  const first = new Map<string, number>();
  const newest = new Map<string, number | null>();
  for (const { itemId, signedAt, share } of withShareOfFirst(versions)) {
    if (!first.has(itemId)) first.set(itemId, signedAt);
    newest.set(itemId, share);
  }
  return [...newest].flatMap(([itemId, share]) =>
    share !== null && daysBetween(period.dayOf(first.get(itemId)!), period.today) >= settledDays
      ? [share]
      : [],
  );
};

/** Of several measures a worse one speaks before a better one, and either before none. */
const verdictOf = (all: readonly Verdict[]): Verdict =>
  (['worse', 'better', 'within-error'] as const).find((one) => all.includes(one)) ?? 'not-judged';

const methodsOf = ({ record, outcomeSince }: PersonOnRecord, period: Period): readonly LearnedOfMethod[] =>
  methods.flatMap((method) => {
    const versions = record.prescriptions.filter(({ dose }) => dose.method === method);
    const isInPeriod = versions.some(({ endedAt }) => endedAt === null || endedAt >= period.from);
    if (!isInPeriod) return [];
    const began = period.dayOf(Math.min(...versions.map(({ signedAt }) => signedAt)));
    return [
      {
        method,
        shares: newestShares(versions, period),
        outcome: verdictOf(outcomeSince(addDays(began, -measuredBefore))),
      },
    ];
  });

export const learnedOf = (person: PersonOnRecord, period: Period): LearnedOfPerson => {
  const { record, danger, off, signedAt } = person;
  const versions = record.prescriptions.map((version) => datesOf(version, period));
  const days = daysOf(period);
  const begun = versions.map(({ from }) => from).sort()[0];
  const underDose = days.filter((day) => inForceOn(versions, day) && !off.has(day));
  const isFollowed = record.followedJoints.length > 0;
  const asked = begun === undefined || !isFollowed ? [] : days.filter((day) => day > begun && !off.has(day));
  const answered = answeredOn(record);
  return {
    signs: signsOf(danger, period),
    mornings: { asked: asked.length, answered: asked.filter((day) => answered.has(day)).length },
    sessions: sessionsOf(record, days),
    weeks: underDose.length / 7,
    signatures: signedAt.filter((at) => at >= period.from).length,
    contacts: danger.contacts.filter(({ at }) => at >= period.from).length,
    methods: methodsOf(person, period),
  };
};
