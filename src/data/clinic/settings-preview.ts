/** What other numbers would have decided: stored decisions of the last weeks, decided again from their stored facts. */
import { and, asc, eq, gt, gte } from 'drizzle-orm';
import type { DecisionWord } from '#core/decision/answers.ts';
import { decisionRank } from '#core/decision/decide.ts';
import { isSame, replay, replayWith } from '#core/decision/replay.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { decision, patientIdentity } from '../schema/schema.ts';

/** Weeks looked back over. */
const previewDays = 84;

interface DecisionChange {
  readonly patientId: string;
  readonly joint: string;
  readonly day: Day;
  readonly before: DecisionWord;
  readonly after: DecisionWord;
}

/** Decisions of one week whose word would differ. */
interface PreviewWeek {
  readonly from: Day;
  readonly moreCautious: number;
  readonly bolder: number;
}

export interface SettingPreview {
  readonly since: Day;
  /** Every week looked at, oldest first. */
  readonly weeks: readonly PreviewWeek[];
  readonly looked: number;
  /** Decided otherwise, or with another step, advice for the day or urgency of contact. */
  readonly differing: number;
  readonly bolder: number;
  readonly moreCautious: number;
  readonly patients: number;
  /** Those whose word of decision differs, oldest first. */
  readonly changes: readonly DecisionChange[];
}

const byWeek = (since: Day, changes: readonly DecisionChange[]): readonly PreviewWeek[] =>
  Array.from({ length: previewDays / 7 }, (_, week) => {
    const from = addDays(since, week * 7);
    const until = addDays(from, 7);
    // The last week takes in today.
    const own = changes.filter(({ day }) => day >= from && (day < until || week === previewDays / 7 - 1));
    const bolder = own.filter(({ before, after }) => decisionRank[after] > decisionRank[before]).length;
    return { from, bolder, moreCautious: own.length - bolder };
  });

const pageSize = 500;

const rowsAfter = (access: Access, since: Day, id: string) =>
  access.store.read
    .select({
      id: decision.id,
      patientId: decision.patientId,
      joint: decision.joint,
      day: decision.day,
      facts: decision.facts,
      settings: decision.settings,
      engineVersion: decision.engineVersion,
    })
    .from(decision)
    .where(and(eq(decision.clinicId, access.clinicId), gte(decision.day, since), gt(decision.id, id)))
    .orderBy(asc(decision.id))
    .limit(pageSize);

/**
 * Both sides are decided here from the stored facts, each decision under the settings it was made with; on one
 * side those named are moved, so that a difference comes from them alone. Settings that shape how facts are
 * gathered show their effect at the next evaluation, not here.
 */
export const previewSettings = async (access: Access, moved: SettingValues): Promise<SettingPreview> => {
  const since = addDays(access.day, -previewDays);
  const changes: DecisionChange[] = [];
  const patients = new Set<string>();
  const counts = { looked: 0, differing: 0, bolder: 0, moreCautious: 0 };
  for (let last = ''; ; ) {
    const page = await rowsAfter(access, since, last);
    for (const { patientId, joint, day, ...stored } of page) {
      counts.looked += 1;
      const before = replay(stored);
      const after = replayWith(stored, moved);
      if (!before || !after || isSame(before, after)) continue;
      counts.differing += 1;
      patients.add(patientId);
      const step = decisionRank[after.decision] - decisionRank[before.decision];
      counts.bolder += step > 0 ? 1 : 0;
      counts.moreCautious += step < 0 ? 1 : 0;
      if (step !== 0) changes.push({ patientId, joint, day, before: before.decision, after: after.decision });
    }
    if (page.length < pageSize) break;
    last = page.at(-1)!.id;
    // A long look back must not hold up everybody else's requests.
    await new Promise((resume) => setImmediate(resume));
  }
  changes.sort((a, b) => (a.day < b.day ? -1 : 1));
  return { since, ...counts, weeks: byWeek(since, changes), patients: patients.size, changes };
};

/** Names for a page that shows whose decisions would differ. */
export const namesOf = async (access: Access): Promise<ReadonlyMap<string, string>> => {
  const rows = await access.store.read
    .select({
      id: patientIdentity.patientId,
      givenName: patientIdentity.givenName,
      familyName: patientIdentity.familyName,
    })
    .from(patientIdentity)
    .where(eq(patientIdentity.clinicId, access.clinicId));
  return new Map(rows.map((row) => [row.id, `${row.familyName}, ${row.givenName}`]));
};
