/** Filter and place of the worklist, from the address; what cannot be read is left out. */
import { type WorklistGroup, worklistGroups } from '#core/worklist/groups.ts';
import { worklistItemKinds } from '#core/worklist/item.ts';
import type { WorklistItemKind } from '../answers.ts';

export interface WorklistFilter {
  readonly kind: WorklistItemKind | null;
  readonly isMine: boolean;
  /** Clinician who took it on or was given it. */
  readonly clinician: string | null;
  readonly site: string | null;
  /** Another group than those who need the reader. */
  readonly group: WorklistGroup | null;
}

export type WorklistQuery = Readonly<Record<string, string | readonly string[] | undefined>>;

const cursorFrom = (text: unknown) => {
  const [rank, since, patientId] = typeof text === 'string' ? text.split('~') : [];
  const isRead = patientId && Number.isInteger(Number(rank)) && Number.isInteger(Number(since));
  return isRead ? { rank: Number(rank), since: Number(since), patientId } : null;
};

const idFrom = (value: unknown): string | null =>
  typeof value === 'string' && value !== '' && value.length <= 64 ? value : null;

export const filterFrom = (query: WorklistQuery): WorklistFilter => ({
  kind: worklistItemKinds.find((kind) => kind === query.kind) ?? null,
  isMine: query.mine === '1',
  clinician: idFrom(query.clinician),
  site: idFrom(query.site),
  group: worklistGroups.find((group) => group === query.group && group !== 'needs-you') ?? null,
});

export const inputFrom = (query: WorklistQuery) => {
  const { kind, isMine, clinician, site } = filterFrom(query);
  return { kind, mine: isMine, assignedTo: clinician, siteId: site, after: cursorFrom(query.after) };
};
