/** Who needs a clinician, most pressing first. The count is of patients, not of matters. */
import { counted } from '#core/review/plain-words.ts';
import { dangers, matterKinds } from '#core/worklist/matter.ts';
import { PageHeading } from '#ui/shared/page-heading.tsx';
import { StatusTag } from '#ui/shared/status-tag.tsx';
import type { Matter, MatterKind, WorklistAnswer } from '../answers.ts';
import { fullName } from '../record/record-frame.tsx';
import { agoInWords, type ClinicClock } from '../when.ts';
import { matterStatusOf } from '../words.ts';
import { ArrowLines } from './arrow-lines.tsx';
import { MatterActions } from './matter-actions.tsx';

const checked =
  'Checked for each patient: warning signs, pauses, calls due today, doses eased back, entries that differ or come from a phone with a doubtful clock, prescriptions to sign, mornings without answers, routine reviews, and screenings, occlusion pressures and usual values out of date.';

export const countInWords = ({ listed, patients }: Pick<WorklistAnswer, 'listed' | 'patients'>): string => {
  if (patients === 0) return 'The clinic has no patients yet.';
  const rest = patients - listed;
  const need = `${listed} of ${counted(patients, 'patient')} ${listed === 1 ? 'needs' : 'need'} you.`;
  return rest === 0 ? need : `${need} Nothing was found for the other ${rest}.`;
};

export interface WorklistFilter {
  readonly kind: MatterKind | null;
  readonly isMine: boolean;
}

/** What the filtered list counts; the whole list says what was found for everybody. */
const filteredInWords = ({ listed }: WorklistAnswer, { kind, isMine }: WorklistFilter): string =>
  `${counted(listed, 'patient')} with ${kind ? `“${matterStatusOf(kind).word}”` : 'any matter'}${
    isMine ? ' that you took on' : ''
  }.`;

/** Where the matter is dealt with. */
export const hrefOf = (patientId: string, { kind, decisionId, joint }: Matter): string => {
  const record = `/patients/${patientId}`;
  if (decisionId) return `${record}/review?${joint ? `joint=${joint}` : ''}#decision-${decisionId}`;
  if (kind === 'awaiting-signature') return `${record}/prescriptions#unsigned`;
  if (kind === 'screening-due') return `${record}/screening`;
  if (kind === 'pressure-due') return `${record}/measurements?kind=limb-occlusion-pressure`;
  return `${record}/review`;
};

const MatterLine = ({ matter, ago }: { readonly matter: Matter; readonly ago?: string }) => {
  const { word, shape, tone } = matterStatusOf(matter.kind);
  const handled = [
    matter.acknowledgedBy ? `seen by ${matter.acknowledgedBy}` : '',
    matter.assignedName ? `taken on by ${matter.assignedName}` : '',
  ].filter(Boolean);
  return (
    <p className="matter">
      <StatusTag shape={shape} tone={tone}>
        {word}
      </StatusTag>{' '}
      {matter.sentence} {ago ? <span className="soft">{ago}</span> : null}
      {handled.length > 0 ? <span className="soft"> · {handled.join(', ')}</span> : null}
    </p>
  );
};

const Line = (props: { readonly line: WorklistAnswer['lines'][number]; readonly clock: ClinicClock }) => {
  const { line, clock } = props;
  return (
    <li className="worklist-line keep-together">
      <h2 className="worklist-name">
        <a href={hrefOf(line.patientId, line.matter)} data-line>
          {fullName(line)}
        </a>
      </h2>
      <div className="stack-close">
        <MatterLine matter={line.matter} />
        {line.others.length > 0 ? (
          <ul className="worklist-others" aria-label={`Further matters of ${fullName(line)}`}>
            {line.others.map((matter) => (
              <li key={matter.key}>
                <MatterLine matter={matter} ago={agoInWords(matter.since, clock)} />
              </li>
            ))}
          </ul>
        ) : null}
        <MatterActions
          patientId={line.patientId}
          matterKey={line.matter.key}
          about={`${matterStatusOf(line.matter.kind).word}, ${fullName(line)}`}
          canPutOff={!dangers.includes(line.matter.kind)}
        />
      </div>
      <p className="worklist-ago">{agoInWords(line.matter.since, clock)}</p>
    </li>
  );
};

const Filter = ({ filter }: { readonly filter: WorklistFilter }) => (
  <form method="get" className="row row-end screen-only">
    <div className="field">
      <label className="field-label" htmlFor="kind">
        Only
      </label>
      <select id="kind" name="kind" className="input" defaultValue={filter.kind ?? ''}>
        <option value="">every matter</option>
        {matterKinds.map((kind) => (
          <option key={kind} value={kind}>
            {matterStatusOf(kind).word}
          </option>
        ))}
      </select>
    </div>
    <label className="choice">
      <input type="checkbox" name="mine" value="1" defaultChecked={filter.isMine} />
      <span className="choice-text">taken on by me</span>
    </label>
    <button type="submit" className="button button-plain">
      Show
    </button>
  </form>
);

const nextHref = ({ kind, isMine }: WorklistFilter, next: NonNullable<WorklistAnswer['next']>): string =>
  `/worklist?${new URLSearchParams({
    ...(kind ? { kind } : {}),
    ...(isMine ? { mine: '1' } : {}),
    after: [next.rank, next.since, next.patientId].join('~'),
  })}`;

export const WorklistScreen = (props: {
  readonly list: WorklistAnswer;
  readonly clock: ClinicClock;
  readonly filter: WorklistFilter;
}) => {
  const { list, clock, filter } = props;
  const isWhole = filter.kind === null && !filter.isMine;
  return (
    <div className="stack-wide">
      <PageHeading>Worklist</PageHeading>
      <p className="lead">{isWhole ? countInWords(list) : filteredInWords(list, filter)}</p>
      <Filter filter={filter} />
      {list.lines.length > 0 ? (
        <ArrowLines>
          {list.lines.map((line) => (
            <Line key={line.patientId} line={line} clock={clock} />
          ))}
        </ArrowLines>
      ) : null}
      {list.next ? (
        <p>
          <a href={nextHref(filter, list.next)}>Further patients</a>
        </p>
      ) : null}
      <p className="soft">{checked} Not checked: anything that was not entered here.</p>
    </div>
  );
};
