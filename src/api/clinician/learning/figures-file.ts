/** The clinic’s figures as rows: one for each figure, with what it is of, its interval and the people behind it. */
import type { ClinicLearning, ContactTimes, MethodFigures } from '#core/clinic/learning/clinic-learning.ts';
import type { Quartiles } from '#core/clinic/learning/quartiles.ts';
import { say } from '#messages/en/staff/administration/figures.ts';
import { csvOf } from '../incidents/csv.ts';

interface Row {
  readonly figure: string;
  readonly group: string;
  readonly value: number | null;
  readonly of?: number;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  readonly people: number;
}

const columns = [
  say('csv.figure'),
  say('csv.group'),
  say('csv.value'),
  say('csv.of'),
  say('csv.low'),
  say('csv.high'),
  say('csv.people'),
];

/** Four digits, for programs; a quartile among what is still open has no value. */
const number = (value: number | null | undefined): string =>
  value === null || value === undefined ? '' : String(Math.round(value * 10_000) / 10_000);

const cellsOf = ({ figure, group, value, of, low, high, people }: Row): readonly string[] => [
  figure,
  group,
  number(value),
  number(of),
  number(low),
  number(high),
  String(people),
];

const leftOut = (figure: string, group: string): readonly string[] => [
  figure,
  group,
  say('csv.left-out'),
  ...['', '', '', ''],
];

const quartileRows = (figure: string, group: string, people: number, found: Quartiles): readonly Row[] =>
  (
    [
      ['csv.quarter', found.low],
      ['csv.half', found.middle],
      ['csv.three', found.high],
    ] as const
  ).map(([name, value]) => ({ figure: `${figure}, ${say(name)}`, group, value, people }));

type Shown<T> = (T & { readonly people: number }) | null;

const or = <T>(
  figure: string,
  group: string,
  found: Shown<T>,
  rows: (found: NonNullable<Shown<T>>) => readonly Row[],
) => (found === null ? [leftOut(figure, group)] : rows(found).map(cellsOf));

const contactRows = (
  group: string,
  { people, signs, open, ...times }: ContactTimes & { readonly people: number },
) => [
  { figure: say('col.open'), group, value: open, of: signs, people },
  ...quartileRows(`${say('contact')}, ${say('csv.hours')}`, group, people, times),
];

const shareRow = (
  figure: string,
  group: string,
  people: number,
  found: NonNullable<MethodFigures['dose']>['above'],
): Row => ({
  figure,
  group,
  value: found.count,
  of: found.of,
  low: found.interval?.low,
  high: found.interval?.high,
  people,
});

const methodRows = ({ method, figures }: ClinicLearning['methods'][number]) => {
  const group = say(`method.${method}`);
  if (figures === null) return [leftOut(say('methods'), group)];
  return [
    ...or(say('col.dose'), group, figures.dose, (dose) => [
      ...quartileRows(say('col.dose'), group, dose.people, dose.share),
      shareRow(say('col.above'), group, dose.people, dose.above),
    ]),
    ...or(say('col.judged'), group, figures.outcomes, ({ people, ...outcomes }) =>
      (['better', 'worse', 'within-error'] as const).map((verdict) =>
        shareRow(say(`col.${verdict}`), group, people, outcomes[verdict]),
      ),
    ),
  ];
};

export const figuresFile = (found: ClinicLearning): string => {
  const { contact, contactBy, mornings, sessions, work } = found;
  const all = say('contact.all');
  return csvOf([
    columns,
    ...or(say('contact'), all, contact, (one) => contactRows(all, one)),
    ...(contactBy ?? []).flatMap((one) => contactRows(say(`contact.${one.urgency}`), one).map(cellsOf)),
    ...or(say('mornings'), '', mornings, ({ people, asked, answered, share }) => [
      { figure: `${say('mornings')}, ${say('csv.answered')}`, group: '', value: answered, of: asked, people },
      ...quartileRows(`${say('mornings')}, ${say('csv.share-of-people')}`, '', people, share),
    ]),
    ...or(say('sessions'), '', sessions, ({ people, planned, done, share }) => [
      { figure: `${say('sessions')}, ${say('csv.done')}`, group: '', value: done, of: planned, people },
      ...quartileRows(`${say('sessions')}, ${say('csv.share-of-people')}`, '', people, share),
    ]),
    ...or(
      say('work'),
      '',
      work,
      ({ people, weeks, signatures, contacts, signaturesAWeek, contactsAWeek }) => [
        { figure: say('csv.weeks'), group: '', value: weeks, people },
        { figure: say('csv.signatures'), group: '', value: signatures, people },
        ...quartileRows(`${say('csv.signatures')}, ${say('csv.a-week')}`, '', people, signaturesAWeek),
        { figure: say('csv.contacts'), group: '', value: contacts, people },
        ...quartileRows(`${say('csv.contacts')}, ${say('csv.a-week')}`, '', people, contactsAWeek),
      ],
    ),
    ...found.methods.flatMap(methodRows),
  ]);
};
