/** The days that would have been others, a mark each, by week; the sentence above says the same in words. */
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review/what-if.ts';

export interface WhatIfWeek {
  readonly from: string;
  readonly moreCautious: number;
  readonly bolder: number;
}

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
  const width = weeks.length * column;
  return (
    <figure className="what-if-weeks">
      <svg viewBox={`0 0 ${width} ${foot + 20}`} aria-hidden="true">
        {weeks.map((week, place) => (
          <Week key={week.from} week={week} place={place} />
        ))}
        <line x1={0} y1={foot} x2={width} y2={foot} />
        <text x={0} y={foot + 16}>
          {say('weeks.oldest', { date: dayInWords(weeks[0]?.from ?? '') })}
        </text>
        <text x={width} y={foot + 16} textAnchor="end">
          {say('weeks.newest')}
        </text>
      </svg>
      <figcaption className="soft small">{say('weeks.key')}</figcaption>
    </figure>
  );
};
