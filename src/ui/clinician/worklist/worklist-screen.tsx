/** Who needs a clinician, most pressing first. The count is of patients, not of items. */
import { counted } from '#core/review/plain-words.ts';
import { dangers } from '#core/worklist/item.ts';
import { say } from '#messages/en/staff/worklist.ts';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { WorklistAnswer, WorklistFilters, WorklistGroups, WorklistItem } from '../answers.ts';
import { fullName } from '../record/record-frame.tsx';
import { agoInWords, type ClinicClock } from '../when.ts';
import { itemStatusOf } from '../words.ts';
import { ArrowLines } from './arrow-lines.tsx';
import { GroupCounts } from './group-counts.tsx';
import { GroupList } from './group-list.tsx';
import { ItemActions } from './item-actions.tsx';
import { WorklistFilterForm } from './worklist-filter-form.tsx';
import type { WorklistFilter } from './worklist-query.ts';

const isWholeList = ({ kind, isMine, clinician, site }: WorklistFilter): boolean =>
  kind === null && !isMine && clinician === null && site === null;

/** What the filtered list counts; the whole list says what was found for everybody. */
const filteredInWords = (
  { listed }: WorklistAnswer,
  filter: WorklistFilter,
  { clinicians, sites }: WorklistFilters,
): string => {
  const { kind, isMine } = filter;
  const name = clinicians.find((one) => one.userId === filter.clinician)?.name;
  const place = sites.find((one) => one.id === filter.site)?.name;
  const parts = [
    counted(listed, 'patient'),
    place ? say('filtered.site', { site: place }) : '',
    kind ? say('filtered.reason', { reason: itemStatusOf(kind).word }) : say('filtered.any-reason'),
    isMine ? say('filtered.mine') : name ? say('assigned', { name }) : '',
  ];
  return `${parts.filter(Boolean).join(' ')}.`;
};

/** Settled by a contact, or by resuming; a pause of the engine is answered beside its decision. */
const contactKinds: readonly WorklistItem['kind'][] = ['red-flag', 'same-day-contact', 'resume-due'];

/** Where the item is dealt with. */
export const hrefOf = (patientId: string, { kind, decisionId, joint }: WorklistItem): string => {
  const record = `/patients/${patientId}`;
  if (contactKinds.includes(kind)) return `${record}/warning-signs`;
  if (kind === 'dose-stopped') return `${record}/prescriptions`;
  if (decisionId) return `${record}/review?${joint ? `joint=${joint}` : ''}#decision-${decisionId}`;
  if (kind === 'awaiting-signature') return `${record}/prescriptions#unsigned`;
  if (kind === 'message') return `${record}/review#messages`;
  if (kind === 'review-day') return `${record}/review#next-review`;
  if (kind === 'screening-due') return `${record}/screening`;
  if (kind === 'pressure-due') return `${record}/measurements?kind=limb-occlusion-pressure`;
  return kind === 'danger-passed' ? `${record}/warning-signs` : `${record}/review`;
};

const ItemRow = ({ item, ago }: { readonly item: WorklistItem; readonly ago?: string }) => {
  const { word, shape, tone } = itemStatusOf(item.kind);
  const handled = [
    item.acknowledgedBy ? say('acknowledged', { name: item.acknowledgedBy }) : '',
    item.assignedName ? say('assigned', { name: item.assignedName }) : '',
  ].filter(Boolean);
  return (
    <p className="worklist-item">
      <StatusTag shape={shape} tone={tone}>
        {word}
      </StatusTag>{' '}
      {item.sentence} {ago ? <span className="soft">{ago}</span> : null}
      {handled.length > 0 ? <span className="soft"> · {handled.join(', ')}</span> : null}
    </p>
  );
};

const Line = (props: {
  readonly line: WorklistAnswer['lines'][number];
  readonly clock: ClinicClock;
  readonly colleagues: WorklistFilters['clinicians'];
}) => {
  const { line, clock } = props;
  return (
    <li className="worklist-row keep-together">
      <h2 className="worklist-name">
        <a href={hrefOf(line.patientId, line.item)} data-item>
          {fullName(line)}
        </a>
      </h2>
      <div className="stack-close">
        <ItemRow item={line.item} />
        {line.others.length > 0 ? (
          <ul className="worklist-others" aria-label={say('more-of', { name: fullName(line) })}>
            {line.others.map((item) => (
              <li key={item.key}>
                <ItemRow item={item} ago={agoInWords(item.since, clock)} />
              </li>
            ))}
          </ul>
        ) : null}
        <ItemActions
          patientId={line.patientId}
          itemKey={line.item.key}
          about={`${itemStatusOf(line.item.kind).word}, ${fullName(line)}`}
          canSnooze={!dangers.includes(line.item.kind)}
          colleagues={props.colleagues}
        />
      </div>
      <p className="worklist-ago">{agoInWords(line.item.since, clock)}</p>
    </li>
  );
};

const nextHref = (filter: WorklistFilter, next: NonNullable<WorklistAnswer['next']>): string =>
  `/worklist?${new URLSearchParams({
    ...(filter.kind ? { kind: filter.kind } : {}),
    ...(filter.isMine ? { mine: '1' } : {}),
    ...(filter.clinician ? { clinician: filter.clinician } : {}),
    ...(filter.site ? { site: filter.site } : {}),
    after: [next.rank, next.since, next.patientId].join('~'),
  })}`;

interface WorklistScreenProps {
  readonly list: WorklistAnswer;
  readonly clock: ClinicClock;
  readonly filter: WorklistFilter;
  readonly filters: WorklistFilters;
  readonly groups: WorklistGroups;
}

export const WorklistScreen = (props: WorklistScreenProps) => {
  const { list, filter, groups } = props;
  return (
    <div className="stack-wide">
      <PageHeading>Worklist</PageHeading>
      <GroupCounts counts={groups.counts} current={filter.group} day={list.day} />
      {filter.group === null ? <Attention {...props} /> : <GroupList lines={groups.lines} day={list.day} />}
      <p className="soft">
        {say('checked')} {say('not-checked')}
      </p>
    </div>
  );
};

const Attention = ({ list, clock, filter, filters }: WorklistScreenProps) => {
  const isWhole = isWholeList(filter);
  return (
    <>
      {isWhole ? null : <p className="lead">{filteredInWords(list, filter, filters)}</p>}
      {list.closed > 0 ? <p>{say('closed', { count: list.closed })}</p> : null}
      <WorklistFilterForm filter={filter} filters={filters} />
      {list.lines.length > 0 ? (
        <ArrowLines>
          {list.lines.map((line) => (
            <Line key={line.patientId} line={line} clock={clock} colleagues={filters.clinicians} />
          ))}
        </ArrowLines>
      ) : null}
      {list.next ? (
        <p>
          <a href={nextHref(filter, list.next)}>{say('more')}</a>
        </p>
      ) : null}
    </>
  );
};
