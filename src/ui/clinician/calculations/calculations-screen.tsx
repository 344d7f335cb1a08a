/** Every calculation of the product, by area, with how its sources were seen. */
import type { Area } from '#core/calculations/calculation.ts';
import type { Mark } from '#core/sources/citation.ts';
import { say } from '#messages/en/staff/calculations.ts';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { CalculationRow } from '../answers.ts';

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

/** "read at the source; from memory": every way the sources of a row were seen. */
const marksInWords = (row: Pick<CalculationRow, 'citations'>): string =>
  [...new Set(row.citations.map((citation) => markWords[citation.mark]))].join('; ');

export const CalculationsScreen = ({ rows }: { readonly rows: readonly CalculationRow[] }) => {
  const areas = [...new Set(rows.map((row) => row.area))];
  return (
    <div className="stack-wide">
      <PageHeading>Calculations</PageHeading>
      <p className="lead">{say('count', { count: rows.length })}</p>
      <p>
        <a href="/rules">{say('rules')}</a>
      </p>
      <div className="areas">
        {areas.map((area) => (
          <section key={area} className="stack-close">
            <h2>{areaTitles[area]}</h2>
            <ul className="plain-list">
              {rows
                .filter((row) => row.area === area)
                .map((row) => (
                  <li key={row.id}>
                    <a href={`/calculations/${row.id}`}>{row.title}</a>{' '}
                    <span className="soft">{marksInWords(row)}</span>
                  </li>
                ))}
            </ul>
          </section>
        ))}
      </div>
    </div>
  );
};
