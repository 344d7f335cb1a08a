/** What a first visit saves of the care profile: why the patient comes, and what is at home. Each beside the rest as it stands. */
import { refusedWith } from '#api/errors.ts';
import { checked } from '#api/inputs/checked.ts';
import { proposePainLimit } from '#core/decision/baseline/propose-pain-limit.ts';
import { engineSettingValues } from '#core/decision/settings.ts';
import { homeFields, reasonFields, usualJointFields } from '#core/episode/visit-fields.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import type { Access } from '#data/access.ts';
import { setBaseline } from '#data/assessment/baselines.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import { evaluateRecord } from '#data/decision/evaluate.ts';
import { baselinesOf } from '#data/patients/baselines.ts';
import { type CareProfile, patientOf } from '#data/patients/people.ts';
import { saveProfile } from '#data/patients/save-profile.ts';

type Seen = number | null | undefined;

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** Nothing asked yet is an empty list; an ordinary household is had once somebody has asked. */
const unasked = {
  swellingNotAsked: [],
  ownedLoadsKg: [],
  ownedEquipment: [],
  formulaSex: null,
} as const satisfies Partial<CareProfile>;

const profileOf = async (access: Access, patientId: string): Promise<CareProfile | null> => {
  const profile = (await patientOf(access, patientId))?.profile;
  if (!profile) return null;
  const { version: _, ...rest } = profile;
  return rest;
};

/** Nothing is put back that a colleague changed since the page was read. */
const requireAsSeen = async (access: Access, patientId: string, seen: Seen): Promise<void> => {
  const version = (await patientOf(access, patientId))?.profile?.version ?? null;
  if (seen !== undefined && seen !== version)
    throw refusedWith([
      {
        field: 'input',
        code: 'inconsistent',
        reason:
          'A colleague changed this since you opened the page. Nothing of it was saved; load the page again and look at what stands there.',
      },
    ]);
};

/** False where it is on record as it was sent. */
const saveBeside = async (
  access: Access,
  patientId: string,
  before: CareProfile | null,
  next: CareProfile,
  seen?: Seen,
): Promise<boolean> => {
  const same = (Object.keys(next) as (keyof CareProfile)[]).every((key) => isSame(next[key], before?.[key]));
  if (same) return false;
  await requireAsSeen(access, patientId, seen);
  await saveProfile(access, patientId, next);
  return true;
};

export const saveReason = async (
  access: Access,
  patientId: string,
  sent: unknown,
  seen?: Seen,
): Promise<boolean> => {
  const { followedJoints, swellingNotAsked, asksFatigue, errorGroup, ...reason } = checked(
    reasonFields,
    sent,
  );
  const before = await profileOf(access, patientId);
  const next = {
    ...(before ?? unasked),
    ...reason,
    followedJoints: followedJoints as readonly Joint[],
    swellingNotAsked: (swellingNotAsked ?? before?.swellingNotAsked ?? []) as readonly Joint[],
    asksFatigue: asksFatigue ?? before?.asksFatigue ?? false,
    errorGroup: errorGroup === undefined ? (before?.errorGroup ?? null) : errorGroup,
  };
  return saveBeside(access, patientId, before, next, seen);
};

/** An episode that is opened says from then on why the patient comes and what is followed; nobody types it twice. */
export const followEpisode = async (
  access: Access,
  patientId: string,
  reason: Pick<CareProfile, 'diagnosis' | 'followedJoints'>,
): Promise<void> => {
  const before = await profileOf(access, patientId);
  if (before) await saveBeside(access, patientId, before, { ...before, ...reason });
};

export const saveHome = async (
  access: Access,
  patientId: string,
  sent: unknown,
  seen?: Seen,
): Promise<boolean> => {
  const home = checked(homeFields, sent);
  const before = await profileOf(access, patientId);
  if (!before)
    throw refusedWith([
      { field: 'input', code: 'inconsistent', reason: 'Enter the diagnosis and the joint first.' },
    ]);
  return saveBeside(access, patientId, before, { ...before, ...home }, seen);
};

export const saveFormulaSex = async (access: Access, patientId: string, sent: unknown): Promise<boolean> => {
  const before = await profileOf(access, patientId);
  if (!before || (sent !== 'female' && sent !== 'male'))
    throw refusedWith([
      { field: 'input', code: 'inconsistent', reason: 'Enter the diagnosis and the joint first.' },
    ]);
  return saveBeside(access, patientId, before, { ...before, formulaSex: sent });
};

export const saveUsual = async (access: Access, patientId: string, sent: unknown): Promise<boolean> => {
  const { joint, acceptablePainLimit, ...told } = checked(usualJointFields, sent);
  const refuse = (field: string, reason: string) =>
    refusedWith([{ field: `input.${field}`, code: 'missing', reason }]);
  const followed = (await patientOf(access, patientId))?.profile?.followedJoints ?? [];
  if (!followed.includes(joint as Joint))
    throw refuse(
      'joint',
      `${jointInWords(joint as Joint)} is not followed. Choose it as a joint to follow first.`,
    );
  if (acceptablePainLimit === null) {
    const over = engineSettingValues(await settingsOf(access))['ceiling-over-usual'];
    const proposed = proposePainLimit(told.usualPain, over);
    const proposal = proposed === null ? '' : ` Proposed from usual pain: ${proposed}.`;
    throw refuse('acceptablePainLimit', `Enter the acceptable pain limit, 5 to 7.${proposal}`);
  }
  const newest = (await baselinesOf(access, patientId)).findLast((row) => row.joint === joint);
  const values = { joint: joint as Joint, acceptablePainLimit, ...told };
  const isKnown =
    newest && Object.entries(values).every(([name, value]) => newest[name as 'joint'] === value);
  if (isKnown) return false;
  // Nobody has tested the knee here: the rules then take no effusion as usual, the more cautious reading.
  const rest = { usualPainTop: null, usualEffusion: 'zero' as const, provisional: true };
  await setBaseline(access, patientId, { ...values, ...rest }, 'Told by the patient at the first visit.');
  await evaluateRecord(access, patientId, { cause: 'clinician', sessionId: null, morningId: null });
  return true;
};
