/** What care is about and what was agreed: episodes, diagnoses as written, consents, goals. */
import type { Condition, Consent, EpisodeOfCare, Goal } from 'fhir/r4';
import type { EpisodeState } from '#core/episode/episode.ts';
import type { GoalState } from '#core/episode/goals.ts';
import type { PersonRecord } from '../../person-record.ts';
import { systems } from '../names.ts';
import {
  clinicRef,
  idOf,
  instantOf,
  notes,
  own,
  periodOf,
  refTo,
  struckOut,
  subjectOf,
  text,
  writerOf,
} from './parts.ts';

const episodeStatus: Readonly<Record<EpisodeState, EpisodeOfCare['status']>> = {
  open: 'planned',
  active: 'active',
  'on-break': 'onhold',
  discharged: 'finished',
  transferred: 'finished',
  died: 'finished',
};

export const episodesOfCare = (record: PersonRecord): readonly EpisodeOfCare[] =>
  record.rows.episode.flatMap(({ id }) => {
    const changes = record.rows.episode_change
      .filter(({ episodeId }) => episodeId === id)
      .toSorted((a, b) => a.recordedAt - b.recordedAt);
    const last = changes.at(-1);
    if (!last) return [];
    const status = episodeStatus[last.state];
    return [
      {
        resourceType: 'EpisodeOfCare' as const,
        id: idOf(id),
        status,
        statusHistory: changes.map(({ state, on }, place) => ({
          status: episodeStatus[state],
          period: { start: on, ...(changes[place + 1] ? { end: changes[place + 1]!.on } : {}) },
        })),
        diagnosis: record.rows.episode
          .filter((one) => one.id === id)
          .flatMap((one) =>
            one.diagnoses.map((_, place) => ({ condition: refTo('Condition', id, `${place}`) })),
          ),
        patient: subjectOf(record),
        managingOrganization: clinicRef(record),
        ...periodOf(changes[0]?.on, status === 'finished' ? last.on : null),
      },
    ];
  });

/** In the clinician's words: nobody gave them a code, and nobody said whether they are active. */
export const conditions = (record: PersonRecord): readonly Condition[] => {
  const newest = record.rows.care_profile.toSorted((a, b) => b.version - a.version)[0];
  const written = [
    ...(newest
      ? [{ id: idOf(newest.id), words: newest.diagnosis, at: newest.recordedAt, by: newest.recordedBy }]
      : []),
    ...record.rows.episode.flatMap(({ id, diagnoses, recordedAt, recordedBy }) =>
      diagnoses.map((words, place) => ({ id: idOf(id, `${place}`), words, at: recordedAt, by: recordedBy })),
    ),
  ];
  return written.flatMap(({ id, words, at, by }) =>
    words.trim() === ''
      ? []
      : [
          {
            resourceType: 'Condition' as const,
            id,
            code: text(words),
            subject: subjectOf(record),
            recordedDate: instantOf(at),
            recorder: writerOf(record, by),
          },
        ],
  );
};

const consentStatus = { given: 'active', refused: 'rejected', withdrawn: 'inactive' } as const;

/** Each time somebody was asked, oldest first; the newest of a kind holds. */
export const consents = (record: PersonRecord): readonly Consent[] =>
  record.rows.consent.map(({ id, kind, act, wordingSource, wordingVersion, recordedAt, recordedBy }) => ({
    resourceType: 'Consent',
    id: idOf(id),
    status: consentStatus[act],
    scope: {
      coding: [
        {
          system: systems.consentScope,
          code: ['treatment', 'occlusion-supervised', 'occlusion-unsupervised'].includes(kind)
            ? 'treatment'
            : 'patient-privacy',
        },
      ],
    },
    category: [own(`consent.${kind}`)],
    patient: subjectOf(record),
    dateTime: instantOf(recordedAt),
    performer: [writerOf(record, recordedBy)],
    organization: [clinicRef(record)],
    policyRule: text(
      `${wordingSource === 'clinic' ? 'The clinic’s own wording' : 'The wording proposed with the program'}, number ${wordingVersion}`,
    ),
  }));

const goalStatus: Readonly<Record<GoalState, Goal['lifecycleStatus']>> = {
  open: 'active',
  'partly-reached': 'active',
  reached: 'completed',
  'set-aside': 'cancelled',
};
const achievement: Partial<Record<GoalState, string>> = {
  'partly-reached': 'improving',
  reached: 'achieved',
};

/** One for each step of a goal that stands: set, and what became of it, as the newest of the same words. */
export const goals = (record: PersonRecord): readonly Goal[] => {
  const wrong = struckOut(record);
  const steps = record.rows.goal_step.toSorted((a, b) => a.recordedAt - b.recordedAt);
  const newest = new Map(steps.filter(({ id }) => !wrong.has(id)).map((row) => [row.goal, row]));
  const struck = steps.filter(({ id }) => wrong.has(id));
  return [...newest.values(), ...struck].map(({ id, goal, state, byDay, note, recordedBy }) => ({
    resourceType: 'Goal',
    id: idOf(id),
    lifecycleStatus: wrong.has(id) ? 'entered-in-error' : goalStatus[state],
    ...(achievement[state] && !wrong.has(id)
      ? { achievementStatus: { coding: [{ system: systems.goalAchievement, code: achievement[state] }] } }
      : {}),
    description: text(goal),
    subject: subjectOf(record),
    ...(byDay ? { target: [{ dueDate: byDay }] } : {}),
    expressedBy: writerOf(record, recordedBy),
    ...notes(note),
  }));
};
