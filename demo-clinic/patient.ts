/** What a patient's phone sends for one day of a diary. */
import type { Joint } from '#core/exercises/joints.ts';
import { machineOf } from '#core/prescribing/place-of-dose.ts';
import { linesOn } from '#core/prescribing/programme/planned-sessions.ts';
import { entryFormat, type MorningEntry, type SessionEntry } from '#core/record/entries.ts';
import { askedInSession } from '#core/record/followed-joints.ts';
import type { Access } from '#data/access.ts';
import { takeMorning, takeSession } from '#data/entries/take-entry.ts';
import { inForce, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { programmesOf } from '#data/prescribing/programmes.ts';
import type { MorningDay, SessionDay } from './diary.ts';
import { type Followed, setsDone } from './sets.ts';
import type { Story } from './story.ts';

const sessionMinutes = 25;

/** What the clinic asks of a patient each morning. */
export type Asked = Pick<Story['profile'], 'followedJoints' | 'inflammatoryArthritis' | 'asksFatigue'>;

const morningEntry = (
  access: Access,
  zone: string,
  { followedJoints: joints, inflammatoryArthritis, asksFatigue }: Asked,
  { pains, stiffness, usualStiffness, said }: MorningDay,
): MorningEntry => ({
  format: entryFormat,
  entryId: `morning-${access.day}`,
  day: access.day,
  zone,
  sentAt: access.now,
  redFlags: said.redFlags === undefined ? [] : said.redFlags && [...said.redFlags],
  signsAsked: [{ moment: 'morning', form: 'list', wording: null }],
  via: 'asked',
  extraPainRelief: said.relief ?? false,
  answeredAt: access.now,
  fatigue: asksFatigue ? (said.fatigue ?? null) : null,
  fatigueState: asksFatigue ? 'asked' : 'not-applicable',
  ...(inflammatoryArthritis ? { otherJoint: said.otherJoint ? 'worse' : 'not-worse' } : {}),
  joints: joints.map((joint, place) => ({
    joint,
    pain: pains[place] === undefined ? pains[0]! : pains[place]!,
    stiffnessState: 'asked',
    swellingState: 'asked',
    swellingQuestion: 'more-than-usual',
    ...(place < (said.ofFirst ?? joints.length)
      ? {
          stiffnessMinutes: stiffness,
          swelling: said.swelling === undefined ? 'none' : said.swelling,
          flare: said.flare === undefined ? false : said.flare,
        }
      : { stiffnessMinutes: usualStiffness, swelling: 'none', flare: false }),
  })),
});

/** What stands on the plan for the day, at the dose in force. */
const followedToday = async (
  access: Access,
  patientId: string,
  said: SessionDay,
): Promise<readonly Followed[]> => {
  const versions = inForce(await prescriptionsOf(access, patientId));
  const planned = linesOn(await programmesOf(access, patientId), access.day);
  return versions
    .filter(({ itemId, dose }) => !machineOf(dose) && (planned === null || planned.includes(itemId)))
    .map((version) => ({
      prescriptionId: version.id,
      itemId: version.itemId,
      joints: version.joints,
      dose: said.isEasierSession ? version.badDay : version.dose,
    }));
};

const sessionEntry = (
  access: Access,
  zone: string,
  joints: readonly Joint[],
  said: SessionDay,
  followed: readonly Followed[],
): SessionEntry => ({
  format: entryFormat,
  entryId: `session-${access.day}`,
  day: access.day,
  zone,
  sentAt: access.now,
  redFlags: [],
  signsAsked: [
    { moment: 'before', form: 'list', wording: null },
    { moment: 'during', form: 'list', wording: null },
  ],
  extraPainRelief: said.relief,
  kind: said.isEasierSession ? 'bad-day' : 'full',
  beganAt: access.now - sessionMinutes * 60_000,
  endedAt: access.now,
  didExtra: said.extra,
  stoppedByFlag: false,
  sets: followed.flatMap((one) => setsDone(one, said)),
  joints: joints.map((joint) => ({
    joint,
    painBefore: said.before,
    painDuring: said.during,
    painAfter: said.after,
    twoHoursState: 'not-applicable',
    muscleBurn: null,
    cuffDiscomfort: null,
    gaveWay: said.gaveWay,
  })),
});

export const sendMorning = async (
  access: Access,
  patientId: string,
  zone: string,
  asked: Asked,
  said: MorningDay,
): Promise<void> => {
  const taken = await takeMorning(access, patientId, morningEntry(access, zone, asked, said));
  if (taken.kind !== 'stored') throw new Error(`${patientId}, morning of ${access.day}: ${taken.kind}`);
};

export const sendSession = async (
  access: Access,
  patientId: string,
  zone: string,
  joints: readonly Joint[],
  said: SessionDay,
): Promise<void> => {
  const followed = await followedToday(access, patientId, said);
  if (followed.length === 0) throw new Error(`${patientId}: nothing is planned on ${access.day}`);
  const entry = sessionEntry(access, zone, askedInSession(joints, followed), said, followed);
  const taken = await takeSession(access, patientId, entry);
  if (taken.kind !== 'stored') throw new Error(`${patientId}, session of ${access.day}: ${taken.kind}`);
};
