/** What the clinic learns from its own records: five figures of groups, each with what it is of. */
import type { Quartiles } from '#core/clinic/learning/quartiles.ts';
import { say } from '#messages/en/staff/administration/figures.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { ClinicFiguresAnswer } from '../answers.ts';
import { ByMethod } from './by-method.tsx';

interface Props {
  readonly found: ClinicFiguresAnswer;
}

const amount = (value: number | null): string =>
  value === null ? say('not-reached') : String(Math.round(value * 100) / 100);

const quartiles = ({ low, middle, high }: Quartiles): string =>
  say('quartiles', { low: amount(low), middle: amount(middle), high: amount(high) });

const percents = ({ low, middle, high }: Quartiles): string => {
  const percent = (share: number | null) =>
    share === null ? say('not-reached') : `${Math.round(share * 100)} %`;
  return say('quartiles', { low: percent(low), middle: percent(middle), high: percent(high) });
};

type Times = NonNullable<ClinicFiguresAnswer['contact']>;

const timesRow = (key: string, { people, signs, open, low, middle, high }: Times) => ({
  key,
  cells: [key, people, signs, open, ...[low, middle, high].map(amount)],
});

const columns = [
  { key: 'which', title: say('col.which') },
  ...(['people', 'signs', 'open', 'quarter', 'half', 'three'] as const).map((key) => ({
    key,
    title: say(`col.${key}`),
    isNumber: true,
  })),
];

const Contact = ({ found: { contact, contactBy } }: Props) => (
  <section className="stack-close">
    <h2>{say('contact')}</h2>
    <p className="soft">{say('contact.what')}</p>
    {contact === null ? (
      <p>{say('few')}</p>
    ) : contact.people === 0 ? (
      <p>{say('nobody')}</p>
    ) : (
      <DataTable
        caption={say('contact')}
        hidesCaption
        columns={columns}
        rows={[
          timesRow(say('contact.all'), contact),
          ...(contactBy ?? []).map((one) => timesRow(say(`contact.${one.urgency}`), one)),
        ]}
      />
    )}
    {contact !== null && contactBy === null ? <p className="soft">{say('contact.by-few')}</p> : null}
  </section>
);

interface PartProps {
  readonly heading: string;
  readonly what: string;
  /** Null where it is left out. */
  readonly line: string | null;
}

const Part = ({ heading, what, line }: PartProps) => (
  <section className="stack-close">
    <h2>{heading}</h2>
    <p className="soft">{what}</p>
    <p>{line ?? say('few')}</p>
  </section>
);

const orNobody = <T extends { readonly people: number }>(
  figures: T | null,
  line: (figures: T) => string,
): string | null => (figures === null ? null : figures.people === 0 ? say('nobody') : line(figures));

const morningsLine = (found: ClinicFiguresAnswer['mornings']) =>
  orNobody(found, ({ asked, answered, people, share }) =>
    say('mornings.line', { asked, answered, missing: asked - answered, people, quartiles: percents(share) }),
  );

const sessionsLine = (found: ClinicFiguresAnswer['sessions']) =>
  orNobody(found, ({ planned, done, people, share }) =>
    say('sessions.line', { planned, done, people, quartiles: percents(share) }),
  );

const workLine = (found: ClinicFiguresAnswer['work']) =>
  orNobody(found, ({ weeks, signatures, contacts, people, signaturesAWeek, contactsAWeek }) =>
    say('work.line', {
      ...{ signatures, contacts, people, weeks: Math.round(weeks) },
      a: quartiles(signaturesAWeek),
      b: quartiles(contactsAWeek),
    }),
  );

export const ClinicFigures = ({ found }: Props) => (
  <div className="stack-wide">
    <div className="stack">
      <PageHeading>{say('title')}</PageHeading>
      <p className="lead">{say('lead', { weeks: found.weeks, people: found.people })}</p>
      <p>{say('not-compared')}</p>
      <p className="soft small">{say('quartiles.what')}</p>
      <p className="screen-only">
        <a href="/administration/figures/file" download>
          {say('file')}
        </a>
      </p>
    </div>
    <Contact found={found} />
    <Part heading={say('mornings')} what={say('mornings.what')} line={morningsLine(found.mornings)} />
    <Part heading={say('sessions')} what={say('sessions.what')} line={sessionsLine(found.sessions)} />
    <Part heading={say('work')} what={say('work.what')} line={workLine(found.work)} />
    <ByMethod methods={found.methods} />
  </div>
);
