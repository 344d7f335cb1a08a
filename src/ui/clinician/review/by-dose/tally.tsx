/** How the joint answered each dose: strokes at usual, crosses over it, on the scale of the picture beside it. */
import type { LoadRange } from '#core/review/chart-steps.ts';
import { corridorInWords, countInWords } from '#core/review/dose/dose-words.ts';
import { leftOutInWords } from '#core/review/dose/left-out-words.ts';
import { shareInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review/chart.ts';
import { headHeight, loadFoot } from '../chart/chart-scale.ts';
import { cross, joined } from '../chart/mark-paths.ts';
import { corridorLines, type TallyRow, tallyRows } from './tally-rows.ts';
import { type Answers, TallyTable } from './tally-table.tsx';

const width = 192;
const marksFrom = 40;
const marksTo = 148;
const height = loadFoot + 44 - headHeight;

const rowMarks = ({ atUsual, overUsual, y }: TallyRow) => {
  const pitch = Math.min(5.5, (marksTo - marksFrom) / (atUsual + overUsual * 1.6));
  const places = Array.from({ length: atUsual }, (_none, place) => marksFrom + place * pitch);
  const crossesFrom = marksFrom + atUsual * pitch + 2;
  const crosses = Array.from({ length: overUsual }, (_none, place) => crossesFrom + place * pitch * 1.6);
  return {
    strokes: joined(places, (x) => `M${x} ${y - 4.5}v9`),
    crosses: joined(crosses, (x) => cross(x, y, Math.min(3, pitch * 0.6))),
  };
};

const Lines = ({
  solid,
  dashed,
  hasBand,
}: ReturnType<typeof corridorLines> & { readonly hasBand: boolean }) => (
  <>
    {hasBand && solid !== null && dashed !== null ? (
      <>
        <rect className="chart-corridor" x={0} width={width} y={dashed} height={solid - dashed} />
        <text x={marksFrom} y={(solid + dashed) / 2 + 4}>
          {say('by-dose.corridor')}
        </text>
      </>
    ) : null}
    {solid === null ? null : <path className="tally-highest" d={`M0 ${solid}H${width}`} />}
    {dashed === null ? null : <path className="tally-lowest" d={`M0 ${dashed}H${width}`} />}
  </>
);

const TallyPicture = ({ answers, range }: { readonly answers: Answers; readonly range: LoadRange }) => {
  const { rows, lower } = tallyRows(answers.doses, answers.corridor, range);
  const marks = rows.map(rowMarks);
  const rowWords = (row: TallyRow) =>
    say('by-dose.row', { dose: shareInWords(row.share), count: countInWords(row) });
  return (
    <>
      <svg
        className="tally"
        viewBox={`0 ${headHeight} ${width} ${height}`}
        width={width}
        height={height}
        role="img"
        aria-label={rows.map(rowWords).join('; ')}
      >
        <Lines {...corridorLines(rows, answers.corridor)} hasBand={answers.corridor.noneBecause === null} />
        {rows.map((row) => (
          <g key={row.share}>
            <text className="tally-dose" x={0} y={row.y + 4}>
              {shareInWords(row.share)}
            </text>
            <text className="chart-last" x={width} y={row.y + 4}>
              {countInWords(row)}
            </text>
          </g>
        ))}
        <path className="tally-strokes" d={joined(marks, ({ strokes }) => strokes)} />
        <path className="tally-crosses" d={joined(marks, ({ crosses }) => crosses)} />
      </svg>
      {lower > 0 ? <p className="soft">{say('by-dose.lower', { count: lower })}</p> : null}
    </>
  );
};

/** Beside the picture where there is room, and as a table under it where there is not. */
export const Tally = ({ answers, range }: { readonly answers: Answers; readonly range: LoadRange }) => (
  <section className="by-dose">
    <h3>{say('by-dose')}</h3>
    {answers.doses.length === 0 ? null : (
      <>
        <div className="by-dose-picture">
          <TallyPicture answers={answers} range={range} />
        </div>
        <div className="by-dose-table">
          <TallyTable caption={say('by-dose')} answers={answers} />
        </div>
      </>
    )}
    {[corridorInWords(answers.corridor), ...leftOutInWords(answers.leftOut)].map((sentence) => (
      <p key={sentence}>{sentence}</p>
    ))}
  </section>
);
