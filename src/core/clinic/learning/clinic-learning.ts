/** What a clinic learns from its own records: figures of groups, none of a person and none of who treats. */
import { fewestPeople } from '../../decision/followed/rule-board.ts';
import { type Method, methods } from '../../prescribing/methods.ts';
import { type ShareInterval, wilsonInterval } from '../../statistics/wilson.ts';
import type { LearnedOfPerson, Verdict } from './learned-of-person.ts';
import { type Quartiles, quartilesOf } from './quartiles.ts';

/** Null where fewer people than five are behind it; nobody behind it is no secret. */
type Grouped<T> = (T & { readonly people: number }) | null;

interface Share {
  readonly count: number;
  readonly of: number;
  readonly interval: ShareInterval | null;
}

export type ContactTimes = Quartiles & { readonly signs: number; readonly open: number };

interface DoseReached {
  /** Whose first dose is four weeks old or older; their people are counted beside. */
  readonly exercises: number;
  readonly share: Quartiles;
  /** People with one of them above its first dose. */
  readonly above: Share;
}

/** People measured twice with an error of measuring on file, by the more cautious of their verdicts. */
type Outcomes = Readonly<Record<Exclude<Verdict, 'not-judged'>, Share>>;

export interface MethodFigures {
  readonly dose: Grouped<DoseReached>;
  readonly outcomes: Grouped<Outcomes>;
}

type Urgency = LearnedOfPerson['signs'][number]['urgency'];

export interface ClinicLearning {
  readonly people: number;
  readonly contact: Grouped<ContactTimes>;
  /** Null where one kind would stand for fewer than five people: it could be told from the rest. */
  readonly contactBy:
    | readonly (ContactTimes & { readonly urgency: Urgency; readonly people: number })[]
    | null;
  readonly mornings: Grouped<{
    readonly asked: number;
    readonly answered: number;
    readonly share: Quartiles;
  }>;
  readonly sessions: Grouped<{ readonly planned: number; readonly done: number; readonly share: Quartiles }>;
  readonly work: Grouped<{
    readonly weeks: number;
    readonly signatures: number;
    readonly contacts: number;
    readonly signaturesAWeek: Quartiles;
    readonly contactsAWeek: Quartiles;
  }>;
  /** `figures` null where fewer people than five have had a dose of the method. */
  readonly methods: readonly { readonly method: Method; readonly figures: Grouped<MethodFigures> }[];
}

const grouped = <T>(people: number, figures: () => T): Grouped<T> =>
  people > 0 && people < fewestPeople ? null : { ...figures(), people };

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);

const share = (count: number, of: number): Share => ({ count, of, interval: wilsonInterval(count, of) });

const timesOf = (signs: LearnedOfPerson['signs']): ContactTimes => {
  const hours = signs.flatMap((one) => one.hours ?? []);
  const open = signs.length - hours.length;
  return { signs: signs.length, open, ...quartilesOf(hours, open) };
};

const contactsOf = (all: readonly LearnedOfPerson[]): Pick<ClinicLearning, 'contact' | 'contactBy'> => {
  const told = all.filter(({ signs }) => signs.length > 0);
  const by = (['emergency', 'same-day', 'routine'] as const).map((urgency) => {
    const people = told.filter(({ signs }) => signs.some((one) => one.urgency === urgency)).length;
    const signs = told.flatMap((one) => one.signs.filter((sign) => sign.urgency === urgency));
    return { urgency, people, ...timesOf(signs) };
  });
  const isTooFew = by.some(({ people }) => people > 0 && people < fewestPeople);
  return {
    contact: grouped(told.length, () => timesOf(told.flatMap(({ signs }) => signs))),
    contactBy: isTooFew ? null : by.filter(({ people }) => people > 0),
  };
};

const morningsOf = (all: readonly LearnedOfPerson[]): ClinicLearning['mornings'] => {
  const asked = all.map(({ mornings }) => mornings).filter((one) => one.asked > 0);
  return grouped(asked.length, () => ({
    asked: sum(asked.map((one) => one.asked)),
    answered: sum(asked.map((one) => one.answered)),
    share: quartilesOf(asked.map((one) => one.answered / one.asked)),
  }));
};

const sessionsOf = (all: readonly LearnedOfPerson[]): ClinicLearning['sessions'] => {
  const planned = all.flatMap(({ sessions }) => sessions ?? []);
  return grouped(planned.length, () => ({
    planned: sum(planned.map((one) => one.planned)),
    done: sum(planned.map((one) => one.done)),
    share: quartilesOf(planned.map((one) => one.done / one.planned)),
  }));
};

const workOf = (all: readonly LearnedOfPerson[]): ClinicLearning['work'] => {
  // Less than a week under a dose gives no rate of a week.
  const under = all.filter(({ weeks }) => weeks >= 1);
  return grouped(under.length, () => ({
    weeks: sum(under.map(({ weeks }) => weeks)),
    signatures: sum(under.map(({ signatures }) => signatures)),
    contacts: sum(under.map(({ contacts }) => contacts)),
    signaturesAWeek: quartilesOf(under.map(({ signatures, weeks }) => signatures / weeks)),
    contactsAWeek: quartilesOf(under.map(({ contacts, weeks }) => contacts / weeks)),
  }));
};

const methodOf = (all: readonly LearnedOfPerson[], method: Method): ClinicLearning['methods'][number] => {
  const own = all.flatMap((one) => one.methods.filter((of) => of.method === method));
  const settled = own.filter(({ shares }) => shares.length > 0);
  const judged = own.map(({ outcome }) => outcome).filter((one) => one !== 'not-judged');
  const verdict = (of: Verdict): Share => share(judged.filter((one) => one === of).length, judged.length);
  const shares = settled.flatMap((one) => one.shares);
  return {
    method,
    figures: grouped(own.length, () => ({
      dose: grouped(settled.length, () => ({
        exercises: shares.length,
        share: quartilesOf(shares),
        above: share(settled.filter((one) => one.shares.some((dose) => dose > 1)).length, settled.length),
      })),
      outcomes: grouped(judged.length, () => ({
        better: verdict('better'),
        worse: verdict('worse'),
        'within-error': verdict('within-error'),
      })),
    })),
  };
};

export const clinicLearning = (all: readonly LearnedOfPerson[]): ClinicLearning => ({
  people: all.length,
  ...contactsOf(all),
  mornings: morningsOf(all),
  sessions: sessionsOf(all),
  work: workOf(all),
  methods: methods.map((method) => methodOf(all, method)),
});
