/** What each kind of mark in the picture stands for. */
import { decisions } from '#core/decision/answers.ts';
import type { ReviewChart } from '#core/review/review-chart.ts';
import { say } from '#messages/en/staff/review.ts';
import { decisionStatus } from '#ui/clinician/words.ts';
import { Mark } from '#ui/design-system/mark.tsx';

export const ChartLegend = ({ chart }: { readonly chart: ReviewChart }) => (
  <p className="chart-key">
    <span>
      <span className="key-mark key-load" aria-hidden="true" /> {chart.title.toLowerCase()}
      {chart.unit ? `, ${chart.unit}` : ''}
    </span>
    <span>
      <span className="key-mark key-full" aria-hidden="true" /> session
    </span>
    <span>
      <span className="key-mark key-easier" aria-hidden="true" /> {say('key.easier')}
    </span>
    <span>
      <span className="key-mark key-morning" aria-hidden="true" /> {say('key.morning')}
    </span>
    <span>
      <span className="key-mark key-session" aria-hidden="true" /> {say('key.highest')}
    </span>
    {chart.pains.some((mark) => mark.flare) ? (
      <span>
        <span className="key-mark key-flare" aria-hidden="true" /> {say('key.flare')}
      </span>
    ) : null}
    <span>
      <span aria-hidden="true">×</span> {say('key.missing')}
    </span>
    <span>
      <span aria-hidden="true">?</span> {say('key.no-load')}
    </span>
    {chart.loads.some((mark) => mark.amended) || chart.pains.some((mark) => mark.amended) ? (
      <span>
        <span className="key-mark key-amended" aria-hidden="true" /> {say('key.corrected')}
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
