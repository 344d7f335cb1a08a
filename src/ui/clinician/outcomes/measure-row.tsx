/** One measure: what it is and how it stands, its picture, and what may be said of its change. */
import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import type { DoseDay } from '#core/review/dose-days.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import { say as saySummary } from '#messages/en/staff/record/summary.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { Shape } from '#ui/design-system/mark.tsx';
import { StatusTag, type StatusTone } from '#ui/design-system/status-tag.tsx';
import { capital } from '../capital.ts';
import { withDistance } from '../measurements/distance-words.ts';
import { Sources } from '../review/findings-view.tsx';
import { LinePicture } from './line-picture.tsx';
import type { Span } from './line-scale.ts';

interface RowProps {
  readonly line: OutcomeLine;
  readonly span: Span;
  readonly doses: readonly DoseDay[];
  readonly day: Day;
  readonly patientId: string;
}

const looks: Readonly<Record<OutcomeLine['change']['verdict'], readonly [Shape, StatusTone]>> = {
  better: ['forward', 'accent'],
  worse: ['back', 'care'],
  'within-error': ['level', 'plain'],
  'not-judged': ['unknown', 'plain'],
};

const Verdict = ({ line: { readings, change }, day }: Pick<RowProps, 'line' | 'day'>) => {
  const isOnce = readings.length === 1;
  const [shape, tone] = isOnce ? (['note', 'plain'] as const) : looks[change.verdict];
  return (
    <StatusTag shape={shape} tone={tone}>
      {capital(
        isOnce
          ? saySummary('verdict.once', { date: dayInWords(readings[0]!.day, day) })
          : saySummary(`verdict.${change.verdict}`),
      )}
    </StatusTag>
  );
};

/** Letters of a reading that is more than one figure with its unit. */
const longReading = 24;

const What = ({ line, day }: Pick<RowProps, 'line' | 'day'>) => {
  const [first, newest] = [line.readings[0]!, line.readings.at(-1)!];
  const { better } = line.drawn;
  const isLong = newest.text.length > longReading;
  return (
    <div className="measure-what">
      <h3>{line.title}</h3>
      {better ? <p className="soft">{say(`better.${better}`)}</p> : null}
      <p className={isLong ? 'measure-now-long' : 'measure-now'}>{withDistance(newest, newest.text)}</p>
      <p className="soft">
        {dayInWords(newest.day, day)}
        {line.readings.length > 1 && !isLong
          ? `; ${say('first', { value: withDistance(first, first.text), date: dayInWords(first.day, day) })}`
          : ''}
      </p>
    </div>
  );
};

const Said = ({ line, day, patientId }: Pick<RowProps, 'line' | 'day' | 'patientId'>) => {
  const { norm, change } = line;
  const workings = [...norm.workings, ...change.workings];
  return (
    <div className="stack-close">
      <p className="measure-verdict">
        <Verdict line={line} day={day} />
        <a className="screen-only" href={`/patients/${patientId}/measurements?kind=${line.kind}`}>
          {say('again')}
          <span className="visually-hidden">: {line.title}</span>
        </a>
      </p>
      {line.readings.length > 1 ? <p>{change.sentence}</p> : null}
      <p className="soft">{norm.sentence}</p>
      {workings.length > 0 ? (
        <Disclosure summary={say('calculation')} isScreenOnly>
          {change.parts ? (
            <ul>
              {change.parts.map((part) => (
                <li key={part}>{part}</li>
              ))}
            </ul>
          ) : null}
          <Sources workings={workings} />
        </Disclosure>
      ) : null}
    </div>
  );
};

export const MeasureRow = ({ line, span, doses, day, patientId }: RowProps) => (
  <article className="measure keep-together" data-outcome={line.key}>
    <What line={line} day={day} />
    <div>
      <LinePicture title={line.title} drawn={line.drawn} span={span} doses={doses} />
    </div>
    <Said line={line} day={day} patientId={patientId} />
  </article>
);
