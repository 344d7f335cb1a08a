/** The bar over a patient's record: where the person stands, which dates stop work, what is next. */
import { pausesAt, signStatesAt } from '#core/danger/danger-state.ts';
import { lastWord } from '#core/episode/consent.ts';
import { episodeStatusOn } from '#core/episode/episode-status.ts';
import { type FirstVisitStep, goesOnAt } from '#core/episode/first-visit/first-visit-steps.ts';
import { personStateOf } from '#core/episode/person-state.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { screeningSettings } from '#core/screening/settings.ts';
import { addDays } from '#core/time/day.ts';
import { nextStepOf } from '#core/worklist/next-step.ts';
import type { Access } from '#data/access.ts';
import { settingValue } from '#data/clinic/clinic-settings.ts';
import { dangerRecordOf } from '#data/danger/danger-record.ts';
import { consentsOf } from '#data/episode/consents.ts';
import { episodesOf } from '#data/episode/episodes.ts';
import { baselinesOf } from '#data/patients/baselines.ts';
import type { Patient } from '#data/patients/people.ts';
import { inForce, prescriptionsOf, unsigned } from '#data/prescribing/prescriptions.ts';
import { newestScreening } from '#data/screening/screenings.ts';
import { itemsDueOf } from '#data/worklist/items-of-patient.ts';
import { afterSigningOf, firstVisitStatesOf } from '../episode/first-visit-facts.ts';
import { shownItem } from '../worklist-item.ts';

/** Consents every course of care rests on; those for a cuff stand with the cuff. */
const barConsents = ['treatment', 'record-keeping', 'remote-monitoring'] as const;

const screeningOf = async (access: Access, patientId: string) => {
  const screening = await newestScreening(access, patientId);
  if (!screening) return null;
  const days = await settingValue(access, screeningSettings, 'screening-valid-days');
  const until = addDays(screening.day, days);
  return { on: screening.day, until, isOver: until < access.day };
};

/** Where the first visit goes on: all of it is looked at only while nothing is prescribed. */
const firstVisitAt = async (
  access: Access,
  patient: Patient,
  isPrescribed: boolean,
): Promise<FirstVisitStep | null> => {
  if (!isPrescribed) return goesOnAt(await firstVisitStatesOf(access, patient));
  const after = await afterSigningOf(access, patient.id);
  if (after.signed === 0) return null;
  if (!after.isWeekSet) return 'week';
  const isMonitored = lastWord(await consentsOf(access, patient.id), 'remote-monitoring')?.act === 'given';
  return isMonitored && !after.isInvited ? 'invitation' : null;
};

/** Every clinician who opens the record sees the bar; what it names is read in the record itself. */
export const patientBarOf = async (access: Access, patient: Patient) => {
  const items = await itemsDueOf(access, patient.id);
  const danger = await dangerRecordOf(access, patient.id);
  const signs = signStatesAt(danger, access.now);
  const episodes = episodeStatusOn(await episodesOf(access, patient.id), access.day);
  const consents = await consentsOf(access, patient.id);
  const screening = await screeningOf(access, patient.id);
  const baselines = await baselinesOf(access, patient.id);
  const versions = await prescriptionsOf(access, patient.id);
  const isPrescribed = inForce(versions).length + unsigned(versions).length > 0;
  return {
    state: personStateOf(signs, pausesAt(danger, signs, access.now), episodes),
    screening,
    consents: barConsents.map((kind) => {
      const word = lastWord(consents, kind);
      return { kind, act: word?.act ?? ('not-asked' as const), at: word?.at ?? null };
    }),
    /** What waits today, most pressing first. */
    items: items.map((row) => shownItem(row, access.day)),
    next: nextStepOf({
      items: items.map(({ kind, joint, decisionId, facts }) => ({
        kind,
        joint: joint as Joint | null,
        decisionId,
        ...(kind === 'retest-due' ? { measure: String(facts.measure) } : {}),
      })),
      isAway: episodes.state === 'closed' || episodes.state === 'on-break',
      isScreened: screening !== null && !screening.isOver,
      isTreatmentAnswered: lastWord(consents, 'treatment') !== null,
      followedJoints: patient.profile?.followedJoints ?? [],
      jointsWithBaseline: baselines.map(({ joint }) => joint),
      isPrescribed,
      firstVisit: await firstVisitAt(access, patient, isPrescribed),
    }),
  };
};
