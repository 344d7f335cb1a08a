/** The facts gathered anew: what the engine would say at past looks, on what was known then and nothing else. */
import {
  stoodAllAlong,
  type UsualValuesByJoint,
  withoutValues,
} from '#core/decision/baseline/stood-all-along.ts';
import type { Moment } from '#core/decision/facts/judged-session.ts';
import { evaluate, type JointEvaluation } from '#core/decision/scope.ts';
import type { TwiceDecided } from '#core/decision/what-if/what-if.ts';
import type { PatientRecord } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { readTogether, togetherOf } from '../database/read-together.ts';
import { engineValues, isAsked } from '../decision/evaluate.ts';
import { careProfileRows } from '../patients/care-profiles.ts';
import { engineWindowDays, recordQueries } from '../patients/record-queries.ts';
import { withdrawnRows } from '../prescribing/signature-withdrawal.ts';
import { isLongFlare, type KnownRecords, knownRecords } from './known-record.ts';
import { type Look, looksOf } from './moments.ts';

/** What is moved; everything it does not name is as it was on the day. */
export interface Moved {
  readonly settings: SettingValues;
  readonly joints: UsualValuesByJoint;
}

const together = togetherOf([
  ...recordQueries,
  ...[careProfileRows, withdrawnRows].map((query) => ({ query })),
]);

/** Settings of a look; one and the same object as long as nothing was changed, by which the engine keeps its texts. */
const settingsAt = (access: Access) => {
  const known = new Map<string, SettingValues>();
  return async ({ instant, settings }: Look): Promise<SettingValues> => {
    if (settings) return settings;
    const values = await engineValues({ ...access, knownAt: instant });
    const key = JSON.stringify(values);
    const before = known.get(key) ?? values;
    known.set(key, before);
    return before;
  };
};

const movedFrom = (moved: SettingValues) => {
  const known = new Map<SettingValues, SettingValues>();
  return (settings: SettingValues): SettingValues => {
    const values = known.get(settings) ?? { ...settings, ...moved };
    known.set(settings, values);
    return values;
  };
};

type Reading = (record: PatientRecord, day: Day) => PatientRecord;

/** A joint is looked at where it was followed or asked about. */
const jointsAt = async (
  records: KnownRecords,
  look: Moment,
  settings: SettingValues,
  read: Reading = (record) => record,
): Promise<readonly JointEvaluation[]> => {
  const at = { instant: look.instant, day: look.day };
  const record = await records.at(at);
  if (!record) return [];
  const { joints } = evaluate(read(record, at.day), at, settings);
  // So long a flare may have begun before what the engine reads.
  const exact = isLongFlare(joints)
    ? evaluate(read((await records.at(at, true))!, at.day), at, settings).joints
    : joints;
  return exact.filter((one) => isAsked(record, one));
};

export interface GatheredLook {
  readonly look: Look;
  readonly joints: readonly JointEvaluation[];
}

const onLooks = <T>(
  access: Access,
  patientId: string,
  from: Day,
  work: (records: KnownRecords, looks: readonly Look[]) => Promise<T>,
): Promise<T> => {
  const since = addDays(from, -engineWindowDays);
  const read = async (): Promise<T> => {
    const looks = await looksOf(access, patientId, from, since);
    return work(await knownRecords(access, patientId, since, looks), looks);
  };
  return readTogether(access, patientId, together, read, { since });
};

/** Every look from a day on under the settings of its own time. */
export const gatherAnew = (access: Access, patientId: string, from: Day): Promise<readonly GatheredLook[]> =>
  onLooks(access, patientId, from, async (records, looks) => {
    const own = settingsAt(access);
    const gathered: GatheredLook[] = [];
    for (const look of looks) gathered.push({ look, joints: await jointsAt(records, look, await own(look)) });
    return gathered;
  });

/** One and the same as long as it stays the same, by which the engine keeps what it has arranged. */
const rememberedReading = (joints: UsualValuesByJoint): Reading => {
  const known = new WeakMap<PatientRecord, PatientRecord>();
  return (record, day) => {
    if (withoutValues(record, joints, day).length > 0) return stoodAllAlong(record, joints, day);
    const before = known.get(record) ?? stoodAllAlong(record, joints, day);
    known.set(record, before);
    return before;
  };
};

/** The same beside what it would have been under what is moved. */
export const decideTwice = (
  access: Access,
  patientId: string,
  from: Day,
  moved: Moved,
): Promise<readonly TwiceDecided[]> =>
  onLooks(access, patientId, from, async (records, looks) => {
    const own = settingsAt(access);
    const other = movedFrom(moved.settings);
    const read = rememberedReading(moved.joints);
    const found: TwiceDecided[] = [];
    for (const look of looks) {
      const settings = await own(look);
      const before = await jointsAt(records, look, settings);
      const after = await jointsAt(records, look, other(settings), read);
      for (const [place, { joint, answers }] of before.entries())
        found.push({ joint, day: look.day, before: answers, after: after[place]!.answers });
    }
    return found;
  });
