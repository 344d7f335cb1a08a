/** What other settings would have said, wherever it is asked: counts, a picture by week, and the days by name. */
import type { DaysByWord } from '#core/decision/what-if/what-if.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review/what-if.ts';
import { DataTable } from '../data-table.tsx';
import { Disclosure } from '../disclosure.tsx';
import { Weeks, type WhatIfWeek } from './weeks.tsx';

export interface WhatIfShown {
  readonly since: string;
  readonly looked: number;
  readonly differing: number;
  readonly bolder: number;
  readonly moreCautious: number;
  readonly bolderTo: DaysByWord;
  readonly moreCautiousTo: DaysByWord;
  readonly patients: number;
  readonly weeks: readonly WhatIfWeek[];
  /** People whose days are counted and not listed, since their records are kept to other care teams. */
  readonly closed?: number;
  readonly lines: readonly {
    readonly patientId: string;
    /** Empty where all are of one person. */
    readonly name: string;
    readonly joint: string;
    readonly day: string;
    readonly before: keyof DaysByWord;
    readonly after: keyof DaysByWord;
    readonly rules: readonly string[];
  }[];
}

const wordColumns = (['pause', 'ease-back', 'hold', 'progress'] as const).map((key) => ({
  key,
  title: say(key),
}));

const ByWord = ({ bolderTo, moreCautiousTo }: WhatIfShown) => (
  <DataTable
    caption={say('by-word')}
    columns={[{ key: 'way', title: say('way') }, ...wordColumns]}
    rows={(['more-cautious', 'bolder'] as const).map((way) => ({
      key: way,
      cells: [
        say(`way.${way}`),
        ...wordColumns.map(({ key }) => String((way === 'bolder' ? bolderTo : moreCautiousTo)[key])),
      ],
    }))}
  />
);

const Lines = ({ lines }: WhatIfShown) => {
  const isNamed = lines.some(({ name }) => name !== '');
  return (
    <Disclosure summary={say('differing')}>
      <DataTable
        caption={say('differing')}
        columns={[
          ...(isNamed ? [{ key: 'who', title: say('patient') }] : []),
          { key: 'joint', title: say('joint') },
          { key: 'day', title: say('day') },
          { key: 'before', title: say('was') },
          { key: 'after', title: say('would-be') },
          { key: 'rules', title: say('rules') },
        ]}
        rows={lines.map((line) => ({
          key: `${line.patientId} ${line.joint} ${line.day}`,
          cells: [
            ...(isNamed ? [line.name] : []),
            jointInWords(line.joint as never),
            dayInWords(line.day),
            say(line.before),
            line.after === line.before ? say('same-word', { word: say(line.after) }) : say(line.after),
            line.rules.length > 0 ? line.rules.join(', ') : say('same-rules'),
          ],
        }))}
      />
    </Disclosure>
  );
};

/** The warning stands with every figure: it is part of what the figures say. */
export const WhatIfView = ({ found }: { readonly found: WhatIfShown }) => {
  const { looked, differing, bolder, moreCautious, patients, since, lines, weeks, closed = 0 } = found;
  const other = differing - bolder - moreCautious;
  return (
    <div className="stack-close">
      <h3>{say('heading')}</h3>
      <p>
        {say('looked', { looked, date: dayInWords(since) })}{' '}
        <strong>
          {differing === 0
            ? say('none-differ')
            : say('differ', { differing, patients, bolder, cautious: moreCautious, other })}
        </strong>
      </p>
      {bolder + moreCautious > 0 ? (
        <>
          <ByWord {...found} />
          <Weeks weeks={weeks} />
        </>
      ) : null}
      <p>{say('warning')}</p>
      {closed > 0 ? <p>{say('closed', { count: closed })}</p> : null}
      {lines.length > 0 ? <Lines {...found} /> : null}
    </div>
  );
};
