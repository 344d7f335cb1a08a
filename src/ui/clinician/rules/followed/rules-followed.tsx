/** For each rule in this clinic: fired, decided, overruled, and what followed, with intervals and without small groups. */
import { followings } from '#core/decision/followed/what-followed.ts';
import { say } from '#messages/en/staff/review/followed.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { RulesFollowed } from '../../answers.ts';

type Row = RulesFollowed['rows'][number];
type Figures = NonNullable<Row['figures']>;

const percent = (share: number): string => String(Math.round(share * 100));

const shareInWords = ({ count, interval }: Figures['followed']['flare']): string =>
  interval
    ? say('share', { count, low: percent(interval.low), high: percent(interval.high) })
    : String(count);

/** Of those that were answered: one nobody answered was neither overruled nor agreed to. */
const overruledInWords = ({ answered, overruled }: Figures): string => {
  const { bolder, moreCautious, same } = overruled;
  const count = bolder + moreCautious + same;
  if (answered === 0) return say('overruled.unanswered');
  const of = say('overruled.of', { count, answered });
  return count === 0 ? of : `${of}: ${say('overruled.ways', { bolder, cautious: moreCautious, same })}`;
};

const columns = [
  { key: 'rule', title: say('rule') },
  { key: 'fired', title: say('fired') },
  { key: 'decided', title: say('decided') },
  { key: 'overruled', title: say('overruled') },
  { key: 'flare', title: say('flare') },
  { key: 'over-limit', title: say('over-limit') },
  { key: 'nothing', title: say('nothing') },
  { key: 'no-answer', title: say('no-answer') },
  { key: 'too-early', title: say('too-early') },
];

interface Shown extends Row {
  readonly figures: Figures;
}

const cellsOf = ({ rule, title, figures }: Shown): readonly string[] => [
  `${rule} ${title}`,
  String(figures.fired),
  String(figures.decided),
  overruledInWords(figures),
  ...followings.map((key) => shareInWords(figures.followed[key])),
  String(figures.tooEarly),
];

const hasFigures = (row: Row): row is Shown => row.figures !== null && row.figures.fired > 0;

const listed = (rows: readonly Row[]): string => rows.map(({ rule, title }) => `${rule} ${title}`).join('; ');

export const RulesFollowedView = ({ answer }: { readonly answer: RulesFollowed }) => {
  const { rows, weeks, people } = answer;
  const shown = rows.filter(hasFigures);
  const few = rows.filter(({ figures }) => figures === null);
  const never = rows.filter(({ figures }) => figures?.fired === 0);
  return (
    <div className="stack">
      <PageHeading>{say('title')}</PageHeading>
      <p>
        <a href="/rules">{say('back')}</a>
      </p>
      <p>
        {say('lead', { weeks })} {say('counts')}
      </p>
      <p>{say('followed')}</p>
      {shown.length > 0 ? (
        <DataTable
          caption={say('caption')}
          columns={columns}
          rows={shown.map((row) => ({ key: row.rule, cells: cellsOf(row) }))}
        />
      ) : (
        <p>{say('nobody', { people })}</p>
      )}
      <p className="soft small">{say('intervals')}</p>
      {few.length > 0 ? <p>{say('few', { people, rules: listed(few) })}</p> : null}
      {never.length > 0 ? <p className="soft small">{say('never', { rules: listed(never) })}</p> : null}
    </div>
  );
};
