/** Who needs a clinician, most pressing first. The count is of patients, not of matters. */
import { counted } from '#core/review/plain-words.ts';
import { PageHeading } from '#ui/shared/page-heading.tsx';
import { StatusTag } from '#ui/shared/status-tag.tsx';
import type { Matter, WorklistAnswer } from '../answers.ts';
import { fullName } from '../record/record-frame.tsx';
import { agoInWords, type ClinicClock } from '../when.ts';
import { matterStatusOf } from '../words.ts';
import { ArrowLines } from './arrow-lines.tsx';

const checked =
  'Checked for each patient: warning signs, pauses, calls due today, doses eased back, entries that differ or come from a phone with a doubtful clock, prescriptions to sign, mornings without answers, routine reviews, and screenings, occlusion pressures and usual values out of date.';

export const countInWords = ({ lines, patients }: WorklistAnswer): string => {
  if (patients === 0) return 'The clinic has no patients yet.';
  const rest = patients - lines.length;
  const need = `${lines.length} of ${counted(patients, 'patient')} ${lines.length === 1 ? 'needs' : 'need'} you.`;
  return rest === 0 ? need : `${need} Nothing was found for the other ${rest}.`;
};

/** Where the matter is dealt with. */
const hrefOf = (patientId: string, { kind, decisionId }: Matter): string => {
  const record = `/patients/${patientId}`;
  if (decisionId) return `${record}/review#decision-${decisionId}`;
  if (kind === 'awaiting-signature') return `${record}/prescriptions#unsigned`;
  if (kind === 'screening-due') return `${record}/screening`;
  if (kind === 'pressure-due') return `${record}/measurements?kind=limb-occlusion-pressure`;
  return `${record}/review`;
};

const MatterLine = ({ matter, ago }: { readonly matter: Matter; readonly ago?: string }) => {
  const { word, shape, tone } = matterStatusOf(matter.kind);
  return (
    <p className="matter">
      <StatusTag shape={shape} tone={tone}>
        {word}
      </StatusTag>{' '}
      {matter.sentence} {ago ? <span className="soft">{ago}</span> : null}
    </p>
  );
};

const Line = ({
  line,
  clock,
}: {
  readonly line: WorklistAnswer['lines'][number];
  readonly clock: ClinicClock;
}) => (
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
            <li key={`${matter.kind} ${matter.since} ${matter.joint}`}>
              <MatterLine matter={matter} ago={agoInWords(matter.since, clock)} />
            </li>
          ))}
        </ul>
      ) : null}
    </div>
    <p className="worklist-ago">{agoInWords(line.matter.since, clock)}</p>
  </li>
);

export const WorklistScreen = ({
  list,
  clock,
}: {
  readonly list: WorklistAnswer;
  readonly clock: ClinicClock;
}) => (
  <div className="stack-wide">
    <PageHeading>Worklist</PageHeading>
    <p className="lead">{countInWords(list)}</p>
    {list.lines.length > 0 ? (
      <ArrowLines>
        {list.lines.map((line) => (
          <Line key={line.patientId} line={line} clock={clock} />
        ))}
      </ArrowLines>
    ) : null}
    <p className="soft">{checked} Not checked: anything that was not entered here.</p>
  </div>
);
