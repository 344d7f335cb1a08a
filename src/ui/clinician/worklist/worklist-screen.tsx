/** Who needs a clinician, most pressing first. The count is of patients, not of items. */
import { counted } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/worklist.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { WorklistAnswer, WorklistFilters, WorklistGroups } from '../answers.ts';
import { asText } from '../as-text.ts';
import type { ClinicClock } from '../when.ts';
import { itemStatusOf } from '../words.ts';
import { GroupCounts } from './group-counts.tsx';
import { GroupList } from './group-list.tsx';
import { benchRow } from './row-props.ts';
import { Workbench } from './workbench.tsx';
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
  /** Whose name a signature will be in. */
  readonly signer: string;
}

export const WorklistScreen = (props: WorklistScreenProps) => {
  const { list, filter, groups } = props;
  return (
    <div className="stack worklist-page">
      <div className="worklist-head">
        <PageHeading>Worklist</PageHeading>
        <GroupCounts counts={groups.counts} current={filter.group} day={list.day} />
      </div>
      {filter.group === null ? <Attention {...props} /> : <GroupList lines={groups.lines} day={list.day} />}
      <p className="soft worklist-checked">
        {say('checked')} {say('not-checked')}
      </p>
    </div>
  );
};

const Attention = ({ list, clock, filter, filters, signer }: WorklistScreenProps) => {
  const isWhole = isWholeList(filter);
  return (
    <>
      {isWhole ? null : <p className="lead">{filteredInWords(list, filter, filters)}</p>}
      {list.closed > 0 ? <p>{say('closed', { count: list.closed })}</p> : null}
      <Disclosure summary={say('narrow')} isOpen={isWhole ? undefined : true}>
        <WorklistFilterForm filter={filter} filters={filters} />
      </Disclosure>
      {list.next && list.dangerGoesOn ? (
        <p>
          <strong>{say('danger-goes-on')}</strong> <a href={nextHref(filter, list.next)}>{say('more')}</a>
        </p>
      ) : null}
      {list.lines.length > 0 ? (
        <>
          <Workbench
            rows={asText(list.lines.map((line) => benchRow(line, clock, list.day)))}
            colleagues={filters.clinicians}
            signer={signer}
            againHours={list.againHours}
            mostAgainHours={list.mostAgainHours}
            readAt={list.readAt}
          />
          <p className="soft worklist-help">
            {say('strip-help')} <span className="screen-only">{say('keys')}</span>
          </p>
        </>
      ) : null}
      {list.next ? (
        <p>
          <a href={nextHref(filter, list.next)}>{say('more')}</a>
        </p>
      ) : null}
    </>
  );
};
