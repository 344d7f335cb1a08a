/** Every calculation of the product, by area, searched by its own name and by what it answers. */
import type { Area } from '#core/calculations/calculation.ts';
import type { Mark } from '#core/sources/citation.ts';
import { say } from '#messages/en/staff/calculations.ts';
import { plainCalculationNames } from '#messages/search/plain-calculation-names.ts';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { CalculationRow } from '../answers.ts';
import { SearchedList } from '../search/searched-list.tsx';

const areaTitles: Readonly<Record<Area, string>> = {
  strength: say('strength-and-low-load'),
  variation: 'Variations',
  occlusion: 'Occlusion',
  screening: 'Screening',
  nutrition: 'Nutrition',
  monitoring: 'Monitoring',
  outcomes: 'Outcomes',
  series: 'Trends',
  engine: 'Decisions',
};

const markWords: Readonly<Record<Mark, string>> = {
  seen: say('read-at-the-source'),
  'second-hand': 'second-hand',
  memory: say('from-memory'),
  computed: say('computed-here'),
  design: say('set-by-this-project'),
  'common-practice': say('common-practice'),
};

type Row = Pick<CalculationRow, 'id' | 'title' | 'area' | 'citations'>;

/** "read at the source; from memory": every way the sources of a row were seen. */
const marksInWords = (row: Pick<Row, 'citations'>): string =>
  [...new Set(row.citations.map((citation) => markWords[citation.mark]))].join('; ');

export const plainNameOf = (id: string): string => plainCalculationNames[id] ?? '';

const shownOf = (row: Row) => (
  <>
    <a href={`/calculations/${row.id}`}>{row.title}</a>
    <br />
    {plainNameOf(row.id)}. <span className="soft small">{marksInWords(row)}</span>
  </>
);

/** Found by either name, and by the id a colleague may have from the batch command. */
export const calculationSections = (rows: readonly Row[]) =>
  [...new Set(rows.map((row) => row.area))].map((area) => ({
    key: area,
    heading: areaTitles[area],
    items: rows
      .filter((row) => row.area === area)
      .map((row) => ({
        key: row.id,
        text: `${row.title} ${plainNameOf(row.id)} ${row.id}`,
        shown: shownOf(row),
      })),
  }));

interface CalculationsScreenProps {
  readonly rows: readonly CalculationRow[];
  /** What is searched for, as the address names it. */
  readonly words: string;
}

export const CalculationsScreen = ({ rows, words }: CalculationsScreenProps) => (
  <div className="stack">
    <PageHeading>Calculations</PageHeading>
    <p className="lead">{say('count', { count: rows.length })}</p>
    <p>
      <a href="/rules">{say('rules')}</a>
    </p>
    <SearchedList
      action="/calculations"
      label={say('search')}
      hint={say('search.hint')}
      start={words}
      sections={calculationSections(rows)}
      className="areas"
    />
  </div>
);
