/** What each kind of mark in the picture stands for; what does not occur is left out. */
import { decisions } from '#core/decision/answers.ts';
import type { PainMark } from '#core/review/answer-marks.ts';
import type { ReviewChart } from '#core/review/review-chart.ts';
import { say } from '#messages/en/staff/review/chart.ts';
import { decisionStatus } from '#ui/clinician/words.ts';
import { Mark } from '#ui/design-system/mark.tsx';

interface KeyEntry {
  readonly mark: string;
  readonly words: string;
  readonly occurs: boolean;
}

const entriesOf = ({ loads, pains, steps, others }: ReviewChart): readonly KeyEntry[] => {
  const some = (of: PainMark['of'], isOver: boolean) =>
    pains.some((mark) => mark.of === of && mark.value !== null && (mark.over !== undefined) === isOver);
  return [
    { mark: 'full', words: 'session', occurs: loads.some(({ kind }) => kind === 'full') },
    { mark: 'easier', words: say('key.easier'), occurs: loads.some(({ kind }) => kind === 'bad-day') },
    { mark: 'signed', words: say('key.signed'), occurs: steps.some(({ isSigned }) => isSigned) },
    { mark: 'within', words: say('key.within'), occurs: some('morning', false) },
    { mark: 'over', words: say('key.over'), occurs: some('morning', true) },
    {
      mark: 'session',
      words: say('key.highest'),
      occurs: some('session', false) || some('session', true),
    },
    {
      mark: 'amended',
      words: say('key.corrected'),
      occurs: [...loads, ...pains].some(({ amended }) => amended),
    },
    ...(['more-cautious', 'bolder'] as const).map((way) => ({
      mark: `other-${way}`,
      words: say(`key.other.${way}`),
      occurs: others.some((mark) => mark.way === way),
    })),
  ];
};

export const ChartLegend = ({ chart }: { readonly chart: ReviewChart }) => (
  <p className="chart-key">
    {entriesOf(chart)
      .filter(({ occurs }) => occurs)
      .map(({ mark, words }) => (
        <span key={mark}>
          <span className={`key-mark key-${mark}`} aria-hidden="true" /> {words}
        </span>
      ))}
    {chart.pains.some(({ value }) => value === null) ? (
      <span>
        <span aria-hidden="true">×</span> {say('key.missing')}
      </span>
    ) : null}
    {chart.loads.some(({ value }) => value === null) ? (
      <span>
        <span aria-hidden="true">?</span> {say('key.no-load')}
      </span>
    ) : null}
    {decisions
      .filter((word) => chart.markers.some((marker) => marker.word === word))
      .map((word) => (
        <span key={word} className="key-decision">
          <Mark shape={decisionStatus[word].shape} /> {decisionStatus[word].word.toLowerCase()}
        </span>
      ))}
  </p>
);
