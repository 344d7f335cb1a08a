/** Dose reached and outcomes, a row for each method, each figure with its own denominator. */
import { say } from '#messages/en/staff/administration/figures.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import type { ClinicFiguresAnswer } from '../answers.ts';

type Methods = ClinicFiguresAnswer['methods'];
type Figures = NonNullable<Methods[number]['figures']>;
type Share = NonNullable<Figures['dose']>['above'];

const percent = (share: number): string => String(Math.round(share * 100));

const shareInWords = ({ count, of, interval }: Share): string =>
  interval
    ? say('share', { count, of, low: percent(interval.low), high: percent(interval.high) })
    : say('none');

const doseCells = (dose: Figures['dose']): readonly string[] => {
  if (dose === null) return [say('few'), say('few')];
  if (dose.people === 0) return [say('none'), say('none')];
  const { low, middle, high } = dose.share;
  const [a, b, c] = [low, middle, high].map((one) => one!.toFixed(2)) as [string, string, string];
  return [say('quartiles', { low: a, middle: b, high: c }), shareInWords(dose.above)];
};

const verdicts = ['better', 'worse', 'within-error'] as const;

const outcomeCells = (outcomes: Figures['outcomes']): readonly string[] =>
  outcomes === null
    ? verdicts.map(() => say('few'))
    : verdicts.map((verdict) => shareInWords(outcomes[verdict]));

const cellsOf = ({ method, figures }: Methods[number]): readonly string[] => {
  const name = say(`method.${method}`);
  if (figures === null) return [name, ...Array.from({ length: 6 }, () => say('few'))];
  return [name, String(figures.people), ...doseCells(figures.dose), ...outcomeCells(figures.outcomes)];
};

export const ByMethod = ({ methods }: { readonly methods: Methods }) => (
  <section className="stack-close">
    <h2>{say('methods')}</h2>
    <p className="soft">{say('methods.what')}</p>
    <DataTable
      caption={say('methods')}
      hidesCaption
      columns={[
        { key: 'method', title: say('col.method') },
        { key: 'people', title: say('col.people'), isNumber: true },
        { key: 'dose', title: say('col.dose') },
        { key: 'above', title: say('col.above') },
        ...verdicts.map((key) => ({ key, title: say(`col.${key}`) })),
      ]}
      rows={methods.map((row) => ({ key: row.method, cells: cellsOf(row) }))}
    />
  </section>
);
