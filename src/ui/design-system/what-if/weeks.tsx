/** The days that would have been others, a mark each, by week; the sentence above says the same in words. */
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review/what-if.ts';

export interface WhatIfWeek {
  readonly from: string;
  readonly moreCautious: number;
  readonly bolder: number;
}

/** More columns than these would be too narrow to read: then several weeks share one. */
const mostColumns = 13;

/** Weeks put together, each column as many as the others but for the last. */
const columnsOf = (weeks: readonly WhatIfWeek[]): { each: number; columns: readonly WhatIfWeek[] } => {
  const each = Math.ceil(weeks.length / mostColumns);
  const columns = Array.from({ length: Math.ceil(weeks.length / each) }, (_, place) => {
    const own = weeks.slice(place * each, (place + 1) * each);
    const sum = (way: 'bolder' | 'moreCautious') => own.reduce((all, week) => all + week[way], 0);
    return { from: own[0]!.from, bolder: sum('bolder'), moreCautious: sum('moreCautious') };
  });
  return { each, columns };
};

const column = 40;
const step = 10;
const mark = 7;
/** Marks that find room above one another; what is left is a number. */
const most = 8;
const foot = most * step + 4;

const Week = ({ week, place }: { readonly week: WhatIfWeek; readonly place: number }) => {
  const kinds = [
    ...Array.from({ length: week.moreCautious }, () => 'cautious'),
    ...Array.from({ length: week.bolder }, () => 'bolder'),
  ];
  const shown = kinds.length > most ? kinds.slice(-(most - 1)) : kinds;
  const left = place * column + column / 2;
  const top = (row: number) => foot - (row + 1) * step;
  return (
    <g>
      {shown.map((kind, row) => (
        <rect key={`${kind} ${top(row)}`} className={kind} x={left} y={top(row)} width={mark} height={mark} />
      ))}
      {shown.length < kinds.length ? (
        <text x={left - 4} y={top(most - 1) + mark}>
          +{kinds.length - shown.length}
        </text>
      ) : null}
    </g>
  );
};

export const Weeks = ({ weeks }: { readonly weeks: readonly WhatIfWeek[] }) => {
  const { each, columns } = columnsOf(weeks);
  const width = columns.length * column;
  return (
    <figure className="what-if-weeks">
      <svg viewBox={`0 0 ${width} ${foot + 20}`} aria-hidden="true">
        {columns.map((week, place) => (
          <Week key={week.from} week={week} place={place} />
        ))}
        <line x1={0} y1={foot} x2={width} y2={foot} />
        <text x={0} y={foot + 16}>
          {say('weeks.oldest', { date: dayInWords(weeks[0]?.from ?? '') })}
        </text>
        <text x={width} y={foot + 16} textAnchor="end">
          {say('weeks.newest', { weeks: each })}
        </text>
      </svg>
      <figcaption className="soft small">{say('weeks.key', { weeks: each })}</figcaption>
    </figure>
  );
};
